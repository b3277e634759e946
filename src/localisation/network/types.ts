import type { ArteryId, ListeningSiteId, PulseSiteId } from '../../anatomy/index.js';
import type {
  AgeBand,
  ARM_LEVELS,
  ArmClaudication,
  DopplerSignal,
  InjuryPlace,
  LEG_LEVELS,
  LegClaudication,
  Mechanism,
  Revascularisation,
  RiskFactor,
  Smoking,
  VertebralFlow,
} from '../../examination/index.js';
import type { SourceId } from './sources.js';

type LegLevel = (typeof LEG_LEVELS)[number];
type ArmLevel = (typeof ARM_LEVELS)[number];

/**
 * What may lie behind the whole patient's findings. One holds at a time; the network sums over all of them, so sides and
 * limbs are not independent.
 */
export const CAUSES = [
  'none',
  'focal',
  'diffuse',
  'distal',
  'vasculitis',
  'embolic',
  'injury',
  'compression',
  'coarctation',
  'dissection',
  'aneurysm',
  'low-flow',
] as const;
export type Cause = (typeof CAUSES)[number];

/** State of a piece of artery. */
export const STATES = ['patent', 'narrowed', 'blocked'] as const;
export type State = (typeof STATES)[number];

/** Likelihoods given a pulse that is truly normal, reduced, absent at the point. */
export type ByStrength = readonly [normal: number, reduced: number, absent: number];

/** An artery, or one stretch of an artery that a pulse site cuts in two. */
export type StretchKey = ArteryId | `${ArteryId} ${'proximal' | 'distal'}`;
export type Shares = Readonly<Partial<Record<StretchKey, number>>>;

/** Probability of each report of a finger. */
export type ByReport = readonly [absent: number, reduced: number, felt: number];

/** Foot pulses whose misses hang together on both sides. */
export const HARD_SITES = ['dorsalis-pedis', 'posterior-tibial'] as const;
export type HardSite = (typeof HARD_SITES)[number];

/** Places of a cuff or a sensor whose readings need a model of their own. */
export const CUFFS = ['thigh', 'calf', 'ankle', 'toe', 'arm', 'wrist', 'finger'] as const;
export type Cuff = (typeof CUFFS)[number];

/** Mean and standard deviation of an index. */
export type Bell = readonly [mean: number, sd: number];

/** What speaks for or against an acute onset where the record does not say. */
export const ONSET_SIGNS = [
  'sudden',
  'gradual',
  'days',
  'weeks',
  'deficit',
  'claudication',
  'wound',
  'embolic-source',
  'sudden-mechanism',
  'newly-weak',
  'weak-as-before',
] as const;
export type OnsetSign = (typeof ONSET_SIGNS)[number];

interface Sourced {
  readonly source: readonly SourceId[];
}

export interface CauseTable extends Sourced {
  /** Probability of the cause before any finding, in a person whose limb is examined for too little blood. */
  readonly weight: { readonly acute: number; readonly chronic: number };
  /** Expected number of lesions in the whole patient. */
  readonly lesions: number;
  /** Share of the lesions that are blocks; the rest are narrowings. */
  readonly blocked: { readonly acute: number; readonly chronic: number };
  /** Share of the lesions by artery, both sides together; sums to one. */
  readonly sites: Shares;
}

/** By what the strength of a pulse changes on its way through a piece: rows for the strength coming in. */
export interface PassageTable extends Sourced {
  readonly narrowed: readonly [ByStrength, ByStrength];
  readonly blocked: readonly [ByStrength, ByStrength];
}

/** What the finger reports: rows for the true strength, columns absent, reduced, felt. */
export interface PalpationTable extends Sourced {
  readonly normal: readonly [absent: number, reduced: number, felt: number];
  readonly reduced: readonly [absent: number, reduced: number, felt: number];
  readonly absent: readonly [absent: number, reduced: number, felt: number];
  /** Probability that a person was born without this pulse. */
  readonly missing: number;
  /** A pulse of the periphery, which low flow or cold takes away first. */
  readonly peripheral: boolean;
}

export interface Pain {
  readonly at: StretchKey;
  readonly pain: ByStrength;
}

/** Multipliers of the causes' weights. */
export type CauseFactors = Readonly<Partial<Record<Cause, number>>>;

/** Every figure of the model. An own table of the same form may be passed; `parseTables` checks it. */
export interface Tables {
  readonly causes: Readonly<Record<Cause, CauseTable>>;
  /** Share of an artery's lesions that lie on the right; half where not named. */
  readonly rightShare: Readonly<Partial<Record<'embolic arm' | 'subclavian', number>>> & Sourced;
  readonly age: Readonly<Record<AgeBand, CauseFactors>> & Sourced;
  readonly mechanism: Readonly<Record<Mechanism, CauseFactors>> & Sourced;
  readonly history: Readonly<Partial<Record<RiskFactor | 'atrial-fibrillation', CauseFactors>>> & Sourced;
  /** Multipliers of the atherosclerotic causes' sites by level. */
  readonly smoking: Readonly<
    Record<Smoking, { readonly aortoIliac: number; readonly causes: CauseFactors }>
  > &
    Sourced;
  readonly diabetes: Readonly<
    Record<'yes' | 'no', { readonly infrapopliteal: number; readonly causes: CauseFactors }>
  > &
    Sourced;
  /** Probability that a named injury, rather than any other artery, holds the lesion, and the arteries of each place. */
  readonly injury: {
    readonly certainty: number;
    readonly places: Readonly<Record<InjuryPlace, readonly StretchKey[]>>;
  } & Sourced;
  readonly revascularisation: Readonly<
    Record<Revascularisation, { readonly narrowed: number; readonly blocked: number }>
  > &
    Sourced;
  readonly passage: {
    readonly acute: PassageTable;
    readonly chronic: PassageTable;
    /** A narrowing of the aorta above the renal arteries. */
    readonly central: readonly [ByStrength, ByStrength];
    /** A block of the subclavian near its origin, beyond which the vertebral artery brings blood from the other side. */
    readonly steal: readonly [ByStrength, ByStrength];
  };
  readonly palpation: Readonly<Record<PulseSiteId, PalpationTable>>;
  /** Share of a bounding report among reports of a pulse felt, by true strength. */
  readonly bounding: { readonly share: ByStrength } & Sourced;
  /**
   * What low flow or cold does to pulses. Two degrees: it weakens them, or takes those of the periphery away. `gone` replaces
   * the rows of the palpation tables; `share` is its part of all low flow.
   */
  readonly lowFlow: {
    /** Probability that the pulse of an open artery is felt as reduced, in the milder degree. */
    readonly weak: Readonly<Record<'central' | 'peripheral', number>>;
    readonly gone: Readonly<Record<'central' | 'peripheral', readonly [ByReport, ByReport, ByReport]>>;
    readonly share: number;
    /** Multipliers of the weight of low flow by systolic pressure: the first whose limit (mmHg) is not passed. */
    readonly systolic: readonly (readonly [upTo: number, factor: number])[];
    /** Shock named in the record; all limbs cold. */
    readonly shock: number;
    readonly coldLimbs: number;
    /** Probability of cold skin at least, in either degree. */
    readonly cold: { readonly weak: number; readonly gone: number };
  } & Sourced;
  /** Feet hard to feel: a state of both feet's pulses of one artery that a healthy person has or has not. */
  readonly hardToFeel: {
    readonly sites: Readonly<
      Record<HardSite, { readonly share: number; readonly normal: ByReport; readonly reduced: ByReport }>
    >;
    /** Probability that both arteries are hard to feel. */
    readonly both: number;
  } & Sourced;
  /** How much of its weight the palpation of a leg's foot and knee keeps where a cuff was read at that ankle. */
  readonly besideCuff: { readonly power: number } & Sourced;
  /** Power at which a pulse counts once more where an earlier record found it the same. */
  readonly earlier: { readonly power: number } & Sourced;
  readonly doppler: Readonly<Record<DopplerSignal, ByStrength>> & Sourced;
  readonly sound: {
    /** Probability that the sound of a narrowing carries through one open piece. */
    readonly carries: number;
    /** Probability of each report at a listening site, with and without sound there. */
    readonly systolic: readonly [silent: number, sounding: number];
    /** The same for a systolic bruit over the carotid, heard in many without a stenosis. */
    readonly carotid: readonly [silent: number, sounding: number];
    readonly continuous: readonly [silent: number, sounding: number];
    readonly thrill: readonly [silent: number, sounding: number];
    /** The stretch whose end each listening site hears. */
    readonly heardAt: Readonly<Record<ListeningSiteId, StretchKey>>;
  } & Sourced;
  /** Pressure indices, cuff by cuff: bell curves by strength over a floor of blunders that any value may be. */
  readonly index: {
    readonly cuffs: Readonly<Record<Cuff, readonly [Bell, Bell, Bell]>>;
    /** Share of readings that are blunders, spread evenly from 0 to `widest`. */
    readonly blunder: number;
    readonly widest: number;
    /** Above this an ankle artery does not compress, and the probability of that by strength. */
    readonly incompressible: number;
    readonly stiff: ByStrength;
    /** Probability of a fall after exercise beyond the limits, by strength at rest. */
    readonly fallsAfterExercise: ByStrength;
  } & Sourced;
  /** What is seen and touched, by the strength at the stretch it depends on. */
  readonly seen: {
    /** Where the skin turns cold, by its level. */
    readonly coldLeg: Readonly<Record<LegLevel, Pain>>;
    readonly coldArm: Readonly<Record<ArmLevel, Pain>>;
    /** The stretch above that skin still warm shows fed, by the level at which it turns cold. */
    readonly spared: Readonly<Partial<Record<LegLevel | ArmLevel, Pain>>>;
    /** Cold without a level, warm, wounds, loss of feeling: of the foot or hand as a whole, spread over its arteries. */
    readonly cold: ByStrength;
    readonly warm: ByStrength;
    readonly wound: ByStrength;
    readonly numb: ByStrength;
    /** Palm that stays white when one artery of the wrist is let go, and one that fills. */
    readonly archWhite: ByStrength;
    readonly archFills: ByStrength;
  } & Sourced;
  /** Log odds that trouble of unknown onset is acute, before anything is known, and what moves them. */
  readonly onset: { readonly unknown: number; readonly signs: Readonly<Record<OnsetSign, number>> } & Sourced;
  /** Known or felt aneurysms: multipliers of the cause's weight, and lesions expected at the named artery. */
  readonly aneurysm: {
    readonly known: number;
    readonly felt: number;
    readonly lesions: number;
  } & Sourced;
  /** Probability that an arm with a dialysis access, or a cannulated radial artery, has no pulse to feel at the wrist. */
  readonly taken: Readonly<Record<'access' | 'cannula', number>> & Sourced;
  /** Pain on exertion, by the muscle: the stretch that feeds it and the likelihood by the strength there. */
  readonly claudication: {
    readonly leg: Readonly<Record<LegClaudication, Pain>>;
    readonly arm: Readonly<Record<ArmClaudication, Pain>>;
  } & Sourced;
  readonly delay: { readonly later: ByStrength; readonly none: ByStrength } & Sourced;
  /** The graft's own pulse, by the strength at its end. */
  readonly graftPulse: { readonly present: ByStrength; readonly absent: ByStrength } & Sourced;
  /**
   * Steal, by the strength beyond the part of the subclavian before its branches: direction of flow in the vertebral, and
   * symptoms while the arm works. `shared` is the power that is left where a dialysis access or a graft draws on the same arm.
   */
  readonly steal: {
    readonly flow: Readonly<Record<VertebralFlow, ByStrength>>;
    readonly dizzy: ByStrength;
    readonly chestPain: ByStrength;
    readonly shared: number;
  } & Sourced;
}
