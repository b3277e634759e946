import { type Limb, limbKey, type LimbKey, type Place } from '../../anatomy/index.js';
import { anatomy } from './anatomy.js';
import { sentence } from './phrases.js';

/** Words around the answers of both voices. */
export const reading = {
  limbTitle: (limb: Limb) => sentence(anatomy.limbs[limbKey(limb)]),
  open: (place: Place) => `Open ${anatomy.place(place)}`,
  elsewhere: 'Elsewhere',
  /** How probable it is that nothing is wrong in a limb. */
  noBlock: (probability: number) => `No block shown: ${Math.round(probability * 100)}%.`,
  levelsOf: (limb: LimbKey) => `${sentence(anatomy.limbs[limb])}, by level`,
};
export type ReadingWords = typeof reading;
