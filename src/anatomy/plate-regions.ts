import { COVERED, type MarkForm, namedTogether, ONE_THIRD, SHAPE, SHARE, tenth, THIRDS } from './naming.js';
import { givenPoint, onward, sheetAt } from './plate-surface.js';
import { fromGiven, SHEETS, type Zone } from './plate-zones.js';
import { PLATE_BOXES, plateOf, type PlateView } from './plates.js';
import { alongLine, areaOf, contains, fromStretch, withinArea } from './regions.js';
import { type Side, SIDES } from './sides.js';
import type { SkinName } from './skin-name.js';
import type { SurfacePoint } from './surface.js';

/** How far off every named area a point still belongs to the nearest, in units of a plate. */
const NEAR_SKIN = 60;
/** Units between samples of a line, at most. */
const STEP = 12;

const AREAS = new WeakMap<Zone, number>();

function sizeOf(zone: Zone): number {
  const known = AREAS.get(zone) ?? areaOf(zone.shape);
  AREAS.set(zone, known);
  return known;
}

/** The named area that a given point lies in: the smallest that holds it, else the nearest close by. */
function zoneAt(view: PlateView, at: SurfacePoint): Zone | undefined {
  const { zones } = sheetAt(view, at);
  const holding = zones.filter(({ shape }) => contains(shape, at)).sort((a, b) => sizeOf(a) - sizeOf(b));
  if (holding[0]) return holding[0];
  let best: Zone | undefined;
  let least = NEAR_SKIN;
  for (const zone of zones)
    for (const [i, corner] of zone.shape.entries()) {
      const { distance } = fromStretch(at, corner, zone.shape.at(i - 1) as SurfacePoint);
      if (distance < least) [best, least] = [zone, distance];
    }
  return best;
}

interface Tally {
  readonly zone: Zone;
  readonly side: Side;
  readonly name: SkinName['region'];
  /** Its area in square units. */
  readonly size: number;
  count: number;
  readonly heights: number[];
}

function tally(view: PlateView, samples: readonly SurfacePoint[]): Tally[] {
  const found: Tally[] = [];
  for (const point of samples) {
    const { side, at } = givenPoint(view, point);
    const zone = zoneAt(view, at);
    if (!zone) continue;
    let one = found.find((other) => other.zone === zone && other.side === side);
    if (!one) found.push((one = { zone, side, name: zone.name, size: sizeOf(zone), count: 0, heights: [] }));
    one.count++;
    one.heights.push(at[1]);
  }
  return found;
}

function thirdOf({ zone: { long, shape, third }, heights }: Tally): SkinName['third'] {
  if (!long) return third;
  const ys = shape.map(([, y]) => y);
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  if (Math.max(...heights) - Math.min(...heights) > ONE_THIRD * (bottom - top)) return undefined;
  const mean = heights.reduce((sum, y) => sum + y, 0) / heights.length;
  return THIRDS[Math.min(2, Math.max(0, Math.floor((3 * (mean - top)) / (bottom - top))))];
}

function named(one: Tally): SkinName {
  const { name, side, zone } = one;
  const third = thirdOf(one);
  return { region: name, side, ...(third && { third }), ...(zone.face && { face: zone.face }) };
}

/** Merges toes, fingers or heads of metatarsal bones that are named together. */
function together(all: readonly Tally[]): Tally[] {
  return all.flatMap((one) => {
    const { row } = one.zone;
    const same = all.filter(({ zone, side }) => row && zone.row === row && side === one.side);
    if (!row || !namedTogether(same)) return [one];
    if (same[0] !== one) return [];
    const sum = (of: (tally: Tally) => number): number => same.reduce((total, other) => total + of(other), 0);
    return [{ ...one, name: row, count: sum(({ count }) => count), size: sum(({ size }) => size) }];
  });
}

/**
 * What a mark on a plate covers, largest share first: as `regionsOf` of the whole figure, by the finer areas of the plate. Empty when the
 * whole mark lies off the skin.
 * @param points in units of the plate
 */
export function plateRegionsOf(view: PlateView, points: readonly SurfacePoint[], form: MarkForm): SkinName[] {
  const { samples, each } =
    form === 'area' ? withinArea(points) : { samples: alongLine(points, STEP), each: 0 };
  const all = together(tally(view, samples));
  const total = all.reduce((sum, { count }) => sum + count, 0);
  return all
    .filter(({ size, count }) => count >= SHARE * total || count * each >= COVERED * size)
    .sort((a, b) => b.count - a.count)
    .filter((one, i, list) => form !== 'across' || list.findIndex(({ side }) => side === one.side) === i)
    .map(named);
}

/** An area of a plate on which a mark can be put by name. */
export interface PlatePlace {
  readonly view: PlateView;
  readonly name: SkinName;
  /** In units of the plate, as it lies on that side. */
  readonly shape: readonly SurfacePoint[];
}

/** The named areas of a plate, of each limb it shows. */
export function platePlaces(view: PlateView): PlatePlace[] {
  const { name, side: only } = plateOf(view);
  const [, height] = PLATE_BOXES[name];
  return (only === 'midline' ? SIDES : [only]).flatMap((side) =>
    SHEETS[name].flatMap(({ zones }) =>
      zones.map((zone): PlatePlace => {
        const { name: region, face, third } = zone;
        return {
          view,
          name: { region, side, ...(third && { third }), ...(face && { face }) },
          shape: zone.shape.map(([x, y]) => {
            const within = Math.min(height, Math.max(0, y));
            return fromGiven(name, side, [x, within]);
          }),
        };
      }),
    ),
  );
}

/** Where a line through a point leaves a shape: how far before and after the point, in lengths of its direction. */
function chord(
  shape: readonly SurfacePoint[],
  [x, y]: SurfacePoint,
  [dx, dy]: SurfacePoint,
): readonly [number, number] {
  const off = ([px, py]: SurfacePoint): number => (px - x) * dy - (py - y) * dx;
  const cuts = shape.flatMap((corner, i) => {
    const before = shape.at(i - 1) as SurfacePoint;
    const [a, b] = [off(before), off(corner)];
    if (a > 0 === b > 0) return [];
    const t = a / (a - b);
    const at = [before[0] + (corner[0] - before[0]) * t - x, before[1] + (corner[1] - before[1]) * t - y];
    return [((at[0] as number) * dx + (at[1] as number) * dy) / (dx * dx + dy * dy)];
  });
  return [Math.max(...cuts.filter((t) => t <= 0)), Math.min(...cuts.filter((t) => t >= 0))];
}

/** The default mark for an area chosen from a list: most of it, a line across its middle, or one along it. In units of the plate. */
export function platePlaceShape({ view, shape }: PlatePlace, form: MarkForm): SurfacePoint[] {
  const inner = withinArea(shape).samples;
  const middle = ([0, 1] as const).map((k) => inner.reduce((sum, p) => sum + p[k], 0) / inner.length);
  const [cx, cy] = middle as [number, number];
  const on = (px: number, py: number): SurfacePoint => [tenth(px), tenth(py)];
  if (form === 'area') return shape.map(([x, y]) => on(cx + (x - cx) * SHAPE, cy + (y - cy) * SHAPE));
  const [ox, oy] = onward(view, [cx, cy]);
  const [dx, dy] = form === 'along' ? [ox, oy] : [oy, -ox];
  const [from, to] = chord(shape, [cx, cy], [dx, dy]);
  const share = form === 'along' ? SHAPE : 1;
  return [from * share, 0, to * share].map((t) => on(cx + dx * t, cy + dy * t));
}
