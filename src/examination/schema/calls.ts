import * as z from 'zod/mini';
import { CALLED_LIMBS, CALLED_TEAMS, MOST_CALLS, type TeamCall } from '../types/calls.js';
import { instantSchema, object, textSchema } from './common.js';
import { oneOf } from './measures.js';

/** Which teams were called, in the order it was recorded. */
export const callsSchema: z.ZodMiniType<readonly TeamCall[]> = z
  .array(
    object<TeamCall>({
      team: z.enum(CALLED_TEAMS),
      at: instantSchema,
      limb: oneOf(CALLED_LIMBS),
      whom: z.optional(textSchema),
    }),
  )
  .check(z.maxLength(MOST_CALLS));
