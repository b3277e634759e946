import {
  type ArteryId,
  type Level,
  levelOf,
  type LimbKey,
  type LimbKind,
  type PieceKey,
  PIECES,
  vesselKey,
} from '../../anatomy/index.js';
import { beginnings } from './begin.js';
import type { Propagation } from './propagate.js';
import { type Way, WAYS } from './tree.js';

/** Arteries whose stretches the trade tells apart: the aortic fork, and the popliteal above and below the knee. */
const SPLIT: readonly ArteryId[] = ['infrarenal-aorta', 'popliteal'];

/** A way with its pieces gathered under the names one would give as an answer. */
export interface AnswerKey {
  readonly limb: LimbKey;
  readonly way: Way;
  readonly answers: readonly { pieces: readonly PieceKey[]; artery: ArteryId; level: Level }[];
  /** Answer of each piece of the way's order. */
  readonly of: readonly number[];
  readonly levels: readonly Level[];
  /** Level of each answer. */
  readonly levelOf: readonly number[];
}

function keyOf(way: Way): AnswerKey {
  const kind = way.limb.split(' ')[1] as LimbKind;
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
  return { limb: way.limb, way, answers, of, levels, levelOf: answers.map((answer) => levels.indexOf(answer.level)) };
}

export const ANSWER_KEYS: readonly AnswerKey[] = WAYS.map(keyOf);

/** Probability of each answer, with "nothing shown" as the last. */
export function answerProbabilities(net: Propagation, key: AnswerKey): Float64Array {
  const begin = beginnings(net, key.way);
  const out = new Float64Array(key.answers.length + 1);
  key.of.forEach((answer, i) => (out[answer]! += begin[i]!));
  out[key.answers.length] = begin.at(-1)!;
  return out;
}

/** Probability of each level, with "nothing shown" as the last. */
export function levelProbabilities(key: AnswerKey, answers: Float64Array): Float64Array {
  const out = new Float64Array(key.levels.length + 1);
  key.levelOf.forEach((level, i) => (out[level]! += answers[i]!));
  out[key.levels.length] = answers.at(-1)!;
  return out;
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
