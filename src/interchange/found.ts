import type { Examination, Json, RecordPath } from '../examination/index.js';
import type { UnreadCode } from '../statements/index.js';

/** Something of a bundle that was not read, where it stands, and why. */
export interface Unread {
  /** As FHIRPath: `entry[3].resource.valueQuantity`. */
  readonly path: string;
  readonly why: UnreadCode;
}

/** What was read of a bundle, or of the answers to a form. */
export interface FromBundle {
  readonly examination: Examination;
  /** Everything that was not read, in the order in which it stands there. */
  readonly unread: readonly Unread[];
}

/** A value for a place of the record, and where in the bundle it stands. */
export interface Found {
  readonly path: RecordPath;
  readonly value: Json;
  readonly at: string;
}

/** What one Observation holds. */
export interface Reading {
  readonly found: readonly Found[];
  readonly unread: readonly Unread[];
}

export const unread = (path: string, why: UnreadCode): Reading => ({ found: [], unread: [{ path, why }] });

/** Several readings as one. */
export function joined(readings: readonly Reading[]): Reading {
  return { found: readings.flatMap((one) => one.found), unread: readings.flatMap((one) => one.unread) };
}

/** Values of which each is one word of a list, as whole lists. */
export function withLists(found: readonly Found[]): readonly Found[] {
  const lists = new Map<string, { readonly first: Found; readonly words: Json[] }>();
  const others: Found[] = [];
  for (const one of found) {
    const { path, value } = one;
    if (!Array.isArray(value) || value.length === 0 || Array.isArray(value[0])) {
      others.push(one);
      continue;
    }
    const key = JSON.stringify(path);
    const list = lists.get(key);
    if (list) list.words.push(...(value as readonly Json[]));
    else lists.set(key, { first: one, words: [...(value as readonly Json[])] });
  }
  return [...others, ...[...lists.values()].map(({ first, words }) => ({ ...first, value: words }))];
}
