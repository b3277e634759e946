import { area, curveBasis, curveCatmullRomClosed, line } from 'd3-shape';
import type { Side } from '../anatomy/index.js';

/*
 * Drawings of the bedside tests: a leg in profile that turns about the hip, and a palm with its two arteries. Lengths are
 * units of each drawing's own box.
 */

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Box of the leg drawing, and the hip the leg turns about. */
export const LEG_BOX = { width: 480, height: 330 } as const;
export const HIP: Point = { x: 144, y: 258 };
export const LEG_ARC = 244;
/** Position of the handle along the leg: on the calf, so that the foot's colour stays visible. */
const HANDLE_AT = 132;

/** Distance from the hip, and how far the outline lies above and below the axis: patient on the back. */
const PROFILE: readonly (readonly [number, number, number])[] = [
  [-8, 24, 26],
  [24, 23, 25],
  [62, 18, 20],
  [98, 14, 14],
  [116, 13, 12],
  [134, 11, 15],
  [156, 9, 16],
  [182, 8, 11],
  [204, 8, 8],
  [214, 8, 9],
];
const FOOT: readonly (readonly [number, number])[] = [
  [206, -7],
  [213, -13],
  [216, -30],
  [217, -46],
  [221, -55],
  [228, -56],
  [232, -48],
  [231, -30],
  [231, -10],
  [231, 4],
  [226, 12],
  [214, 12],
  [206, 8],
];

const outline = area<readonly [number, number, number]>()
  .x((p) => p[0])
  .y0((p) => -p[1])
  .y1((p) => p[2])
  .curve(curveBasis)
  .digits(1);
const closed = line<readonly [number, number]>(
  (p) => p[0],
  (p) => p[1],
)
  .curve(curveCatmullRomClosed)
  .digits(1);

/** The leg without its foot, and the foot, lying level with the hip at the origin. */
export const LEG_PATH = outline([...PROFILE]) ?? '';
export const FOOT_PATH = closed([...FOOT]) ?? '';

/** A point at a distance from the hip, seen at an angle above the couch in degrees. */
export function onRay(degrees: number, distance: number): Point {
  const a = (degrees * Math.PI) / 180;
  const round = (n: number): number => Math.round(n * 100) / 100;
  return { x: round(HIP.x + Math.cos(a) * distance), y: round(HIP.y - Math.sin(a) * distance) };
}

/** Where the handle is at an angle. */
export function handleAt(degrees: number): Point {
  return onRay(degrees, HANDLE_AT);
}

/** The stretch of the arc between two angles, as a path. */
export function arcPath(from: number, to: number, radius = LEG_ARC): string {
  const [a, b] = [onRay(from, radius), onRay(to, radius)];
  return `M${a.x},${a.y}A${radius},${radius} 0 0 0 ${b.x},${b.y}`;
}

/** A tick across the arc at an angle. */
export function tickPath(degrees: number, length: number): string {
  const [a, b] = [onRay(degrees, LEG_ARC), onRay(degrees, LEG_ARC + length)];
  return `M${a.x},${a.y}L${b.x},${b.y}`;
}

/** Angle of the leg that points at a place of the drawing: whole degrees from 0 to 90. */
export function angleTo({ x, y }: Point): number {
  const degrees = (Math.atan2(HIP.y - y, x - HIP.x) * 180) / Math.PI;
  return Math.round(Math.min(90, Math.max(0, degrees)));
}

/** Box of the palm drawing. */
export const PALM_BOX = { width: 124, height: 136 } as const;

/** A right palm, fingers up, thumb at the right; the left one is its mirror image. */
export const PALM = {
  hand: [
    { d: 'M34 70C31 92 36 104 42 112V136H80V112C88 104 92 90 90 70C88 58 36 58 34 70Z', stroke: 6 },
    { d: 'M81 64 85 29', stroke: 13 },
    { d: 'M66 60 67 17', stroke: 13.5 },
    { d: 'M52 62 49 25', stroke: 13 },
    { d: 'M39 69 32 42', stroke: 11.5 },
    { d: 'M84 98 109 73', stroke: 15 },
  ],
  radial: 'M74 136C74 122 76 112 80 102C82 96 81 92 79 88',
  ulnar: 'M48 136C49 122 46 112 46 102C46 95 46 90 48 86',
  arch: 'M48 86C52 74 74 74 79 88',
  /** Where a pressing finger is marked. */
  press: { radial: { x: 75, y: 122 }, ulnar: { x: 48, y: 122 } },
} as const;

/** Transform of the palm drawing for a side. */
export function palmTransform(side: Side): string {
  return side === 'right' ? '' : `translate(${PALM_BOX.width} 0) scale(-1 1)`;
}

/** Radius of the dial of a countdown, and its length as a dash, for a share of the time that has run. */
export const DIAL = { radius: 88, box: 220 } as const;
export function dialDash(share: number): string {
  const all = 2 * Math.PI * DIAL.radius;
  const run = Math.min(1, Math.max(0, share)) * all;
  return `${run.toFixed(1)} ${all.toFixed(1)}`;
}
