import type { PathWriter } from './path-writer.js';

type Point = readonly [x: number, y: number];

/** Shorter than this, two points are one and bend nothing. */
const EPSILON = 1e-12;

/** A control point beside `here`: what the curve owes to the point on its far side, weighted by the roots of both distances. */
function control(here: number, far: number, near: number, a: number, b: number): number {
  if (a <= EPSILON) return here;
  return (here * (2 * a * a + 3 * a * b + b * b) - far * b * b + near * a * a) / (3 * a * (a + b));
}

const root = ([x0, y0]: Point, [x1, y1]: Point): number => Math.sqrt(Math.hypot(x1 - x0, y1 - y0));

/** The cubic from one point to the next, between its neighbours. */
function segment(path: PathWriter, before: Point, from: Point, to: Point, after: Point): void {
  const [a, b, c] = [root(before, from), root(from, to), root(to, after)];
  path.bezierCurveTo(
    control(from[0], before[0], to[0], a, b),
    control(from[1], before[1], to[1], a, b),
    control(to[0], after[0], from[0], c, b),
    control(to[1], after[1], from[1], c, b),
    ...to,
  );
}

/**
 * Appends the centripetal Catmull-Rom spline through points: through each of them, without loops or cusps between them. The curve is
 * that of d3-shape, which is the oracle of its test; of that package a map would carry much more than this.
 * Source: Yuksel C et al., Comput Aided Des 2011;43(7):747-755, doi:10.1016/j.cad.2010.08.008.
 * @param closed whether it returns to where it began
 */
export function catmullRom(path: PathWriter, points: readonly Point[], closed: boolean): void {
  const n = points.length;
  const at = (i: number): Point => points[closed ? (i + n) % n : Math.min(Math.max(i, 0), n - 1)] as Point;
  if (!n) return;
  const first = closed ? 1 : 0;
  path.moveTo(...at(first));
  if (n < 3) {
    if (n === 2) path.lineTo(...at(first + 1));
    if (closed || n === 1) path.closePath();
    return;
  }
  for (let i = first; i < (closed ? n + 1 : n - 1); i++)
    segment(path, at(i - 1), at(i), at(i + 1), at(i + 2));
}
