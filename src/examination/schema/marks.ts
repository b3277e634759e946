import * as z from 'zod/mini';
import { FIGURE_HEIGHT, FIGURE_WIDTH, type MarkForm } from '../../anatomy/index.js';
import { rule, textSchema } from './common.js';
import { upTo } from './measures.js';

/** What a mark on the skin shows, worst first; `cyanosis` is blue discolouration, `cold` says that all below the line is cold. */
export const MARK_KINDS = [
  'ulcer',
  'gangrene',
  'pallor',
  'redness',
  'cyanosis',
  'cold',
  'scar',
  'amputation',
] as const;
export type MarkKind = (typeof MARK_KINDS)[number];

/** How each kind lies on the skin: over an area, along a line, or across the limb. */
export const MARK_FORMS: Readonly<Record<MarkKind, MarkForm>> = {
  ulcer: 'area',
  gangrene: 'area',
  pallor: 'area',
  redness: 'area',
  cyanosis: 'area',
  cold: 'across',
  scar: 'along',
  amputation: 'across',
};

/** Most marks of one record, and most points of one mark. */
export const MOST_MARKS = 60;
export const MOST_POINTS = 200;

/** Fewest points of a mark: an area has three corners, a line two ends. */
export function fewestPoints(kind: MarkKind): number {
  return MARK_FORMS[kind] === 'area' ? 3 : 2;
}

function coordinate(most: number) {
  return upTo(most).check(
    z.refine((value) => Math.round(value * 10) / 10 === value, {
      params: { expected: 'at most one decimal', code: 'not-allowed' },
    }),
  );
}

export const markSchema = z
  .strictObject({
    /** Tells the marks of a record apart. */
    id: z.string().check(z.minLength(1), z.maxLength(40)),
    kind: z.enum(MARK_KINDS),
    /** Corners of an area, or points along a line, in units of the figure's box (see `FIGURE_WIDTH`). */
    points: z
      .array(z.tuple([coordinate(FIGURE_WIDTH), coordinate(FIGURE_HEIGHT)]))
      .check(z.minLength(2), z.maxLength(MOST_POINTS)),
    note: z.optional(textSchema),
  })
  .check(
    rule(
      ({ kind, points }) => points.length < 2 || points.length >= fewestPoints(kind),
      'points',
      'at least 3 points for an area',
    ),
  );
export type Mark = z.infer<typeof markSchema>;

/** What is seen on the skin, in the order it was recorded. */
export const marksSchema = z.array(markSchema).check(
  z.maxLength(MOST_MARKS),
  z.refine((marks) => new Set(marks.map(({ id }) => id)).size === marks.length, {
    params: { expected: 'each id once' },
  }),
);
