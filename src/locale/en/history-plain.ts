import type { HistoryTable } from '../history.js';
import type { Otherwise } from '../terms.js';

/** History, for a reader who is no clinician. */
export const plainHistory: Otherwise<HistoryTable> = {
  symptoms: { claudication: 'pain on walking' },
  symptomOptions: { claudication: 'Pain on walking' },
};
