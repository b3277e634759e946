import type { Otherwise } from '../terms.js';
import type { WholeTable } from '../whole.js';

/** The examination as a whole, for a reader who is no clinician. */
export const plainWhole: Otherwise<WholeTable> = {
  name: 'Examination of arms and legs',
  parts: { inspection: 'Skin and touch', pulses: 'Pulses and sounds', staging: 'Severity' },
  onset: (onset) => `beginning: ${onset}`,
};
