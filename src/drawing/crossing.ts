import type { Point } from './geometry.js';

/** On which side of the line from a to b a point lies; 0 on it. */
function turn([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): number {
  return Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax));
}

/** Whether the ranges from a to b and from c to d have nothing in common. */
function asunder(a: number, b: number, c: number, d: number): boolean {
  return Math.max(a, b) < Math.min(c, d) || Math.max(c, d) < Math.min(a, b);
}

/** Whether two polylines cross. Touching does not count. */
export function linesCross(one: readonly Point[], other: readonly Point[]): boolean {
  for (let i = 1; i < one.length; i++) {
    const a = one[i - 1] as Point;
    const b = one[i] as Point;
    for (let k = 1; k < other.length; k++) {
      const c = other[k - 1] as Point;
      const d = other[k] as Point;
      // Most lines of a figure lie far from each other.
      if (asunder(a[0], b[0], c[0], d[0]) || asunder(a[1], b[1], c[1], d[1])) continue;
      if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) return true;
    }
  }
  return false;
}
