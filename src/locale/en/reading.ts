import { type Limb, limbKey, type LimbKey, type Place } from '../../anatomy/index.js';
import { anatomy } from './anatomy.js';
import { sentence } from './phrases.js';

/** A probability as a whole number; what is nearly none or nearly certain is not called so. */
function percent(probability: number): string {
  if (probability > 0 && probability < 0.005) return '<1%';
  if (probability > 0.995 && probability < 1) return '>99%';
  return `${Math.round(probability * 100)}%`;
}

/** Words around the answers of both voices. */
export const reading = {
  limbTitle: (limb: Limb) => sentence(anatomy.limbs[limbKey(limb)]),
  percent,
  /** A probability to one decimal. */
  exactPercent: (probability: number) => `${(probability * 100).toFixed(1)}%`,
  open: (place: Place) => `Open ${anatomy.place(place)}`,
  elsewhere: 'Elsewhere',
  /** How probable it is that nothing is wrong in a limb. */
  noBlock: (probability: number) => `No block shown: ${percent(probability)}.`,
  levelsOf: (limb: LimbKey) => `${sentence(anatomy.limbs[limb])}, by level`,
};
export type ReadingWords = typeof reading;
