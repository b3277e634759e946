import * as z from 'zod/mini';
import { contextSchema } from './context.js';
import { bedsideSchema } from './bedside.js';
import { historySchema } from './history.js';
import { inspectionSchema } from './inspection.js';
import { marksSchema } from './marks.js';
import { pressuresSchema } from './pressures.js';
import { bruitsSchema, delaysSchema, pulsesSchema } from './pulses.js';
import { instantSchema, textSchema } from './common.js';
import { stagingSchema } from './staging.js';

/** The tag of the record's form. A later form gets a higher number. */
export const FORMAT = 'pulse-map/1';
export const FORMAT_NAME = 'pulse-map';
export const FORMAT_VERSION = 1;

/** How grades are entered and shown. Stored, since a number without its scale is ambiguous. */
export const SCALE_IDS = ['0-3', '0-4', 'words'] as const;
export type ScaleId = (typeof SCALE_IDS)[number];

export const ONSETS = ['acute', 'chronic', 'unknown'] as const;
export type Onset = (typeof ONSETS)[number];

/** One examination of one patient, as plain JSON. Every part but `format` and `scale` may be missing: missing is "not examined". */
export const examinationSchema = z.strictObject({
  format: z.literal(FORMAT),
  scale: z.enum(SCALE_IDS),
  /** When the examination took place. */
  examinedAt: z.optional(instantSchema),
  examiner: z.optional(textSchema),
  onset: z.optional(z.enum(ONSETS)),
  context: z.optional(contextSchema),
  pulses: z.optional(pulsesSchema),
  bruits: z.optional(bruitsSchema),
  delays: z.optional(delaysSchema),
  history: z.optional(historySchema),
  inspection: z.optional(inspectionSchema),
  marks: z.optional(marksSchema),
  bedside: z.optional(bedsideSchema),
  pressures: z.optional(pressuresSchema),
  staging: z.optional(stagingSchema),
});
export type Examination = z.infer<typeof examinationSchema>;

/** An examination in which nothing has been recorded. */
export function emptyExamination(scale: ScaleId = '0-3'): Examination {
  return { format: FORMAT, scale };
}
