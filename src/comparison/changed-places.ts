import { type Place, type PlaceKey, placeKey } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import { CHANGE_WEIGHTS, type ChangeWeight } from './change.js';
import { bruitChanges, pulseChanges } from './compare.js';

/** A place of the map where something is otherwise than before, with the weight of its gravest change. */
export interface ChangedPlace {
  readonly place: Place;
  readonly weight: ChangeWeight;
}

/** Where something is otherwise than at an earlier visit, gravest first. What was not examined at one of the two is no change. */
export function changedPlaces(earlier: Examination, later: Examination): readonly ChangedPlace[] {
  const found = new Map<PlaceKey, ChangedPlace>();
  const rank = ({ weight }: ChangedPlace): number => CHANGE_WEIGHTS.indexOf(weight);
  for (const change of [...pulseChanges(earlier, later), ...bruitChanges(earlier, later)]) {
    const known = found.get(placeKey(change.place));
    const one = { place: change.place, weight: change.weight };
    if (!known || rank(one) < rank(known)) found.set(placeKey(change.place), one);
  }
  return [...found.values()].sort((a, b) => rank(a) - rank(b));
}
