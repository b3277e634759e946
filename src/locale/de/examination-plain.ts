import type { ExaminationTable } from '../examination.js';
import type { Otherwise } from '../terms.js';

/** What is recorded at a site, for a reader who is no clinician. */
export const plainExamination: Otherwise<ExaminationTable> = {
  reasons: { oedema: 'Schwellung' },
  couldNotExamine: 'konnte nicht geprüft werden',
};
