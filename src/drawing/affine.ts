import type { Point } from './geometry.js';

/** A map of the plane that keeps lines straight: (x, y) goes to (ax + cy + e, bx + dy + f), as in an SVG `matrix(a b c d e f)`. */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** Three points and where each of them goes. */
export type ThreePoints = readonly [Point, Point, Point];

export function transform({ a, b, c, d, e, f }: Affine, [x, y]: Point): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** The map back; its numbers are not finite where there is none. */
export function inverse({ a, b, c, d, e, f }: Affine): Affine {
  const by = a * d - b * c;
  return {
    a: d / by,
    b: -b / by,
    c: -c / by,
    d: a / by,
    e: (c * f - d * e) / by,
    f: (b * e - a * f) / by,
  };
}

/** Twice the area of a triangle; zero where its corners lie on one line. */
export function doubleArea([[x0, y0], [x1, y1], [x2, y2]]: ThreePoints): number {
  return Math.abs((x1 - x0) * (y2 - y0) - (x2 - x0) * (y1 - y0));
}

/** The one affine map that takes three points to three others; `undefined` where the first three lie on one line. */
export function affineThrough(from: ThreePoints, to: ThreePoints): Affine | undefined {
  if (doubleArea(from) === 0) return undefined;
  const [[x0, y0], [x1, y1], [x2, y2]] = from;
  const [[u0, v0], [u1, v1], [u2, v2]] = to;
  const [dx1, dy1, dx2, dy2] = [x1 - x0, y1 - y0, x2 - x0, y2 - y0];
  const area = dx1 * dy2 - dx2 * dy1;
  const a = ((u1 - u0) * dy2 - (u2 - u0) * dy1) / area;
  const c = ((u2 - u0) * dx1 - (u1 - u0) * dx2) / area;
  const b = ((v1 - v0) * dy2 - (v2 - v0) * dy1) / area;
  const d = ((v2 - v0) * dx1 - (v1 - v0) * dx2) / area;
  return { a, b, c, d, e: u0 - a * x0 - c * y0, f: v0 - b * x0 - d * y0 };
}

/**
 * Three of the points as far apart as three far ones can be found quickly: the first, the one farthest from it, and the one
 * farthest from the line through both. `undefined` where all lie on one line.
 */
export function threeApart<T>(items: readonly T[], at: (item: T) => Point): readonly [T, T, T] | undefined {
  const [first] = items;
  if (first === undefined) return undefined;
  const most = (measure: (item: T) => number): T =>
    items.reduce((best, item) => (measure(item) > measure(best) ? item : best), first);
  const [x0, y0] = at(first);
  const second = most((item) => Math.hypot(at(item)[0] - x0, at(item)[1] - y0));
  const area = (item: T): number => doubleArea([at(first), at(second), at(item)]);
  const third = most(area);
  return area(third) > 0 ? [first, second, third] : undefined;
}
