import type { Sided } from './common.js';

/** What the limb complains of, mildest first. `none` means asked for and denied. */
export const SYMPTOMS = ['none', 'claudication', 'rest-pain', 'tissue-loss'] as const;
export type Symptom = (typeof SYMPTOMS)[number];

/** How severe the clinician judges claudication to be. */
export const SEVERITIES = ['mild', 'moderate', 'severe'] as const;
export type Severity = (typeof SEVERITIES)[number];

export const RHYTHMS = ['regular', 'atrial-fibrillation', 'other-irregular'] as const;
export type Rhythm = (typeof RHYTHMS)[number];

/** How a limb's trouble began. */
export const LIMB_ONSETS = ['sudden', 'gradual'] as const;

/** What makes arterial disease or an embolus likelier. Diabetes, smoking, grafts and amputations stand in the record's context, and so does where it hurts on exertion. */
export const RISK_FACTORS = [
  'hypertension',
  'high-cholesterol',
  'kidney-disease',
  'coronary-disease',
  'recent-heart-attack',
  'heart-valve-disease',
  'stroke',
  'earlier-embolus',
  'known-aneurysm',
  'clotting-tendency',
  'anticoagulant-stopped',
  'connective-tissue-disease',
  'family-history',
] as const;
export type RiskFactor = (typeof RISK_FACTORS)[number];

/** Longest history of a limb that can be entered, in hours (ten years). */
export const LONGEST_HOURS = 87_600;

/** What the patient tells of one limb. */
export interface LimbHistory {
  /** The worst complaint; `none` was asked for and denied. Missing: not asked. */
  readonly symptom?: Symptom;
  /** Pain-free walking distance in metres, up to 10,000; never where there is no symptom. */
  readonly distance?: number;
  /** How severe the clinician judges claudication to be. */
  readonly severity?: Severity;
  /** How it began. */
  readonly onset?: (typeof LIMB_ONSETS)[number];
  /** Hours since it began or since it last worsened suddenly, up to `LONGEST_HOURS`. */
  readonly hours?: number;
  /** In the patient's or examiner's words. */
  readonly note?: string;
}

/** What the patient tells, limb by limb; nothing is compulsory. */
export interface PatientHistory {
  readonly leg?: Sided<LimbHistory>;
  readonly arm?: Sided<LimbHistory>;
  readonly rhythm?: Rhythm;
  /** Each at most once; an empty list says that none applies. */
  readonly risks?: readonly RiskFactor[];
  /** Earlier operations and interventions, in the examiner's words. */
  readonly operations?: string;
}
