import fc from 'fast-check';
import { FIGURE_HEIGHT, FIGURE_WIDTH } from '../../src/anatomy/index.js';
import { fewestPoints, type Mark, MARK_KINDS, type NewMark } from '../../src/examination/index.js';
import { noteText } from './arbitraries.js';

function tenths(most: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: most * 10 }).map((value) => value / 10);
}

const point = fc.tuple(tenths(FIGURE_WIDTH), tenths(FIGURE_HEIGHT));

/** A mark anywhere on the figure, off the body included. */
export const anyNewMark: fc.Arbitrary<NewMark> = fc.constantFrom(...MARK_KINDS).chain((kind) =>
  fc.record(
    {
      kind: fc.constant(kind),
      points: fc.array(point, { minLength: fewestPoints(kind), maxLength: 12 }),
      note: noteText,
    },
    { requiredKeys: ['kind', 'points'] },
  ),
);

/** The same with an id, as a record holds it. */
export const anyMark: fc.Arbitrary<Mark> = fc
  .tuple(fc.string({ minLength: 1, maxLength: 12 }), anyNewMark)
  .map(([id, mark]) => ({ ...mark, id, points: mark.points.map(([x, y]) => [x, y] as [number, number]) }));
