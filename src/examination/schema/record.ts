import * as z from 'zod/mini';
import { bruitsSchema, delaysSchema, pulsesSchema } from './pulses.js';
import { textSchema } from './common.js';

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
  /** When the examination took place, ISO 8601 with offset or `Z`, to the minute or finer. */
  examinedAt: z.optional(z.iso.datetime({ offset: true })),
  examiner: z.optional(textSchema),
  onset: z.optional(z.enum(ONSETS)),
  pulses: z.optional(pulsesSchema),
  bruits: z.optional(bruitsSchema),
  delays: z.optional(delaysSchema),
});
export type Examination = z.infer<typeof examinationSchema>;

/** An examination in which nothing has been recorded. */
export function emptyExamination(scale: ScaleId = '0-3'): Examination {
  return { format: FORMAT, scale };
}
