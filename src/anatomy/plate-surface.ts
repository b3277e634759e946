import { AXIS } from './figure-box.js';
import { fromGiven, type Sheet, SHEETS } from './plate-zones.js';
import { PLATE_BOXES, plateOf, type PlateView } from './plates.js';
import { regionAt, regionAxis } from './regions.js';
import type { Side } from './sides.js';
import { mirrorPoint, SKIN_REGIONS, sideOfPoint, type SurfacePoint } from './surface.js';

/*
 * Where a point of a plate lies on the whole figure, and the other way round.
 */

/** A point of a plate as given in the tables, with the limb it is on. */
export interface GivenPoint {
  readonly side: Side;
  readonly at: SurfacePoint;
}

export function givenPoint(view: PlateView, point: SurfacePoint): GivenPoint {
  const { name, side } = plateOf(view);
  const of = side !== 'midline' ? side : point[0] < PLATE_BOXES[name][0] / 2 ? 'left' : 'right';
  return { side: of, at: fromGiven(name, of, point) };
}

/** The drawing of a plate that a given point lies on. */
export function sheetAt(view: PlateView, [x]: SurfacePoint): Sheet {
  const sheets = SHEETS[plateOf(view).name];
  return (sheets.findLast(({ from }) => x >= from) ?? sheets[0]) as Sheet;
}

/** A little, so that a point that is an anchor does not divide by nothing; in square units. */
const NEAR = 1e-3;

/**
 * Moves a point as the anchors around it move, nearer ones more: the affine map that fits them best with weights of one by the square
 * of the distance. Source: moving least squares, Schaefer, McPhail and Warren 2006 (doi:10.1145/1141911.1141920).
 * @param back from the figure to the plate
 */
function moved({ anchors }: Sheet, [x, y]: SurfacePoint, back: boolean): SurfacePoint {
  const pairs = anchors.map((pair) => {
    const [from, to] = back ? ([pair[1], pair[0]] as const) : pair;
    return { from, to, weight: 1 / ((from[0] - x) ** 2 + (from[1] - y) ** 2 + NEAR) };
  });
  const sum = (of: (pair: (typeof pairs)[number]) => number): number =>
    pairs.reduce((total, pair) => total + pair.weight * of(pair), 0);
  const all = sum(() => 1);
  const [fx, fy] = [sum(({ from }) => from[0]) / all, sum(({ from }) => from[1]) / all];
  const [tx, ty] = [sum(({ to }) => to[0]) / all, sum(({ to }) => to[1]) / all];
  const product = (i: 0 | 1, a: number, k: 0 | 1, b: number, other: 'from' | 'to'): number =>
    sum((pair) => (pair.from[i] - a) * (pair[other][k] - b));
  const [xx, xy, yy] = [
    product(0, fx, 0, fx, 'from'),
    product(0, fx, 1, fy, 'from'),
    product(1, fy, 1, fy, 'from'),
  ];
  const det = xx * yy - xy * xy;
  const along = (k: 0 | 1, mean: number): number => {
    const [a, b] = [product(0, fx, k, mean, 'to'), product(1, fy, k, mean, 'to')];
    return ((x - fx) * (yy * a - xy * b) + (y - fy) * (xx * b - xy * a)) / det + mean;
  };
  return [along(0, tx), along(1, ty)];
}

function meanOf(points: readonly SurfacePoint[]): SurfacePoint {
  const sum = points.reduce(([ax, ay], [x, y]) => [ax + x, ay + y] as const, [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
}

/** Where points of a plate lie on the whole figure, in figure units. */
export function onFigure(view: PlateView, points: readonly SurfacePoint[]): SurfacePoint[] {
  const sheet = sheetAt(view, givenPoint(view, meanOf(points)).at);
  return points.map((point) => {
    const { side, at } = givenPoint(view, point);
    const [x, y] = moved(sheet, at, false);
    return side === 'left' ? [x, y] : [2 * AXIS - x, y];
  });
}

/** Which face of the body a plate or, without one, the whole figure shows. */
function faceOf(view: PlateView | undefined): 'front' | 'back' | 'sole' {
  const name = view && plateOf(view).name;
  return name === 'sole' ? 'sole' : name === 'knee' || name === 'legs-behind' ? 'back' : 'front';
}

function toPlate(view: PlateView, sheet: Sheet, point: SurfacePoint): SurfacePoint {
  const side = sideOfPoint(point);
  return fromGiven(
    plateOf(view).name,
    side,
    moved(sheet, side === 'left' ? point : mirrorPoint(point), true),
  );
}

/**
 * Where points of the whole figure lie on a plate, in its units.
 * @param from the plate on which they were drawn; without one, the figure
 * @returns `undefined` where the plate does not show that part of the body, or another face of it
 */
export function onPlate(
  view: PlateView,
  points: readonly SurfacePoint[],
  from?: PlateView,
): SurfacePoint[] | undefined {
  const { name, side } = plateOf(view);
  const middle = meanOf(points);
  const place = regionAt(middle);
  if (!place || faceOf(view) !== faceOf(from) || (side !== 'midline' && side !== place.side))
    return undefined;
  if (SKIN_REGIONS[place.region].of !== (name === 'hand' ? 'arm' : 'leg')) return undefined;
  const [first, second] = SHEETS[name];
  // The heel of the figure is seen from its inner side.
  const sheet = (place.region === 'heel' ? second : undefined) ?? (first as Sheet);
  const [width, height] = PLATE_BOXES[name];
  const [x, y] = toPlate(view, sheet, middle);
  if (x < 0 || x > width || y < 0 || y > height) return undefined;
  return points.map((point) => toPlate(view, sheet, point));
}

/** How far along its limb a direction is looked at, in figure units. */
const AHEAD = 6;

/** The direction in which a limb runs on at a point of a plate. */
export function onward(view: PlateView, point: SurfacePoint): SurfacePoint {
  const [there] = onFigure(view, [point]) as [SurfacePoint];
  const place = regionAt(there);
  if (!place) return [0, 1];
  const [[ax, ay], [bx, by]] = regionAxis(place);
  const by1 = AHEAD / (Math.hypot(bx - ax, by - ay) || 1);
  const sheet = sheetAt(view, givenPoint(view, point).at);
  const [from, to] = [there, [there[0] + (bx - ax) * by1, there[1] + (by - ay) * by1] as const].map((one) =>
    toPlate(view, sheet, one),
  ) as [SurfacePoint, SurfacePoint];
  return [to[0] - from[0], to[1] - from[1]];
}
