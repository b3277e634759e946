import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  affineThrough,
  inverse,
  type Point,
  doubleArea,
  threeApart,
  transform,
} from '../../../src/drawing/index.js';

const coordinate = fc.double({ min: -2000, max: 2000, noNaN: true });
const point = fc.tuple(coordinate, coordinate) as fc.Arbitrary<Point>;
const factor = fc.double({ min: -3, max: 3, noNaN: true });
const affine = fc.record({ a: factor, b: factor, c: factor, d: factor, e: coordinate, f: coordinate });
const triangle = fc.tuple(point, point, point).filter((three) => doubleArea(three) > 1000);

describe('affineThrough', () => {
  it('finds any affine map again from where it takes three points', () => {
    fc.assert(
      fc.property(affine, triangle, point, (map, from, other) => {
        const to = from.map((p) => transform(map, p)) as unknown as typeof from;
        const found = affineThrough(from, to);
        const [[x, y], [u, v]] = [transform(map, other), transform(found as typeof map, other)];
        expect(Math.hypot(u - x, v - y)).toBeLessThan(1e-3);
      }),
    );
  });

  it('finds none through points on one line', () => {
    const line = [
      [0, 0],
      [1, 2],
      [2, 4],
    ] as const;
    expect(affineThrough(line, line)).toBeUndefined();
  });
});

describe('inverse', () => {
  it('takes every point back to where it came from', () => {
    const invertible = affine.filter(({ a, b, c, d }) => Math.abs(a * d - b * c) > 0.01);
    fc.assert(
      fc.property(invertible, point, (map, [x, y]) => {
        const [u, v] = transform(inverse(map), transform(map, [x, y]));
        expect(Math.hypot(u - x, v - y)).toBeLessThan(1e-5);
      }),
    );
  });
});

describe('threeApart', () => {
  it('takes three corners of a triangle wherever the points are not on one line', () => {
    fc.assert(
      fc.property(fc.array(point, { maxLength: 12 }), triangle, (others, three) => {
        const all = [...others, ...three];
        const found = threeApart(all, (p) => p);
        expect(found && doubleArea(found)).toBeGreaterThan(0);
      }),
    );
  });

  it('takes none from points on one line, or from none', () => {
    const onLine = Array.from({ length: 5 }, (_, i): Point => [i, 2 * i]);
    expect(threeApart(onLine, (p) => p)).toBeUndefined();
    expect(threeApart([] as Point[], (p) => p)).toBeUndefined();
  });
});
