import { type Limb, limbKey, type LimbKey, type Place } from '../anatomy/index.js';
import type { AnatomyWords } from './anatomy.js';
import { sentence } from './phrases.js';
import type { Speech } from './speech.js';
import { together } from './terms.js';

/** The words around the answers of both voices. */
export interface ReadingTable {
  readonly titles: { readonly elsewhere: string };
  open(place: string): string;
  /** How probable it is that nothing is wrong in a limb. */
  noBlock(percent: string): string;
  levelsOf(limb: string): string;
}

/** Words around the answers of both voices. */
export function readingFrom(
  w: ReadingTable,
  { limbs, place }: Pick<AnatomyWords, 'limbs' | 'place'>,
  { percent }: Pick<Speech, 'percent'>,
) {
  return together(w.titles, {
    limbTitle: (limb: Limb) => sentence(limbs[limbKey(limb)]),
    percent,
    open: (at: Place) => w.open(place(at)),
    noBlock: (probability: number) => w.noBlock(percent(probability)),
    levelsOf: (limb: LimbKey) => w.levelsOf(sentence(limbs[limb])),
  });
}

export type ReadingWords = ReturnType<typeof readingFrom>;
