import { scalePoint } from 'd3-scale';
import { type Level, LEVELS } from '../anatomy/index.js';
import type { Result } from './progress.js';

/** One patient whose level was named, rightly or not. */
export interface LevelTry {
  /** Which of the results, from 0, oldest first. */
  readonly index: number;
  /** All that was diseased at that level was named. */
  readonly right: boolean;
}

/** A level, or `none`: patients whose arteries show no disease. */
export interface LevelProgress {
  readonly level: Level | 'none';
  /** Oldest first; never empty. */
  readonly tries: readonly LevelTry[];
  /** How many of them were right. */
  readonly right: number;
}

/** How one patient stands to one level; `undefined` where it was not tried: no such disease, not answered, or not known. */
function triedAt({ levels, located, open, parts }: Result, level: Level | 'none'): boolean | undefined {
  if (!located || !open || open.includes('level')) return undefined;
  if (level === 'none') {
    const [points, of] = parts.level ?? [0, 1];
    return levels.length ? undefined : points === of;
  }
  const own = levels.filter((one) => one.endsWith(` ${level}`));
  return own.length ? own.every((one) => located.includes(one)) : undefined;
}

/** Results by level, in the order of the levels. What was not answered was not tried. */
export function progressByLevel(results: readonly Result[]): readonly LevelProgress[] {
  return [...LEVELS, 'none' as const].flatMap((level): LevelProgress[] => {
    const tries = results.flatMap((result, index): LevelTry[] => {
      const right = triedAt(result, level);
      return right === undefined ? [] : [{ index, right }];
    });
    return tries.length ? [{ level, tries, right: tries.filter(({ right }) => right).length }] : [];
  });
}

/** Points as a share of what could be had, of the latest patients and of those before. */
export interface Trend {
  readonly last: { readonly count: number; readonly share: number };
  /** Missing where there are none before. */
  readonly before?: { readonly count: number; readonly share: number };
}

/** Patients that a trend looks at, at most, and again before them. */
const STRETCH = 5;

/** Whether it gets better: `undefined` without a result. */
export function trendOf(results: readonly Result[]): Trend | undefined {
  const of = (some: readonly Result[]): Trend['last'] => {
    const sum = (part: 'points' | 'of'): number => some.reduce((all, one) => all + one[part], 0);
    return { count: some.length, share: Math.min(1, sum('points') / Math.max(1, sum('of'))) };
  };
  const before = results.slice(-2 * STRETCH, -STRETCH);
  const last = results.slice(-STRETCH);
  if (!last.length) return undefined;
  return { last: of(last), ...(before.length && { before: of(before) }) };
}

/** Latest results that are drawn; more would touch on a telephone. */
export const MOST_DRAWN_RESULTS = 24;

/** A row of the chart of progress. */
export interface ProgressRow {
  readonly level: Level | 'none';
  readonly tried: number;
  readonly right: number;
  /** Those that are drawn, oldest first. */
  readonly marks: readonly { readonly x: number; readonly right: boolean }[];
}

/** The chart of progress: a row a level, a mark a patient, in shares of whatever room there is, in the order of time. */
export interface ProgressPlot {
  readonly rows: readonly ProgressRow[];
  /** Which of the results is the first that is drawn, from 0. */
  readonly from: number;
}

export function progressPlot(results: readonly Result[]): ProgressPlot {
  const from = Math.max(0, results.length - MOST_DRAWN_RESULTS);
  const drawn = results.slice(from).map((_, i) => from + i);
  // Half a step is left free at both ends, for the marks have a width.
  const scale = scalePoint<number>(drawn, [0, 1]).padding(0.5);
  const rows = progressByLevel(results).map(({ level, tries, right }): ProgressRow => ({
    level,
    tried: tries.length,
    right,
    marks: tries
      .filter(({ index }) => index >= from)
      .map((one) => ({ x: scale(one.index)!, right: one.right })),
  }));
  return { rows, from };
}
