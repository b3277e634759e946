import { type Point, sampleAt, type Spline } from './geometry.js';
import { type PathUnit, PathWriter } from './path-writer.js';

/** A course with half its drawn width at a share of it. */
export interface WideCourse {
  readonly spline: Spline;
  radius(at: number): number;
}

/** A point of a course with half its width there. */
interface Station {
  readonly x: number;
  readonly y: number;
  readonly nx: number;
  readonly ny: number;
  readonly r: number;
}

/** Distance between stations, in units of the drawing. */
const STEP = 3;

const STATIONS = new WeakMap<Spline, readonly Station[]>();

function stationsOf({ spline, radius }: WideCourse): readonly Station[] {
  const known = STATIONS.get(spline);
  if (known) return known;
  const count = Math.max(2, Math.ceil(spline.length / STEP));
  const stations = Array.from({ length: count + 1 }, (_, i): Station => {
    const { x, y, nx, ny } = sampleAt(spline, i / count);
    return { x, y, nx, ny, r: radius(i / count) };
  });
  STATIONS.set(spline, stations);
  return stations;
}

function nearest(
  stations: readonly Station[],
  [x, y]: Point,
): { readonly distance: number; readonly at: number } {
  let at = 0;
  let least = Infinity;
  stations.forEach((station, i) => {
    const distance = Math.hypot(station.x - x, station.y - y);
    if (distance < least) [least, at] = [distance, i];
  });
  return { distance: least, at };
}

function edgeOf(stations: readonly Station[], side: 1 | -1): Point[] {
  return stations.map(({ x, y, nx, ny, r }): Point => [x + side * nx * r, y + side * ny * r]);
}

/** The index reached by walking a length along points. */
function walk(points: readonly Point[], from: number, by: 1 | -1, length: number): number {
  let at = from;
  let done = 0;
  while (done < length && points[at + by]) {
    const [a, b] = [points[at] as Point, points[at + by] as Point];
    done += Math.hypot(b[0] - a[0], b[1] - a[1]);
    at += by;
  }
  return at;
}

/** Stations of a branch looked at beyond the last one within its stem, before its edge counts as free. */
const FREE = 14;
/** Angles in radians at which there is nothing to round. */
const FLAT = 2.85;
const SHUT = 0.05;

/** The web in one crotch between a branch and its stem; `undefined` where they leave none. */
function web(
  branch: readonly Station[],
  stems: readonly (readonly Station[])[],
  side: 1 | -1,
): readonly Point[] | undefined {
  const edge = edgeOf(branch, side);
  let last = -1;
  let stem: readonly Station[] | undefined;
  for (let i = 0, free = 0; i < edge.length && free < FREE; i++) {
    const within = stems.find((one) => {
      const { distance, at } = nearest(one, edge[i] as Point);
      return at > 0 && at < one.length - 1 && distance < (one[at] as Station).r;
    });
    free = within ? 0 : free + 1;
    if (within) [last, stem] = [i, within];
  }
  if (last < 0 || last >= edge.length - 4 || !stem) return undefined;
  const crotch = edge[last] as Point;
  const { at } = nearest(stem, crotch);
  const beside = stem[at] as Station;
  const facing = (crotch[0] - beside.x) * beside.nx + (crotch[1] - beside.y) * beside.ny >= 0 ? 1 : -1;
  const wall = edgeOf(stem, facing);
  const own = (branch[last] as Station).r;
  const size = 1.15 * Math.min(own, beside.r);
  const [way] = ([1, -1] as const)
    .map((by) => ({ by, far: nearest(branch, wall[walk(wall, at, by, 2.2 * size)] as Point).distance }))
    .sort((a, b) => b.far - a.far);
  const by = way?.by ?? 1;
  const [u, v] = [
    edge[walk(edge, last, 1, 1.5 * size)] as Point,
    wall[walk(wall, at, by, 2.2 * size)] as Point,
  ];
  const [ux, uy, vx, vy] = [u[0] - crotch[0], u[1] - crotch[1], v[0] - crotch[0], v[1] - crotch[1]];
  const cosine = (ux * vx + uy * vy) / (Math.hypot(ux, uy) * Math.hypot(vx, vy) || 1);
  const angle = Math.acos(Math.max(-1, Math.min(1, cosine)));
  if (angle > FLAT || angle < SHUT) return undefined;
  const length = Math.max(0.9 * size, Math.min(3.6 * size, (0.8 * size) / Math.tan(angle / 2)));
  const [onWall, onEdge] = [walk(wall, at, by, length), walk(edge, last, 1, length)];
  if (nearest(branch, wall[onWall] as Point).distance < own * 0.9) return undefined;
  const centre = (stations: readonly Station[], i: number): Point => {
    const { x, y } = stations[i] as Station;
    return [x, y];
  };
  const around = [
    wall[onWall] as Point,
    crotch,
    edge[onEdge] as Point,
    centre(branch, onEdge),
    centre(branch, last),
    centre(stem, at),
    centre(stem, onWall),
  ];
  return clockwise(around) ? around : [...around.slice(0, 3).reverse(), ...around.slice(3).reverse()];
}

/** Whether a contour runs as the ribbons do: one that runs against them would be cut out where they overlap. */
function clockwise(points: readonly Point[]): boolean {
  let twice = 0;
  points.forEach(([x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] as Point;
    twice += x * nextY - nextX * y;
  });
  return twice < 0;
}

const DRAWN = new Map<PathUnit, WeakMap<Spline, string>>();

/**
 * The webs that round the fork where a branch leaves its stems, as path data; computed once for a branch.
 * @param stems what it leaves, and what leaves at the same place
 */
export function filletsOf(branch: WideCourse, unit: PathUnit, stems: () => readonly WideCourse[]): string {
  const drawn = DRAWN.get(unit) ?? new WeakMap<Spline, string>();
  DRAWN.set(unit, drawn);
  const known = drawn.get(branch.spline);
  if (known !== undefined) return known;
  const around = stems().map(stationsOf);
  const path = new PathWriter(unit);
  for (const side of [1, -1] as const) {
    const points = web(stationsOf(branch), around, side);
    if (!points) continue;
    const [[x0, y0], [cx, cy], [x1, y1], ...back] = points as [Point, Point, Point, ...Point[]];
    path.moveTo(x0, y0);
    // A quadratic through the crotch, as a cubic.
    const [a, b] = [1 / 3, 2 / 3];
    path.bezierCurveTo(x0 * a + cx * b, y0 * a + cy * b, x1 * a + cx * b, y1 * a + cy * b, x1, y1);
    for (const [x, y] of back) path.lineTo(x, y);
    path.closePath();
  }
  const d = path.toString();
  drawn.set(branch.spline, d);
  return d;
}
