import { type Limb, limbKey, type Place } from '../../anatomy/index.js';
import { anatomy } from './anatomy.js';
import { sentence } from './phrases.js';

/** Words around the answers of both voices. */
export const reading = {
  limbTitle: (limb: Limb) => sentence(anatomy.limbs[limbKey(limb)]),
  open: (place: Place) => `Open ${anatomy.place(place)}`,
  elsewhere: 'Elsewhere',
};
