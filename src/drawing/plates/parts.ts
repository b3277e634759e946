import { type ArteryId, type Place, vesselKey } from '../../anatomy/index.js';
import { filletsOf } from '../fillets.js';
import { type DrawnFlow, type Flow, REDUCED_WIDTH } from '../flow.js';
import { type Point, sampleAt, type Spline, splineThrough } from '../geometry.js';
import { type PathUnit, PathWriter } from '../path-writer.js';
import { drawRibbon } from '../ribbon.js';
import { closedSpline, onArtery, onCourse, type PlateCourse, type PreparedPlate } from './prepared.js';

/** One path of a plate's ground, in tenths of its unit or, for small pictures, in whole ones. */
export interface PlatePart {
  /** What it is, for its paint. */
  readonly kind:
    | 'shade'
    | 'body'
    | 'tone'
    | 'nail'
    | 'line'
    | 'over'
    | 'behind'
    | 'behind-hollow'
    | 'deep'
    | 'near'
    | 'faint'
    | 'hollow'
    | 'thinning'
    | 'casing';
  readonly d: string;
  /** The contours of arteries one by one, of which `d` is made. */
  readonly pieces?: readonly string[];
  /** Width of the stroke in the units of its path, where the part is a line. */
  readonly width?: number;
  readonly opacity?: number;
  /** Lies within the skin, or shows only over the deeper arteries. */
  readonly clip?: 'skin' | 'deep';
}

function contour(spline: Spline, path: PathWriter, open = false): void {
  spline.spans.forEach(({ x0, y0, x1, y1, tx0, ty0, tx1, ty1, h }, i) => {
    if (i === 0 && !open) path.moveTo(x0, y0);
    path.bezierCurveTo(
      x0 + (tx0 * h) / 3,
      y0 + (ty0 * h) / 3,
      x1 - (tx1 * h) / 3,
      y1 - (ty1 * h) / 3,
      x1,
      y1,
    );
  });
}

function closedContour(points: readonly Point[], path: PathWriter): void {
  contour(closedSpline(points), path);
  path.closePath();
}

/** What a number of path data stands for. */
export type PlateUnit = Exclude<PathUnit, 'unit'>;

/** How far from either end a landmark has reached its full width, as a share of its length. */
const SWELL = 0.42;

/** A line that swells in its middle, as a pen draws it. */
function ink(points: readonly Point[], weight: number, path: PathWriter): void {
  const rise = (t: number): number => Math.sin((Math.min(1, t / SWELL) * Math.PI) / 2);
  drawRibbon(
    path,
    splineThrough(points),
    0,
    1,
    (t) => (weight / 2) * (0.12 + 0.88 * Math.min(rise(t), rise(1 - t))),
  );
}

const GROUNDS: Readonly<Record<PlateUnit, WeakMap<PreparedPlate, readonly PlatePart[]>>> = {
  tenth: new WeakMap(),
  whole: new WeakMap(),
};

/** Skin and landmarks under the arteries, and those over them. */
function ground(plate: PreparedPlate, unit: PlateUnit): readonly PlatePart[] {
  const known = GROUNDS[unit].get(plate);
  if (known) return known;
  const writer = (): PathWriter => new PathWriter(unit);
  const { tones, nails, lines } = plate.plate;
  const body = writer();
  for (const outline of plate.outlines) {
    contour(outline, body);
    body.closePath();
  }
  const both = (points: string): Point[][] => {
    const given = plate.placed(points);
    return plate.plate.pair ? [given, given.map(([x, y]) => [plate.size[0] - x, y])] : [given];
  };
  const toneParts = tones.map(({ segments, closed, strength }): PlatePart => {
    const path = writer();
    for (let i = 0; i < both(segments[0] as string).length; i++) {
      segments.forEach((points, k) => {
        const own = both(points)[i] as Point[];
        if (closed) closedContour(own, path);
        else contour(splineThrough(own), path, k > 0);
      });
      path.closePath();
    }
    return { kind: 'tone', d: path.toString(), opacity: strength, clip: 'skin' };
  });
  const drawn = (list: readonly { points: string; weight: number }[]): string => {
    const path = writer();
    for (const { points, weight } of list) for (const one of both(points)) ink(one, weight, path);
    return path.toString();
  };
  const nailPath = writer();
  for (const points of nails) for (const one of both(points)) closedContour(one, nailPath);
  const d = body.toString();
  const parts: PlatePart[] = [
    { kind: 'shade', d },
    { kind: 'body', d },
    ...toneParts,
    { kind: 'nail', d: nailPath.toString(), clip: 'skin' },
    { kind: 'line', d: drawn(lines.filter(({ over }) => !over)), clip: 'skin' },
    { kind: 'over', d: drawn(lines.filter(({ over }) => over)), clip: 'skin' },
  ];
  GROUNDS[unit].set(plate, parts);
  return parts;
}

/** A stretch of a course with one flow. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly flow: Flow;
  /** Share of its width that may still carry flow, at both ends. */
  readonly left?: readonly [number, number] | undefined;
}

/** What flows in a course, piece by piece of the artery it shows; a branch has the flow at its origin. */
function stretchesOf({ artery, side }: PlateCourse, flows: ReadonlyMap<string, DrawnFlow[]>): Stretch[] {
  const on = (id: ArteryId): DrawnFlow[] => flows.get(vesselKey({ artery: id, side })) ?? [];
  if (artery.source) {
    const [id, at] = artery.source;
    const fed = on(id).find(({ from, to }) => from <= at && at <= to);
    const [a, b] = fed?.width ?? [];
    // Where a lesion may lie, what most likely comes through decides.
    const flow =
      fed && a !== undefined && b !== undefined && fed.flow === 'none' && a + b > 1 ? 'full' : fed?.flow;
    return [{ from: 0, to: 1, flow: flow ?? 'full' }];
  }
  if (!artery.artery) return [];
  const [first, last] = [onArtery(artery, 0), onArtery(artery, 1)];
  return on(artery.artery).flatMap(({ from, to, flow, width }): Stretch[] => {
    const [a, b] = [Math.max(from, first), Math.min(to, last)];
    if (b - a < 1e-6) return [];
    const at = (t: number): number =>
      width ? width[0] + ((width[1] - width[0]) * (t - from)) / (to - from) : 1;
    return [{ from: onCourse(artery, a), to: onCourse(artery, b), flow, left: width && [at(a), at(b)] }];
  });
}

/** Joins neighbouring stretches of one flow. */
function joined(stretches: readonly Stretch[]): Stretch[] {
  const result: Stretch[] = [];
  for (const stretch of stretches) {
    const last = result.at(-1);
    if (last && last.to === stretch.from && last.flow === stretch.flow && !last.left && !stretch.left)
      result[result.length - 1] = { ...last, to: stretch.to };
    else result.push(stretch);
  }
  return result;
}

const LEAST_WIDTH = 0.04;
/** How far a nearer artery stands off the deeper ones that it crosses, in units of the plate. */
const CASING = 3.2;

/** Contours of a course that no finding changes, by what they are; each is computed once. */
const STILL = new WeakMap<PlateCourse, Map<string, string>>();

function once(course: PlateCourse, what: string, make: () => string): string {
  const known = STILL.get(course) ?? new Map<string, string>();
  STILL.set(course, known);
  const text = known.get(what) ?? make();
  known.set(what, text);
  return text;
}

type Paths = Record<
  'deep' | 'near' | `${'deep' | 'near'}-${'hollow' | 'thinning'}` | 'faint' | 'casing',
  string[]
>;

/** Skin, landmarks and arteries of a plate, in the order they are painted. */
export function plateParts(
  plate: PreparedPlate,
  flow: readonly DrawnFlow[],
  unit: PlateUnit = 'tenth',
): readonly PlatePart[] {
  const flows = new Map<string, DrawnFlow[]>();
  for (const one of flow) {
    const key = vesselKey(one.piece);
    flows.set(key, [...(flows.get(key) ?? []), one]);
  }
  const paths: Paths = {
    deep: [],
    'deep-hollow': [],
    'deep-thinning': [],
    near: [],
    'near-hollow': [],
    'near-thinning': [],
    faint: [],
    casing: [],
  };
  const behind: PlatePart[] = [];
  for (const course of plate.courses) {
    const { artery, spline, radius } = course;
    const stretches = joined(stretchesOf(course, flows));
    if (artery.depth === 'behind') {
      behind.push(...stretches.map((stretch) => dashes(course, stretch, unit)));
      continue;
    }
    const { depth } = artery;
    const ribbon = (from: number, to: number, wide: (u: number) => number): string => {
      const path = new PathWriter(unit);
      drawRibbon(path, spline, from, to, wide);
      return path.toString();
    };
    /** @param width shares of the full width at both ends; the full width unless told otherwise */
    const add = (list: string[], { from, to }: Stretch, width?: readonly [number, number]): void => {
      if (!width) list.push(once(course, `${unit} ${from} ${to}`, () => ribbon(from, to, radius)));
      else {
        const share = (u: number): number => (to > from ? (u - from) / (to - from) : 0);
        list.push(ribbon(from, to, (u) => radius(u) * (width[0] + (width[1] - width[0]) * share(u))));
      }
    };
    for (const stretch of stretches) {
      const { flow: own, left } = stretch;
      const solid = artery.faint ? 'faint' : depth;
      if (own === 'none') {
        add(paths[`${depth}-hollow`], stretch);
        if (left && Math.max(...left) > LEAST_WIDTH) add(paths[`${depth}-thinning`], stretch, left);
      } else
        add(paths[solid], stretch, left ?? (own === 'reduced' ? [REDUCED_WIDTH, REDUCED_WIDTH] : undefined));
    }
    const atOrigin = stretches[0];
    if (atOrigin && artery.fillet) {
      const d = once(course, `${unit} fillets`, () =>
        filletsOf(course, unit, () =>
          plate.courses.filter((one) => one.side === course.side && artery.fillet?.includes(one.artery.id)),
        ),
      );
      const kind = atOrigin.flow === 'none' ? (`${depth}-hollow` as const) : artery.faint ? 'faint' : depth;
      if (atOrigin.flow !== 'reduced' && d) paths[kind].push(d);
    }
    if (depth === 'near' && !artery.bare)
      paths.casing.push(once(course, `${unit} casing`, () => ribbon(0, 1, (u) => radius(u) + CASING)));
  }
  const part = (
    kind: PlatePart['kind'],
    from: keyof typeof paths,
    more: Partial<PlatePart> = {},
  ): PlatePart => ({
    kind,
    d: paths[from].join(''),
    pieces: paths[from],
    ...more,
  });
  const under = ground(plate, unit);
  return [
    ...under.slice(0, -1),
    ...behind,
    part('faint', 'faint'),
    part('hollow', 'deep-hollow'),
    part('thinning', 'deep-thinning'),
    part('deep', 'deep'),
    under.at(-1) as PlatePart,
    part('casing', 'casing', { clip: 'deep' }),
    part('hollow', 'near-hollow'),
    part('thinning', 'near-thinning'),
    part('near', 'near'),
  ].filter(({ d }) => d !== '');
}

/** The landmarks by which a site is found, as lines, in tenths of a unit of the plate. */
export function helpPath(plate: PreparedPlate, { site, side }: Place): string {
  const path = new PathWriter('tenth');
  for (const { points, helps } of plate.plate.lines)
    if (helps?.includes(site)) contour(splineThrough(plate.placed(points, side)), path);
  return path.toString();
}

/** The deeper arteries of a plate, over which nearer ones stand off. */
export function deepPath(plate: PreparedPlate, unit: PlateUnit = 'tenth'): string {
  const path = new PathWriter(unit);
  for (const { artery, spline, radius } of plate.courses)
    if (artery.depth === 'deep') drawRibbon(path, spline, 0, 1, (u) => radius(u) + 1);
  return path.toString();
}

/** Points of the middle line of a stretch behind bone. */
const DASHED = 12;

/** A stretch behind bone: its middle line, to be dashed, as wide as the artery there. */
function dashes(
  { artery, spline, radius }: PlateCourse,
  { from, to, flow }: Stretch,
  unit: PlateUnit,
): PlatePart {
  const path = new PathWriter(unit);
  const points = Array.from({ length: DASHED + 1 }, (_, i): Point => {
    const { x, y } = sampleAt(spline, from + ((to - from) * i) / DASHED);
    return [x, y];
  });
  contour(splineThrough(points), path);
  const width = 2 * radius((from + to) / 2) * (flow === 'reduced' ? REDUCED_WIDTH : 1);
  return {
    kind: flow === 'none' ? 'behind-hollow' : 'behind',
    d: path.toString(),
    width: unit === 'tenth' ? Math.round(10 * width) : Math.round(10 * width) / 10,
    opacity: artery.far ? 0.5 : 0.78,
    clip: 'skin',
  };
}
