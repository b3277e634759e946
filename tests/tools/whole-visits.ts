import type { Examination } from '../../src/examination/index.js';
import { examine, randomPatient } from '../../src/flow/index.js';

/** Records with every part in them, of simulated patients. */
export const WHOLE_VISITS: readonly Examination[] = Array.from({ length: 8 }, (_, number) => {
  const { patient } = randomPatient(4, number);
  return examine(patient, { examiner: { seed: number } });
});
