import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { rule } from './rule.js';

/** English: the language every other one is checked against. */
export const en = { anatomy, examination, rule };
