import * as z from 'zod/mini';
import { type Amendment, AMENDMENT_KINDS, MOST_AMENDMENTS } from '../types/amendments.js';
import { instantSchema, object, textSchema } from './common.js';

/** How a finished examination was changed, in the order it was recorded. */
export const amendmentsSchema: z.ZodMiniType<readonly Amendment[]> = z
  .array(
    object<Amendment>({
      kind: z.enum(AMENDMENT_KINDS),
      at: instantSchema,
      by: z.optional(textSchema),
      why: z.optional(textSchema),
    }),
  )
  .check(z.maxLength(MOST_AMENDMENTS));
