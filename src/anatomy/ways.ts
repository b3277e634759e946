import { childVessels } from './arteries.js';
import { feedingPiece, type Piece, type PieceKey, piecesOf } from './pieces.js';
import { type Place, PULSE_PLACES, type PulseSiteId, vesselOf } from './sites.js';

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
