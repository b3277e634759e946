import type { Point } from './geometry.js';

function turn([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): number {
  return Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax));
}

/** Whether two polylines cross. Touching does not count. */
export function linesCross(one: readonly Point[], other: readonly Point[]): boolean {
  return one.slice(1).some((b, i) => {
    const a = one[i] as Point;
    return other.slice(1).some((d, k) => {
      const c = other[k] as Point;
      return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    });
  });
}
