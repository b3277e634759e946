import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runsOf, thinned, timeAxis, trendPlot, visitNear } from '../../../src/drawing/trend-plot.js';

const HOUR = 3_600_000;
const all = (): boolean => true;
const value = fc.oneof(
  { weight: 3, arbitrary: fc.double({ min: 0, max: 1.4, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom(NaN, Infinity) },
);
const columns = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 5 * 365 * 24 }), value, value, fc.boolean()), { maxLength: 120 })
  .map((rows) => {
    let time = Date.UTC(2010, 0, 1);
    return {
      times: rows.map(([hours]) => (time += hours * HOUR)),
      values: { right: rows.map(([, right]) => right), left: rows.map(([, , left]) => left) },
      struck: rows.map(([, , , struck]) => struck),
    };
  });

describe('a line', () => {
  it('never joins two visits across one at which nothing was measured, and leaves out what does not count', () => {
    fc.assert(
      fc.property(columns, ({ times, values, struck }) => {
        const counts = (at: number): boolean => !struck[at];
        const runs = runsOf({ times, values, counts }, 'left');
        const drawn = runs.flat();
        // Every known value that counts is in exactly one stretch.
        expect(drawn.map(({ visit }) => visit)).toEqual(
          times.flatMap((_, at) => (counts(at) && Number.isFinite(values.left[at]) ? [at] : [])),
        );
        for (const run of runs)
          run.slice(1).forEach(({ visit }, i) => {
            for (let at = run[i]!.visit + 1; at < visit; at++) expect(counts(at)).toBe(false);
          });
        runs.slice(1).forEach((run, i) => {
          const gap = times.map((_, at) => at).slice(runs[i]!.at(-1)!.visit + 1, run[0]!.visit);
          expect(gap.some((at) => counts(at) && !Number.isFinite(values.left[at]))).toBe(true);
        });
      }),
    );
  });

  it('thinned draws the same: the first, last, lowest and highest of every column stay', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 2, noNaN: true }), { maxLength: 400 }),
        fc.integer({ min: 1, max: 40 }),
        (list, wide) => {
          const points = list.map((one, visit) => ({ visit, time: visit, value: one }));
          const column = ({ time }: { time: number }): number => Math.floor(time / wide);
          const kept = thinned(points, column);
          const visits = kept.map(({ visit }) => visit);
          expect(visits).toEqual([...new Set(visits)].sort((a, b) => a - b));
          for (let at = 0; at * wide < list.length; at++) {
            const own = points.filter((point) => column(point) === at);
            const left = kept.filter((point) => column(point) === at);
            expect(left.length).toBeLessThanOrEqual(4);
            expect([left[0], left.at(-1)]).toEqual([own[0], own.at(-1)]);
            const values = (of: typeof own): number[] => [
              Math.min(...of.map((p) => p.value)),
              Math.max(...of.map((p) => p.value)),
            ];
            expect(values(left)).toEqual(values(own));
          }
        },
      ),
    );
  });

  it('costs no more path for ten thousand visits than its width has room for', () => {
    const times = Array.from({ length: 10_000 }, (_, i) => i * HOUR);
    const wave = times.map((_, i) => 1 + Math.sin(i / 7) / 3);
    const plot = trendPlot(
      { times, values: { right: wave, left: wave }, counts: all },
      timeAxis(times, 600),
      [],
      { width: 600, height: 168 },
    );
    for (const { path, marks } of plot.lines) {
      expect(path.split('L').length).toBeLessThanOrEqual(4 * 600);
      expect(marks).toEqual([]);
    }
  });
});

describe('a plot', () => {
  it('lies within its frame, whatever is drawn', () => {
    fc.assert(
      fc.property(columns, fc.integer({ min: 280, max: 900 }), ({ times, values }, width) => {
        const axis = timeAxis(times, width);
        const plot = trendPlot({ times, values, counts: all }, axis, [], { width, height: 168 });
        const { left, right, top, bottom } = plot.frame;
        for (const { marks, letter } of plot.lines) {
          for (const { x, y } of marks) {
            expect(x).toBeGreaterThanOrEqual(left - 0.01);
            expect(x).toBeLessThanOrEqual(right + 0.01);
            expect(y).toBeGreaterThanOrEqual(top - 0.01);
            expect(y).toBeLessThanOrEqual(bottom + 0.01);
          }
          if (letter) expect(letter.x).toBeLessThanOrEqual(width);
        }
        const [a, b] = plot.lines.map(({ letter }) => letter);
        if (a && b && Math.abs(a.x - b.x) < 16) expect(Math.abs(a.y - b.y)).toBeGreaterThanOrEqual(15.99);
      }),
    );
  });
});

describe('the time axis', () => {
  it.each([
    ['six hours', 6 * HOUR, 'minute'],
    ['three days', 72 * HOUR, 'minute'],
    ['three weeks', 21 * 24 * HOUR, 'day'],
    ['a year', 365 * 24 * HOUR, 'month'],
    ['thirty years', 30 * 365 * 24 * HOUR, 'year'],
  ] as const)('fits %s', (_, span, unit) => {
    const start = Date.UTC(2026, 2, 4, 13, 20);
    const axis = timeAxis([start, start + span], 620);
    expect(axis.unit).toBe(unit);
    expect(axis.ticks.length).toBeGreaterThan(1);
    expect(axis.ticks.length).toBeLessThanOrEqual(14);
  });

  it('has its midnight where the clock on the wall has it', () => {
    const shift = 2 * HOUR;
    const start = Date.UTC(2026, 2, 4, 18);
    const { ticks } = timeAxis([start, start + 12 * HOUR], 620, shift);
    for (const { time } of ticks) expect(new Date(time + shift).getUTCMinutes()).toBe(0);
    expect(ticks.some(({ time }) => new Date(time + shift).getUTCHours() === 0)).toBe(true);
  });

  it('reads back the time that it drew', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }),
        fc.integer({ min: 1, max: 1e9 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (from, span, share) => {
          const axis = timeAxis([from, from + span], 500);
          const time = from + span * share;
          expect(Math.abs(axis.timeAt(axis.x(time)) - time)).toBeLessThan(2);
        },
      ),
    );
  });

  it('finds the nearest visit that counts, as looking at every one does', () => {
    fc.assert(
      fc.property(columns, fc.integer({ min: 0, max: 400 * 24 }), ({ times, struck }, hours) => {
        const time = Date.UTC(2010, 0, 1) + hours * HOUR;
        const counts = (at: number): boolean => !struck[at];
        const found = visitNear(times, time, counts);
        const usable = times.flatMap((_, at) => (counts(at) ? [at] : []));
        if (!usable.length) expect(found).toBeUndefined();
        else {
          const least = Math.min(...usable.map((at) => Math.abs(times[at]! - time)));
          expect(counts(found!)).toBe(true);
          expect(Math.abs(times[found!]! - time)).toBe(least);
        }
      }),
    );
  });
});
