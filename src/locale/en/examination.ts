import { recordedFrom, type ExaminationTable } from '../examination.js';
import { inRegisters } from '../terms.js';
import { plainExamination } from './examination-plain.js';

const trade: ExaminationTable = {
  grades: {
    absent: 'absent',
    reduced: 'reduced',
    normal: 'normal',
    bounding: 'bounding',
  },
  increased: 'increased',
  expansile: 'expansile',
  reasons: {
    dressing: 'dressing',
    cast: 'cast',
    oedema: 'oedema',
    pain: 'pain',
    amputated: 'amputated',
    'line-in-place': 'line in place',
    'no-cuff': 'arm not to be cuffed',
    'dialysis-access': 'fistula or dialysis access',
    declined: 'declined',
    other: 'other',
  },
  bruits: {
    none: 'no bruit',
    systolic: 'systolic bruit',
    continuous: 'continuous bruit',
  },
  dopplers: {
    triphasic: 'triphasic',
    biphasic: 'biphasic',
    monophasic: 'monophasic',
    absent: 'no signal',
  },
  scales: { '0-3': '0 to 3', '0-4': '0 to 4', words: 'words' },
  onsets: { acute: 'acute', chronic: 'chronic', unknown: 'unknown' },
  notExamined: 'not examined',
  couldNotExamine: 'not assessable',
  unknownHere: 'recorded in a way this version does not know',
  unknownEntries: (count) =>
    count === 1
      ? 'The record holds 1 entry of a later version. It cannot be shown here and stays in the record.'
      : `The record holds ${count} entries of a later version. They cannot be shown here and stay in the record.`,
};

export const examination = recordedFrom(inRegisters(trade, plainExamination));
