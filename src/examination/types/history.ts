import type { Sided } from './common.js';

/** What the limb complains of, mildest first. `none` means asked for and denied. */
export const SYMPTOMS = ['none', 'claudication', 'rest-pain', 'tissue-loss'] as const;
export type Symptom = (typeof SYMPTOMS)[number];

/** How severe the clinician judges claudication to be. */
export const SEVERITIES = ['mild', 'moderate', 'severe'] as const;
export type Severity = (typeof SEVERITIES)[number];

export const RHYTHMS = ['regular', 'atrial-fibrillation', 'other-irregular'] as const;
export type Rhythm = (typeof RHYTHMS)[number];

/** How a limb's trouble began; `unknown` was asked for and could not be told. */
export const LIMB_ONSETS = ['sudden', 'gradual', 'unknown'] as const;

/** Symptoms away from the limbs: of an aneurysm or a dissection, and of a stroke. */
export const SYMPTOMS_ELSEWHERE = [
  'abdominal-pain',
  'back-pain',
  'loin-pain',
  'collapse',
  'sudden-chest-or-back-pain',
  'passing-stroke',
  'passing-blindness',
  'deficit-now',
] as const;
export type SymptomElsewhere = (typeof SYMPTOMS_ELSEWHERE)[number];

/** What makes arterial disease or an embolus likelier. Diabetes, smoking, grafts and amputations stand in the record's context, and so does where it hurts on exertion. */
export const RISK_FACTORS = [
  'hypertension',
  'high-cholesterol',
  'kidney-disease',
  'coronary-disease',
  'recent-heart-attack',
  'heart-valve-disease',
  'heart-failure',
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
  /** Clock time of the onset, or when the limb was last known well; ISO 8601 with `Z` or an offset. Missing: not asked. */
  readonly onsetAt?: string;
  /** Sudden pain at rest. Missing: not told. */
  readonly suddenPain?: true;
  /** Something new in this limb; written with an acute onset and kept when the time is cleared. Missing: not told. */
  readonly newComplaint?: true;
  /** In the patient's or examiner's words. */
  readonly note?: string;
}

export interface ArmHistory extends LimbHistory {
  /** Fingers that turn white or cold in attacks. Missing: not told. */
  readonly coldFingers?: true;
  /** Dizzy or faint while the arm is used, as when it draws blood from the vertebral artery. Missing: not told. */
  readonly dizzyOnUse?: true;
  /** Chest pain while the arm is used, as when it draws blood from a graft of the internal thoracic artery. Missing: not told. */
  readonly chestPainOnUse?: true;
}

/** What the patient tells, limb by limb; nothing is compulsory. */
export interface PatientHistory {
  readonly leg?: Sided<LimbHistory>;
  readonly arm?: Sided<ArmHistory>;
  readonly rhythm?: Rhythm;
  /** Symptoms away from the limbs, each at most once; an empty list: asked for and denied. Missing: not asked. */
  readonly elsewhere?: readonly SymptomElsewhere[];
  /** Each at most once; an empty list says that none applies. */
  readonly risks?: readonly RiskFactor[];
  /** Earlier operations and interventions, in the examiner's words. */
  readonly operations?: string;
}
