import type { Level, Limb, LimbKey, PieceKey, Place, PulseSiteId } from '../anatomy/index.js';

export type PulsePlace = Place<PulseSiteId>;

/** A stretch of artery in which, by the bedside rule, something is wrong. */
export interface RuleLesion {
  /** A pulse that is not there means a block, one that is weaker than above it a narrowing. */
  readonly kind: 'block' | 'narrowing';
  /** The last pulse of the limb felt above; missing when none of them was felt. */
  readonly above?: PulsePlace;
  /** A pulse outside the limb's own way that shows how far down the trunk is open, where it bounds more closely than `above`. */
  readonly witness?: PulsePlace;
  /** The first pulses that are weaker or absent: one, or several of one station (foot, wrist). */
  readonly below: readonly PulsePlace[];
  /** The pieces of artery between the bounds, proximal first. */
  readonly pieces: readonly PieceKey[];
  readonly levels: readonly Level[];
  /** Ungraded sites between the bounds or at the station of `below`; with them graded the interval might be narrower. */
  readonly unstated: readonly PulsePlace[];
  /** Set when another pulse of the station shows the shared artery open, so that only this artery can be diseased. */
  readonly singleArtery?: true;
  /** A pulse farther down the limb that is stronger than `below`: the finding may be wrong, or collaterals carry the flow. */
  readonly contradictedBy?: PulsePlace;
  /** Set when that pulse is weak itself, as it is when collaterals refill the artery beyond a block. */
  readonly refilled?: true;
  /** Other limbs that one lesion in the shared pieces would explain as well: those whose way leaves this one last. */
  readonly sharedWith: readonly LimbKey[];
  /** The first weak pulses of those limbs, in the same order. */
  readonly sharedBelow: readonly (readonly PulsePlace[])[];
  readonly sharedPieces: readonly PieceKey[];
}

/** A pulse felt more strongly than one above it: felt wrongly, or fed by collaterals. */
export interface RuleContradiction {
  readonly weaker: PulsePlace;
  readonly stronger: PulsePlace;
}

export interface LimbRule {
  readonly limb: Limb;
  /** `nothing`: no pulse graded. `normal`: all graded, none weak. `felt-as-far`: none weak so far, sites remain. */
  readonly outcome: 'nothing' | 'normal' | 'felt-as-far' | 'lesion';
  /** The most distal pulses graded when nothing is wrong so far. */
  readonly feltTo: readonly PulsePlace[];
  readonly lesions: readonly RuleLesion[];
  readonly contradictions: readonly RuleContradiction[];
  /** Every site of the limb without a grade. */
  readonly unstated: readonly PulsePlace[];
}

/** The bedside rule's answer for every limb; plain data, words are made by the locale. */
export type RuleReading = Readonly<Record<LimbKey, LimbRule>>;
