import { pieceFromKey, type PieceKey } from '../anatomy/index.js';
import type { LesionMark } from '../drawing/index.js';
import { COUNTS_FROM } from '../flow/index.js';
import { isOfArm, type Truth } from './truth.js';

/** The true lesions as a map draws them: those that count as disease. */
export function truthMarks({ patient }: Truth): readonly LesionMark[] {
  return (patient?.lesions ?? []).flatMap((lesion): LesionMark[] => {
    if (lesion.narrowing < COUNTS_FROM) return [];
    const whole = pieceFromKey(lesion.piece as PieceKey);
    const pieces = whole
      ? [whole]
      : ['proximal', 'distal'].flatMap((part) => pieceFromKey(`${lesion.piece} ${part}` as PieceKey) ?? []);
    const [first] = pieces;
    if (!first) return [];
    const side = first.side === 'midline' ? 'right' : first.side;
    return [
      {
        limb: `${side} ${isOfArm(first.artery) ? 'arm' : 'leg'}`,
        kind: lesion.narrowing >= 100 ? 'block' : 'narrowing',
        pieces: pieces.map((piece) => ({ piece, weight: 1 / pieces.length })),
      },
    ];
  });
}
