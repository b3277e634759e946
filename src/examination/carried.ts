import type { Place } from '../anatomy/index.js';
import { isObject, isOurs, startsWith } from './json.js';
import type { Carried, Json, RecordPath } from './types/json.js';
import type { Examination } from './types/record.js';

/**
 * Puts one value in at its place; lists take it in between, at most at their end.
 * @returns `undefined` where the way leads through something that is neither list nor object
 */
export function placed(into: Json | undefined, path: RecordPath, value: Json): Json | undefined {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (typeof key === 'number') {
    if (into !== undefined && !Array.isArray(into)) return undefined;
    const list = (into ?? []) as readonly Json[];
    if (rest.length === 0) return [...list.slice(0, key), value, ...list.slice(key)];
    const inner = placed(list[key], rest, value);
    return inner === undefined ? undefined : list.map((own, i) => (i === key ? inner : own));
  }
  if (into !== undefined && !isObject(into)) return undefined;
  const inner = placed(into && Object.hasOwn(into, key) ? into[key] : undefined, rest, value);
  // Not by assignment, which "__proto__" would take for something else.
  return inner === undefined ? undefined : Object.fromEntries([...Object.entries(into ?? {}), [key, inner]]);
}

/**
 * The value as it was before its unknown words were taken out.
 * @param value a record or a part of it, without a field `carried` of its own
 * @param carried as `parseWith` gave it, with paths from `value` inward
 */
export function putBack(value: Json, carried: readonly Carried[]): Json {
  return carried.reduce<Json>((whole, { path, value: word }) => placed(whole, path, word) ?? whole, value);
}

/** Of each field the value that was written last, and its text. */
const LAST = new Map<string, { readonly value: unknown; readonly text: string }>();

/** A field as text. What has not changed since is not written again: the marks of a record may be thousands of points. */
function fieldText(name: string, value: unknown): string {
  const last = LAST.get(name);
  if (last && last.value === value) return last.text;
  const text = JSON.stringify(value);
  if (isOurs(value)) LAST.set(name, { value, text });
  return text;
}

/** The record as text, as forms carry it: what this version does not know stands at its own place again. */
export function formatExamination(examination: Examination): string {
  const { carried, ...rest } = examination;
  if (carried) return JSON.stringify(putBack(rest as unknown as Json, carried));
  const fields = Object.entries(examination).filter(([, value]) => value !== undefined);
  return `{${fields.map(([name, value]) => `${JSON.stringify(name)}:${fieldText(name, value)}`).join(',')}}`;
}

/** The places at or below a path that hold what this version does not know. */
export function lockedPaths({ carried = [] }: Examination, within: RecordPath = []): readonly RecordPath[] {
  return carried.map(({ path }) => path).filter((path) => startsWith(path, within));
}

/**
 * Whether what stands at a path is recorded, at least in part, in a way this version does not know. It is shown as that, never as "not
 * examined", and edits leave it as it is.
 */
export function isLocked({ carried = [] }: Examination, path: RecordPath): boolean {
  return carried.some((one) => startsWith(one.path, path) || startsWith(path, one.path));
}

/** Whether the pulse of a place is recorded in a way this version does not know. */
export function isPulseLocked(examination: Examination, { site, side }: Place): boolean {
  return examination.carried !== undefined && isLocked(examination, ['pulses', site, side]);
}

/** Whether the bruit of a place is recorded in a way this version does not know. */
export function isBruitLocked(examination: Examination, { site, side }: Place): boolean {
  return examination.carried !== undefined && isLocked(examination, ['bruits', site, side]);
}
