import { AXIS } from './figure-box.js';
import { COVERED, type MarkForm, namedTogether, ONE_THIRD, SHAPE, SHARE, tenth, THIRDS } from './naming.js';
import type { Laterality } from './sides.js';
import type { SkinName } from './skin-name.js';
import {
  mirrorPoint,
  SKIN_REGION_IDS,
  type SkinRegionId,
  type SkinPlace,
  SKIN_REGIONS,
  sideOfPoint,
  type SurfacePart,
  type SurfacePoint,
} from './surface.js';

/** Maximum distance of a point from the skin, in figure units. */
const NEAR_SKIN = 24;
/** Above this number the regions of one limb are named by the first and the last. */
const MOST_NAMES = 3;
/** Points with a mean distance below this are in the midline, in figure units. */
const MIDLINE = 20;
/** Samples along the longer edge of an area, and figure units between samples of a line, at most. */
const GRID = 16;
const STEP = 4;

/** Whether a point lies within a closed shape. */
export function contains(shape: readonly SurfacePoint[], point: SurfacePoint): boolean {
  const x = point[0];
  const y = point[1];
  let inside = false;
  let before = shape.at(-1) as SurfacePoint;
  for (const corner of shape) {
    if (
      corner[1] > y !== before[1] > y &&
      x < ((before[0] - corner[0]) * (y - corner[1])) / (before[1] - corner[1]) + corner[0]
    )
      inside = !inside;
    before = corner;
  }
  return inside;
}

/** The area a closed shape encloses, in square units. */
export function areaOf(shape: readonly SurfacePoint[]): number {
  return Math.abs(
    shape.reduce((sum, [x, y], i) => {
      const [px, py] = shape.at(i - 1) as SurfacePoint;
      return sum + px * y - x * py;
    }, 0) / 2,
  );
}

/** The distance of a point from the stretch between two others, and how far along that stretch it lies (0 to 1). */
export function fromStretch(
  point: SurfacePoint,
  from: SurfacePoint,
  to: SurfacePoint,
): { distance: number; along: number } {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const x = point[0] - from[0];
  const y = point[1] - from[1];
  const length = dx * dx + dy * dy;
  const along = length && Math.min(1, Math.max(0, (x * dx + y * dy) / length));
  return { distance: Math.hypot(x - along * dx, y - along * dy), along };
}

function between([ax, ay]: SurfacePoint, [bx, by]: SurfacePoint, t = 0.5): SurfacePoint {
  return [ax + (bx - ax) * t, ay + (by - ay) * t];
}

/** The middle line of a region of the patient's left, from its near to its far end. */
function middle(region: SkinRegionId): readonly [SurfacePoint, SurfacePoint] {
  const { strip } = SKIN_REGIONS[region];
  const half = strip.length / 2;
  const at = (i: number): SurfacePoint => strip.at(i) as SurfacePoint;
  return [between(at(0), at(-1)), between(at(half - 1), at(half))];
}

/** The middle line of a region, from its near to its far end, in figure units. */
export function regionAxis({ region, side }: SkinPlace): readonly [SurfacePoint, SurfacePoint] {
  const [a, b] = middle(region);
  return side === 'left'
    ? [a, b]
    : side === 'right'
      ? [mirrorPoint(a), mirrorPoint(b)]
      : [
          [AXIS, a[1]],
          [AXIS, b[1]],
        ];
}

type Box = readonly [left: number, top: number, right: number, bottom: number];

/** The box around each region of the patient's left: most regions are far from a point, and told so by four comparisons. */
const BOXES = new Map<SkinRegionId, Box>(
  SKIN_REGION_IDS.map((region) => {
    const { strip } = SKIN_REGIONS[region];
    const [xs, ys] = [strip.map(([x]) => x), strip.map(([, y]) => y)];
    return [region, [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]];
  }),
);

/** A distance from a region that a point cannot be nearer than. */
function outsideBox(region: SkinRegionId, [x, y]: SurfacePoint): number {
  const [left, top, right, bottom] = BOXES.get(region) as Box;
  return Math.max(left - x, x - right, top - y, y - bottom, 0);
}

/** The region a point of the figure lies in, or next to it off the skin; `undefined` farther away. */
export function regionAt(point: SurfacePoint): SkinPlace | undefined {
  const side = sideOfPoint(point);
  const left = side === 'left' ? point : mirrorPoint(point);
  const within = SKIN_REGION_IDS.filter(
    (region) => outsideBox(region, left) === 0 && contains(SKIN_REGIONS[region].strip, left),
  );
  // Toes overlap, so the nearest middle line decides; off the skin, the nearest edge.
  const distance = (region: SkinRegionId): number => {
    const { strip } = SKIN_REGIONS[region];
    return within.length
      ? fromStretch(left, ...middle(region)).distance
      : Math.min(
          ...strip.map((corner, i) => fromStretch(left, corner, strip.at(i - 1) as SurfacePoint).distance),
        );
  };
  let best = within[0];
  if (within.length !== 1) {
    let least = within.length ? Infinity : NEAR_SKIN;
    for (const region of within.length ? within : SKIN_REGION_IDS) {
      if (!within.length && outsideBox(region, left) >= least) continue;
      const near = distance(region);
      if (near < least) [best, least] = [region, near];
    }
  }
  return best && { region: best, side };
}

/** The samples of a line, at most a step apart. */
export function alongLine(points: readonly SurfacePoint[], step = STEP): SurfacePoint[] {
  return points.flatMap((point, i) => {
    const before = points[i - 1];
    if (!before) return [point];
    const steps = Math.ceil(Math.hypot(point[0] - before[0], point[1] - before[1]) / step) || 1;
    return Array.from({ length: steps }, (_, k) => between(before, point, (k + 1) / steps));
  });
}

/** The samples of an area, and how much of it each stands for. */
export function withinArea(points: readonly SurfacePoint[]): {
  samples: readonly SurfacePoint[];
  each: number;
} {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const cell = Math.max(width, height) / GRID || 1;
  // Whole cells in both directions, so that a mirrored shape has the mirrored samples.
  const [columns, rows] = [Math.ceil(width / cell), Math.ceil(height / cell)];
  const samples: SurfacePoint[] = [];
  for (let i = 0; i < columns; i++)
    for (let j = 0; j < rows; j++) {
      const point = [left + ((i + 0.5) * width) / columns, top + ((j + 0.5) * height) / rows] as const;
      if (contains(points, point)) samples.push(point);
    }
  return samples.length
    ? { samples, each: (width * height) / (columns * rows) }
    : { samples: points, each: 0 };
}

/** What a mark on the figure can be named by. */
type FigureName = SkinRegionId | 'fingers' | 'toes';

interface Tally {
  readonly region: FigureName;
  side: Laterality;
  count: number;
  x: number;
  readonly along: number[];
  /** How large the region is: its area, or its length for a line along it. */
  size: number;
}

function sizeOf(place: SkinPlace, form: MarkForm): number {
  if (form === 'area') return areaOf(SKIN_REGIONS[place.region].strip);
  const [[ax, ay], [bx, by]] = regionAxis(place);
  return Math.hypot(bx - ax, by - ay);
}

/** Counts samples by region. */
function tally(samples: readonly SurfacePoint[], form: MarkForm): Tally[] {
  const tallies = new Map<string, Tally>();
  for (const point of samples) {
    const place = regionAt(point);
    if (!place) continue;
    const { region, side } = place;
    const key = SKIN_REGIONS[region].of === 'trunk' ? region : `${side} ${region}`;
    const found = tallies.get(key) ?? {
      region,
      side,
      count: 0,
      x: 0,
      along: [],
      size: sizeOf(place, form),
    };
    found.count++;
    found.x += point[0];
    found.along.push(fromStretch(point, ...regionAxis(place)).along);
    tallies.set(key, found);
  }
  const all = [...tallies.values()];
  for (const one of all) {
    const off = one.x / one.count - AXIS;
    if (SKIN_REGIONS[one.region as SkinRegionId].of === 'trunk')
      one.side = Math.abs(off) < MIDLINE ? 'midline' : off > 0 ? 'left' : 'right';
  }
  return all;
}

/** Merges toes that are named together into "toes", and fingers likewise. */
function mergeDigits(all: readonly Tally[]): Tally[] {
  const rows = new Map<string, Tally[]>();
  for (const one of all) {
    const key = `${one.side} ${SKIN_REGIONS[one.region as SkinRegionId].row ?? one.region}`;
    rows.set(key, [...(rows.get(key) ?? []), one]);
  }
  return [...rows.values()].flatMap((digits) => {
    const region = SKIN_REGIONS[digits[0]?.region as SkinRegionId].row;
    if (!region || !namedTogether(digits)) return digits;
    return [digits.reduce((a, b) => ({ ...a, region, count: a.count + b.count, size: a.size + b.size }))];
  });
}

function named({ region, side, along }: Tally): SkinName {
  const long = region in SKIN_REGIONS && SKIN_REGIONS[region as SkinRegionId].long;
  const spread = Math.max(...along) - Math.min(...along);
  if (!long || spread > ONE_THIRD) return { region, side };
  const mean = along.reduce((sum, t) => sum + t, 0) / along.length;
  return { region, side, third: THIRDS[Math.min(2, Math.floor(mean * 3))] as (typeof THIRDS)[number] };
}

/** Order of a region from the heart outward. */
function rank({ region }: { region: FigureName }): number {
  return region === 'toes' ? 99 : SKIN_REGION_IDS.indexOf(region === 'fingers' ? 'little-finger' : region);
}

/** The part of the body that a named place belongs to. */
export function partOf({ region }: Pick<SkinName, 'region'>): SurfacePart {
  if (region in SKIN_REGIONS) return SKIN_REGIONS[region as SkinRegionId].of;
  if (region === 'buttock') return 'trunk';
  return region === 'fingers' || region === 'palm' || region.endsWith('thenar') ? 'arm' : 'leg';
}

/**
 * What a mark covers, largest share first: a region is named when it holds a fifth of the mark or half of it is covered.
 * Empty when the whole mark lies off the skin. A mark `across` a limb is named by one region of each side.
 * @param points in figure units
 */
export function regionsOf(points: readonly SurfacePoint[], form: MarkForm): SkinName[] {
  const { samples, each } =
    form === 'area' ? withinArea(points) : { samples: alongLine(points), each: form === 'along' ? STEP : 0 };
  const all = mergeDigits(tally(samples, form)).sort((a, b) => b.count - a.count || rank(a) - rank(b));
  const total = all.reduce((sum, { count }) => sum + count, 0);
  const kept = all.filter(
    (one, i) =>
      (one.count >= SHARE * total || one.count * each >= COVERED * one.size) &&
      (form !== 'across' || all.findIndex(({ side }) => side === one.side) === i),
  );
  const groups = [...new Set(kept.map((t) => `${t.side} ${partOf(t)}`))];
  return groups.flatMap((group): SkinName[] => {
    const own = kept.filter((t) => `${t.side} ${partOf(t)}` === group);
    if (own.length <= MOST_NAMES) return own.map(named);
    const [first, ...rest] = own.sort((a, b) => rank(a) - rank(b)) as [Tally, ...Tally[]];
    return [{ region: first.region, side: first.side, to: (rest.at(-1) as Tally).region }];
  });
}

/**
 * The default mark for a region chosen from a list: most of the region, a line across its middle, or one along it.
 * @returns points in figure units
 */
export function regionShape(place: SkinPlace, form: MarkForm): SurfacePoint[] {
  const { strip, row } = SKIN_REGIONS[place.region];
  const half = strip.length / 2;
  const whole =
    place.side === 'midline'
      ? [...strip.slice(0, half), ...strip.slice(0, half).map(mirrorPoint).reverse()]
      : strip;
  const on = ([x, y]: SurfacePoint): SurfacePoint => {
    const [px, py] = place.side === 'right' ? mirrorPoint([x, y]) : [x, y];
    return [tenth(px), tenth(py)];
  };
  if (form === 'along') {
    const [a, b] = regionAxis({ ...place, side: place.side === 'midline' ? place.side : 'left' });
    return [0.2, 0.5, 0.8].map((t) => on(between(a, b, t)));
  }
  const [outer, inner] = [middleOf(whole.slice(0, half)), middleOf(whole.slice(half))];
  const centre = between(outer, inner);
  // Toes overlap, so a line across one ends inside it.
  if (form === 'across') return [outer, inner].map((end) => on(between(centre, end, row ? SHAPE : 1)));
  return whole.map((point) => on(between(centre, point, SHAPE)));
}

/** The point half way along an edge of several points, by their count. */
function middleOf(edge: readonly SurfacePoint[]): SurfacePoint {
  const at = (edge.length - 1) / 2;
  return between(edge[Math.floor(at)] as SurfacePoint, edge[Math.ceil(at)] as SurfacePoint, at % 1);
}
