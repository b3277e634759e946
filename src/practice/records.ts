import type { Examination } from '../examination/index.js';
import type { RecordPath } from './acts.js';

type Tree = { [name: string]: unknown };
const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Both records, the second where they name the same. */
export function joined<T>(below: T, above: unknown): T {
  if (!isTree(below) || !isTree(above)) return (above === undefined ? below : above) as T;
  const all: Tree = { ...below };
  for (const [name, value] of Object.entries(above)) all[name] = joined(all[name], value);
  return all as T;
}

function valueAt(record: unknown, path: RecordPath): unknown {
  let at: unknown = record;
  for (const name of path) at = isTree(at) ? at[name] : undefined;
  return at;
}

/** The parts of a record at some paths, in a record of their own. */
export function pickedOf(record: Examination, paths: readonly RecordPath[]): Examination {
  const { format, scale } = record;
  const out: Tree = { format, scale };
  for (const path of paths) {
    const value = valueAt(record, path);
    if (value === undefined) continue;
    let at = out;
    for (const name of path.slice(0, -1)) at = (at[name] ??= {}) as Tree;
    at[path.at(-1)!] = value;
  }
  return out as unknown as Examination;
}

/** Whether a record holds anything besides its form. */
export const holdsAnything = (record: Examination): boolean =>
  Object.keys(record).some((name) => name !== 'format' && name !== 'scale');
