import type { PieceKey } from '../anatomy/index.js';
import type { LimbReading, NetworkReading } from './network/index.js';
import type { LimbRule, RuleLesion } from './rule.js';

/** Probability that the pulse of a limb is lost or weakened in one of these pieces. */
export function blamedIn({ occluded }: LimbReading, pieces: readonly PieceKey[]): number {
  // An entry that reaches beyond the pieces counts as a whole: parts of one artery are not told apart there.
  return occluded.entries
    .filter((entry) => entry.pieces.some((piece) => pieces.includes(piece)))
    .reduce((sum, entry) => sum + entry.probability, 0);
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
 * Whether the two voices say the same of a limb: what the network blames lies in the stretch of the rule's first
 * lesion, or neither shows anything.
 */
export function voicesAgree(rule: LimbRule, reading: LimbReading): boolean {
  const [lesion] = rule.lesions;
  const { headline } = reading;
  if (!lesion || !headline) return !lesion && !headline;
  return headline.pieces.some((piece) => lesion.pieces.includes(piece));
}

/** How strongly the network supports a lesion of the rule: the first by what takes the pulse away, further ones by themselves. */
export function supportOf(
  lesion: RuleLesion,
  index: number,
  network: NetworkReading & { status: 'read' },
  limb: LimbReading,
): number {
  return index === 0 ? blamedIn(limb, lesion.pieces) : troubledIn(network, lesion.pieces);
}
