import type { Messages } from '../languages.js';
import { anatomy } from './anatomy.js';
import { examinationFrom } from '../fault.js';
import { examination as recorded } from './examination.js';
import { faults } from './faults.js';
import { localisation } from './localisation.js';
import { form, map } from './map.js';
import { marks } from './marks.js';
import { reading } from './reading.js';
import { rule } from './rule.js';

const examination = examinationFrom(recorded, faults);

/** German words of map and reading, as clinicians speak at the bedside. */
export const de: Messages = { anatomy, examination, form, localisation, map, marks, reading, rule };
