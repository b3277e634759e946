import type { InspectionTable } from '../inspection.js';
import type { Otherwise } from '../terms.js';

/** What is seen and touched, for a reader who is no clinician. */
export const plainInspection: Otherwise<InspectionTable> = {
  oedema: { label: 'Swelling' },
  said: { oedema: (is) => `swelling ${is}` },
};
