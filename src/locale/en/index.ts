import { examinationFrom } from '../examination.js';
import { anatomy } from './anatomy.js';
import { faults } from './faults.js';
import { localisation } from './localisation.js';
import { marks } from './marks.js';
import { reading } from './reading.js';
import { rule } from './rule.js';
import { enShown } from './shown.js';

const examination = examinationFrom(enShown.examination, faults);

/** English: the language every other one is checked against. */
export const en = { ...enShown, anatomy, examination, localisation, marks, reading, rule };
