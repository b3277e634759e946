import {
  emptyExamination,
  type Examination,
  type Fault,
  type Json,
  parseExamination,
  type RecordPath,
} from '../examination/index.js';
import { equal, startsWith } from '../examination/json.js';
import { fieldAt } from '../examination/patch.js';
import type { UnreadCode } from '../statements/index.js';
import { fieldOf, groupOf, put } from './fields.js';
import type { Found, Unread } from './found.js';
import type { Kept } from './kept.js';

/*
 * Values with their places made into a record. Of two values for one place neither is taken, and what the rules of the record refuse goes
 * together with what it contradicts.
 */

/** The values that stand alone for their place, and the others. */
function agreed(found: readonly Found[]): {
  readonly values: readonly Found[];
  readonly unread: readonly Unread[];
} {
  const by = new Map<string, Found[]>();
  for (const one of found) {
    const key = JSON.stringify(one.path);
    const same = by.get(key);
    if (same) same.push(one);
    else by.set(key, [one]);
  }
  const values: Found[] = [];
  const unread: Unread[] = [];
  for (const all of by.values()) {
    const [first] = all as [Found];
    if (all.every(({ value }) => equal(value, first.value))) values.push(first);
    else for (const { at } of all) unread.push({ path: at, why: 'two-values' });
  }
  return { values, unread };
}

/** Places in lists counted from 0 without gaps, in the order that the bundle gave them. */
function closedUp(values: readonly Found[]): readonly Found[] {
  const places = new Map<string, number[]>();
  const listOf = ({ path }: Found): number => path.findIndex((key) => typeof key === 'number');
  for (const one of values) {
    const at = listOf(one);
    if (at < 0) continue;
    const key = JSON.stringify(one.path.slice(0, at));
    const list = places.get(key);
    if (list) list.push(one.path[at] as number);
    else places.set(key, [one.path[at] as number]);
  }
  const ranks = new Map(
    [...places].map(([key, list]) => [
      key,
      new Map([...new Set(list)].sort((a, b) => a - b).map((place, i) => [place, i])),
    ]),
  );
  return values.map((one) => {
    const at = listOf(one);
    if (at < 0) return one;
    const rank = ranks.get(JSON.stringify(one.path.slice(0, at)))?.get(one.path[at] as number);
    return { ...one, path: one.path.map((key, i) => (i === at ? (rank ?? 0) : key)) };
  });
}

function treeOf(values: readonly Found[]): Json {
  const base = emptyExamination();
  const tree = { format: base.format, scale: base.scale };
  for (const { path, value } of values) put(tree, path, value);
  return tree as Json;
}

/** Sets what this version does not know at its place; false where that leads through something that has none. */
function putUnknown(tree: object, path: RecordPath, value: Json): boolean {
  let around: unknown = tree;
  for (const [i, key] of path.slice(0, -1).entries()) {
    // A part of which this version knows nothing else is not there yet.
    const isPart = typeof key === 'string' && fieldOf(path.slice(0, i + 1))?.kind === 'object';
    if (isPart && !Object.hasOwn(around as object, key)) (around as Record<string, unknown>)[key] = {};
    const next: unknown = fieldAt(around, [key]);
    if (typeof next !== 'object' || next === null) return false;
    around = next;
  }
  const name = path.at(-1);
  if (typeof name !== 'string' || Array.isArray(around) || fieldAt(around, [name]) !== undefined)
    return false;
  // Not by assignment, which "__proto__" would take for something else.
  Object.defineProperty(around, name, { value, enumerable: true, configurable: true, writable: true });
  return true;
}

/** A tree with the fields of later versions in their places, and those for which there is none. */
function withKept(
  tree: Json,
  kept: readonly Kept[],
): { readonly tree: Json; readonly bad: ReadonlySet<Kept> } {
  const fields = kept.filter(({ carried }) => !carried);
  const bad = new Set(
    fields.filter(
      ({ path, value }) => fieldOf(path) !== undefined || !putUnknown(tree as object, path, value),
    ),
  );
  const carried = kept
    .filter((one) => one.carried)
    .map(({ path, value }) => ({ path, value }) as unknown as Json);
  return { tree: carried.length ? { ...(tree as object), carried } : tree, bad };
}

/** Rules that a field breaks by standing without another; the others are between equals. */
const DEPENDENT = /-only-|^(route|increased)/;

/** What has to go for a fault: the field alone, or all that its part of the record says. */
function goes({ code, path, expected }: Fault, one: RecordPath): boolean {
  if (code !== 'conflict' && startsWith(one, path)) return true;
  if (code !== 'conflict' || DEPENDENT.test(expected.code))
    return startsWith(one, path) || startsWith(path, one);
  const group = path.length > 1 && fieldOf(path) ? groupOf(path) : path;
  return startsWith(one, group) || startsWith(path, one);
}

/** Most turns in which refused values are left out; each leaves out at least one. */
const MOST_TURNS = 60;
/** Most entries of one list, and most words of later versions, that are looked at; a record takes fewer. */
const MOST_ENTRIES = 200;
const MOST_KEPT = 5000;

/** A record of what was found, and what of it could not be taken. */
export function assembled(
  found: readonly Found[],
  kept: readonly Kept[],
): { readonly examination: Examination; readonly unread: readonly Unread[] } {
  const { values, unread } = agreed(found);
  const left: Unread[] = [...unread];
  const leave = (at: string, why: UnreadCode): void => void left.push({ path: at, why });
  const isFew = ({ path }: Found): boolean =>
    path.every((key) => typeof key === 'string' || key < MOST_ENTRIES);
  const places = closedUp(values);
  let taken = values.filter((_, i) => isFew(places[i] as Found));
  let keeps = kept.slice(0, MOST_KEPT);
  for (const one of values.filter((_, i) => !isFew(places[i] as Found))) leave(one.at, 'refused');
  for (const one of kept.slice(MOST_KEPT)) leave(one.at, 'refused');
  for (let turn = 0; turn < MOST_TURNS; turn += 1) {
    const whole = closedUp(taken);
    const { tree, bad } = withKept(treeOf(whole), keeps);
    for (const one of bad) leave(one.at, 'refused');
    keeps = keeps.filter((one) => !bad.has(one));
    const parsed = parseExamination(tree);
    if (parsed.ok) return { examination: parsed.value, unread: left };
    const faults = parsed.faults.filter(({ code }) => code !== 'later-version');
    const carried = keeps.filter((one) => one.carried);
    const lost = new Set(
      faults.flatMap(({ path: [part, i] }) => (part === 'carried' ? (carried[Number(i)] ?? []) : [])),
    );
    const out = new Set(
      taken.filter((_, i) => faults.some((fault) => goes(fault, (whole[i] as Found).path))),
    );
    // A record of a later major version, or a refusal without a place: nothing is taken.
    if (out.size === 0 && lost.size === 0) break;
    for (const one of [...out, ...lost]) leave(one.at, 'refused');
    taken = taken.filter((one) => !out.has(one));
    keeps = keeps.filter((one) => !lost.has(one));
  }
  for (const { at } of [...taken, ...keeps]) leave(at, 'refused');
  return { examination: emptyExamination(), unread: left };
}
