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
import type { Fork } from './occluded.js';
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
export const CHILDREN: readonly (readonly number[])[] = PIECES.map((piece) =>
  fedPieces(piece).map(indexOfPiece),
);

/** Whether the blood to one piece runs through another, or they are the same. */
export function isAbove(above: PieceKey, piece: PieceKey): boolean {
  const wanted = indexOf(above);
  let i = indexOf(piece);
  while (i > wanted) i = PARENT[i]!;
  return i === wanted;
}

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
 * The way of the blood to a limb, in the order in which trouble is said to begin first: the trunk, then the branches that feed
 * the last pulse sites, level by level. What lies beyond the last site can't be told by any finding and belongs to no answer.
 */
export interface Way {
  readonly limb: LimbKey;
  readonly order: readonly number[];
  /** The same as a trunk and the two branches that end in the limb's last pulses. */
  readonly fork: Fork;
}

function wayOf(limb: (typeof LIMBS)[number]): Way {
  const last = stationsOf(limb).at(-1) ?? [];
  const ends = last.map((place) => piecesTo(pieceAbove(place)).map(indexOfPiece));
  if (limb.kind === 'head') {
    const [carotid] = piecesOfStretch('internal-carotid', limb.side);
    ends.push(piecesTo(PIECES[carotid!]!).map(indexOfPiece));
  }
  const order = new Set<number>();
  for (let depth = 0; ends.some((end) => end.length > depth); depth++) {
    for (const end of ends) if (end[depth] !== undefined) order.add(end[depth]!);
  }
  const [one, two] = ends as [number[], number[]];
  const trunk = one.filter((i) => two.includes(i));
  const fork = {
    trunk,
    branches: [one, two].map((end) => end.filter((i) => !trunk.includes(i))),
  };
  return { limb: limbKey(limb), order: [...order], fork };
}

export const WAYS: readonly Way[] = LIMBS.map(wayOf);
