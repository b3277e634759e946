import {
  type ArteryId,
  childVessels,
  parentVessel,
  type Piece,
  PIECES,
  type Place,
  siteDefinition,
  type Vessel,
  vesselKey,
  vesselOf,
} from '../anatomy/index.js';
import { drawnRadius, RADII_MM } from './calibre.js';
import { AXIS, CONTINUES, COURSES, type Depth } from './figure.js';
import {
  mirrored,
  type Point,
  ribbonPath,
  type Sample,
  sampleAt,
  sampleBetween,
  sampleCourse,
} from './geometry.js';

function pointsOf({ artery, side }: Vessel): readonly Point[] {
  const { points, right } = COURSES[artery];
  return side === 'right'
    ? (right ?? (artery === 'brachiocephalic' ? points : mirrored(points, AXIS)))
    : points;
}

function heirOf(vessel: Vessel): Vessel | undefined {
  const heirs = childVessels(vessel).filter((child) => CONTINUES[child.artery] === vessel.artery);
  return heirs.length === 1 ? heirs[0] : undefined;
}

const SAMPLES = new Map<string, Sample[]>();

/** The course of a vessel through the figure; computed once. */
export function courseOf(vessel: Vessel): readonly Sample[] {
  const key = vesselKey(vessel);
  let samples = SAMPLES.get(key);
  if (!samples) {
    const parent = CONTINUES[vessel.artery] && parentVessel(vessel);
    const heir = heirOf(vessel);
    samples = sampleCourse(pointsOf(vessel), {
      before: parent ? pointsOf(parent).slice(-3, -1) : [],
      after: heir ? pointsOf(heir).slice(1, 3) : [],
    });
    SAMPLES.set(key, samples);
  }
  return samples;
}

/** Half the drawn width of an artery at a fraction of its length, in figure units. */
export function radiusAt(artery: ArteryId, t: number): number {
  const [origin, end] = RADII_MM[artery];
  return drawnRadius(origin + (end - origin) * t);
}

/** Where a place lies on the figure. */
export function positionOf(place: Place): { x: number; y: number } {
  const { x, y } = sampleAt(courseOf(vesselOf(place)), siteDefinition(place.site).at);
  return { x, y };
}

/** A stretch of artery drawn in one tone. */
export interface DrawnStretch {
  readonly piece: Piece;
  readonly from: number;
  readonly to: number;
  readonly depth: Depth;
}

function stretches(piece: Piece): DrawnStretch[] {
  const { depth, changesDepthAt: at } = COURSES[piece.artery];
  if (at === undefined) return [{ piece, from: piece.from, to: piece.to, depth }];
  const beyond: Depth = depth === 'deep' ? 'near' : 'deep';
  const parts: DrawnStretch[] = [];
  if (piece.from < at) parts.push({ piece, from: piece.from, to: Math.min(at, piece.to), depth });
  if (piece.to > at) parts.push({ piece, from: Math.max(at, piece.from), to: piece.to, depth: beyond });
  return parts;
}

/** Every stretch of the tree in the order of the pieces. */
export const STRETCHES: readonly DrawnStretch[] = PIECES.flatMap(stretches);

/** The ribbon of a stretch between two fractions of the artery, as path data. */
export function stretchPath(piece: Piece, from: number, to: number, width = 1): string {
  return ribbonPath(sampleBetween(courseOf(piece), from, to), (t) => width * radiusAt(piece.artery, t));
}

/** Length of a piece on the figure, in figure units. */
export function drawnLength(piece: Piece): number {
  const samples = sampleBetween(courseOf(piece), piece.from, piece.to);
  return samples.slice(1).reduce((sum, p, i) => {
    const q = samples[i] as Sample;
    return sum + Math.hypot(p.x - q.x, p.y - q.y);
  }, 0);
}
