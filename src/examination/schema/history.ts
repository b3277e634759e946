import * as z from 'zod/mini';
import { rule, sided, textSchema } from './common.js';
import { anyOf, oneOf, upTo } from './measures.js';

/** What the limb complains of, mildest first. `none` means asked for and denied. */
export const SYMPTOMS = ['none', 'claudication', 'rest-pain', 'tissue-loss'] as const;
export type Symptom = (typeof SYMPTOMS)[number];

/** How severe the clinician judges claudication to be. */
export const SEVERITIES = ['mild', 'moderate', 'severe'] as const;
export type Severity = (typeof SEVERITIES)[number];

export const RHYTHMS = ['regular', 'atrial-fibrillation', 'other-irregular'] as const;
export type Rhythm = (typeof RHYTHMS)[number];

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
const LONGEST_HOURS = 87_600;

const limbHistory = z
  .strictObject({
    symptom: oneOf(SYMPTOMS),
    /** Pain-free walking distance in metres. */
    distance: z.optional(upTo(10_000)),
    severity: oneOf(SEVERITIES),
    /** How it began. */
    onset: oneOf(['sudden', 'gradual']),
    /** Hours since it began or since it last worsened suddenly. */
    hours: z.optional(upTo(LONGEST_HOURS)),
    note: z.optional(textSchema),
  })
  .check(
    rule(
      (h) => h.distance === undefined || h.symptom !== 'none',
      'distance',
      'no walking distance where there is no symptom',
    ),
  );
export type LimbHistory = z.infer<typeof limbHistory>;

/** What the patient tells, limb by limb; nothing is compulsory. */
export const historySchema = z.strictObject({
  leg: z.optional(sided(limbHistory)),
  arm: z.optional(sided(limbHistory)),
  rhythm: oneOf(RHYTHMS),
  risks: anyOf(RISK_FACTORS),
  /** Earlier operations and interventions, in the examiner's words. */
  operations: z.optional(textSchema),
});
export type PatientHistory = z.infer<typeof historySchema>;
