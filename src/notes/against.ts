import {
  bruitAt,
  type BruitFinding,
  type Examination,
  isBruitLocked,
  isPulseLocked,
  pulseAt,
  type PulseFinding,
} from '../examination/index.js';
import type { NoteFinding } from './reading.js';
import { writeNote } from './write.js';

/** What writing a finding of a note would do to a record. */
export const NOTE_EFFECTS = [
  /** It adds what was not recorded; nothing goes. */
  'adds',
  /** The record says it already. */
  'recorded',
  /** Something recorded at the place goes, or becomes another. */
  'replaces',
  /** The place is locked by a word of a later version, and stays as it is. */
  'locked',
] as const;
export type NoteEffect = (typeof NOTE_EFFECTS)[number];

const findingAt = (
  examination: Examination,
  { part, place }: NoteFinding,
): PulseFinding | BruitFinding | undefined =>
  part === 'pulses' ? pulseAt(examination, place) : bruitAt(examination, place);

/**
 * What writing one finding would do to a record. A finding that replaces should be written only where a person has seen what it
 * replaces.
 */
export function noteEffect(examination: Examination, finding: NoteFinding): NoteEffect {
  const locked =
    finding.part === 'pulses'
      ? isPulseLocked(examination, finding.place)
      : isBruitLocked(examination, finding.place);
  if (locked) return 'locked';
  const next = writeNote(examination, [finding]);
  if (next === examination) return 'recorded';
  const before = Object.entries(findingAt(examination, finding) ?? {});
  const after = (findingAt(next, finding) ?? {}) as Readonly<Record<string, unknown>>;
  return before.every(([field, value]) => after[field] === value) ? 'adds' : 'replaces';
}
