import type { Level, LimbKey } from '../../anatomy/index.js';
import type { Examination } from '../../examination/index.js';
import { ANSWER_KEYS, levelProbabilities } from './answers.js';
import { findingsOf } from './evidence.js';
import { feetOf } from './feet.js';
import type { PressureEvidence } from './finding.js';
import { modelOf } from './model.js';
import { propagate } from './propagated.js';
import { TABLES } from './tables.js';

/** The belief about one limb: the level at which its disease begins, and that none shows. Together they sum to one. */
export interface LevelBelief {
  readonly levels: readonly Level[];
  /** One for each level, in that order, and last that nothing shows. */
  readonly probabilities: Float64Array;
}

/**
 * What the network believes of every limb, also before anything was found: unlike `localise`, which claims nothing then, it measures how
 * far a finding moves the belief.
 * @returns `undefined` where no state of the arteries explains the findings
 */
export function levelBeliefs(
  examination: Examination,
  pressures: PressureEvidence = {},
): Readonly<Record<LimbKey, LevelBelief>> | undefined {
  const feet = feetOf(examination, TABLES);
  const findings = findingsOf(examination, TABLES, pressures, feet);
  const net = propagate(modelOf(examination, TABLES), feet, findings);
  if (!(net.total() > 0)) return undefined;
  return Object.fromEntries(
    ANSWER_KEYS.map((key) => [
      key.limb,
      { levels: key.levels, probabilities: Float64Array.from(levelProbabilities(net, key)) },
    ]),
  ) as unknown as Record<LimbKey, LevelBelief>;
}

/** Least probability taken for one that is nil, so that the distance from it stays finite. */
const NIL = 1e-6;

/** How far one belief lies from another, in nats (relative entropy of the later with respect to the earlier); never negative. */
export function informationBetween(before: LevelBelief, after: LevelBelief): number {
  let sum = 0;
  after.probabilities.forEach((p, i) => {
    if (p > NIL) sum += p * Math.log(p / Math.max(NIL, before.probabilities[i]!));
  });
  return Math.max(0, sum);
}
