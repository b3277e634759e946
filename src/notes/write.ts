import { type Examination, setBruit, setPulse } from '../examination/index.js';
import type { NoteFinding } from './reading.js';

/**
 * Writes findings of a note into a record, as one edit: a new examination, or the very same when nothing changes. What is locked stays.
 */
export function writeNote(examination: Examination, findings: readonly NoteFinding[]): Examination {
  return findings.reduce(
    (next, finding) =>
      finding.part === 'pulses'
        ? setPulse(next, finding.place, finding.patch)
        : setBruit(next, finding.place, finding.patch),
    examination,
  );
}
