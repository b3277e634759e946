import { emptyExamination, type Examination } from '../../examination/index.js';
import type { Later } from './later.js';
import { type Held, hold, readable, type RecordReader } from './record-value.js';

/** Records that have been read, or were made by edits of such: they are not read again. */
const read = new WeakSet<object>();

/** Remembers that a record needs no reading. */
export function alreadyRead(examination: Examination): Examination {
  read.add(examination);
  return examination;
}

const BLANK = alreadyRead(emptyExamination());

/**
 * A record that a host hands to an element only to be shown. Types do not hold at run time: what comes from storage may be of a
 * later version, and must not be read as one of this.
 */
export class GivenRecord {
  #input: unknown;
  #held: Held<Examination> | undefined;

  /** @param later what reads records, which may still be on its way */
  constructor(private readonly later: Later<RecordReader>) {}

  /** What the host gave; nothing is an empty record. */
  held(input: unknown): Held<Examination> {
    if (typeof input === 'object' && input !== null && read.has(input)) return readable(input as Examination);
    const { part } = this.later;
    const stale = this.#input !== input || (this.#held?.state === 'waiting' && part !== undefined);
    if (this.#held && !stale) return this.#held;
    this.#input = input;
    this.#held = hold(input, BLANK, part?.parseExaminationText);
    if (this.#held.state === 'readable') alreadyRead(this.#held.value);
    return this.#held;
  }
}
