import type { Laterality, LimbKey, Place, Side } from '../anatomy/index.js';
import { columnsOf, type SiteTable } from './site-words.js';

/** The words that the names of places and limbs are made of. */
interface PlacesTable {
  readonly sites: SiteTable;
  readonly sides: Readonly<Record<Laterality, string>>;
  /** Letters that stand for the patient's sides on the figure. */
  readonly sideLetters: Readonly<Record<Side, string>>;
  readonly limbs: Readonly<Record<LimbKey, string>>;
  /** A name with the patient's side, as one says it. */
  readonly sided: (name: string, side: Side) => string;
}

/** Names of places and limbs; a side stands only with what is paired. */
export function placesFrom({ sides, sideLetters, limbs, sided, ...table }: PlacesTable) {
  const { sites, codes } = columnsOf(table.sites);
  const place = ({ site, side }: Place): string =>
    side === 'midline' ? sites[site] : sided(sites[site], side);
  return { sites, codes, sides, sideLetters, limbs, place };
}
export type PlaceWords = ReturnType<typeof placesFrom>;
