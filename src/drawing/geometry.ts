import { curveCatmullRom, curveCatmullRomClosed, line } from 'd3-shape';

export type Point = readonly [x: number, y: number];

/** A point of a sampled course, the normal there, and how far along it lies (0 to 1 by length). */
export interface Sample {
  readonly x: number;
  readonly y: number;
  readonly nx: number;
  readonly ny: number;
  readonly t: number;
}

const smooth = line<Point>().curve(curveCatmullRom.alpha(0.5)).digits(1);
const closed = line<Point>().curve(curveCatmullRomClosed.alpha(0.5)).digits(1);

/** A smooth open line through points, as path data. */
export function openPath(points: readonly Point[]): string {
  return smooth(points as Point[]) ?? '';
}

/** A smooth closed outline through points, as path data. */
export function closedPath(points: readonly Point[]): string {
  return closed(points as Point[]) ?? '';
}

export function mirrored(points: readonly Point[], axis: number): Point[] {
  return points.map(([x, y]) => [2 * axis - x, y]);
}

/** Tangents of a cubic spline over chord length whose bending never jumps, one coordinate at a time. */
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
  const result = right;
  for (let i = n - 1; i >= 0; i--)
    result[i] = (right[i] as number) - (upper[i] as number) * (result[i + 1] as number);
  return result;
}

/**
 * Samples a smooth course through points.
 * @param lead points before and after that only shape the ends, so that neighbouring courses meet without a kink
 * @param per samples per span between two points
 */
export function sampleCourse(
  points: readonly Point[],
  lead: { before?: readonly Point[]; after?: readonly Point[] } = {},
  per = 4,
): Sample[] {
  const before = lead.before ?? [];
  const all = [...before, ...points, ...(lead.after ?? [])];
  const chords = all.slice(1).map((p, i) => {
    const [x, y] = all[i] as Point;
    return Math.hypot(p[0] - x, p[1] - y) || 1;
  });
  const tx = tangents(
    all.map((p) => p[0]),
    chords,
  );
  const ty = tangents(
    all.map((p) => p[1]),
    chords,
  );
  const raw: { x: number; y: number; nx: number; ny: number; s: number }[] = [];
  let s = 0;
  for (let i = before.length; i < before.length + points.length - 1; i++) {
    const h = chords[i] as number;
    const [x0, y0] = all[i] as Point;
    const [x1, y1] = all[i + 1] as Point;
    for (let k = raw.length ? 1 : 0; k <= per; k++) {
      const u = k / per;
      const a = (1 + 2 * u) * (1 - u) ** 2;
      const b = u * (1 - u) ** 2 * h;
      const c = u * u * (3 - 2 * u);
      const d = u * u * (u - 1) * h;
      const x = a * x0 + b * (tx[i] as number) + c * x1 + d * (tx[i + 1] as number);
      const y = a * y0 + b * (ty[i] as number) + c * y1 + d * (ty[i + 1] as number);
      const da = (6 * u * u - 6 * u) / h;
      const db = 3 * u * u - 4 * u + 1;
      const dd = 3 * u * u - 2 * u;
      const dx = da * (x0 - x1) + db * (tx[i] as number) + dd * (tx[i + 1] as number);
      const dy = da * (y0 - y1) + db * (ty[i] as number) + dd * (ty[i + 1] as number);
      const length = Math.hypot(dx, dy) || 1;
      const last = raw.at(-1);
      if (last) s += Math.hypot(x - last.x, y - last.y);
      raw.push({ x, y, nx: -dy / length, ny: dx / length, s });
    }
  }
  return raw.map(({ x, y, nx, ny, s: at }) => ({ x, y, nx, ny, t: at / (s || 1) }));
}

/** The point at a fraction of the length. */
export function sampleAt(samples: readonly Sample[], t: number): Sample {
  const i = Math.max(
    1,
    samples.findIndex((p) => p.t >= t),
  );
  const a = samples[i - 1] as Sample;
  const b = samples[i] as Sample;
  const k = Math.min(1, Math.max(0, (t - a.t) / (b.t - a.t || 1)));
  const mix = (p: number, q: number): number => p + (q - p) * k;
  return { x: mix(a.x, b.x), y: mix(a.y, b.y), nx: mix(a.nx, b.nx), ny: mix(a.ny, b.ny), t };
}

/** The samples between two fractions, with exact ends. */
export function sampleBetween(samples: readonly Sample[], from: number, to: number): Sample[] {
  const inside = samples.filter((p) => p.t > from + 1e-6 && p.t < to - 1e-6);
  return [sampleAt(samples, from), ...inside, sampleAt(samples, to)];
}

const number = (value: number): string => String(Math.round(value * 10) / 10);

/**
 * A tapered ribbon along samples, as path data, with round ends.
 * @param radius half the width at a fraction of the whole course
 */
export function ribbonPath(samples: readonly Sample[], radius: (t: number) => number): string {
  const edge = (sign: number): Point[] =>
    samples.map((p) => [p.x + sign * p.nx * radius(p.t), p.y + sign * p.ny * radius(p.t)]);
  const out = edge(1);
  const back = edge(-1).reverse();
  const cap = (sample: Sample | undefined, to: Point | undefined): string => {
    const r = number(radius(sample?.t ?? 0));
    return `A${r},${r},0,0,0,${number(to?.[0] ?? 0)},${number(to?.[1] ?? 0)}`;
  };
  return `${openPath(out)}${cap(samples.at(-1), back[0])}${openPath(back).replace(/^M[^A-Z]*/, '')}${cap(samples[0], out[0])}Z`;
}
