import type * as z from 'zod/mini';
import { type Issue, isUnknownWord } from './issues.js';
import { isObject, startsWith } from './json.js';
import { fieldAt } from './patch.js';
import type { Json, RecordPath } from './types/json.js';

/*
 * Words of later versions are taken out before a value is read, the smallest entry at a time that can be missing. All paths are those of
 * the value as it came.
 */

/** Fields that must be there, and what stands in for a word that is not known. */
const STAND_INS: Readonly<Record<string, Json>> = { scale: 'words' };

function same(a: RecordPath, b: RecordPath): boolean {
  return a.length === b.length && startsWith(a, b);
}

function isOut(path: RecordPath, out: readonly RecordPath[]): boolean {
  return out.some((one) => same(one, path));
}

/** A member of a list is taken out whole, since its number may change while it is away. */
function entryOf(path: RecordPath): RecordPath {
  const member = path.findIndex((key) => typeof key === 'number');
  return member < 0 ? path : path.slice(0, member + 1);
}

function isEmpty(list: Json | undefined): boolean {
  return Array.isArray(list) && list.length === 0;
}

/** The value without some entries. A list of which nothing is left goes with them. */
export function without(value: Json, out: readonly RecordPath[], path: RecordPath = []): Json {
  if (!out.some((one) => startsWith(one, path))) return value;
  if (Array.isArray(value))
    return (value as readonly Json[]).flatMap((one, i) =>
      isOut([...path, i], out) ? [] : [without(one, out, [...path, i])],
    );
  if (!isObject(value)) return value;
  const fields = Object.entries(value).flatMap(([name, field]) => {
    const at = [...path, name];
    if (!isOut(at, out)) {
      const left = without(field, out, at);
      // An empty list says that none applies, which nobody has said.
      return isEmpty(left) && !isEmpty(field) ? [] : [[name, left]];
    }
    return path.length === 0 && Object.hasOwn(STAND_INS, name) ? [[name, STAND_INS[name]]] : [];
  });
  return Object.fromEntries(fields) as Json;
}

/** The path in the value as it came of a path in what `without` gave. */
export function pathBefore(path: readonly PropertyKey[], out: readonly RecordPath[]): RecordPath {
  return (path as RecordPath).reduce<RecordPath>((before, key) => {
    let at = key;
    if (typeof at === 'number') for (let i = 0; i <= at; i += 1) if (isOut([...before, i], out)) at += 1;
    return [...before, at];
  }, []);
}

/** The entry to take out for a complaint at a path; `undefined` where the value is wrong as it is. */
function entryFor(
  issue: Issue,
  path: RecordPath,
  value: Json,
  out: readonly RecordPath[],
): RecordPath | undefined {
  // Without its word the entry around it lacks what must be there.
  const entry = isOut(path, out) ? path.slice(0, -1) : entryOf(path);
  const isWord = isOut(path, out) || isUnknownWord(issue, fieldAt(value, path));
  return isWord && entry.length > 0 ? entry : undefined;
}

/** In the order in which they must be put back. */
function byPlace(a: RecordPath, b: RecordPath): number {
  const i = a.findIndex((key, at) => key !== b[at]);
  const [one, other] = [a[i], b[i]];
  return typeof one === 'number' && typeof other === 'number' ? one - other : 0;
}

/**
 * Which entries to take out besides those that are out, for what a schema complains of.
 * @returns the very same list when there is none
 */
export function entriesOut(
  issues: readonly z.core.$ZodIssue[],
  value: Json,
  out: readonly RecordPath[],
): readonly RecordPath[] {
  const next = issues
    .map((issue) => entryFor(issue, pathBefore(issue.path, out), value, out))
    .filter((path) => path !== undefined);
  if (next.length === 0) return out;
  const all = [...out, ...next];
  const outermost = all.filter(
    (path, i) =>
      !all.some((other, j) => (i === j ? false : same(other, path) ? j < i : startsWith(path, other))),
  );
  return outermost.sort(byPlace);
}
