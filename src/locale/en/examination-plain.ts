import type { ExaminationTable } from '../examination.js';
import type { Otherwise } from '../terms.js';

/** What is recorded at a site, for a reader who is no clinician. */
export const plainExamination: Otherwise<ExaminationTable> = {
  grades: { absent: 'not felt', reduced: 'weak', bounding: 'unusually strong' },
  increased: 'stronger than normal',
  expansile: 'swells outwards',
  reasons: {
    oedema: 'swelling',
    'no-cuff': 'no cuff on this arm',
    'dialysis-access': 'access for dialysis (blood washing)',
  },
  bruits: {
    none: 'no whooshing noise',
    systolic: 'whooshing noise with each beat',
    continuous: 'continuous whooshing noise',
  },
  dopplers: {
    triphasic: 'sound in three parts',
    biphasic: 'sound in two parts',
    monophasic: 'damped sound in one part',
    absent: 'no sound',
  },
  onsets: { acute: 'sudden', chronic: 'long-standing', unknown: 'not known' },
  notExamined: 'not checked',
  couldNotExamine: 'could not be checked',
};
