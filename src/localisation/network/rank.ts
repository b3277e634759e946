import { type Act, type ActId, type ActKind, COST } from './acts.js';
import { type AnswerKey, entropy, indexOfLargest, levelProbabilities } from './answers.js';
import type { Factor } from './columns.js';
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

function sumOf(of: readonly Float64Array[]): number {
  let sum = 0;
  for (let i = 0; i < of.length; i++) sum += entropy(of[i]!);
  return sum;
}

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
  let given: readonly Factor[] = [];
  const change = (): void => {
    for (let i = 0; i < given.length; i++) net.multiply(given[i]!);
  };
  const lookAfter = (): number => look(seen);
  const count = (of: readonly Float64Array[], total: number): void => {
    for (let i = 0; i < of.length; i++) if (indexOfLargest(of[i]!) !== firsts[i]) flipped[i]! += total;
  };
  const ranked: NextAct[] = [];
  for (const { id, limbs, pieces, outcomes, exhaustive } of acts) {
    const doable = !can || can.includes(id.kind);
    // What a pulse would turn counts even where it can't be recorded.
    if (!doable && id.kind !== 'feel') continue;
    let all = 0;
    let left = 0;
    flipped.fill(0);
    for (let i = 0; i < rest.length; i++) rest[i]!.set(base[i]!);
    // What the outcomes before leave over is the last one's: its messages need not be worked out.
    for (let o = exhaustive ? 1 : 0; o < outcomes.length; o++) {
      given = outcomes[exhaustive ? o - 1 : o]!;
      const total = net.whatIf(pieces, change, lookAfter);
      if (!(total > 0)) continue;
      all += total;
      left += total * sumOf(seen);
      count(seen, total);
      const share = total / whole;
      for (let i = 0; exhaustive && i < rest.length; i++)
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
      for (let i = 0; i < keys.length; i++)
        if (limbs.includes(keys[i]!.limb)) flips[i] = Math.max(flips[i]!, flipped[i]! / all);
    }
    const gain = now - left / all;
    const worth = gain - COST[id.kind];
    if (doable && worth >= FLOOR) ranked.push({ act: id, gain, worth });
  }
  return { acts: ranked.sort((a, b) => b.worth - a.worth), flips };
}
