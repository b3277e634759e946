import { examinationFrom } from '../fault.js';
import { together } from '../terms.js';
import { anatomy } from './anatomy.js';
import { faults } from './faults.js';
import { localisation } from './localisation.js';
import { mapLater } from './map-later.js';
import { marks } from './marks.js';
import { reading } from './reading.js';
import { rule } from './rule.js';
import { enShown } from './shown.js';

const examination = examinationFrom(enShown.examination, faults);
const map = together(enShown.map, mapLater);

/** English: the language every other one is checked against. */
export const en = { ...enShown, anatomy, examination, map, localisation, marks, reading, rule };
