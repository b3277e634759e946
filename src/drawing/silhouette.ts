import { AXIS } from '../anatomy/index.js';
import { catmullRom } from './catmull-rom.js';
import { closedPath, mirrored, openPath, type Point, pointsFrom } from './geometry.js';
import { ORGANS, OUTLINE } from './outline.js';
import { PathWriter } from './path-writer.js';

/** The body as path data in tenths of a figure unit. */
export interface Silhouette {
  /** One closed contour. */
  readonly body: string;
  readonly heart: string;
  readonly kidneys: string;
  /** The grooves of the heart. */
  readonly grooves: string;
}

/** Points of a contour, and which of them are corners. */
interface Contour {
  readonly points: readonly Point[];
  readonly corners: readonly boolean[];
}

function contourOf(text: string): Contour {
  return {
    points: pointsFrom(text),
    corners: text.split(' ').flatMap((value, i) => (i % 2 ? [value.endsWith('!')] : [])),
  };
}

/** A half contour closed by its mirror image; points on the axis are in it once. */
function whole({ points, corners }: Contour): Contour {
  const back = points.map((_, i) => points.length - 1 - i).filter((i) => points[i]?.[0] !== AXIS);
  return {
    points: [
      ...points,
      ...mirrored(points, AXIS)
        .filter(([x]) => x !== AXIS)
        .reverse(),
    ],
    corners: [...corners, ...back.map((i) => corners[i] === true)],
  };
}

/** A writer that goes on where the contour is, since every run of it between corners would begin anew. */
class Joined extends PathWriter {
  #begun = false;

  override moveTo(x: number, y: number): void {
    if (!this.#begun) super.moveTo(x, y);
    this.#begun = true;
  }
}

/** A closed contour: smooth between corners, and across the point where it closes. */
function contourPath({ points, corners }: Contour, path: PathWriter = new Joined('tenth')): string {
  const first = Math.max(0, corners.indexOf(true));
  const order = points.map((_, i) => (first + i) % points.length);
  let run: Point[] = [];
  for (const i of [...order, first]) {
    run.push(points[i] as Point);
    if (run.length > 1 && (corners[i] || i === first)) {
      catmullRom(path, run, false);
      run = [points[i] as Point];
    }
  }
  path.closePath();
  return path.toString();
}

/** Draws the body with or without arms from its outlines; `healthy.ts` has it ready. */
export function drawSilhouette(arms: boolean): Silhouette {
  const half = [OUTLINE.head, OUTLINE.neck, ...(arms ? [OUTLINE.arm] : []), OUTLINE.trunkAndLeg].join(' ');
  const kidney = pointsFrom(ORGANS.kidney);
  const kidneys = new PathWriter('tenth');
  closedPath(kidney, kidneys);
  closedPath(mirrored(kidney, AXIS), kidneys);
  const grooves = new PathWriter('tenth');
  for (const groove of ORGANS.grooves) openPath(pointsFrom(groove), grooves);
  return {
    body: contourPath(whole(contourOf(half))),
    heart: closedPath(pointsFrom(ORGANS.heart), new PathWriter('tenth')),
    kidneys: kidneys.toString(),
    grooves: grooves.toString(),
  };
}
