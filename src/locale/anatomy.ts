import {
  type ArteryId,
  type Level,
  namedPiece,
  type NamedStretch,
  pieceFromKey,
  type PieceKey,
  type Region,
  type Side,
  type SiteId,
  sideInName,
  type Vessel,
} from '../anatomy/index.js';
import { render } from './render.js';
import type { PlaceWords } from './places.js';

/** The words that the names of arteries are made of. */
interface AnatomyTable {
  readonly arteries: Readonly<Record<ArteryId, string>>;
  /** Where and how to examine a site. */
  readonly technique: Readonly<Record<SiteId, string>>;
  readonly levels: Readonly<Record<Level, string>>;
  readonly regions: Readonly<Record<Region, string>>;
  /** A name with the patient's side, as one says it. */
  readonly sided: (name: string, side: Side) => string;
  readonly aorticFork: () => string;
  /** The popliteal artery above or below the knee. */
  readonly popliteal: (part: 'above-knee' | 'below-knee', side: Side) => string;
}

/** Names of places, arteries, pieces and limbs; a side stands only with what is paired. */
export function anatomyFrom(places: PlaceWords, table: AnatomyTable) {
  const { arteries, technique, levels, regions, sided, aorticFork, popliteal } = table;
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
    ...places,
    arteries,
    technique,
    levels,
    regions,
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
