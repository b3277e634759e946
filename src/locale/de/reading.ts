import { limbKey } from '../../anatomy/index.js';
import type { ReadingWords } from '../en/reading.js';
import { anatomy } from './anatomy.js';
import { decimal, sentence } from './phrases.js';

/** A probability as a whole number; what is nearly none or nearly certain is not called so. */
function percent(probability: number): string {
  if (probability > 0 && probability < 0.005) return '<1 %';
  if (probability > 0.995 && probability < 1) return '>99 %';
  return `${Math.round(probability * 100)} %`;
}

/** Words around the answers of both voices. */
export const reading: ReadingWords = {
  limbTitle: (limb) => sentence(anatomy.limbs[limbKey(limb)]),
  percent,
  exactPercent: (probability) => `${decimal(probability * 100, 1)} %`,
  open: (place) => `${anatomy.place(place)} öffnen`,
  elsewhere: 'Anderswo',
  noBlock: (probability) => `Kein Verschluss erkennbar: ${percent(probability)}.`,
  levelsOf: (limb) => `${sentence(anatomy.limbs[limb])}, nach Etagen`,
};
