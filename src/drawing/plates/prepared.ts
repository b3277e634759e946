import {
  type ArteryId,
  type Laterality,
  type Piece,
  type Place,
  PLATE_BOXES,
  type Side,
  SIDES,
  siteDefinition,
} from '../../anatomy/index.js';
import { drawnRadius, RADII_MM } from '../calibre.js';
import { type Point, pointsFrom, sampleAt, type Spline, splineThrough } from '../geometry.js';
import type { Chart, RidgeSizes, Strand } from '../chart.js';
import { FIGURE_RIDGE } from '../ridge.js';
import { type Plate, type PlateArtery, plateOf, type PlateView } from './plate.js';

/** A course of a plate on one side of the body. */
export interface PlateCourse {
  readonly side: Side;
  readonly artery: PlateArtery;
  readonly spline: Spline;
  /** Half its drawn width at a share of the course, in units of the plate. */
  radius(u: number): number;
}

/** A plate of one side (or of both) with its curves. */
export interface PreparedPlate extends Chart {
  readonly plate: Plate;
  readonly view: PlateView;
  /** Its box, in its own units. */
  readonly size: readonly [width: number, height: number];
  /** Whether it is the mirror image of what is given. */
  readonly mirrored: boolean;
  readonly courses: readonly PlateCourse[];
  /** Closed contours of the skin. */
  readonly outlines: readonly Spline[];
  /** Where a place lies, in units of the plate; `undefined` for one that is not on it. */
  positionOf(place: Place): Point | undefined;
  /** Points as given, as they lie on this side; on a plate of both, on the side asked for. */
  placed(points: string, side?: Laterality): Point[];
}

/** Units of the whole figure for a millimetre: its stature of 1345 units is 1.75 m. */
const FIGURE_UNITS_PER_MM = 1345 / 1750;

/** Points of a closed contour that shape its seam, so that it is as smooth as the rest. */
const SEAM = 6;

/** A smooth closed contour through points. */
export function closedSpline(points: readonly Point[]): Spline {
  const first = points[0] as Point;
  return splineThrough([...points, first], { before: points.slice(-SEAM), after: points.slice(1, SEAM + 1) });
}

/** The value at a share, between pairs that rise in both. */
function along(pairs: readonly (readonly [number, number])[], value: number, from: 0 | 1): number {
  const to = from === 0 ? 1 : 0;
  const next = Math.max(
    1,
    pairs.findIndex((pair) => pair[from] >= value),
  );
  const [a, b] = [pairs[next - 1], pairs[next]] as [readonly [number, number], readonly [number, number]];
  const share = (value - a[from]) / (b[from] - a[from]);
  return a[to] + (b[to] - a[to]) * Math.min(1, Math.max(0, share));
}

/** The share of the artery of the tree at a share of the course. */
export function onArtery({ span = [] }: PlateArtery, u: number): number {
  return along(span, u, 0);
}

/** The share of the course at a share of the artery, within the part that is shown. */
export function onCourse({ span = [] }: PlateArtery, t: number): number {
  return along(span, t, 1);
}

function radiusOf(artery: PlateArtery, factor: number): (u: number) => number {
  const [origin, end] = artery.mm ?? RADII_MM[artery.artery as ArteryId];
  return (u) => {
    const t = artery.mm ? u : onArtery(artery, u);
    return factor * drawnRadius(origin + (end - origin) * t);
  };
}

/** Steps in which a course is searched for where it enters and leaves the box. */
const SEARCHED = 60;

/** The shares between which a course lies within the box of its plate: some run in from above, or out below. */
function withinBox(spline: Spline, height: number): { readonly from: number; readonly to: number } {
  const inside = Array.from({ length: SEARCHED + 1 }, (_, i) => i / SEARCHED).filter((u) => {
    const { y } = sampleAt(spline, u);
    return y >= 0 && y <= height;
  });
  return { from: inside[0] ?? 0, to: inside.at(-1) ?? 0 };
}

function prepare(plate: Plate, view: PlateView): PreparedPlate {
  const { side: only } = plateOf(view);
  const sides = only === 'midline' ? SIDES : [only];
  const size = PLATE_BOXES[plate.name];
  const flip = (points: readonly Point[]): Point[] => points.map(([x, y]) => [size[0] - x, y]);
  const on = (points: string, side: Side): Point[] =>
    side === plate.given ? pointsFrom(points) : flip(pointsFrom(points));
  const courses = sides.flatMap((side) =>
    plate.arteries.map((artery): PlateCourse => ({
      side,
      artery,
      spline: splineThrough(on(artery.points, side)),
      radius: radiusOf(artery, plate.factor),
    })),
  );
  const larger = plate.unitsPerMm / FIGURE_UNITS_PER_MM;
  const ridge: RidgeSizes = {
    ...FIGURE_RIDGE,
    area: FIGURE_RIDGE.area * larger,
    smooth: FIGURE_RIDGE.smooth * larger,
  };
  return {
    plate,
    view,
    size,
    mirrored: only !== 'midline' && only !== plate.given,
    courses,
    outlines: sides.flatMap((side) => plate.outlines.map((points) => closedSpline(on(points, side)))),
    ridge,
    placed: (points, side = plate.given) =>
      on(points, only !== 'midline' ? only : side === 'midline' ? plate.given : side),
    positionOf(place) {
      const found = plate.sites.find(({ site }) => site === place.site);
      const course =
        found && courses.find(({ artery, side }) => artery.id === found.on && side === place.side);
      if (!course) return undefined;
      const { x, y } = sampleAt(course.spline, onCourse(course.artery, siteDefinition(place.site).at));
      return [x, y];
    },
    strandsOf(piece: Piece): readonly Strand[] {
      return courses.flatMap(({ artery, side, spline, radius }): Strand[] => {
        if (artery.artery !== piece.artery || side !== piece.side || !artery.span) return [];
        const [first, last] = [artery.span[0], artery.span.at(-1)] as const;
        const seen = withinBox(spline, size[1]);
        const from = Math.max(piece.from, first?.[1] ?? 0, onArtery(artery, seen.from));
        const to = Math.min(piece.to, last?.[1] ?? 1, onArtery(artery, seen.to));
        if (to <= from) return [];
        const mirror = side === plate.given ? 1 : -1;
        return [
          {
            spline,
            from: onCourse(artery, from),
            to: onCourse(artery, to),
            share: (to - from) / (piece.to - piece.from),
            radius,
            side: ((artery.ridge ?? 1) * mirror) as 1 | -1,
          },
        ];
      });
    },
  };
}

const PREPARED = new WeakMap<Plate, Map<PlateView, PreparedPlate>>();

/** A plate with its curves as a view shows it; computed once. */
export function preparedPlate(plate: Plate, view: PlateView): PreparedPlate {
  const views = PREPARED.get(plate) ?? new Map<PlateView, PreparedPlate>();
  PREPARED.set(plate, views);
  const known = views.get(view) ?? prepare(plate, view);
  views.set(view, known);
  return known;
}
