import { isListeningSite, isPulseSite, type Place } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import type { FindingPath } from '../report/index.js';

/** Where the pulse of a place stands in a record. */
export const pulsePath = ({ site, side }: Place): FindingPath => `pulses.${site}.${side}`;
/** Where what was heard over a place stands in a record. */
export const bruitPath = ({ site, side }: Place): FindingPath => `bruits.${site}.${side}`;

/** What stands at a path of a record; `undefined` where nothing does. */
export function findingAt(examination: Examination, path: FindingPath): unknown {
  let at: unknown = examination;
  for (const key of path.split('.')) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, key)) return undefined;
    at = (at as Readonly<Record<string, unknown>>)[key];
  }
  return at;
}

/** Those of these paths at which the record holds anything, each once. */
export function recordedPaths(examination: Examination, paths: Iterable<FindingPath>): FindingPath[] {
  return [...new Set(paths)].filter((path) => findingAt(examination, path) !== undefined);
}

/** What was felt and heard at a place, as far as it is recorded. */
export function placePaths(examination: Examination, place: Place): FindingPath[] {
  return recordedPaths(examination, [
    ...(isPulseSite(place.site) ? [pulsePath(place)] : []),
    ...(isListeningSite(place.site) ? [bruitPath(place)] : []),
  ]);
}
