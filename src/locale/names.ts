import {
  type ArteryId,
  namedPiece,
  type NamedStretch,
  pieceFromKey,
  type PieceKey,
  type Place,
  type Side,
  sideInName,
  type SiteId,
  type Vessel,
} from '../anatomy/index.js';
import { render } from './render.js';

/** The words that the names of places and arteries are made of. */
interface NameWords {
  readonly arteries: Readonly<Record<ArteryId, string>>;
  readonly sites: Readonly<Record<SiteId, string>>;
  /** A name with the patient's side, as one says it. */
  sided(name: string, side: Side): string;
  aorticFork(): string;
  /** The popliteal artery above or below the knee. */
  popliteal(part: 'above-knee' | 'below-knee', side: Side): string;
}

/** Names of places, arteries and pieces; a side stands only with what is paired. */
export function namesFrom({ arteries, sites, sided, aorticFork, popliteal }: NameWords) {
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
