import {
  type ArteryId,
  type Laterality,
  type Level,
  type LimbKey,
  namedPiece,
  type NamedStretch,
  pieceFromKey,
  type PieceKey,
  type Place,
  type Region,
  type Side,
  sideInName,
  type Vessel,
} from '../anatomy/index.js';
import { render } from './render.js';
import { columnsOf, type SiteTable } from './site-words.js';

/** The words that the names of places, arteries and limbs are made of. */
interface AnatomyTable {
  readonly arteries: Readonly<Record<ArteryId, string>>;
  readonly sites: SiteTable;
  readonly sides: Readonly<Record<Laterality, string>>;
  /** Letters that stand for the patient's sides on the figure. */
  readonly sideLetters: Readonly<Record<Side, string>>;
  readonly limbs: Readonly<Record<LimbKey, string>>;
  readonly levels: Readonly<Record<Level, string>>;
  readonly regions: Readonly<Record<Region, string>>;
  /** A name with the patient's side, as one says it. */
  readonly sided: (name: string, side: Side) => string;
  readonly aorticFork: () => string;
  /** The popliteal artery above or below the knee. */
  readonly popliteal: (part: 'above-knee' | 'below-knee', side: Side) => string;
}

/** Names of places, arteries, pieces and limbs; a side stands only with what is paired. */
export function anatomyFrom(table: AnatomyTable) {
  const { arteries, sides, sideLetters, limbs, levels, regions, sided, aorticFork, popliteal } = table;
  const { sites, codes, technique } = columnsOf(table.sites);
  const place = ({ site, side }: Place): string =>
    side === 'midline' ? sites[site] : sided(sites[site], side);
  const vessel = (named: Vessel): string => {
    const side = sideInName(named);
    return side ? sided(arteries[named.artery], side) : arteries[named.artery];
  };
  const knee = ({ code, side }: { code: 'above-knee' | 'below-knee'; side: Side }): string =>
    popliteal(code, side);
  const stretch = (named: NamedStretch): string =>
    render<NamedStretch>(
      {
        artery: (one) => vessel(one.vessel),
        'aortic-fork': () => aorticFork(),
        'above-knee': knee,
        'below-knee': knee,
      },
      named,
    );
  return {
    arteries,
    sites,
    codes,
    technique,
    sides,
    sideLetters,
    limbs,
    levels,
    regions,
    place,
    vessel,
    /** A piece of artery; the part is named only where the trade tells parts apart. */
    piece: (key: PieceKey): string => {
      const found = pieceFromKey(key);
      return found ? stretch(namedPiece(found)) : key;
    },
    stretches: (named: readonly NamedStretch[]): string[] => named.map(stretch),
  };
}

export type AnatomyWords = ReturnType<typeof anatomyFrom>;
