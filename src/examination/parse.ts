import { placed } from './carried.js';
import {
  type Expectation,
  type Fault,
  type Parsed,
  type Refused,
  refused,
  show,
  type ValueType,
} from './faults.js';
import { DEEPEST, isObject, seal } from './json.js';
import { examinationSchema } from './schema/record.js';
import { unknownIn } from './known-fields.js';
import { fieldAt } from './patch.js';
import { jsonOf, type ParseOptions, readJson } from './read-schema.js';
import type { Json, RecordPath } from './types/json.js';
import { type Examination, FORMAT, FORMAT_MAJOR, FORMAT_NAME } from './types/record.js';

/** Longest text that is read as a record, in UTF-16 units; several times what a record can hold. */
export const LONGEST_RECORD = 4_000_000;

function wrongType(path: RecordPath, value: unknown, type: ValueType): Fault {
  const code = value === undefined ? 'missing' : 'wrong-type';
  return { code, path, found: show(value), expected: { code: 'type', type } };
}

function laterVersion(input: Json): Fault | undefined {
  if (!isObject(input)) return undefined;
  const { format } = input;
  if (typeof format !== 'string') return undefined;
  const major = new RegExp(`^${FORMAT_NAME}/(\\d+)(\\.\\d+)?$`).exec(format)?.[1];
  if (major === undefined || Number(major) <= FORMAT_MAJOR) return undefined;
  return {
    code: 'later-version',
    path: ['format'],
    found: show(format),
    expected: { code: 'one-of', values: [FORMAT] },
  };
}

/** Whether a path may lead to something carried: names, and places in lists. */
function isPath(path: Json | undefined): path is readonly (string | number)[] {
  return (
    Array.isArray(path) &&
    path.length > 0 &&
    path.length <= DEEPEST &&
    path.every((key) => typeof key === 'string' || (Number.isSafeInteger(key) && key >= 0))
  );
}

/** Whether another value stands at a path already. A scale always does, in the stead of an unknown one. */
function isTaken(whole: Json, path: RecordPath): boolean {
  const name = path.at(-1);
  const around = fieldAt(whole, path.slice(0, -1));
  return typeof name === 'string' && path[0] !== 'scale' && isObject(around) && Object.hasOwn(around, name);
}

/** A record with what it carries beside it put back into its place. */
function restored(json: Json): { readonly json: Json } | Refused {
  if (!isObject(json) || !Object.hasOwn(json, 'carried')) return { json };
  const { carried, ...rest } = json;
  if (!Array.isArray(carried)) return refused(wrongType(['carried'], carried, 'list'));
  let whole: Json = rest;
  for (const [i, one] of (carried as readonly Json[]).entries()) {
    if (!isObject(one)) return refused(wrongType(['carried', i], one, 'object'));
    const { path, value } = one;
    if (!isPath(path)) return refused(wrongType(['carried', i, 'path'], path, 'list'));
    if (value === undefined) return refused(wrongType(['carried', i, 'value'], value, 'json'));
    const next: Json | undefined = isTaken(whole, path) ? undefined : placed(whole, path, value);
    if (next === undefined)
      return refused({
        code: 'conflict',
        path: ['carried', i, 'path'],
        found: show(path),
        expected: { code: 'place-is-free' },
      });
    whole = next;
  }
  return { json: whole };
}

/** Whether a record was read before: frozen since, it needs no second reading. */
const READ = new WeakSet<object>();

/**
 * Reads an unknown value as an examination. Never throws. Fields of later minor versions stay where they are, unknown words are carried
 * (see `Examination`), and only what is no record of this major version, or breaks its rules, is refused.
 * @param input plain data, for instance from `JSON.parse`, or an `Examination` as it is
 * @returns the examination, deeply frozen, or what is wrong with it
 */
export function parseExamination(input: unknown, { strict = false }: ParseOptions = {}): Parsed<Examination> {
  if (!strict && typeof input === 'object' && input !== null && READ.has(input))
    return { ok: true, value: input as Examination };
  const copied = jsonOf(input);
  if ('ok' in copied) return copied;
  const later = laterVersion(copied.json);
  if (later) return refused(later);
  const whole = restored(copied.json);
  if ('ok' in whole) return whole;
  const read = readJson(examinationSchema, whole.json, { strict });
  if (!read.ok) return read;
  const { value, carried } = read;
  const examination: Examination = carried.length ? seal({ ...value, carried }) : value;
  READ.add(examination);
  return { ok: true, value: examination };
}

/** Reads the text form of an examination, as forms carry it. Never throws; see {@link parseExamination}. */
export function parseExaminationText(text: string, options?: ParseOptions): Parsed<Examination> {
  const unreadable = (expected: Expectation): Refused =>
    refused({ code: 'unreadable', path: [], found: show(text), expected });
  if (text.length > LONGEST_RECORD)
    return unreadable({ code: 'at-most', value: LONGEST_RECORD, of: 'characters' });
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch {
    return unreadable({ code: 'type', type: 'json-text' });
  }
  return parseExamination(input, options);
}

/** Where fields of a later version stand in a record; they go out with it as they came. */
export function unknownFields({ carried: _, ...examination }: Examination): readonly RecordPath[] {
  return unknownIn(examinationSchema, examination as unknown as Json);
}
