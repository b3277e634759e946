import { EditError, type Expectation, show } from './faults.js';
import { copyJson, equal, isOurs, seal } from './json.js';
import { LONGEST_TEXT } from './types/common.js';
import type { RecordPath } from './types/json.js';
import type { FindingFields } from './types/pulses.js';
import { type Examination, FORMAT, FORMAT_MAJOR, FORMAT_MINOR, FORMAT_NAME } from './types/record.js';

/*
 * What every edit ends with: what it writes is checked, by the lists that the schemas are made of and without loading these; and a new
 * record is frozen, sharing with the one before all that did not change.
 */

/** A copy without fields that are `undefined`; `undefined` when nothing is left. */
export function compact<T extends object>(value: T): T | undefined {
  const entries = Object.entries(value).filter(([, field]) => field !== undefined);
  return entries.length ? (Object.fromEntries(entries) as T) : undefined;
}

function wrong(path: RecordPath, found: unknown, expected: Expectation): EditError {
  return new EditError({ code: 'not-allowed', path, found: show(found), expected });
}

/**
 * Free text as it is written; `undefined` for empty text, which takes its field away.
 * @throws EditError for text that is too long, and for anything else
 */
export function checkedText(text: unknown, path: RecordPath): string | undefined {
  if (text === undefined || text === '') return undefined;
  if (typeof text !== 'string') throw wrong(path, text, { code: 'type', type: 'text' });
  if (text.length <= LONGEST_TEXT) return text;
  throw wrong(path, text, { code: 'at-most', value: LONGEST_TEXT, of: 'characters' });
}

/**
 * One of some words, or `undefined`.
 * @throws EditError for anything else
 */
export function checkedWord<W extends string | true>(
  word: unknown,
  words: readonly W[],
  path: RecordPath,
): W | undefined {
  if (word === undefined || words.includes(word as W)) return word as W | undefined;
  throw wrong(path, word, { code: 'one-of', values: words });
}

/**
 * A finding as it is written: without fields that are `undefined` or empty text. What the lists do not name is of a later version and
 * stays. `undefined` when nothing is left.
 * @throws EditError for a field that holds anything else than its list says
 */
export function checkedFinding<T extends object>(
  fields: FindingFields<T>,
  finding: T,
  at: RecordPath,
): T | undefined {
  const kinds = fields as Readonly<Record<string, readonly string[] | 'yes' | 'text'>>;
  const entries = Object.entries(finding).map(([name, value]) => {
    const kind = Object.hasOwn(kinds, name) ? kinds[name] : undefined;
    const path = [...at, name];
    if (kind === undefined) return [name, value === undefined ? value : copyJson(value, path)];
    if (kind === 'text') return [name, checkedText(value, path)];
    return [name, checkedWord<string | true>(value, kind === 'yes' ? [true] : kind, path)];
  });
  return compact(Object.fromEntries(entries) as T);
}

/** The minor version a format stands for; `pulse-map/1` is the first, 0. */
function minorOf(format: string): number {
  return Number(format.split('.')[1] ?? 0);
}

/** The tag of a record that this version has written to. A later minor stays, since what it brought stays, too. */
function written(format: Examination['format']): Examination['format'] {
  return String(format).startsWith(`${FORMAT_NAME}/${FORMAT_MAJOR}`) && minorOf(format) > FORMAT_MINOR
    ? format
    : FORMAT;
}

/**
 * A record with some top-level fields replaced, or taken away where they are `undefined`; the very same record when that changes
 * nothing.
 * @param fields checked before
 */
export function withFields(
  examination: Examination,
  fields: { readonly [K in keyof Examination]?: Examination[K] | undefined },
): Examination {
  const next = compact({ ...examination, ...fields }) as Examination;
  if (equal(next, examination)) return examination;
  const kept = Object.entries({ ...next, format: written(next.format) }).map(([name, part]) => {
    const before = examination[name as keyof Examination];
    const own = isOurs(before) && equal(part, before) ? before : part;
    return [name, isOurs(own) ? own : copyJson(own)];
  });
  return seal(Object.fromEntries(kept) as unknown as Examination);
}
