import * as z from 'zod/mini';
import { FIGURE_HEIGHT, FIGURE_WIDTH } from '../../anatomy/index.js';
import { fewestPoints, LONGEST_ID, type Mark, MARK_KINDS, MOST_MARKS, MOST_POINTS } from '../types/marks.js';
import { object, only, rule, textSchema } from './common.js';
import { upTo } from './measures.js';

const coordinate = (most: number) =>
  upTo(most).check(only<number>('one-decimal', (value) => Math.round(value * 10) / 10 === value, true));

const markSchema = object<Mark>(
  {
    id: z.string().check(z.minLength(1), z.maxLength(LONGEST_ID)),
    kind: z.enum(MARK_KINDS),
    points: z
      .array(z.tuple([coordinate(FIGURE_WIDTH), coordinate(FIGURE_HEIGHT)]))
      .check(z.minLength(2), z.maxLength(MOST_POINTS)),
    note: z.optional(textSchema),
  },
  rule(
    'area-points',
    ['points', 'kind'],
    ({ kind, points }) => points.length < 2 || points.length >= fewestPoints(kind),
  ),
);

/** What is seen on the skin, in the order it was recorded. */
export const marksSchema: z.ZodMiniType<readonly Mark[]> = z.array(markSchema).check(
  z.maxLength(MOST_MARKS),
  only<readonly Mark[]>('ids-differ', (marks) => new Set(marks.map(({ id }) => id)).size === marks.length),
);
