import {
  type ArteryId,
  parentVessel,
  type Piece,
  type Vessel,
  vesselKey,
  VESSELS,
} from '../anatomy/index.js';
import { drawnRadius, RADII_MM } from './calibre.js';
import { AXIS, CONTINUES, COURSES, LEANS } from './figure.js';
import { mirrored, type Point, pointsFrom, type Spline, splineThrough } from './geometry.js';

const POINTS = new Map<string, readonly Point[]>();

/** Read once: a course takes those of its neighbours, too. */
function pointsOf(vessel: Vessel): readonly Point[] {
  const { artery, side } = vessel;
  const key = vesselKey(vessel);
  let read = POINTS.get(key);
  if (!read) {
    const { points, right } = COURSES[artery];
    const own = side !== 'right' || artery === 'brachiocephalic' || right !== undefined;
    read = own ? pointsFrom((side === 'right' && right) || points) : mirrored(pointsFrom(points), AXIS);
    POINTS.set(key, read);
  }
  return read;
}

/** The one artery that goes on from this one, if any does. */
const HEIRS = new Map<string, Vessel>();
for (const vessel of VESSELS) {
  const parent = CONTINUES[vessel.artery] && parentVessel(vessel);
  if (parent && CONTINUES[vessel.artery] === parent.artery) HEIRS.set(vesselKey(parent), vessel);
}

/** How far before its origin the point stands that lets a branch start along its stem, in figure units. */
const LEAN = 9;

/** A point on the way of a stem towards its end, so that a branch leaves along it. */
function leanOf(stem: readonly Point[]): readonly Point[] {
  const [[ax, ay], [bx, by]] = stem.slice(-2) as [Point, Point];
  const length = Math.hypot(bx - ax, by - ay);
  return [[bx - ((bx - ax) / length) * LEAN, by - ((by - ay) / length) * LEAN]];
}

const COURSE_OF = new Map<string, Spline>();

/** The course of a vessel through the figure; computed once. */
export function courseOf(vessel: Vessel): Spline {
  const key = vesselKey(vessel);
  let course = COURSE_OF.get(key);
  if (!course) {
    const parent = CONTINUES[vessel.artery] && parentVessel(vessel);
    const heir = HEIRS.get(key);
    const stem = LEANS[vessel.artery] && parentVessel(vessel);
    course = splineThrough(pointsOf(vessel), {
      before: parent ? pointsOf(parent).slice(-3, -1) : stem ? leanOf(pointsOf(stem)) : [],
      after: heir ? pointsOf(heir).slice(1, 3) : [],
    });
    COURSE_OF.set(key, course);
  }
  return course;
}

/** Half the drawn width of an artery at a fraction of its length, in figure units. */
export function radiusAt(artery: ArteryId, t: number): number {
  const [origin, end] = RADII_MM[artery];
  return drawnRadius(origin + (end - origin) * t);
}

/** Length of a piece on the figure, in figure units. */
export function drawnLength(piece: Piece): number {
  return (piece.to - piece.from) * courseOf(piece).length;
}
