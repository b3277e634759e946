import { equal, isObject } from './json.js';
import type { Json, RecordPath } from './types/json.js';

type Plain = Readonly<Record<string, unknown>>;

/** A copy without fields that are `undefined` or hold an empty object; `undefined` when nothing is left. */
function pruned(value: Plain): Plain | undefined {
  const entries = Object.entries(value).filter(
    ([, field]) => field !== undefined && !(isObject(field) && Object.keys(field).length === 0),
  );
  return entries.length ? Object.fromEntries(entries) : undefined;
}

function patched(value: unknown, [key, ...rest]: readonly string[], field: unknown): unknown {
  if (key === undefined) return field;
  const own = isObject(value) ? value : {};
  return pruned({ ...own, [key]: patched(own[key], rest, field) });
}

/**
 * Changes one field deep within a part of the record and leaves everything else as it was. Parts that become empty go.
 * @param path the names of the fields from the outside inward
 * @param field the new content; `undefined` takes it away
 * @returns the new part, `undefined` when nothing is left of it; the very same value when nothing changed
 */
export function patchAt<T extends object>(
  value: T | undefined,
  path: readonly string[],
  field: unknown,
): T | undefined {
  const next = patched(value, path, field) as T | undefined;
  return equal(next, value) ? value : next;
}

/** What stands at a path within a part of the record; `undefined` where nothing does. */
export function fieldAt(value: unknown, path: RecordPath): unknown {
  return path.reduce<unknown>((at, key) => {
    if (typeof key === 'number') return Array.isArray(at) ? (at as readonly Json[])[key] : undefined;
    return isObject(at) && Object.hasOwn(at, key) ? at[key] : undefined;
  }, value);
}
