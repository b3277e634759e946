import {
  type ArteryId,
  childVessels,
  leavesAt,
  parentVessel,
  type Vessel,
  vesselKey,
  VESSELS,
} from './arteries.js';
import type { Laterality, Side } from './sides.js';
import { type Place, PULSE_PLACES, type PulseSiteId, siteDefinition, vesselOf } from './sites.js';

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

/** The piece that feeds this one; `undefined` at the root. */
export function feedingPiece(piece: Piece): Piece | undefined {
  const own = piecesOf(piece);
  const before = own[own.indexOf(piece) - 1];
  if (before) return before;
  const parent = parentVessel(piece);
  return parent && piecesOf(parent).find(({ to }) => to >= leavesAt(piece));
}

/** The pieces this one feeds. */
export function fedPieces(piece: Piece): Piece[] {
  const own = piecesOf(piece);
  const next = own[own.indexOf(piece) + 1];
  const branches = childVessels(piece).flatMap((child) => piecesOf(child).slice(0, 1));
  return [...(next ? [next] : []), ...branches.filter((branch) => feedingPiece(branch) === piece)];
}

/** The piece that ends at a pulse site. */
export function pieceAbove(place: Place<PulseSiteId>): Piece {
  const found = ABOVE.get(`${place.side} ${place.site}`);
  if (!found) throw new RangeError(`no artery carries a pulse site "${place.side} ${place.site}"`);
  return found;
}

const ABOVE = new Map<string, Piece>();
for (const place of PULSE_PLACES) {
  const found = piecesOf(vesselOf(place)).find((piece) => piece.endsAt === place.site);
  if (found) ABOVE.set(`${place.side} ${place.site}`, found);
}

/** The pieces from the heart to this one, both ends included. */
export function piecesTo(piece: Piece): readonly Piece[] {
  let path = WAYS.get(piece.key);
  if (!path) {
    const feeding = feedingPiece(piece);
    path = Object.freeze(feeding ? [...piecesTo(feeding), piece] : [piece]);
    WAYS.set(piece.key, path);
  }
  return path;
}

const WAYS = new Map<PieceKey, readonly Piece[]>();

/** A stretch of artery as one names it: the artery, or the part of one where the trade tells parts apart. */
export type NamedStretch =
  | { readonly code: 'artery'; readonly vessel: Vessel }
  | { readonly code: 'aortic-fork' }
  | { readonly code: 'above-knee' | 'below-knee'; readonly side: Side };

/** A piece as one names it. */
export function namedPiece({ artery, side, stretch }: Piece): NamedStretch {
  if (artery === 'infrarenal-aorta' && stretch === 'distal') return { code: 'aortic-fork' };
  if (artery === 'popliteal' && stretch !== 'whole' && side !== 'midline') {
    return { code: stretch === 'proximal' ? 'above-knee' : 'below-knee', side };
  }
  return { code: 'artery', vessel: { artery, side } };
}

/** Pieces as one names them, in order and once each: both parts of an artery are the artery, a part alone is the part. */
export function namedStretches(keys: readonly PieceKey[]): NamedStretch[] {
  const found = keys.flatMap((key) => pieceFromKey(key) ?? []);
  const parts = (piece: Piece): number =>
    found.filter((other) => vesselKey(other) === vesselKey(piece)).length;
  const told = new Set<string>();
  return found.flatMap((piece) => {
    const whole = parts(piece) > 1;
    const key = whole ? vesselKey(piece) : piece.key;
    if (told.has(key)) return [];
    told.add(key);
    return [
      whole ? { code: 'artery', vessel: { artery: piece.artery, side: piece.side } } : namedPiece(piece),
    ];
  });
}
