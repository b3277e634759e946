import type { ArteryId, ListeningSiteId, PulseSiteId } from '../../anatomy/index.js';
import type {
  AgeBand,
  ArmClaudication,
  DopplerSignal,
  InjuryPlace,
  LegClaudication,
  Mechanism,
  Revascularisation,
  RiskFactor,
  Smoking,
} from '../../examination/index.js';
import type { SourceId } from './sources.js';

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
  readonly smoking: Readonly<Record<Smoking, { readonly aortoIliac: number }>> & Sourced;
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
  };
  readonly palpation: Readonly<Record<PulseSiteId, PalpationTable>>;
  /** Share of a bounding report among reports of a pulse felt, by true strength. */
  readonly bounding: { readonly share: ByStrength } & Sourced;
  /**
   * Probability that low flow or cold makes the pulse of an open artery feel reduced. It never makes a felt pulse likelier
   * to be missed altogether, so that an absent pulse always speaks for disease above it.
   */
  readonly lowFlow: Readonly<Record<'central' | 'peripheral', number>> & Sourced;
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
  /** Pressure index of an ankle or arm: upper limits of the bands, and the probability of each band by strength. */
  readonly index: {
    readonly limits: readonly number[];
    readonly bands: readonly ByStrength[];
    /** Above this an artery does not compress and the index says nothing. */
    readonly incompressible: number;
  } & Sourced;
  /** Pain on exertion, by the muscle: the stretch that feeds it and the likelihood by the strength there. */
  readonly claudication: {
    readonly leg: Readonly<Record<LegClaudication, Pain>>;
    readonly arm: Readonly<Record<ArmClaudication, Pain>>;
  } & Sourced;
  readonly delay: { readonly later: ByStrength; readonly none: ByStrength } & Sourced;
}
