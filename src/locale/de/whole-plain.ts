import type { Otherwise } from '../terms.js';
import type { WholeTable } from '../whole.js';

/** The examination as a whole, for a reader who is no clinician. */
export const plainWhole: Otherwise<WholeTable> = {
  name: 'Untersuchung der Arme und Beine',
  parts: { history: 'Vorgeschichte', inspection: 'Ansehen und Tasten', staging: 'Schwere' },
  limb: 'Arm oder Bein',
};
