import { catmullRom } from './catmull-rom.js';
import { PathWriter } from './path-writer.js';

export type Point = readonly [x: number, y: number];

/** Points of a text of numbers, x and y in turn. A corner is marked by "!", which is left out here. */
export function pointsFrom(text: string): Point[] {
  const values = text.split(' ').map((value) => Number.parseFloat(value));
  return Array.from({ length: values.length / 2 }, (_, i): Point => [
    values[2 * i] as number,
    values[2 * i + 1] as number,
  ]);
}

/** Appends a smooth open line through points. */
export function openPath(points: readonly Point[], path = new PathWriter()): string {
  catmullRom(path, points, false);
  return path.toString();
}

/** Appends a smooth closed outline through points. */
export function closedPath(points: readonly Point[], path = new PathWriter()): string {
  catmullRom(path, points, true);
  return path.toString();
}

export function mirrored(points: readonly Point[], axis: number): Point[] {
  return points.map(([x, y]) => [2 * axis - x, y]);
}

/** A point of a course, the normal there (to the right of the way, y pointing down), and how far along it lies (0 to 1). */
export interface Sample {
  readonly x: number;
  readonly y: number;
  readonly nx: number;
  readonly ny: number;
  readonly t: number;
}

/** A cubic from one point of a course to the next: its ends, the tangents there, and the chord they are scaled to. */
interface Span {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly tx0: number;
  readonly ty0: number;
  readonly tx1: number;
  readonly ty1: number;
  readonly h: number;
}

/** A smooth line through points, and how far along it each of its steps lies. */
export interface Spline {
  readonly spans: readonly Span[];
  /** Length from the beginning to the end of each step; {@link STEPS} a span. */
  readonly reached: readonly number[];
  readonly length: number;
}

/** Steps of a span by which lengths are measured. */
export const STEPS = 4;

/** Tangents of a C2 cubic spline over chord length, one coordinate at a time. */
function tangents(values: readonly number[], chords: readonly number[]): number[] {
  const n = values.length - 1;
  const upper: number[] = [];
  const right: number[] = [];
  for (let i = 0; i <= n; i++) {
    const before = i > 0 ? (chords[i - 1] as number) : 0;
    const after = i < n ? (chords[i] as number) : 0;
    const slopeBefore = i > 0 ? ((values[i] as number) - (values[i - 1] as number)) / before : 0;
    const slopeAfter = i < n ? ((values[i + 1] as number) - (values[i] as number)) / after : 0;
    const [low, mid, up, rhs] =
      i === 0
        ? [0, 2, 1, 3 * slopeAfter]
        : i === n
          ? [1, 2, 0, 3 * slopeBefore]
          : [after, 2 * (before + after), before, 3 * (after * slopeBefore + before * slopeAfter)];
    const pivot = mid - low * (upper[i - 1] ?? 0);
    upper.push(up / pivot);
    right.push((rhs - low * (right[i - 1] ?? 0)) / pivot);
  }
  for (let i = n - 1; i >= 0; i--)
    right[i] = (right[i] as number) - (upper[i] as number) * (right[i + 1] as number);
  return right;
}

/** Value of a span in one coordinate at a share `u` of it. */
function value(p0: number, t0: number, p1: number, t1: number, h: number, u: number): number {
  const v = 1 - u;
  return v * v * ((1 + 2 * u) * p0 + u * h * t0) + u * u * ((3 - 2 * u) * p1 - v * h * t1);
}

/** Its first derivative by length of chord. */
function slope(p0: number, t0: number, p1: number, t1: number, h: number, u: number): number {
  return (6 * u * (1 - u) * (p1 - p0)) / h + (1 - u) * (1 - 3 * u) * t0 + u * (3 * u - 2) * t1;
}

/** Its second derivative by length of chord. */
function bend(p0: number, t0: number, p1: number, t1: number, h: number, u: number): number {
  return ((6 - 12 * u) * (p1 - p0)) / (h * h) + ((6 * u - 4) * t0 + (6 * u - 2) * t1) / h;
}

/**
 * A smooth course through points.
 * @param lead points before and after that only shape the ends, so that neighbouring courses meet without a kink
 */
export function splineThrough(
  points: readonly Point[],
  lead: { before?: readonly Point[]; after?: readonly Point[] } = {},
): Spline {
  const before = lead.before ?? [];
  const all = [...before, ...points, ...(lead.after ?? [])];
  const xs = all.map(([x]) => x);
  const ys = all.map(([, y]) => y);
  const chords = all
    .slice(1)
    .map(([x, y], i) => Math.hypot(x - (xs[i] as number), y - (ys[i] as number)) || 1);
  const tx = tangents(xs, chords);
  const ty = tangents(ys, chords);
  const spans: Span[] = [];
  const reached: number[] = [];
  let length = 0;
  for (let i = before.length; i < before.length + points.length - 1; i++) {
    const span: Span = {
      x0: xs[i] as number,
      y0: ys[i] as number,
      x1: xs[i + 1] as number,
      y1: ys[i + 1] as number,
      tx0: tx[i] as number,
      ty0: ty[i] as number,
      tx1: tx[i + 1] as number,
      ty1: ty[i + 1] as number,
      h: chords[i] as number,
    };
    let { x0: x, y0: y } = span;
    for (let step = 1; step <= STEPS; step++) {
      const nextX = value(span.x0, span.tx0, span.x1, span.tx1, span.h, step / STEPS);
      const nextY = value(span.y0, span.ty0, span.y1, span.ty1, span.h, step / STEPS);
      length += Math.hypot(nextX - x, nextY - y);
      reached.push(length);
      x = nextX;
      y = nextY;
    }
    spans.push(span);
  }
  return { spans, reached, length };
}

/** A sample with its curvature. */
export interface Bent extends Sample {
  /** Curvature, positive towards the normal. */
  readonly curvature: number;
}

/** The point at a fraction of the length, with its curvature. */
export function bentAt({ spans, reached, length }: Spline, t: number): Bent {
  const s = Math.min(1, Math.max(0, t)) * length;
  let step = 0;
  while (step < reached.length - 1 && (reached[step] as number) < s) step++;
  const from = step ? (reached[step - 1] as number) : 0;
  const part = (s - from) / ((reached[step] as number) - from || 1);
  const { x0, y0, x1, y1, tx0, ty0, tx1, ty1, h } = spans[Math.floor(step / STEPS)] as Span;
  const u = ((step % STEPS) + part) / STEPS;
  const dx = slope(x0, tx0, x1, tx1, h, u);
  const dy = slope(y0, ty0, y1, ty1, h, u);
  const speed = Math.hypot(dx, dy) || 1;
  return {
    x: value(x0, tx0, x1, tx1, h, u),
    y: value(y0, ty0, y1, ty1, h, u),
    nx: -dy / speed,
    ny: dx / speed,
    t,
    curvature: (dx * bend(y0, ty0, y1, ty1, h, u) - dy * bend(x0, tx0, x1, tx1, h, u)) / speed ** 3,
  };
}

/** The point at a fraction of the length. */
export function sampleAt(spline: Spline, t: number): Sample {
  return bentAt(spline, t);
}
