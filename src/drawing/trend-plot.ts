import { scaleLinear, scaleUtc } from 'd3-scale';
import { line } from 'd3-shape';
import { SIDES, type Side } from '../anatomy/index.js';
import { lettersApart } from './letters-apart.js';

/** One value at one visit. */
export interface TrendPoint {
  /** Number of the visit, from the first. */
  readonly visit: number;
  /** ms since 1970. */
  readonly time: number;
  readonly value: number;
}

/** Visits in their order as parallel columns, so that ten thousand of them weigh little. What is not finite is nothing to draw. */
export interface TrendColumns {
  readonly times: ArrayLike<number>;
  readonly values: Readonly<Record<Side, ArrayLike<number>>>;
  /** Whether a visit counts; one entered in error does not, and breaks no line. */
  readonly counts: (visit: number) => boolean;
}

/**
 * The stretches of a line that were measured visit after visit. A visit at which nothing was measured ends a stretch: what lies
 * between is not known, and nothing is drawn there. A visit that does not count is as if it were not there.
 */
export function runsOf({ times, values, counts }: TrendColumns, side: Side): TrendPoint[][] {
  const runs: TrendPoint[][] = [];
  let open: TrendPoint[] | undefined;
  for (let visit = 0; visit < times.length; visit++) {
    if (!counts(visit)) continue;
    const value = values[side][visit]!;
    const time = times[visit]!;
    if (!Number.isFinite(value) || Number.isNaN(time)) open = undefined;
    else if (open) open.push({ visit, time, value });
    else runs.push((open = [{ visit, time, value }]));
  }
  return runs;
}

/**
 * At most four points a column of the screen: the first, the lowest, the highest and the last, which draw the same line.
 * @param column the column in which a point lies
 */
export function thinned(
  points: readonly TrendPoint[],
  column: (point: TrendPoint) => number,
): readonly TrendPoint[] {
  const kept: TrendPoint[] = [];
  for (let start = 0; start < points.length;) {
    const at = column(points[start]!);
    let end = start + 1;
    let [low, high] = [start, start];
    for (; end < points.length && column(points[end]!) === at; end++) {
      if (points[end]!.value < points[low]!.value) low = end;
      if (points[end]!.value > points[high]!.value) high = end;
    }
    for (const i of [...new Set([start, low, high, end - 1])].sort((a, b) => a - b)) kept.push(points[i]!);
    start = end;
  }
  return kept;
}

export interface PlacedPoint extends TrendPoint {
  readonly x: number;
  readonly y: number;
}

export interface TrendLine {
  readonly side: Side;
  /** Path data; a stretch of one visit draws nothing but its mark. */
  readonly path: string;
  /** Where a visit is marked; empty where the marks would lie on each other. */
  readonly marks: readonly PlacedPoint[];
  /** Where the line's letter stands. */
  readonly letter: { readonly x: number; readonly y: number } | undefined;
}

export interface TrendBand {
  readonly side: Side;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A plot of one measure over time, in CSS px. */
export interface TrendPlot {
  readonly width: number;
  readonly height: number;
  /** Sides of the frame in which lines lie. */
  readonly frame: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly levels: readonly { readonly value: number; readonly y: number }[];
  readonly lines: readonly TrendLine[];
  readonly bands: readonly TrendBand[];
  y(value: number): number;
}

/** Where points of time lie, the same for every plot of a page. */
export interface TimeAxis {
  readonly from: number;
  readonly to: number;
  x(time: number): number;
  /** The point of time at a distance from the left edge. */
  timeAt(x: number): number;
  readonly ticks: readonly { readonly time: number; readonly x: number }[];
  /** What a tick tells: the least unit that two of them differ by. */
  readonly unit: 'year' | 'month' | 'day' | 'minute';
}

/** Room for the numbers of the levels at the left, and for the letters of the lines at the right, in px. */
const LEFT = 48;
const RIGHT = 26;
const TOP = 10;
const BOTTOM = 24;
/** Least distance between two ticks, in px. */
const TICK = 88;
const DAY = 86_400_000;
/** From so many visits in the plot on, their marks would lie on each other. */
const MARK_GAP = 7;
const LETTER_GAP = 16;

function unitOf(step: number): TimeAxis['unit'] {
  if (step >= 360 * DAY) return 'year';
  if (step >= 27 * DAY) return 'month';
  return step >= DAY ? 'day' : 'minute';
}

/**
 * A time axis for hours as well as for years. One point of time alone stands in the middle of a day.
 * @param shift how far the clock on the wall is ahead of UTC, in ms, so that midnight is midnight there
 */
export function timeAxis(times: ArrayLike<number>, width: number, shift = 0): TimeAxis {
  let [from, to] = [Infinity, -Infinity];
  for (let i = 0; i < times.length; i++) {
    const time = times[i]!;
    if (time < from) from = time;
    if (time > to) to = time;
  }
  if (from > to) [from, to] = [0, 0];
  if (from === to) [from, to] = [from - DAY / 2, to + DAY / 2];
  const scale = scaleUtc([from + shift, to + shift], [LEFT, Math.max(LEFT + 1, width - RIGHT)]);
  const ticks = scale.ticks(Math.max(2, Math.floor((width - LEFT - RIGHT) / TICK)));
  const step = ticks.length > 1 ? ticks[1]!.valueOf() - ticks[0]!.valueOf() : to - from;
  return {
    from,
    to,
    x: (time) => scale(time + shift),
    timeAt: (x) => scale.invert(x).valueOf() - shift,
    ticks: ticks.map((tick) => ({ time: tick.valueOf() - shift, x: scale(tick) })),
    unit: unitOf(step),
  };
}

/** A range of values about an earlier one, from that visit to the later one. */
export interface Scatter {
  readonly side: Side;
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
}

/** Lays out one measure. The levels begin at nothing, so that a fall looks as large as it is. */
export function trendPlot(
  columns: TrendColumns,
  axis: TimeAxis,
  scatter: readonly Scatter[],
  { width, height }: { readonly width: number; readonly height: number },
): TrendPlot {
  const frame = { left: LEFT, right: Math.max(LEFT + 1, width - RIGHT), top: TOP, bottom: height - BOTTOM };
  const runs = SIDES.map((side) => ({ side, runs: runsOf(columns, side) }));
  let highest = Math.max(0, ...scatter.map(({ to }) => to));
  for (const { runs: own } of runs)
    for (const run of own) for (const { value } of run) if (value > highest) highest = value;
  const scale = scaleLinear([0, highest || 1], [frame.bottom, frame.top]).nice(4);
  const y = (value: number): number => scale(value);
  const place = (point: TrendPoint): PlacedPoint => ({ ...point, x: axis.x(point.time), y: y(point.value) });
  const path = line<PlacedPoint>(
    (p) => p.x,
    (p) => p.y,
  ).digits(1);
  const lines = runs.map(({ side, runs: own }): TrendLine => {
    const placed = own.map((run) => thinned(run, ({ time }) => Math.floor(axis.x(time))).map(place));
    const all = placed.flat();
    const room = (frame.right - frame.left) / MARK_GAP;
    const last = all.at(-1);
    return {
      side,
      path: placed.map((run) => (run.length > 1 ? path(run) : '')).join(''),
      // A lone visit has no line, so it must have a mark.
      marks: all.length <= room ? all : placed.filter((run) => run.length === 1).flat(),
      letter: last && { x: Math.min(last.x + 14, width - 8), y: last.y + 5 },
    };
  });
  const bands = scatter.map(({ side, from, to, start, end }): TrendBand => {
    const [x, right] = [axis.x(start), axis.x(end)];
    return { side, x, y: y(to), width: Math.max(2, right - x), height: Math.max(1, y(from) - y(to)) };
  });
  const levels = scale.ticks(4).map((value) => ({ value, y: y(value) }));
  return { width, height, frame, levels, lines: lettersApart(lines, LETTER_GAP), bands, y };
}

/** The visit nearest to a point of time, by halving; visits stand in their order, those without a time before all others. */
export function visitNear(
  times: ArrayLike<number>,
  time: number,
  counts: (visit: number) => boolean,
): number | undefined {
  let [low, high] = [0, times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (Number.isNaN(times[middle]!) || times[middle]! < time) low = middle + 1;
    else high = middle;
  }
  const usable = (visit: number): boolean => !Number.isNaN(times[visit]!) && counts(visit);
  let before = low - 1;
  while (before >= 0 && !usable(before)) before--;
  let after = low;
  while (after < times.length && !usable(after)) after++;
  if (before < 0) return after < times.length ? after : undefined;
  if (after >= times.length) return before;
  return time - times[before]! <= times[after]! - time ? before : after;
}
