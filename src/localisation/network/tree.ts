import {
  ARTERIES,
  feedingPiece,
  fedPieces,
  type LimbKey,
  limbKey,
  LIMBS,
  type Piece,
  pieceAbove,
  type PieceKey,
  PIECES,
  piecesTo,
  type Side,
  stationsOf,
} from '../../anatomy/index.js';
import type { StretchKey } from './types.js';

const INDEX = new Map<string, number>(PIECES.map((piece, i) => [piece.key, i]));

/** The place of a piece in every array of the network. */
export function indexOf(key: PieceKey): number {
  return INDEX.get(key) as number;
}

const indexOfPiece = (piece: Piece): number => indexOf(piece.key);

export const PARENT: readonly number[] = PIECES.map((piece) => {
  const feeding = feedingPiece(piece);
  return feeding ? indexOfPiece(feeding) : -1;
});
export const CHILDREN: readonly (readonly number[])[] = PIECES.map((piece) => fedPieces(piece).map(indexOfPiece));

const STRETCHES = new Map<string, readonly number[]>();

/** The pieces a stretch stands for, on a side or on both; of an unpaired artery the side does not matter. */
export function piecesOfStretch(key: StretchKey, side?: Side): readonly number[] {
  const name = side ? `${side} ${key}` : key;
  let found = STRETCHES.get(name);
  if (!found) {
    const [artery, stretch] = key.split(' ');
    found = PIECES.flatMap((piece, i) =>
      piece.artery === artery &&
      (!stretch || piece.stretch === stretch) &&
      (!side || piece.side === side || ARTERIES[piece.artery].occurs !== 'paired')
        ? [i]
        : [],
    );
    STRETCHES.set(name, found);
  }
  return found;
}

/**
 * The way of the blood to a limb: one trunk, then the branches that feed its last pulse sites. What lies beyond the last
 * site can't be told by any finding and belongs to no answer.
 */
export interface Way {
  readonly limb: LimbKey;
  readonly trunk: readonly number[];
  readonly branches: readonly (readonly number[])[];
  /** Trunk and branches in the order in which trouble is said to begin first. */
  readonly order: readonly number[];
}

function wayOf(limb: (typeof LIMBS)[number]): Way {
  const last = stationsOf(limb).at(-1) ?? [];
  const ends = last.map((place) => piecesTo(pieceAbove(place)).map(indexOfPiece));
  if (limb.kind === 'head') ends.push(piecesTo(PIECES[piecesOfStretch('internal-carotid', limb.side)[0]!]!).map(indexOfPiece));
  const trunk = ends[0]!.filter((piece) => ends.every((end) => end.includes(piece)));
  const branches = ends.map((end) => end.filter((piece) => !trunk.includes(piece)));
  const order = [...trunk];
  for (let depth = 0; branches.some((branch) => branch.length > depth); depth++) {
    for (const branch of branches) if (branch[depth] !== undefined) order.push(branch[depth]!);
  }
  return { limb: limbKey(limb), trunk, branches, order };
}

export const WAYS: readonly Way[] = LIMBS.map(wayOf);
