import { type ArteryId, type Level, levelOf, type PieceKey, PIECES } from '../../anatomy/index.js';
import { type AnswerKey, sortDown } from './answers.js';
import { blame, type Fork } from './occluded.js';
import type { Propagation } from './propagate.js';
import { PARENT } from './tree.js';

/** A place where the pulse of a limb is lost or weakened: one artery, or the arteries beyond a fork together. */
export interface Occlusion {
  readonly pieces: readonly PieceKey[];
  readonly arteries: readonly ArteryId[];
  readonly level: Level;
  readonly probability: number;
  /** Whether the pulse is more likely lost there or weakened. */
  readonly pulse: 'absent' | 'reduced';
}

/** A connected stretch of a limb's way, weighted piece by piece, and how likely the fault lies somewhere on it. */
export interface WeightedStretch {
  readonly pieces: readonly { readonly piece: PieceKey; readonly weight: number }[];
  readonly probability: number;
}

export interface Occluded {
  /** Every place, most probable first. With `open` they sum to one. */
  readonly entries: readonly Occlusion[];
  /** Probability that the pulses at the limb's end are normal. */
  readonly open: number;
  /** Where to look: the shortest stretch around the first entry that holds most of what is not open. */
  readonly stretch: WeightedStretch;
}

/** Columns with less of the belief than this are left out. */
const LEAST = 4e-3;
/** Share of what is not open that a stretch has to hold. */
const MOST = 0.8;

/** Grows a connected stretch from its heaviest piece until it holds enough. */
function stretchOf(order: readonly number[], weight: Float64Array, of: number): WeightedStretch {
  const size = order.length;
  const above = order.map((piece) => order.indexOf(PARENT[piece]!));
  const taken = new Uint8Array(size);
  let sum = 0;
  let next = 0;
  for (let j = 1; j < size; j++) if (weight[j]! > weight[next]!) next = j;
  // Each has a neighbour in what is taken; the first has none.
  while (next >= 0) {
    taken[next] = 1;
    sum += weight[next]!;
    if (!(sum < MOST * of)) break;
    next = -1;
    for (let j = 0; j < size; j++) {
      const up = above[j]!;
      if (up < 0) continue;
      if (taken[j] && !taken[up] && !(weight[up]! <= weight[next]!)) next = up;
      if (taken[up] && !taken[j] && !(weight[j]! <= weight[next]!)) next = j;
    }
  }
  return {
    pieces: order.flatMap((piece, j) =>
      taken[j] ? [{ piece: PIECES[piece]!.key, weight: weight[j]! }] : [],
    ),
    probability: sum,
  };
}

/** The way as far as anything was found: of what was not examined nothing is said. An unexamined limb is asked as a whole. */
function examinedPart({ active }: Propagation, { trunk, branches }: Fork): Fork {
  const found = trunk.filter((i) => active[i]);
  if (found.length === 0) return { trunk, branches };
  return {
    trunk: found,
    branches: branches.map((branch) => branch.filter((i) => active[i])).filter((branch) => branch.length > 0),
  };
}

interface Draft {
  readonly pieces: readonly PieceKey[];
  readonly arteries: readonly ArteryId[];
  readonly level: Level;
  a: number;
  r: number;
}

/**
 * Which stretch of a limb takes its pulse away.
 * @param bothWeak both pulses at the limb's end were found weak, so that its arteries are told together: which of them is
 *   closed and which only missed by the finger can't be told from that
 */
export function occludedOf(net: Propagation, key: AnswerKey, bothWeak: boolean): Occluded {
  const fork = examinedPart(net, key.way.fork);
  const { absent, reduced, bothAbsent, bothReduced } = blame(net, fork, LEAST);
  const order = [...fork.trunk, ...fork.branches.flat()];
  const { kind } = key;
  let drafts: Draft[] = key.answers.map(({ pieces, artery, level }) => ({
    pieces,
    arteries: [artery],
    level,
    a: 0,
    r: 0,
  }));
  const all = new Float64Array(order.length);
  order.forEach((piece, j) => {
    const draft = drafts[key.answerAt[piece]!]!;
    draft.a += absent[j]!;
    draft.r += reduced[j]!;
    all[j] = absent[j]! + reduced[j]!;
  });
  if (fork.branches.length === 2) {
    const ends = fork.branches.flat().map((i) => PIECES[i]!);
    const arteries = [...new Set(ends.map(({ artery }) => artery))];
    const own = drafts.filter(
      (draft) =>
        bothWeak &&
        arteries.includes(draft.arteries[0]!) &&
        ends.some(({ key: piece }) => draft.pieces.includes(piece)),
    );
    drafts = drafts.filter((draft) => !own.includes(draft));
    drafts.push({
      pieces: ends.map((piece) => piece.key),
      arteries,
      level: levelOf(arteries.at(-1)!, kind),
      a: own.reduce((sum, { a }) => sum + a, bothAbsent),
      r: own.reduce((sum, { r }) => sum + r, bothReduced),
    });
  }
  // On the figure, what both branches lose lies on both: half of it on each, as their own weight divides it.
  const together = bothAbsent + bothReduced;
  let from = fork.trunk.length;
  for (const branch of fork.branches) {
    const sum = branch.reduce((total, _, k) => total + all[from + k]!, 0);
    branch.forEach((_, k) => {
      all[from + k]! += (together / 2) * (sum > 0 ? all[from + k]! / sum : 1 / branch.length);
    });
    from += branch.length;
  }
  const entries: Occlusion[] = [];
  let shut = 0;
  for (const { pieces, arteries, level, a, r } of drafts) {
    entries.push({ pieces, arteries, level, probability: a + r, pulse: a >= r ? 'absent' : 'reduced' });
    shut += a + r;
  }
  sortDown(entries);
  return { entries, open: Math.max(0, 1 - shut), stretch: stretchOf(order, all, shut) };
}
