import type { ExaminationTable } from '../examination.js';
import type { Otherwise } from '../terms.js';

/** What is recorded at a site, for a reader who is no clinician. */
export const plainExamination: Otherwise<ExaminationTable> = {
  grades: { absent: 'nicht zu tasten', reduced: 'schwach', bounding: 'auffallend kräftig' },
  increased: 'stärker als normal',
  expansile: 'drückt nach außen',
  reasons: {
    oedema: 'Schwellung',
    'dialysis-access': 'Zugang für die Dialyse (Blutwäsche)',
  },
  bruits: {
    none: 'kein Rauschen',
    systolic: 'Rauschen bei jedem Herzschlag',
    continuous: 'dauerndes Rauschen',
  },
  dopplers: {
    triphasic: 'Geräusch in drei Teilen',
    biphasic: 'Geräusch in zwei Teilen',
    monophasic: 'gedämpftes Geräusch in einem Teil',
    absent: 'kein Geräusch',
  },
  onsets: { acute: 'plötzlich', chronic: 'lange bestehend', unknown: 'nicht bekannt' },
  notExamined: 'nicht geprüft',
  couldNotExamine: 'konnte nicht geprüft werden',
};
