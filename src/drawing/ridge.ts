import { feedingPiece, type Piece } from '../anatomy/index.js';
import type { Chart, RidgeSizes, Strand } from './chart.js';
import type { LesionMark } from './flow.js';
import { bentAt, type Point } from './geometry.js';
import { courseOf, radiusAt } from './vessels.js';

/** A point of the line along which a ridge stands. */
export interface Footing {
  readonly x: number;
  readonly y: number;
  /** Direction in which the ridge rises. */
  readonly nx: number;
  readonly ny: number;
  /** Curvature towards that direction. */
  readonly curvature: number;
  /** Distance of the ridge's base from the line. */
  readonly gap: number;
  /** Length of line this point stands for, and the probability that the lesion lies on it. */
  readonly length: number;
  readonly weight: number;
}

/** Of the figure: judged by eye on drawings of common patterns, no source. */
export const FIGURE_RIDGE: RidgeSizes = { area: 33, least: 2, most: 26, smooth: 45 };

export interface Ridge {
  readonly outline: readonly Point[];
  /** A short line at each end. */
  readonly feet: readonly (readonly [Point, Point])[];
  /** Points on the crest, each with the direction out of the ridge; highest first. */
  readonly crest: readonly {
    readonly x: number;
    readonly y: number;
    readonly nx: number;
    readonly ny: number;
  }[];
}

/** Mean over a window of the line; what would fall off an end is folded back, so that nothing is lost. */
function smoothed(masses: readonly number[], half: number): number[] {
  const n = masses.length;
  const out = masses.map(() => 0);
  masses.forEach((mass, i) => {
    for (let j = i - half; j <= i + half; j++) {
      let to = j;
      while (to < 0 || to >= n) to = to < 0 ? -1 - to : 2 * n - 1 - to;
      out[to] = (out[to] as number) + mass / (2 * half + 1);
    }
  });
  return out;
}

const MOST_ROUNDS = 40;

/** Heights over a straight line that enclose `area` for each percent, within the least and the greatest height. */
function heights(footings: readonly Footing[], { area, least, most, smooth }: RidgeSizes): number[] {
  const length = footings.reduce((sum, footing) => sum + footing.length, 0);
  const step = length / footings.length;
  const half = Math.max(1, Math.round(smooth / step / 2));
  const total = footings.reduce((sum, { weight }) => sum + weight, 0) * 100 * area;
  const high = (masses: readonly number[]): number[] =>
    masses.map((mass, i) => (mass * 100 * area) / (footings[i] as Footing).length);
  let masses = smoothed(
    footings.map(({ weight }) => weight),
    half,
  );
  for (let round = 0; round < MOST_ROUNDS && Math.max(...high(masses)) > most; round++)
    masses = smoothed(masses, half);
  // The least height is taken from all alike, so that the area stays what it means.
  const ground = Math.min(least * length, total);
  const share = total > 0 ? 1 - ground / total : 0;
  return high(masses).map((height) => Math.min(most, Math.max(least, ground / length + height * share)));
}

/** Height of a ridge beside a bend that encloses as much as `height` would beside a straight line. */
function besideBend(height: number, { curvature, gap }: Footing): number {
  const base = Math.max(0.4, 1 - curvature * gap);
  const root = base * base - 2 * curvature * height;
  if (Math.abs(curvature) < 1e-6) return height / base;
  return root > 0.04 ? (base - Math.sqrt(root)) / curvature : height / base;
}

const at = ({ x, y, nx, ny }: Footing, out: number): Point => [x + nx * out, y + ny * out];

/** How far the feet of a ridge reach below its base and above it, as shares of the gap. */
const FOOT = { below: 0.25, above: 0.6 };

function areaOf(outline: readonly Point[]): number {
  let twice = 0;
  outline.forEach(([x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length] as Point;
    twice += x * nextY - nextX * y;
  });
  return Math.abs(twice) / 2;
}

/** A correction for corners of the line, where one artery leaves another, stays within this factor a round. */
const MOST_CORRECTED = 1.5;

/** A ridge over a line of at least two points: equal area is equal chance. */
export function ridgeOver(footings: readonly Footing[], sizes: RidgeSizes): Ridge {
  const straight = heights(footings, sizes);
  const wanted = straight.reduce((sum, height, i) => sum + height * (footings[i] as Footing).length, 0);
  const base = footings.map((footing) => at(footing, footing.gap)).reverse();
  let tall = straight.map((height, i) => besideBend(height, footings[i] as Footing));
  const crest = (): Point[] => footings.map((footing, i) => at(footing, footing.gap + (tall[i] as number)));
  for (let round = 0; round < 2; round++) {
    const factor = wanted / (areaOf([...crest(), ...base]) || 1);
    tall = tall.map((height) => height * Math.min(MOST_CORRECTED, Math.max(1 / MOST_CORRECTED, factor)));
  }
  const top = crest();
  const ends = [footings[0] as Footing, footings.at(-1) as Footing];
  return {
    outline: [...top, ...base],
    feet: ends.map((end) => [at(end, end.gap * (1 - FOOT.below)), at(end, end.gap * (1 + FOOT.above))]),
    crest: footings
      .map(({ nx, ny }, i) => ({
        x: (top[i] as Point)[0],
        y: (top[i] as Point)[1],
        nx,
        ny,
        tall: tall[i] as number,
      }))
      .sort((a, b) => b.tall - a.tall),
  };
}

export interface WeightedRun {
  readonly piece: Piece;
  readonly weight: number;
}

/** The pieces of a stretch as unbranched runs: the first follows the heavier branch at a fork, each other branch is its own. */
export function runsOf(pieces: readonly WeightedRun[]): WeightedRun[][] {
  const left = new Set(pieces);
  const load = (one: WeightedRun): number =>
    one.weight + Math.max(0, ...pieces.filter(({ piece }) => feedingPiece(piece) === one.piece).map(load));
  const runs: WeightedRun[][] = [];
  for (const start of pieces) {
    if (!left.has(start)) continue;
    const run: WeightedRun[] = [];
    let next: WeightedRun | undefined = start;
    while (next) {
      const here: WeightedRun = next;
      run.push(here);
      left.delete(here);
      next = pieces
        .filter((one) => left.has(one) && feedingPiece(one.piece) === here.piece)
        .sort((a, b) => load(b) - load(a))[0];
    }
    runs.push(run);
  }
  return runs;
}

/** Distance between points of the line, in figure units. */
const STEP = 3;
/** Distance between an artery's edge and its ridge. */
const GAP = 9;
/** Largest part of a run that a foot may stand away from its site. */
const MOST_CLEAR = 0.3;

/** Arteries of the pelvis and the trunk: between the two sides of the body there is no room for two ridges. */
const OUTSIDE = /aorta|iliac|brachiocephalic|subclavian|carotid/;

/** The side of the artery on which a mark stands: 1 towards the midline of the body on the left side, -1 away from it. */
function sideOf({ pieces, limb, further }: LesionMark): 1 | -1 {
  const outside = pieces.some(({ piece }) => OUTSIDE.test(piece.artery)) !== (further ?? false);
  return outside === limb.startsWith('left') ? -1 : 1;
}

/** The whole figure as a chart: every piece on one course. */
export const FIGURE_CHART: Chart = {
  ridge: FIGURE_RIDGE,
  strandsOf: (piece) => [
    {
      spline: courseOf(piece),
      from: piece.from,
      to: piece.to,
      share: 1,
      radius: (t) => radiusAt(piece.artery, t),
    },
  ],
};

function alongStrand(
  { spline, from, to, radius }: Strand,
  weight: number,
  side: 1 | -1,
  step: number,
): Footing[] {
  const length = (to - from) * spline.length;
  const count = Math.max(1, Math.round(length / step));
  return Array.from({ length: count }, (_, i): Footing => {
    const t = from + ((i + 0.5) / count) * (to - from);
    const { x, y, nx, ny, curvature } = bentAt(spline, t);
    return {
      x,
      y,
      nx: side * nx,
      ny: side * ny,
      curvature: side * curvature,
      gap: radius(t) + GAP,
      length: length / count,
      weight: weight / count,
    };
  });
}

/** Farther apart than this, in units of the drawing, two stretches are not one line: a plate may show an artery in parts. */
const FAR = 30;

/** The line of a run, in parts where the drawing shows it in parts. */
function footingsOf(run: readonly WeightedRun[], mark: LesionMark, chart: Chart): Footing[][] {
  const own = sideOf(mark);
  const parts: Footing[][] = [];
  for (const { piece, weight } of run)
    for (const strand of chart.strandsOf(piece)) {
      const footings = alongStrand(strand, weight * strand.share, strand.side ?? own, chart.step ?? STEP);
      const last = parts.at(-1)?.at(-1);
      const next = footings[0];
      if (last && next && Math.hypot(next.x - last.x, next.y - last.y) < FAR) parts.at(-1)?.push(...footings);
      else parts.push(footings);
    }
  return parts;
}

/** Leaves out the ends of a run near sites; their weight goes to what stands next. */
function clipped(footings: readonly Footing[], before: number, after: number): Footing[] {
  const total = footings.reduce((sum, { length }) => sum + length, 0);
  let reached = 0;
  const kept: Footing[] = [];
  let carried = 0;
  for (const footing of footings) {
    const middle = reached + footing.length / 2;
    reached += footing.length;
    const last = kept.at(-1);
    if (middle < before) carried += footing.weight;
    else if (middle > total - after && last)
      kept[kept.length - 1] = { ...last, weight: last.weight + footing.weight };
    else {
      kept.push({ ...footing, weight: footing.weight + carried });
      carried = 0;
    }
  }
  return kept;
}

/**
 * The ridges of a mark, one for each unbranched run that the drawing shows.
 * @param clear how far their feet stand from the sites that bound them, in units of the drawing
 */
export function ridgesOf(mark: LesionMark, clear: number, chart: Chart = FIGURE_CHART): Ridge[] {
  return runsOf(mark.pieces).flatMap((run) => {
    const first = run[0]?.piece;
    const parts = footingsOf(run, mark, chart);
    return parts.flatMap((footings, i) => {
      const length = footings.reduce((sum, footing) => sum + footing.length, 0);
      const room = Math.min(clear, length * MOST_CLEAR);
      const from = i === 0 && first && feedingPiece(first)?.endsAt ? room : 0;
      const to = i === parts.length - 1 && run.at(-1)?.piece.endsAt ? room : 0;
      const kept = clipped(footings, from, to);
      return kept.length > 1 ? [ridgeOver(kept, chart.ridge)] : [];
    });
  });
}
