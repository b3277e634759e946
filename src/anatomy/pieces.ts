import { type ArteryId, leavesAt, parentVessel, type Vessel, vesselKey, VESSELS } from './arteries.js';
import type { Laterality } from './sides.js';
import { PULSE_PLACES, type PulseSiteId, siteDefinition, vesselOf } from './sites.js';

/** The part of its artery that a piece covers: all of it, or the part proximal or distal to the pulse site on it. */
export type Stretch = 'whole' | 'proximal' | 'distal';

/**
 * A piece of artery that can be distinguished at the bedside: arteries are split at pulse sites, since a popliteal
 * pulse can be felt proximal to a popliteal occlusion.
 */
export interface Piece {
  readonly key: PieceKey;
  readonly artery: ArteryId;
  readonly side: Laterality;
  readonly stretch: Stretch;
  /** Ends of the piece as fractions of the artery's length. */
  readonly from: number;
  readonly to: number;
  /** The pulse site at the piece's distal end, if there is one. */
  readonly endsAt?: PulseSiteId;
}

export type PieceKey = `${Laterality} ${ArteryId}` | `${Laterality} ${ArteryId} ${'proximal' | 'distal'}`;

const PULSE_ON = new Map(PULSE_PLACES.map((place) => [vesselKey(vesselOf(place)), place]));

function cut(vessel: Vessel): Piece[] {
  const place = PULSE_ON.get(vesselKey(vessel));
  const base = { artery: vessel.artery, side: vessel.side };
  const key = vesselKey(vessel);
  if (!place) return [{ ...base, key, stretch: 'whole', from: 0, to: 1 }];
  const { at } = siteDefinition(place.site);
  return [
    { ...base, key: `${key} proximal`, stretch: 'proximal', from: 0, to: at, endsAt: place.site },
    { ...base, key: `${key} distal`, stretch: 'distal', from: at, to: 1 },
  ];
}

/** Every piece of the tree; each comes after the piece that feeds it. */
export const PIECES: readonly Piece[] = VESSELS.flatMap(cut);

const BY_KEY = new Map<string, Piece>(PIECES.map((piece) => [piece.key, piece]));
const BY_VESSEL = new Map<string, Piece[]>(VESSELS.map((vessel) => [vesselKey(vessel), []]));
for (const piece of PIECES) BY_VESSEL.get(vesselKey(piece))?.push(piece);

export function pieceFromKey(key: string): Piece | undefined {
  return BY_KEY.get(key);
}

export function piecesOf(vessel: Vessel): readonly Piece[] {
  return BY_VESSEL.get(vesselKey(vessel)) ?? [];
}

function feeding(piece: Piece): Piece | undefined {
  const own = piecesOf(piece);
  const before = own[own.indexOf(piece) - 1];
  if (before) return before;
  const parent = parentVessel(piece);
  return parent && piecesOf(parent).find(({ to }) => to >= leavesAt(piece));
}

const FEEDING = new Map<Piece, Piece | undefined>();

/** The piece that feeds this one; `undefined` at the root. */
export function feedingPiece(piece: Piece): Piece | undefined {
  if (!FEEDING.has(piece)) FEEDING.set(piece, feeding(piece));
  return FEEDING.get(piece);
}
