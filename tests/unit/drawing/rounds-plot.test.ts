import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundsPlot } from '../../../src/drawing/rounds-plot.js';
import {
  emptyChart,
  type LimbObservation,
  OBSERVED,
  OBSERVED_RANGES,
  OBSERVED_WORDS,
  type ObservationChart,
  observe,
} from '../../../src/triage/index.js';

const START = Date.UTC(2026, 9, 28, 13, 0);
const word = (field: keyof typeof OBSERVED_WORDS) =>
  fc.option(fc.constantFrom<string>(...OBSERVED_WORDS[field]), { nil: undefined });
const number = (field: keyof typeof OBSERVED_RANGES) =>
  fc.option(fc.integer({ min: OBSERVED_RANGES[field][0], max: OBSERVED_RANGES[field][1] }), {
    nil: undefined,
  });
const round = fc.record({
  minutes: fc.integer({ min: 0, max: 4 * 24 * 60 }),
  signal: word('signal'),
  colour: word('colour'),
  sensation: word('sensation'),
  movement: word('movement'),
  refill: number('refill'),
  pain: number('pain'),
});
const charts = fc.array(round, { maxLength: 40 }).map((rounds) =>
  rounds.reduce<ObservationChart>(
    (chart, { minutes, ...row }) =>
      observe(chart, {
        at: new Date(START + minutes * 60_000).toISOString(),
        ...(Object.fromEntries(
          Object.entries(row).filter(([, value]) => value !== undefined),
        ) as Partial<LimbObservation>),
      }),
    emptyChart({ kind: 'leg', side: 'left' }),
  ),
);

describe('a chart over the hours', () => {
  it('marks every field of every round that looked at it, in order and within its room, and joins none across a gap', () => {
    fc.assert(
      fc.property(charts, (chart) => {
        const { rows } = roundsPlot(chart);
        expect(rows.map(({ field }) => field)).toEqual([...OBSERVED]);
        for (const { field, stretches } of rows) {
          const looked = chart.observations.filter((row) => row[field] !== undefined);
          const marks = stretches.flat();
          expect(marks.map(({ at }) => at)).toEqual(looked.map(({ at }) => Date.parse(at)));
          marks.forEach((mark, i) => {
            expect(mark.x).toBeGreaterThanOrEqual(i ? marks[i - 1]!.x : 0);
            expect(mark.x).toBeLessThanOrEqual(1);
            expect(mark.y).toBeGreaterThanOrEqual(0);
            expect(mark.y).toBeLessThanOrEqual(1);
          });
          for (const stretch of stretches) {
            const begin = chart.observations.findIndex(({ at }) => Date.parse(at) === stretch[0]!.at);
            stretch.forEach(({ at }, i) => expect(Date.parse(chart.observations[begin + i]!.at)).toBe(at));
          }
        }
      }),
    );
  });

  it('marks a signal as lost where it is not heard and nowhere else, and a worse word lower than a better one', () => {
    // From best to worst: common practice, no source.
    const ORDER = {
      signal: ['triphasic', 'biphasic', 'monophasic', 'absent'],
      sensation: ['normal', 'digits', 'beyond-digits', 'lost'],
      movement: ['normal', 'weak', 'paralysed'],
    } as const;
    for (const [field, words] of Object.entries(ORDER)) {
      const depths = words.map((value) => {
        const chart = observe(emptyChart({ kind: 'leg', side: 'left' }), {
          at: new Date(START).toISOString(),
          [field]: value,
        });
        return roundsPlot(chart).rows.find((row) => row.field === field)!.stretches[0]![0]!.y;
      });
      expect(depths, field).toEqual([...new Set(depths)].sort((a, b) => a - b));
    }
    fc.assert(
      fc.property(charts, (chart) => {
        for (const { field, stretches } of roundsPlot(chart).rows)
          for (const { at, kind, y } of stretches.flat()) {
            const value = chart.observations.find((row) => Date.parse(row.at) === at)![field];
            expect(kind === 'lost').toBe(field === 'signal' && value === 'absent');
            if (kind !== 'plain') expect(y).toBeGreaterThan(0);
            if (value === 'normal' || value === 'triphasic' || value === 0)
              expect([kind, y]).toEqual(['plain', 0]);
          }
      }),
    );
  });

  it('has ticks at full hours of the clock on the wall', () => {
    const shift = 5.5 * 3_600_000;
    const at = (hours: number): string => new Date(START + hours * 3_600_000).toISOString();
    const chart = [0, 3, 6].reduce(
      (one, hours) => observe(one, { at: at(hours), signal: 'triphasic' }),
      emptyChart({ kind: 'leg', side: 'left' }),
    );
    const { ticks } = roundsPlot(chart, shift);
    expect(ticks.length).toBeGreaterThan(1);
    for (const tick of ticks) expect((tick.at + shift) % 3_600_000).toBe(0);
  });

  it('puts one round alone into the middle, and draws nothing of none', () => {
    const one = observe(emptyChart({ kind: 'arm', side: 'right' }), {
      at: new Date(START).toISOString(),
      pain: 3,
    });
    expect(roundsPlot(one).rows.find(({ field }) => field === 'pain')!.stretches).toEqual([
      [{ at: START, x: 0.5, y: 0.3, kind: 'plain' }],
    ]);
    expect(
      roundsPlot(emptyChart({ kind: 'arm', side: 'right' })).rows.flatMap(({ stretches }) => stretches),
    ).toEqual([]);
  });
});
