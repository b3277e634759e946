import { placeFromKey, type PlaceKey, placeKey } from '../anatomy/index.js';
import { equal, isObject } from './json.js';
import type { Json, RecordPath } from './types/json.js';
import type { Examination } from './types/record.js';

/** One field of a record that differs between two states of it. */
export interface RecordDifference {
  /** Where in the record: the finding of a place as a whole, else the single field or list. */
  readonly path: RecordPath;
  /** The place, where it is a finding of one. */
  readonly place?: PlaceKey;
  /** What stood there before; `undefined` for nothing. */
  readonly from: Json | undefined;
  /** What stands there now; `undefined` for nothing. */
  readonly to: Json | undefined;
}

/**
 * What differs between two states of a record, for audit trails: each place and field once, in the order of the fields. Equal
 * records differ in nothing. What later versions recorded is told by its path as well.
 */
export function recordDifferences(before: Examination, after: Examination): readonly RecordDifference[] {
  const found: RecordDifference[] = [];
  walk(before as unknown as Json, after as unknown as Json, [], found);
  return found;
}

function walk(
  from: Json | undefined,
  to: Json | undefined,
  path: RecordPath,
  found: RecordDifference[],
): void {
  if (equal(from, to)) return;
  const [part, site, side] = path;
  const placed = path.length === 3 && (part === 'pulses' || part === 'bruits');
  const place = placed ? placeFromKey(`${side} ${site}`) : undefined;
  const deeper = !placed && (isObject(from) || from === undefined) && (isObject(to) || to === undefined);
  if (!deeper) {
    found.push({ path, ...(place && { place: placeKey(place) }), from, to });
    return;
  }
  const [old, now] = [from ?? {}, to ?? {}];
  for (const key of new Set([...Object.keys(old), ...Object.keys(now)]))
    walk(old[key], now[key], [...path, key], found);
}
