import { AXIS } from './figure.js';
import { closedPath, mirrored, openPath, type Point } from './geometry.js';
import { OUTLINE } from './outline.js';
import { PathWriter } from './path-writer.js';

/** The body as path data in tenths of a figure unit. */
export interface Silhouette {
  /** Body, head, ears, fingers and toes: filled they are one shape, whose contours all run clockwise. */
  readonly body: string;
  /** Landmarks. */
  readonly hints: string;
  readonly knees: string;
  readonly heart: string;
}

/** A half contour closed by its mirror image. */
function whole(half: readonly Point[]): Point[] {
  const back = mirrored(half, AXIS).reverse();
  return [...half, ...back.filter(([x], i) => !(x === AXIS && (i === 0 || i === back.length - 1)))];
}

function both(points: readonly Point[], draw: typeof openPath, path: PathWriter): void {
  draw(points, path);
  draw(mirrored(points, AXIS), path);
}

/** A rod with round ends. */
function rod(path: PathWriter, x1: number, y1: number, x2: number, y2: number, width: number): void {
  const radius = width / 2;
  const length = Math.hypot(x2 - x1, y2 - y1);
  const nx = (radius * (y2 - y1)) / length;
  const ny = (radius * (x1 - x2)) / length;
  path.moveTo(x1 + nx, y1 + ny);
  path.lineTo(x2 + nx, y2 + ny);
  path.halfCircleTo(true, x2 - nx, y2 - ny);
  path.lineTo(x1 - nx, y1 - ny);
  path.halfCircleTo(true, x1 + nx, y1 + ny);
  path.closePath();
}

/** An ear, an ellipse of two arcs. */
function ear(x: number): string {
  const { y, rx, ry } = OUTLINE.ear;
  const [left, top, wide, high] = [x - rx, y, rx, ry].map((length) => 10 * length) as [
    number,
    number,
    number,
    number,
  ];
  return `M${left} ${top}a${wide} ${high} 0 0 1 ${2 * wide} 0a${wide} ${high} 0 0 1 ${-2 * wide} 0z`;
}

function silhouette(arms: boolean): Silhouette {
  const body = new PathWriter('tenth');
  const hints = new PathWriter('tenth');
  const knees = new PathWriter('tenth');
  closedPath(whole([...OUTLINE.neck, ...(arms ? OUTLINE.arm : []), ...OUTLINE.trunkAndLeg]), body);
  closedPath(whole(OUTLINE.head), body);
  for (const [x1 = 0, y1 = 0, x2 = 0, y2 = 0, width = 0] of [
    ...(arms ? OUTLINE.fingers : []),
    ...OUTLINE.toes,
  ]) {
    rod(body, x1, y1, x2, y2, width);
    rod(body, 2 * AXIS - x1, y1, 2 * AXIS - x2, y2, width);
  }
  for (const points of OUTLINE.hints) both(points, openPath, hints);
  both(OUTLINE.knee, closedPath, knees);
  const { x } = OUTLINE.ear;
  return {
    body: body.toString() + ear(x) + ear(2 * AXIS - x),
    hints: hints.toString(),
    knees: knees.toString(),
    heart: closedPath(OUTLINE.heart, new PathWriter('tenth')),
  };
}

const SILHOUETTES = new Map<boolean, Silhouette>();

/** The body with or without arms; computed once. */
export function silhouetteOf(arms: boolean): Silhouette {
  const known = SILHOUETTES.get(arms) ?? silhouette(arms);
  SILHOUETTES.set(arms, known);
  return known;
}
