import type { LimbKey } from '../../anatomy/index.js';
import { type Act, type ActId, type ActKind, COST } from './acts.js';
import { type AnswerKey, entropy, indexOfLargest, levelProbabilities } from './answers.js';
import type { Propagation } from './propagate.js';

/** An act not yet done. */
export interface NextAct {
  readonly act: ActId;
  /** Expected fall in entropy of the level, in nats, summed over the limbs in question. */
  readonly gain: number;
  /** The gain less what the act costs, in nats; acts are ranked by it. */
  readonly worth: number;
}

export interface Ranked {
  readonly acts: readonly NextAct[];
  /** By limb: how likely a pulse not yet felt for puts another level first. */
  readonly flips: readonly number[];
}

/** Below this worth, in nats, nothing at the bedside would change much. Judgement, no source. */
const FLOOR = 0.01;

/** Puts an act among others where its gain is worth its cost. */
export function withAct(acts: readonly NextAct[], act: ActId, gain: number): readonly NextAct[] {
  const worth = gain - COST[act.kind];
  if (worth < FLOOR) return acts;
  return [...acts, { act, gain, worth }].sort((a, b) => b.worth - a.worth);
}

const sumOf = (of: readonly Float64Array[]): number => of.reduce((total, one) => total + entropy(one), 0);

/**
 * Every act with what it is expected to tell, most worth first.
 * @param can the kinds the form at hand can record; all where not given
 * @param keys the limbs in question
 */
export function rankActs(
  net: Propagation,
  acts: readonly Act[],
  keys: readonly AnswerKey[],
  can: readonly ActKind[] | undefined,
): Ranked {
  const blank = (): Float64Array[] => keys.map((key) => new Float64Array(key.levels.length + 1));
  const [base, seen, rest] = [blank(), blank(), blank()];
  const look = (into: readonly Float64Array[]): number => {
    for (let i = 0; i < keys.length; i++) levelProbabilities(net, keys[i]!, into[i]);
    return net.total();
  };
  const whole = look(base);
  const now = sumOf(base);
  const firsts = base.map(indexOfLargest);
  const flips = keys.map(() => 0);
  const flipped = keys.map(() => 0);
  const ranked = acts.map(({ id, limbs, pieces, outcomes, exhaustive }) => {
    let all = 0;
    let left = 0;
    flipped.fill(0);
    rest.forEach((one, i) => one.set(base[i]!));
    const count = (of: readonly Float64Array[], total: number): void => {
      for (let i = 0; i < of.length; i++) if (indexOfLargest(of[i]!) !== firsts[i]) flipped[i]! += total;
    };
    // What the outcomes before leave over is the last one's: its messages need not be worked out.
    for (const factors of exhaustive ? outcomes.slice(0, -1) : outcomes) {
      const change = (): void => factors.forEach((factor) => net.multiply(factor));
      const total = net.whatIf(pieces, change, () => look(seen));
      if (!(total > 0)) continue;
      all += total;
      left += total * sumOf(seen);
      count(seen, total);
      const share = total / whole;
      for (let i = 0; i < rest.length; i++)
        for (let j = 0; j < rest[i]!.length; j++) rest[i]![j]! -= share * seen[i]![j]!;
    }
    if (exhaustive && whole > all) {
      const share = 1 - all / whole;
      for (const one of rest) for (let j = 0; j < one.length; j++) one[j] = Math.max(0, one[j]!) / share;
      left += (whole - all) * sumOf(rest);
      count(rest, whole - all);
      all = whole;
    }
    if (id.kind === 'feel') {
      keys.forEach(({ limb }, i) => {
        if (limbs.includes(limb as LimbKey)) flips[i] = Math.max(flips[i]!, flipped[i]! / all);
      });
    }
    const gain = now - left / all;
    return { act: id, gain, worth: gain - COST[id.kind] };
  });
  return {
    acts: ranked
      .filter(({ act, worth }) => worth >= FLOOR && (!can || can.includes(act.kind)))
      .sort((a, b) => b.worth - a.worth),
    flips,
  };
}
