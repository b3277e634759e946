import { type Vessel, vesselKey } from './arteries.js';
import { type Piece, pieceFromKey, type PieceKey } from './pieces.js';
import type { Side } from './sides.js';

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
