import * as z from 'zod/mini';
import { type Circulation, HIGHEST_HEART_RATE, HIGHEST_SYSTOLIC } from '../types/circulation.js';
import { object, rule } from './common.js';
import { upTo } from './measures.js';

export const circulationSchema: z.ZodMiniType<Circulation> = object<Circulation>(
  {
    shock: z.optional(z.boolean()),
    systolic: z.optional(upTo(HIGHEST_SYSTOLIC)),
    diastolic: z.optional(upTo(HIGHEST_SYSTOLIC)),
    heartRate: z.optional(upTo(HIGHEST_HEART_RATE)),
  },
  rule(
    'diastolic-below-systolic',
    ['diastolic', 'systolic'],
    (c) => c.diastolic === undefined || c.systolic === undefined || c.diastolic <= c.systolic,
  ),
);
