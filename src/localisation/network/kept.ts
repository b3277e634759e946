import type { Tables } from './types.js';

const KEPT = new WeakMap<Tables, Map<string, unknown>>();

/** What follows from a set of tables alone, worked out once. A name stands for one thing. */
export function kept<T>(tables: Tables, name: string, make: () => T): T {
  let known = KEPT.get(tables);
  if (!known) KEPT.set(tables, (known = new Map()));
  if (!known.has(name)) known.set(name, make());
  return known.get(name) as T;
}
