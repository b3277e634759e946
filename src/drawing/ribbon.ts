import { bentAt, type Bent, type Spline, STEPS } from './geometry.js';
import type { PathWriter } from './path-writer.js';

/** Fractions at which the cubics of a stretch meet: its ends and the points of the course between them. */
function joints({ spans, reached, length }: Spline, from: number, to: number): number[] {
  const inside = spans
    .slice(1)
    .map((_, i) => (reached[(i + 1) * STEPS - 1] as number) / length)
    .filter((t) => t > from + NEAR && t < to - NEAR);
  return [from, ...inside, to];
}

/** Joints nearer to each other than this share of the course are one. */
const NEAR = 0.01;
/** Turn of a stretch between two joints, in radians, from which its edges are drawn in two cubics. */
const SHARP = 0.7;

/**
 * Appends a tapered ribbon along a stretch of a course, with round ends. Its edges are cubics that match position and slope
 * of the true offset curve at their joints.
 * @param radius half the width at a fraction of the whole course
 */
export function drawRibbon(
  path: PathWriter,
  course: Spline,
  from: number,
  to: number,
  radius: (t: number) => number,
): void {
  const stops = joints(course, from, to).map((t) => bentAt(course, t));
  const points = stops.flatMap((stop, i) => {
    const last = stops[i - 1];
    const turn = last
      ? Math.abs(Math.atan2(last.nx * stop.ny - last.ny * stop.nx, last.nx * stop.nx + last.ny * stop.ny))
      : 0;
    return last && turn > SHARP ? [bentAt(course, (last.t + stop.t) / 2), stop] : [stop];
  });
  const taper = (radius(to) - radius(from)) / ((to - from) * course.length || 1);
  /** Position of one edge beside a point, and how it moves there a unit of length of the course. */
  const edge = (p: Bent, sign: number): [x: number, y: number, dx: number, dy: number] => {
    const r = sign * radius(p.t);
    const along = Math.max(0, 1 - p.curvature * r);
    return [
      p.x + p.nx * r,
      p.y + p.ny * r,
      p.ny * along + p.nx * sign * taper,
      -p.nx * along + p.ny * sign * taper,
    ];
  };
  const side = (sign: 1 | -1): void => {
    const way = sign > 0 ? points : [...points].reverse();
    way.forEach((p, i) => {
      const next = way[i + 1];
      if (!next) return;
      const third = ((next.t - p.t) * course.length) / 3;
      const [x0, y0, dx0, dy0] = edge(p, sign);
      const [x1, y1, dx1, dy1] = edge(next, sign);
      path.bezierCurveTo(x0 + dx0 * third, y0 + dy0 * third, x1 - dx1 * third, y1 - dy1 * third, x1, y1);
    });
  };
  const first = points[0] as Bent;
  const last = points.at(-1) as Bent;
  const [startX, startY] = edge(first, 1);
  const [endX, endY] = edge(last, -1);
  path.moveTo(startX, startY);
  side(1);
  path.halfCircleTo(false, endX, endY);
  side(-1);
  path.halfCircleTo(false, startX, startY);
  path.closePath();
}
