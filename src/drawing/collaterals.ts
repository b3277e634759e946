import { AXIS, type Place, placeKey } from '../anatomy/index.js';
import type { RuleReading } from '../localisation/index.js';
import { positionOf } from './healthy.js';

/** A collateral path implied by the record: a pulse felt distal to a weaker one. */
export interface Collateral {
  readonly to: Place;
  /** Path data in figure units, bowed outward round the block. */
  readonly d: string;
}

/** Maximum distance of a collateral path from the artery, in figure units. */
const BOW = 40;

/** The collateral paths implied by an examination. They are hints and show no real anatomy. */
export function collateralsOf(rule: RuleReading): Collateral[] {
  return Object.values(rule).flatMap(({ contradictions, lesions }) =>
    contradictions.map(({ weaker, stronger }) => {
      const above =
        lesions.find((lesion) => lesion.below.some((place) => placeKey(place) === placeKey(weaker)))?.above ??
        weaker;
      const from = positionOf(above);
      const to = positionOf(stronger);
      const outward = to.x < AXIS ? -BOW : BOW;
      const middle = (from.y + to.y) / 2;
      return {
        to: stronger,
        d: `M${from.x.toFixed(0)} ${from.y.toFixed(0)}C${(from.x + outward).toFixed(0)} ${(from.y + (middle - from.y) * 0.6).toFixed(0)} ${(to.x + outward).toFixed(0)} ${(to.y - (to.y - middle) * 0.6).toFixed(0)} ${to.x.toFixed(0)} ${to.y.toFixed(0)}`,
      };
    }),
  );
}
