import type { PieceKey } from '../anatomy/index.js';
import type { LimbReading, NetworkReading } from './network/index.js';
import type { LimbRule, RuleLesion } from './rule.js';

/** Probability that the trouble of a limb begins in one of these pieces. */
export function beginsIn(reading: LimbReading, pieces: readonly PieceKey[]): number {
  // An answer that reaches beyond the pieces counts as a whole: parts of one artery are not told apart there.
  return reading.answers
    .filter((answer) => answer.pieces.some((piece) => pieces.includes(piece)))
    .reduce((sum, answer) => sum + answer.probability, 0);
}

/** Probability that some piece of a stretch is narrowed or blocked: at least that of its worst piece. */
export function troubledIn(
  network: NetworkReading & { status: 'read' },
  pieces: readonly PieceKey[],
): number {
  return Math.max(
    0,
    ...pieces.map((piece) => network.pieces[piece].narrowed + network.pieces[piece].blocked),
  );
}

/**
 * Whether the two voices say the same of a limb: the first answer of the network lies in the stretch of the rule's first
 * lesion, or neither shows anything.
 */
export function voicesAgree(rule: LimbRule, reading: LimbReading): boolean {
  const [lesion] = rule.lesions;
  const { first } = reading;
  if (!lesion || !first) return !lesion && !first;
  return first.pieces.some((piece) => lesion.pieces.includes(piece));
}

/** How strongly the network supports a lesion of the rule: the first by where trouble begins, further ones by themselves. */
export function supportOf(
  lesion: RuleLesion,
  index: number,
  network: NetworkReading & { status: 'read' },
  limb: LimbReading,
): number {
  return index === 0 ? beginsIn(limb, lesion.pieces) : troubledIn(network, lesion.pieces);
}
