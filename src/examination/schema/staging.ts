import * as z from 'zod/mini';
import { sided, textSchema } from './common.js';

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
function overruled<T extends z.ZodMiniType>(stage: T) {
  return z.optional(z.strictObject({ stage, derived: z.optional(stage), why: z.optional(textSchema) }));
}

const acute = overruled(z.enum(ACUTE_CLASSES));
const grade = overruled(z.literal([...WIFI_GRADES]));

/** Stages the clinician set against the derived ones. What is derived follows from the rest of the record. */
export const stagingSchema = z.strictObject({
  leg: z.optional(
    sided(
      z.strictObject({
        fontaine: overruled(z.enum(FONTAINE_STAGES)),
        rutherford: overruled(z.literal([...RUTHERFORD_CATEGORIES])),
        acute,
        wound: grade,
        ischaemia: grade,
        infection: grade,
        wifi: overruled(z.literal([...WIFI_STAGES])),
      }),
    ),
  ),
  arm: z.optional(sided(z.strictObject({ acute }))),
});
export type Staging = z.infer<typeof stagingSchema>;
export type LegOverrules = NonNullable<NonNullable<Staging['leg']>['right']>;
export interface Overrule<T> {
  stage: T;
  derived?: T | undefined;
  why?: string | undefined;
}
