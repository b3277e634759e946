import { limbKey } from '../../anatomy/index.js';
import type { ReadingWords } from '../en/reading.js';
import { anatomy } from './anatomy.js';
import { percent, sentence } from './phrases.js';

/** Words around the answers of both voices. */
export const reading: ReadingWords = {
  limbTitle: (limb) => sentence(anatomy.limbs[limbKey(limb)]),
  percent,
  open: (place) => `${anatomy.place(place)} öffnen`,
  elsewhere: 'Andere Stelle',
  noBlock: (probability) => `Kein Verschluss erkennbar: ${percent(probability)}.`,
  levelsOf: (limb) => `${sentence(anatomy.limbs[limb])}, nach Etagen`,
};
