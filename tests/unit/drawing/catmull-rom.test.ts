import { curveCatmullRom, curveCatmullRomClosed, line } from 'd3-shape';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closedPath, openPath, type Point } from '../../../src/drawing/index.js';

const point: fc.Arbitrary<Point> = fc.tuple(
  fc.integer({ min: -2000, max: 2000 }),
  fc.integer({ min: -2000, max: 2000 }),
);

/** Every number of path data with its command, made absolute. */
function absolute(d: string): { readonly command: string; readonly numbers: number[] }[] {
  let [x, y] = [0, 0];
  return [...d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)].map(([, command = '', rest = '']) => {
    const relative = command === command.toLowerCase() && command !== 'z';
    const numbers = (rest.match(/-?\d*\.?\d+(e-?\d+)?/g) ?? []).map(
      (text, i) => Number(text) + (relative ? (i % 2 ? y : x) : 0),
    );
    // Each pair of this writer's steps is taken from the pair before.
    if (numbers.length) [x, y] = numbers.slice(-2) as [number, number];
    return { command: command.toUpperCase(), numbers };
  });
}

function same(ours: string, theirs: string): void {
  const [a, b] = [absolute(ours), absolute(theirs)];
  expect(a.map(({ command }) => command)).toEqual(b.map(({ command }) => command));
  a.forEach(({ numbers }, i) =>
    numbers.forEach((value, k) => expect(Math.abs(value - (b[i]?.numbers[k] as number))).toBeLessThan(0.051)),
  );
}

describe('the curve through points', () => {
  it('is the centripetal one of d3-shape, open and closed, points that repeat included', () => {
    const points = fc
      .array(point, { minLength: 1, maxLength: 9 })
      .chain((some) =>
        fc.array(fc.constantFrom(...some), { maxLength: 2 }).map((more) => [...some, ...more]),
      );
    fc.assert(
      fc.property(points, (all) => {
        same(openPath(all), line<Point>().curve(curveCatmullRom.alpha(0.5))(all) ?? '');
        same(closedPath(all), line<Point>().curve(curveCatmullRomClosed.alpha(0.5))(all) ?? '');
      }),
    );
  });
});
