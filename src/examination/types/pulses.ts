import type { ListeningSiteId, MidlineSiteId, PulseSiteId } from '../../anatomy/index.js';
import { type Midline, type Reason, REASONS, type Sided } from './common.js';

/** How strong a pulse is, weakest first. Words, since a bare number means different things on different scales. */
export const GRADES = ['absent', 'reduced', 'normal', 'bounding'] as const;
/** A word for how strong a pulse is; `absent` was felt for and not there. */
export type Grade = (typeof GRADES)[number];

/** What a hand-held Doppler lets one hear. */
export const DOPPLER_SIGNALS = ['triphasic', 'biphasic', 'monophasic', 'absent'] as const;
export type DopplerSignal = (typeof DOPPLER_SIGNALS)[number];

/** What is heard over an artery with the stethoscope. */
export const BRUITS = ['none', 'systolic', 'continuous'] as const;
/** A word for what is heard; `none` was listened for and not there. */
export type Bruit = (typeof BRUITS)[number];

/** What was found at one pulse site. Nothing recorded is "not examined", never "normal". */
export interface PulseFinding {
  /** How strong the pulse is; `absent` was felt for and not there. Missing: not graded. */
  readonly grade?: Grade;
  /** Stronger than normal but short of bounding; told apart on the 0-4 scale only, together with `bounding`. */
  readonly increased?: true;
  /** Why nobody could feel here; never together with a grade, a thrill or an expansile pulse. */
  readonly couldNotExamine?: Reason;
  /** The artery widens with each beat. Missing: not said. */
  readonly expansile?: true;
  /** A thrill is felt. Missing: not said. */
  readonly thrill?: true;
  /** What a hand-held Doppler lets one hear here. Missing: not listened for. */
  readonly doppler?: DopplerSignal;
  /** The examiner's own words, up to `LONGEST_TEXT` characters, never empty. */
  readonly note?: string;
}

/** What was heard at one listening site with the stethoscope. */
export interface BruitFinding {
  /** `none` was listened for and not there. Missing: nobody listened. */
  readonly bruit?: Bruit;
  /** Why nobody could listen here; never together with a bruit. */
  readonly couldNotExamine?: Reason;
  /** The examiner's own words, up to `LONGEST_TEXT` characters, never empty. */
  readonly note?: string;
}

/** What each field of a finding holds: one of some words, `true`, or text. Schema and edits are checked by the same lists. */
export type FindingFields<T> = {
  readonly [K in keyof T]-?: NonNullable<T[K]> extends true
    ? 'yes'
    : string extends NonNullable<T[K]>
      ? 'text'
      : readonly [NonNullable<T[K]>, ...NonNullable<T[K]>[]];
};

export const PULSE_FIELDS: FindingFields<PulseFinding> = {
  grade: GRADES,
  increased: 'yes',
  couldNotExamine: REASONS,
  expansile: 'yes',
  thrill: 'yes',
  doppler: DOPPLER_SIGNALS,
  note: 'text',
};

export const BRUIT_FIELDS: FindingFields<BruitFinding> = {
  bruit: BRUITS,
  couldNotExamine: REASONS,
  note: 'text',
};

type AtSites<S extends string, T> = {
  readonly [Site in S]?: Site extends MidlineSiteId ? Midline<T> : Sided<T>;
};

/** Pulses by site and side. A site left out was not examined. */
export type Pulses = AtSites<PulseSiteId, PulseFinding>;
/** Bruits by site and side. A site left out was not listened to. */
export type Bruits = AtSites<ListeningSiteId, BruitFinding>;

/** Which of the two radial pulses comes later, and whether the femoral comes later than the radial of its side. */
export const ARM_DELAYS = ['none', 'right-later', 'left-later'] as const;
export const LEG_DELAYS = ['none', 'delayed'] as const;

/** Pulses felt together, and whether one comes later. */
export interface Delays {
  /** Which radial pulse comes later than the other; `none` was felt for. Missing: not compared. */
  readonly radioRadial?: (typeof ARM_DELAYS)[number];
  /** Whether the femoral pulse comes later than the radial of the same side. A side left out was not compared. */
  readonly radioFemoral?: Sided<(typeof LEG_DELAYS)[number]>;
}
