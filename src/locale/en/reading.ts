import { type Limb, limbKey, type LimbKey, type Place } from '../../anatomy/index.js';
import { anatomy } from './anatomy.js';
import { percent, sentence } from './phrases.js';

/** Words around the answers of both voices. */
export const reading = {
  limbTitle: (limb: Limb) => sentence(anatomy.limbs[limbKey(limb)]),
  percent,
  open: (place: Place) => `Open ${anatomy.place(place)}`,
  elsewhere: 'Other site',
  /** How probable it is that nothing is wrong in a limb. */
  noBlock: (probability: number) => `No occlusive lesion suggested: ${percent(probability)}.`,
  levelsOf: (limb: LimbKey) => `${sentence(anatomy.limbs[limb])}, by arterial level`,
};
export type ReadingWords = typeof reading;
