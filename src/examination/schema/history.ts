import * as z from 'zod/mini';
import {
  LIMB_ONSETS,
  type LimbHistory,
  LONGEST_HOURS,
  type PatientHistory,
  RHYTHMS,
  RISK_FACTORS,
  SEVERITIES,
  SYMPTOMS,
} from '../types/history.js';
import { object, rule, sided, textSchema } from './common.js';
import { anyOf, oneOf, upTo } from './measures.js';

const limbHistory = object<LimbHistory>(
  {
    symptom: oneOf(SYMPTOMS),
    distance: z.optional(upTo(10_000)),
    severity: oneOf(SEVERITIES),
    onset: oneOf(LIMB_ONSETS),
    hours: z.optional(upTo(LONGEST_HOURS)),
    note: z.optional(textSchema),
  },
  rule(
    'distance-only-with-symptom',
    ['distance', 'symptom'],
    (h) => h.distance === undefined || h.symptom !== 'none',
  ),
);

export const historySchema: z.ZodMiniType<PatientHistory> = object<PatientHistory>({
  leg: z.optional(sided(limbHistory)),
  arm: z.optional(sided(limbHistory)),
  rhythm: oneOf(RHYTHMS),
  risks: anyOf(RISK_FACTORS),
  operations: z.optional(textSchema),
});
