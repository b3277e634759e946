import * as z from 'zod/mini';
import {
  type ArmHistory,
  LIMB_ONSETS,
  type LimbHistory,
  LONGEST_HOURS,
  type PatientHistory,
  RHYTHMS,
  RISK_FACTORS,
  SEVERITIES,
  SYMPTOMS,
  SYMPTOMS_ELSEWHERE,
} from '../types/history.js';
import { type Fields, instantSchema, object, rule, sided, textSchema } from './common.js';
import { anyOf, oneOf, upTo, yes } from './measures.js';

const either: Fields<LimbHistory> = {
  symptom: oneOf(SYMPTOMS),
  distance: z.optional(upTo(10_000)),
  severity: oneOf(SEVERITIES),
  onset: oneOf(LIMB_ONSETS),
  hours: z.optional(upTo(LONGEST_HOURS)),
  onsetAt: z.optional(instantSchema),
  suddenPain: yes,
  newComplaint: yes,
  note: z.optional(textSchema),
};

const distanceRule = rule<LimbHistory>(
  'distance-only-with-symptom',
  ['distance', 'symptom'],
  (h) => h.distance === undefined || h.symptom !== 'none',
);

export const historySchema: z.ZodMiniType<PatientHistory> = object<PatientHistory>({
  leg: z.optional(sided(object<LimbHistory>(either, distanceRule))),
  arm: z.optional(
    sided(
      object<ArmHistory>({ ...either, coldFingers: yes, dizzyOnUse: yes, chestPainOnUse: yes }, distanceRule),
    ),
  ),
  rhythm: oneOf(RHYTHMS),
  elsewhere: anyOf(SYMPTOMS_ELSEWHERE),
  risks: anyOf(RISK_FACTORS),
  operations: z.optional(textSchema),
});
