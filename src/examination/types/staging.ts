import type { Sided } from './common.js';

export const FONTAINE_STAGES = ['I', 'IIa', 'IIb', 'III', 'IV'] as const;
export type FontaineStage = (typeof FONTAINE_STAGES)[number];

export const RUTHERFORD_CATEGORIES = [0, 1, 2, 3, 4, 5, 6] as const;
export type RutherfordCategory = (typeof RUTHERFORD_CATEGORIES)[number];

export const ACUTE_CLASSES = ['I', 'IIa', 'IIb', 'III'] as const;
export type AcuteClass = (typeof ACUTE_CLASSES)[number];

/** Grades of wound, ischaemia and foot infection. */
export const WIFI_GRADES = [0, 1, 2, 3] as const;
export type WifiGrade = (typeof WIFI_GRADES)[number];
/** Stage 5, a foot that cannot be saved, is a clinical judgement and no combination of grades. */
export const WIFI_STAGES = [1, 2, 3, 4, 5] as const;
export type WifiStage = (typeof WIFI_STAGES)[number];

/** The clinician's own stage, beside the one the library had derived at that moment. */
export interface Overrule<T> {
  readonly stage: T;
  /** Missing: nothing could be derived then. */
  readonly derived?: T;
  /** The clinician's reason. */
  readonly why?: string;
}

/** The clinician's stages of one leg. What is left out stands as derived. */
export interface LegOverrules {
  readonly fontaine?: Overrule<FontaineStage>;
  readonly rutherford?: Overrule<RutherfordCategory>;
  /** Class of acute limb ischaemia. */
  readonly acute?: Overrule<AcuteClass>;
  readonly wound?: Overrule<WifiGrade>;
  readonly ischaemia?: Overrule<WifiGrade>;
  readonly infection?: Overrule<WifiGrade>;
  readonly wifi?: Overrule<WifiStage>;
}

/** The clinician's stages of one arm. */
export interface ArmOverrules {
  /** Class of acute limb ischaemia. */
  readonly acute?: Overrule<AcuteClass>;
}

/** Stages the clinician set against the derived ones. What is derived follows from the rest of the record. */
export interface Staging {
  readonly leg?: Sided<LegOverrules>;
  readonly arm?: Sided<ArmOverrules>;
}
