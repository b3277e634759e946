import {
  type ArteryId,
  type Level,
  levelOf,
  type LimbKey,
  type LimbKind,
  type PieceKey,
  PIECES,
  type Side,
  vesselKey,
} from '../../anatomy/index.js';
import { beginnings, beginningsByColumn } from './begin.js';
import type { Propagation } from './propagate.js';
import { type Way, WAYS } from './tree.js';

/** Arteries whose stretches the trade tells apart: the aortic fork, and the popliteal above and below the knee. */
const SPLIT: readonly ArteryId[] = ['infrarenal-aorta', 'popliteal'];

/** A way with its pieces gathered under the names one would give as an answer. */
export interface AnswerKey {
  readonly limb: LimbKey;
  readonly side: Side;
  readonly kind: LimbKind;
  readonly way: Way;
  readonly answers: readonly { pieces: readonly PieceKey[]; artery: ArteryId; level: Level }[];
  /** Answer and level of each piece of the way's order. */
  readonly of: readonly number[];
  readonly levelAt: readonly number[];
  readonly levels: readonly Level[];
  /** Answer of each piece of the tree, -1 where it is not on the way. */
  readonly answerAt: Int16Array;
  /** Level of each answer. */
  readonly levelOf: readonly number[];
}

function keyOf(way: Way): AnswerKey {
  const [side, kind] = way.limb.split(' ') as [Side, LimbKind];
  const names: string[] = [];
  const answers: { pieces: PieceKey[]; artery: ArteryId; level: Level }[] = [];
  const of = way.order.map((i) => {
    const piece = PIECES[i]!;
    const name = SPLIT.includes(piece.artery) ? piece.key : vesselKey(piece);
    let at = names.indexOf(name);
    if (at < 0) {
      at = names.push(name) - 1;
      answers.push({ pieces: [], artery: piece.artery, level: levelOf(piece.artery, kind) });
    }
    answers[at]!.pieces.push(piece.key);
    return at;
  });
  const levels = [...new Set(answers.map((answer) => answer.level))];
  const own = answers.map((answer) => levels.indexOf(answer.level));
  const answerAt = new Int16Array(PIECES.length).fill(-1);
  way.order.forEach((piece, j) => (answerAt[piece] = of[j]!));
  return {
    answerAt,
    limb: way.limb,
    side,
    kind,
    way,
    answers,
    of,
    levels,
    levelOf: own,
    levelAt: of.map((answer) => own[answer]!),
  };
}

export const ANSWER_KEYS: readonly AnswerKey[] = WAYS.map(keyOf);

/** Probability of each answer, with "nothing shown" as the last. */
export function answerProbabilities(
  net: Propagation,
  { way, of, answers }: AnswerKey,
  into: Float64Array = new Float64Array(answers.length + 1),
): Float64Array {
  return beginnings(net, way.order, of, into);
}

/** Probability of each level, with "nothing shown" as the last. */
export function levelProbabilities(
  net: Propagation,
  { way, levelAt, levels }: AnswerKey,
  into: Float64Array = new Float64Array(levels.length + 1),
): Float64Array {
  return beginnings(net, way.order, levelAt, into);
}

/** The levels of every live column by itself, one column after the other, as joint probabilities with the findings. */
export function levelsByColumn(net: Propagation, { way, levelAt, levels }: AnswerKey): Float64Array {
  return beginningsByColumn(net, way.order, levelAt, levels.length + 1);
}

export function indexOfLargest(values: ArrayLike<number>): number {
  let best = 0;
  for (let i = 1; i < values.length; i++) if (values[i]! > values[best]!) best = i;
  return best;
}

/** Entropy in nats. */
export function entropy(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) if (values[i]! > 0) sum -= values[i]! * Math.log(values[i]!);
  return sum;
}

/** Sorts a few by probability, the largest first; equals keep their order. */
export function sortDown(list: { readonly probability: number }[]): void {
  for (let i = 1; i < list.length; i++) {
    const one = list[i]!;
    let j = i;
    for (; j > 0 && list[j - 1]!.probability < one.probability; j--) list[j] = list[j - 1]!;
    list[j] = one;
  }
}
