import { EditError, type Fault, show } from './faults.js';
import type { Json, RecordPath } from './types/json.js';

/** Most values of one record, counting lists, objects and what is in them, and how deep they may lie within each other. */
export const MOST_VALUES = 200_000;
export const DEEPEST = 40;

/** Everything this library froze, which it may hand on without copying. */
const OURS = new WeakSet<object>();

/** Freezes what was just made; what it is made of must be ours or plain. */
export function seal<T>(made: T): T {
  if (typeof made === 'object' && made !== null) {
    Object.freeze(made);
    OURS.add(made);
  }
  return made;
}

export function isOurs(value: unknown): boolean {
  return typeof value === 'object' && value !== null && OURS.has(value);
}

/** What `copyJson` stops with. */
class Unfit extends EditError {}

interface Left {
  values: number;
}

function copy(value: unknown, path: (string | number)[], left: Left): Json | undefined {
  const stop = (fault: Omit<Fault, 'path'>): never => {
    throw new Unfit({ ...fault, path: [...path] });
  };
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  // JSON has no -0.
  if (typeof value === 'number' && Number.isFinite(value)) return value + 0;
  if (isOurs(value)) return value as Json;
  const isList = Array.isArray(value);
  if (!isList && Object.prototype.toString.call(value) !== '[object Object]')
    return stop({ code: 'wrong-type', found: show(value), expected: { code: 'type', type: 'json' } });
  const keys = isList ? value : Object.keys(value as object);
  left.values -= keys.length;
  if (left.values < 0)
    return stop({
      code: 'unreadable',
      // Not gone through a second time.
      found: isList ? '[…]' : '{…}',
      expected: { code: 'at-most', value: MOST_VALUES, of: 'values' },
    });
  if (path.length >= DEEPEST)
    return stop({
      code: 'unreadable',
      found: show(value),
      expected: { code: 'at-most', value: DEEPEST, of: 'levels' },
    });
  const inside = (key: string | number): Json | undefined => {
    const field = (value as Record<string | number, unknown>)[key];
    if (field === undefined) return isList ? null : undefined;
    path.push(key);
    const copied = copy(field, path, left);
    path.pop();
    return copied;
  };
  if (isList) return seal(Array.from(value, (_, i) => inside(i) as Json));
  const fields = (keys as readonly string[]).map((key) => [key, inside(key)] as const);
  return seal(Object.fromEntries(fields.filter(([, field]) => field !== undefined))) as Json;
}

/**
 * A frozen copy of plain JSON, without fields that are `undefined`. What this library froze before is not copied again.
 * @param at where it stands, for the path of a fault
 * @throws EditError for anything else than plain JSON, and for too much of it
 */
export function copyJson(value: unknown, at: RecordPath = []): Json {
  const path = [...at];
  try {
    return copy(value, path, { values: MOST_VALUES }) as Json;
  } catch (error) {
    if (error instanceof Unfit) throw error;
    // A getter or a proxy that throws.
    throw new Unfit({
      code: 'unreadable',
      path,
      found: typeof value,
      expected: { code: 'type', type: 'json' },
    });
  }
}

/** Whether two values are the same JSON, in whatever order their fields stand. */
export function equal(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [ours, theirs] = [Object.entries(a), new Map(Object.entries(b))];
  return (
    ours.length === theirs.size &&
    ours.every(([key, value]) => theirs.has(key) && equal(value, theirs.get(key)))
  );
}

export function isObject(value: unknown): value is Readonly<Record<string, Json>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether a path begins with another. */
export function startsWith(path: RecordPath, start: RecordPath): boolean {
  return start.every((key, i) => path[i] === key);
}
