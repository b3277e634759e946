import type { Reason, Sided } from './common.js';
import type { Grade } from './pulses.js';

/** Longest time a bedside test is timed, in seconds. */
export const LONGEST_SECONDS = 3600;

/** Symptoms a position of the arm can bring on. */
export const OUTLET_SYMPTOMS = ['heaviness', 'tingling', 'pain', 'fatigue'] as const;
export type OutletSymptom = (typeof OUTLET_SYMPTOMS)[number];

/** The three ways of the scalene manoeuvre: head to the side tested, head away from it, and with the arm drawn down. */
export const SCALENE_WAYS = ['toward', 'away', 'traction'] as const;
export type ScaleneWay = (typeof SCALENE_WAYS)[number];

/** Plethysmography of the hand while one artery is pressed: from a full tracing (A) to one that stays lost (D). */
export const BARBEAU_CLASSES = ['A', 'B', 'C', 'D'] as const;
export type BarbeauClass = (typeof BARBEAU_CLASSES)[number];

export const STOP_REASONS = ['pain', 'tingling', 'fatigue', 'other'] as const;
export type StopReason = (typeof STOP_REASONS)[number];

export const HAND_ARCH_METHODS = ['modified', 'original'] as const;

/** What every test result holds besides its own measurements. All times are seconds, up to `LONGEST_SECONDS`. */
export interface AnyTestResult {
  /** Why it was not done. */
  readonly notDone?: Reason;
  /** The limit the reading was judged by, in the unit of the test; without one the library's default applies. */
  readonly limit?: number;
  /** The examiner's own words. */
  readonly note?: string;
}

export interface ElevationResult extends AnyTestResult {
  /** Whether the sole turned pale. */
  readonly pallor?: boolean;
  /** Where it turned pale, or how high the leg was raised without turning pale; degrees above the couch, up to 90. */
  readonly angle?: number;
  /** Time until pallor, or time held without pallor. */
  readonly seconds?: number;
}

export interface ColourReturnResult extends AnyTestResult {
  /** Until the colour came back, or watched without (`returned: false`). */
  readonly seconds?: number;
  readonly returned?: boolean;
}

export interface DependentRuborResult extends AnyTestResult {
  readonly rubor?: boolean;
  /** How long the leg hung. */
  readonly seconds?: number;
}

export interface VenousFillingResult extends AnyTestResult {
  /** Until a vein filled, or watched without (`filled: false`). */
  readonly seconds?: number;
  readonly filled?: boolean;
  /** Varicose or otherwise incompetent veins fill from above and shorten the time. Missing: not said. */
  readonly incompetentVeins?: true;
}

/** Time to the return of colour after an artery was let go; `returned: false` when the palm stayed white so long. */
export interface ArteryRelease {
  readonly seconds?: number;
  readonly returned?: boolean;
}

export interface HandArchResult extends AnyTestResult {
  readonly method?: (typeof HAND_ARCH_METHODS)[number];
  /** After the radial artery was let go with the ulnar still pressed. */
  readonly radial?: ArteryRelease;
  /** After the ulnar artery was let go with the radial still pressed. */
  readonly ulnar?: ArteryRelease;
  /** Plethysmography while the radial artery is pressed. */
  readonly barbeau?: BarbeauClass;
  /** Plethysmography while the ulnar artery is pressed. */
  readonly barbeauReverse?: BarbeauClass;
}

export interface ColdProvocationResult extends AnyTestResult {
  /** Seconds after which the fingers turned white. */
  readonly white?: number;
  /** Seconds after which they turned blue. */
  readonly blue?: number;
  /** Seconds after which they turned red. */
  readonly red?: number;
  /** No colour appeared; never together with one. */
  readonly noChange?: true;
  /** Minutes until the finger was warm again, up to 120. */
  readonly rewarm?: number;
  /** Temperature of the water in degrees Celsius, up to 40. */
  readonly water?: number;
  /** Seconds of immersion. */
  readonly immersed?: number;
}

/** The pulse before and in a position of the arm, and what was felt there. */
export interface OutletPosition {
  /** The radial pulse before. */
  readonly before?: Grade;
  /** The radial pulse in the position. */
  readonly during?: Grade;
  /** Each at most once; an empty list was asked for, and nothing felt. */
  readonly symptoms?: readonly OutletSymptom[];
  /** How long the position was held. */
  readonly seconds?: number;
}

export interface ScaleneResult extends AnyTestResult, Readonly<Partial<Record<ScaleneWay, OutletPosition>>> {}

export interface OutletResult extends AnyTestResult, OutletPosition {}

export interface ArmStressResult extends AnyTestResult {
  /** The radial pulse before. */
  readonly before?: Grade;
  /** The radial pulse with the arm up. */
  readonly during?: Grade;
  /** How long the arm stayed up. */
  readonly seconds?: number;
  /** Why it was taken down early. */
  readonly stopped?: StopReason;
  /** Seconds after which each was first felt. */
  readonly felt?: Readonly<Partial<Record<OutletSymptom, number>>>;
  /** Asked, and nothing felt. */
  readonly nothingFelt?: true;
}

/** The timed and positional tests, leg before arm, each side on its own. A test left out was not recorded. */
export interface Bedside {
  readonly elevation?: Sided<ElevationResult>;
  readonly 'colour-return'?: Sided<ColourReturnResult>;
  readonly 'dependent-rubor'?: Sided<DependentRuborResult>;
  readonly 'venous-filling'?: Sided<VenousFillingResult>;
  readonly 'hand-arch'?: Sided<HandArchResult>;
  readonly 'cold-provocation'?: Sided<ColdProvocationResult>;
  readonly scalene?: Sided<ScaleneResult>;
  readonly hyperabduction?: Sided<OutletResult>;
  readonly costoclavicular?: Sided<OutletResult>;
  readonly 'arm-stress'?: Sided<ArmStressResult>;
}
/** The name of a bedside test, as the record holds it. */
export type BedsideTestId = keyof Bedside;
export type BedsideResult<Id extends BedsideTestId> = NonNullable<NonNullable<Bedside[Id]>['right']>;
/** What every result has. */
export type AnyBedsideResult = { [Id in BedsideTestId]: BedsideResult<Id> }[BedsideTestId];
