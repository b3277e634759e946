import { recordedFrom, type ExaminationTable } from '../examination.js';
import { inRegisters } from '../terms.js';
import { plainExamination } from './examination-plain.js';

const trade: ExaminationTable = {
  grades: {
    absent: 'fehlend',
    // Short enough to stand beside four others on a button; the sentences of the rule say "abgeschwächt tastbar".
    reduced: 'schwach',
    normal: 'normal',
    bounding: 'hebend',
  },
  increased: 'stark',
  expansile: 'expansiv',
  reasons: {
    dressing: 'Verband',
    cast: 'Gips',
    oedema: 'Ödem',
    pain: 'Schmerzen',
    amputated: 'amputiert',
    'line-in-place': 'liegender Zugang',
    'no-cuff': 'an diesem Arm keine Manschette',
    'dialysis-access': 'Fistel oder Dialysezugang',
    declined: 'abgelehnt',
    other: 'anderer Grund',
  },
  bruits: {
    none: 'kein Strömungsgeräusch',
    systolic: 'systolisches Strömungsgeräusch',
    continuous: 'kontinuierliches Strömungsgeräusch',
  },
  dopplers: {
    triphasic: 'triphasisch',
    biphasic: 'biphasisch',
    monophasic: 'monophasisch',
    absent: 'kein Signal',
  },
  scales: { '0-3': '0 bis 3', '0-4': '0 bis 4', words: 'Worte' },
  onsets: { acute: 'akut', chronic: 'chronisch', unknown: 'unbekannt' },
  notExamined: 'nicht untersucht',
  couldNotExamine: 'nicht beurteilbar',
  unknownHere: 'in einer Form festgehalten, die diese Version nicht kennt',
  unknownEntries: (count) =>
    count === 1
      ? 'Der Befund enthält 1 Eintrag einer neueren Version. Er lässt sich hier nicht anzeigen und bleibt erhalten.'
      : `Der Befund enthält ${count} Einträge einer neueren Version. Sie lassen sich hier nicht anzeigen und bleiben erhalten.`,
};

export const examination = recordedFrom(inRegisters(trade, plainExamination));
