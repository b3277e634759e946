import * as z from 'zod/mini';
import { FIGURE_HEIGHT, FIGURE_WIDTH, PLATE_BOXES, PLATE_VIEWS, plateOf } from '../../anatomy/index.js';
import {
  fewestPoints,
  LONGEST_ID,
  type Mark,
  MARK_KINDS,
  type MarkOnPlate,
  MOST_MARKS,
  MOST_POINTS,
} from '../types/marks.js';
import { object, only, rule, textSchema } from './common.js';
import { upTo } from './measures.js';

const coordinate = (most: number) =>
  upTo(most).check(only<number>('one-decimal', (value) => Math.round(value * 10) / 10 === value, true));

const pointsSchema = (width: number, height: number) =>
  z.array(z.tuple([coordinate(width), coordinate(height)])).check(z.minLength(2), z.maxLength(MOST_POINTS));

const most = (of: 0 | 1): number => Math.max(...Object.values(PLATE_BOXES).map((box) => box[of]));

const onPlateSchema = object<MarkOnPlate>(
  { plate: z.enum(PLATE_VIEWS), points: pointsSchema(most(0), most(1)) },
  rule('on-plate', ['points', 'plate'], ({ plate, points }) => {
    const [width, height] = PLATE_BOXES[plateOf(plate).name];
    return points.every(([x, y]) => x <= width && y <= height);
  }),
);

const markSchema = object<Mark>(
  {
    id: z.string().check(z.minLength(1), z.maxLength(LONGEST_ID)),
    kind: z.enum(MARK_KINDS),
    points: pointsSchema(FIGURE_WIDTH, FIGURE_HEIGHT),
    on: z.optional(onPlateSchema),
    note: z.optional(textSchema),
  },
  rule(
    'area-points',
    ['points', 'kind'],
    ({ kind, points }) => points.length < 2 || points.length >= fewestPoints(kind),
  ),
  rule(
    'area-points',
    ['on', 'kind'],
    ({ kind, on }) => on === undefined || on.points.length < 2 || on.points.length >= fewestPoints(kind),
  ),
);

/** What is seen on the skin, in the order it was recorded. */
export const marksSchema: z.ZodMiniType<readonly Mark[]> = z.array(markSchema).check(
  z.maxLength(MOST_MARKS),
  only<readonly Mark[]>('ids-differ', (marks) => new Set(marks.map(({ id }) => id)).size === marks.length),
);
