import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { form, map } from './map.js';
import { localisation } from './localisation.js';
import { marks } from './marks.js';
import { reading } from './reading.js';
import { rule } from './rule.js';

/** English: the language every other one is checked against. */
export const en = { anatomy, examination, form, localisation, map, marks, reading, rule };
