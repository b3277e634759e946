import type { Examination } from '../examination/index.js';

/** Parts of a record that no flag is read from: stages are the clinician's own verdict, amendments are about the record. */
const NOT_READ: readonly (string | number)[] = ['staging', 'status', 'amendments'];

/**
 * How many words of a later version stand where the flags are read from. What they say is not weighed, so that the absence of a
 * flag says less than usual.
 */
export function uncheckedWords({ carried = [] }: Examination): number {
  return carried.filter(({ path }) => !NOT_READ.includes(path[0] ?? '')).length;
}
