import {
  areaOf,
  contains,
  fromStretch,
  type MarkForm,
  regionAt,
  regionAxis,
  type SurfacePoint,
} from '../anatomy/index.js';
import { type Mark, MARK_FORMS, type MarkKind, MOST_POINTS } from '../examination/index.js';
import { closedPath, openPath, type Point } from './geometry.js';

/*
 * Converts strokes on the skin to marks, and marks to paths. Strokes and marks are in figure units; paths are in whatever units the
 * points given to them are.
 */

/** Areas smaller than this are ignored as slips, in square figure units. */
const LEAST_AREA = 24;

/**
 * Leaves out the points of a stroke that lie within a tolerance of the straight line between others.
 * Source: Ramer 1972 (doi:10.1016/S0146-664X(72)80017-0), Douglas and Peucker 1973 (doi:10.3138/FM57-6770-U75U-7727).
 */
export function simplify(points: readonly Point[], tolerance: number): Point[] {
  const keep = new Set([0, points.length - 1]);
  const open: [number, number][] = [[0, points.length - 1]];
  for (let span = open.pop(); span; span = open.pop()) {
    const [from, to] = span;
    let farthest = from;
    let most = tolerance;
    for (let i = from + 1; i < to; i++) {
      const { distance } = fromStretch(points[i] as Point, points[from] as Point, points[to] as Point);
      if (distance > most) [farthest, most] = [i, distance];
    }
    if (farthest === from) continue;
    keep.add(farthest);
    open.push([from, farthest], [farthest, to]);
  }
  return points.filter((_, i) => keep.has(i));
}

/**
 * A stroke as the points of a mark: simplified, an area closed where it was begun.
 * @param tolerance in figure units
 * @returns `undefined` for a stroke too small or too straight for the form
 */
export function strokePoints(
  stroke: readonly Point[],
  form: MarkForm,
  tolerance: number,
): Point[] | undefined {
  let kept = simplify(stroke, tolerance);
  const every = Math.ceil((kept.length - 1) / (MOST_POINTS - 1));
  if (every > 1) kept = kept.filter((_, i) => i % every === 0 || i === kept.length - 1);
  const [first] = kept;
  const last = kept.at(-1);
  if (!first || !last || kept.length < 2) return undefined;
  if (form !== 'area') return kept;
  // A hand-drawn loop rarely ends where it began; a last point close to the first is dropped.
  if (kept.length > 3 && Math.hypot(first[0] - last[0], first[1] - last[1]) < 4 * tolerance) kept.pop();
  return kept.length > 2 && areaOf(kept) >= LEAST_AREA ? kept : undefined;
}

/** How a mark is drawn: its outline or line, what hangs on it, and what fills it. */
export interface MarkShape {
  readonly d: string;
  /** A line beside the first, whose dashes hang on the far side of a line of cold. */
  readonly teeth?: string;
  /** Lines over the whole of an area, to be clipped by its outline. */
  readonly hatch?: string;
}

/** The distal direction of a limb at a line across it. */
export function farSide(points: readonly SurfacePoint[]): Point {
  const middle = points[Math.floor(points.length / 2)] as SurfacePoint;
  const [first, last] = [points[0], points.at(-1)] as [SurfacePoint, SurfacePoint];
  const centre: Point = points.length > 2 ? middle : [(first[0] + last[0]) / 2, (first[1] + last[1]) / 2];
  const place = regionAt(centre);
  if (!place) return [0, 1];
  const [[ax, ay], [bx, by]] = regionAxis(place);
  return [bx - ax, by - ay];
}

const HATCH: Partial<Record<MarkKind, 'dots' | 'slant'>> = { redness: 'dots', cyanosis: 'slant' };
const SPACING = 6;

/** Level rows whose dashes make dots, every other one shifted; or slanting lines. */
function hatch(points: readonly Point[], kind: 'dots' | 'slant'): string {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const snap = (value: number): number => Math.floor(value / (2 * SPACING)) * 2 * SPACING;
  const [left, top] = [snap(Math.min(...xs)) - SPACING, snap(Math.min(...ys)) - SPACING];
  const [right, bottom] = [Math.ceil(Math.max(...xs) + SPACING), Math.ceil(Math.max(...ys) + SPACING)];
  let d = '';
  if (kind === 'dots')
    for (let y = top, i = 0; y < bottom; y += SPACING, i++)
      d += `M${left + (i % 2) * (SPACING / 2)} ${y}H${right}`;
  else {
    const height = bottom - top;
    for (let x = left - snap(height) - 2 * SPACING; x < right; x += SPACING)
      d += `M${x} ${bottom}l${height} ${-height}`;
  }
  return d;
}

/**
 * The paths of a mark.
 * @param points of the mark, in the units to draw in
 * @param far direction in which the limb runs on; see {@link farSide}
 * @param tooth how far the teeth of a line of cold reach, in the units to draw in
 */
export function markShape(
  kind: MarkKind,
  points: readonly Point[],
  far: Point = [0, 1],
  tooth = 7,
): MarkShape {
  if (MARK_FORMS[kind] === 'area') {
    const fill = HATCH[kind];
    return { d: closedPath(points), ...(fill && { hatch: hatch(points, fill) }) };
  }
  const d = openPath(points);
  if (kind !== 'cold') return { d };
  return { d, teeth: openPath(beside(points, far, tooth / 2)) };
}

/** A line offset to the side that a direction points to. */
function beside(points: readonly Point[], far: Point, by: number): Point[] {
  const ways = points.map((_, i): Point => {
    const [ax, ay] = points[Math.max(0, i - 1)] as Point;
    const [bx, by] = points[Math.min(points.length - 1, i + 1)] as Point;
    const length = Math.hypot(bx - ax, by - ay) || 1;
    return [(ay - by) / length, (bx - ax) / length];
  });
  const facing = Math.sign(ways.reduce((sum, [x, y]) => sum + x * far[0] + y * far[1], 0)) || 1;
  return points.map(([x, y], i) => {
    const [nx, ny] = ways[i] as Point;
    return [x + nx * facing * by, y + ny * facing * by];
  });
}

/** A mark that a point is on or near: lines first, then the smallest area around it, then an edge close by. */
export function markAt<M extends Pick<Mark, 'kind' | 'points'>>(
  marks: readonly M[],
  point: Point,
  reach: number,
): M | undefined {
  let best: M | undefined;
  let least = Infinity;
  for (const mark of marks) {
    const { points } = mark;
    const area = MARK_FORMS[mark.kind] === 'area';
    const edges = area ? points.length : points.length - 1;
    let near = Infinity;
    for (let i = 0; i < edges; i++)
      near = Math.min(
        near,
        fromStretch(point, points[i] as Point, points[(i + 1) % points.length] as Point).distance,
      );
    const within = area && contains(points, point);
    if (!within && near > reach) continue;
    const order = within ? 1e3 + areaOf(points) : area ? 1e7 + near : near;
    if (order < least) [best, least] = [mark, order];
  }
  return best;
}
