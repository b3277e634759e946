import type * as z from 'zod/mini';
import { type Issue, isUnknownWord } from './issues.js';
import { isObject } from './json.js';
import { fieldAt } from './patch.js';
import type { Json, RecordPath } from './types/json.js';

/*
 * Words of later versions are taken out before a value is read, the smallest entry at a time that can be missing. All paths are those of
 * the value as it came.
 */

/** Fields that must be there, and what stands in for a word that is not known. */
const STAND_INS: Readonly<Record<string, Json>> = { scale: 'words' };

/** Where entries are out, as a tree: however many there are, one is looked up in the time that its path takes. */
interface Branch {
  isOut: boolean;
  readonly inside: Map<string | number, Branch>;
}

function branchAt(tree: Branch, path: RecordPath): Branch | undefined {
  return path.reduce<Branch | undefined>((at, key) => at?.inside.get(key), tree);
}

function treeOf(paths: readonly RecordPath[]): Branch {
  const root: Branch = { isOut: false, inside: new Map() };
  for (const path of paths) {
    let at = root;
    for (const key of path) {
      const next = at.inside.get(key) ?? { isOut: false, inside: new Map() };
      at.inside.set(key, next);
      at = next;
    }
    at.isOut = true;
  }
  return root;
}

/** The outermost entries of a tree, those of a list in the order in which they must be put back. */
function outermost({ isOut, inside }: Branch, path: RecordPath = []): RecordPath[] {
  if (isOut) return [path];
  const byPlace = [...inside].sort(([a], [b]) =>
    typeof a === 'number' && typeof b === 'number' ? a - b : 0,
  );
  return byPlace.flatMap(([key, branch]) => outermost(branch, [...path, key]));
}

/** A member of a list is taken out whole, since its number may change while it is away. */
function entryOf(path: RecordPath): RecordPath {
  const member = path.findIndex((key) => typeof key === 'number');
  return member < 0 ? path : path.slice(0, member + 1);
}

function isEmpty(list: Json | undefined): boolean {
  return Array.isArray(list) && list.length === 0;
}

/** The value without the entries of a tree. A list of which nothing is left goes with them. */
function pruned(value: Json, tree: Branch | undefined, isRecord: boolean): Json {
  if (!tree) return value;
  if (Array.isArray(value))
    return (value as readonly Json[]).flatMap((one, i) => {
      const own = tree.inside.get(i);
      return own?.isOut ? [] : [pruned(one, own, false)];
    });
  if (!isObject(value)) return value;
  const fields = Object.entries(value).flatMap(([name, field]) => {
    const own = tree.inside.get(name);
    if (!own?.isOut) {
      const left = pruned(field, own, false);
      // An empty list says that none applies, which nobody has said.
      return isEmpty(left) && !isEmpty(field) ? [] : [[name, left]];
    }
    return isRecord && Object.hasOwn(STAND_INS, name) ? [[name, STAND_INS[name]]] : [];
  });
  return Object.fromEntries(fields) as Json;
}

const NUMBERS = new WeakMap<Branch, readonly number[]>();

/** The members of a list that are out, by their numbers. */
function numbersOut(list: Branch): readonly number[] {
  const known =
    NUMBERS.get(list) ??
    [...list.inside].flatMap(([key, { isOut }]) => (isOut ? [Number(key)] : [])).sort((a, b) => a - b);
  NUMBERS.set(list, known);
  return known;
}

/** The number that a member of a list had before others were taken out, of the number that it has now; found by halving. */
function numberBefore(list: Branch | undefined, now: number): number {
  const out = list ? numbersOut(list) : [];
  let [low, high] = [0, out.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (out[middle]! - middle <= now) low = middle + 1;
    else high = middle;
  }
  return now + low;
}

/** Entries that are out of a value. */
export class TakenOut {
  readonly #tree: Branch;

  constructor(
    readonly value: Json,
    /** The outermost of them, those of a list in the order in which they must be put back. */
    readonly paths: readonly RecordPath[] = [],
  ) {
    this.#tree = treeOf(paths);
  }

  /** The value without them. */
  get rest(): Json {
    return this.paths.length ? pruned(this.value, this.#tree, true) : this.value;
  }

  /** The path in the value as it came of a path in what is left of it. */
  pathBefore(path: readonly PropertyKey[]): RecordPath {
    let at: Branch | undefined = this.#tree;
    return (path as RecordPath).map((key) => {
      const before: string | number = typeof key === 'number' ? numberBefore(at, key) : key;
      at = at?.inside.get(before);
      return before;
    });
  }

  /** With what a schema complains of in what is left; `undefined` where none of that can be taken out. */
  with(issues: readonly z.core.$ZodIssue[]): TakenOut | undefined {
    const next = issues
      .map((issue) => this.#entryFor(issue, this.pathBefore(issue.path)))
      .filter((path) => path !== undefined);
    if (next.length === 0) return undefined;
    return new TakenOut(this.value, outermost(treeOf([...this.paths, ...next])));
  }

  /** The entry to take out for a complaint at a path; `undefined` where the value is wrong as it is. */
  #entryFor(issue: Issue, path: RecordPath): RecordPath | undefined {
    // Without its word the entry around it lacks what must be there.
    const isOut = branchAt(this.#tree, path)?.isOut === true;
    const entry = isOut ? path.slice(0, -1) : entryOf(path);
    const isWord = isOut || isUnknownWord(issue, fieldAt(this.value, path));
    return isWord && entry.length > 0 ? entry : undefined;
  }
}
