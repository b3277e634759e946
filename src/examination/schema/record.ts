import * as z from 'zod/mini';
import {
  type Examination,
  type Format,
  FORMAT,
  FORMAT_MAJOR,
  FORMAT_NAME,
  ONSETS,
  SCALE_IDS,
} from '../types/record.js';
import { RECORD_STATES } from '../types/amendments.js';
import { amendmentsSchema } from './amendments.js';
import { bedsideSchema } from './bedside.js';
import { callsSchema } from './calls.js';
import { circulationSchema } from './circulation.js';
import { type Fields, instantSchema, object, type RuleParams, textSchema } from './common.js';
import { contextSchema } from './context.js';
import { historySchema } from './history.js';
import { inspectionSchema } from './inspection.js';
import { marksSchema } from './marks.js';
import { methodSchema } from './method.js';
import { pressuresSchema } from './pressures.js';
import { bruitsSchema, delaysSchema, pulsesSchema } from './pulses.js';
import { stagingSchema } from './staging.js';

const OWN_MAJOR = new RegExp(`^${FORMAT_NAME}/${FORMAT_MAJOR}(\\.(0|[1-9]\\d{0,8}))?$`);

/** Whether this version reads records of this format: all minor versions of its own major one. */
export function isRecordFormat(format: string): format is Format {
  return OWN_MAJOR.test(format);
}

/** The form of an examination; what is carried stands beside it (see `parseExamination`). */
export const examinationFields: Fields<Omit<Examination, 'carried'>> = {
  format: z.custom<Format>((text) => typeof text === 'string' && isRecordFormat(text), {
    params: { expected: { code: 'one-of', values: [FORMAT] }, alone: true } satisfies RuleParams,
  }),
  scale: z.enum(SCALE_IDS),
  examinedAt: z.optional(instantSchema),
  examiner: z.optional(textSchema),
  status: z.optional(z.enum(RECORD_STATES)),
  amendments: z.optional(amendmentsSchema),
  onset: z.optional(z.enum(ONSETS)),
  context: z.optional(contextSchema),
  circulation: z.optional(circulationSchema),
  pulses: z.optional(pulsesSchema),
  bruits: z.optional(bruitsSchema),
  delays: z.optional(delaysSchema),
  history: z.optional(historySchema),
  inspection: z.optional(inspectionSchema),
  marks: z.optional(marksSchema),
  bedside: z.optional(bedsideSchema),
  pressures: z.optional(pressuresSchema),
  method: z.optional(methodSchema),
  staging: z.optional(stagingSchema),
  calls: z.optional(callsSchema),
};

export const examinationSchema: z.ZodMiniType<Omit<Examination, 'carried'>> = object(examinationFields);
