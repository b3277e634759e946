import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../src/anatomy/index.js';
import {
  changedPlaces,
  compareExaminations,
  isScatter,
  LEAST_CHANGES,
  offsetOf,
  scatterOf,
  timeOf,
  TREND_MEASURES,
  trendValue,
  visitsInOrder,
} from '../../../src/comparison/index.js';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { anyExamination } from '../../tools/arbitraries.js';

const measured = (pressures: NonNullable<Examination['pressures']>): Examination => ({
  ...emptyExamination(),
  pressures,
});

describe('what a visit knows of a measure', () => {
  it('is nothing where nothing was measured, for every measure and side', () => {
    for (const measure of TREND_MEASURES)
      for (const side of SIDES) expect(trendValue(emptyExamination(), measure, side)).toBeUndefined();
  });

  it('is the index, the pressure it is taken from, and the distance', () => {
    const one: Examination = {
      ...measured({
        brachial: { right: 140, left: 130 },
        'dorsalis-pedis': { left: 84 },
        'posterior-tibial': { left: 88 },
        toe: { left: 35 },
      }),
      history: { leg: { left: { symptom: 'claudication', distance: 150 } } },
    };
    const left = TREND_MEASURES.map((measure) => trendValue(one, measure, 'left'));
    expect(left).toEqual([0.63, 0.25, 88, 35, 150]);
    expect(TREND_MEASURES.map((measure) => trendValue(one, measure, 'right'))).toEqual(
      TREND_MEASURES.map(() => undefined),
    );
  });

  it('has no number where the artery could not be compressed', () => {
    const stiff = measured({ brachial: { right: 120 }, 'dorsalis-pedis': { right: 'incompressible' } });
    expect(trendValue(stiff, 'ankle-index', 'right')).toBe('incompressible');
    const high = measured({ brachial: { right: 120 }, 'dorsalis-pedis': { right: 240 } });
    expect(trendValue(high, 'ankle-index', 'right')).toBe('incompressible');
    expect(trendValue(high, 'ankle-pressure', 'right')).toBe(240);
  });
});

describe('scatter', () => {
  // Rutherford 1997 for the index; Romanos 2010 (J Foot Ankle Res 3:31) for toes; Vasc Med 1997;2:93-97 for the distance.
  it.each([
    ['ankle-index', 0.8, 0.66, true],
    ['ankle-index', 0.8, 0.65, false],
    ['toe-index', 0.6, 0.33, true],
    ['toe-index', 0.6, 0.32, false],
    ['toe-pressure', 60, 32, true],
    ['toe-pressure', 60, 31, false],
    ['distance', 100, 146, true],
    ['distance', 100, 147, false],
    ['distance', 147, 100, false],
  ] as const)('%s: from %d to %d is scatter: %s', (measure, from, to, expected) => {
    expect(isScatter(measure, from, to)).toBe(expected);
  });

  it('of a pressure at the ankle is that of the index, whatever the arm', () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 220 }), fc.integer({ min: 20, max: 240 }), (arm, mmHg) => {
        const { from, to } = scatterOf('ankle-pressure', mmHg, arm)!;
        expect(to - mmHg).toBeCloseTo(0.15 * arm, 9);
        expect(mmHg - from).toBeCloseTo(Math.min(mmHg, 0.15 * arm), 9);
      }),
    );
    expect(scatterOf('ankle-pressure', 100)).toBeUndefined();
  });

  it('is the same read either way round, and a value never differs from itself', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...TREND_MEASURES),
        fc.double({ min: 0.1, max: 400, noNaN: true }),
        fc.double({ min: 0.1, max: 400, noNaN: true }),
        (measure, a, b) => {
          expect(isScatter(measure, a, b, 130)).toBe(isScatter(measure, b, a, 130));
          expect(isScatter(measure, a, a, 130)).toBe(true);
          const range = scatterOf(measure, a, 130)!;
          // What the band shows and what is told never disagree, but at its very edge.
          if (b > range.from + 0.002 && b < range.to - 0.002)
            expect(isScatter(measure, a, b, 130)).toBe(true);
          if (b < range.from - 0.002 || b > range.to + 0.002)
            expect(isScatter(measure, a, b, 130)).toBe(false);
        },
      ),
    );
  });

  it('names a source for every measure', () => {
    for (const { source } of Object.values(LEAST_CHANGES)) expect(source).toMatch(/doi:10\./);
  });

  it('decides what a comparison tells of walking and of the toe', () => {
    const walks = (distance: number): Examination => ({
      ...emptyExamination(),
      history: { leg: { left: { symptom: 'claudication', distance } } },
    });
    const weightOf = (a: Examination, b: Examination) =>
      compareExaminations(a, b).changes.map(({ code, weight, way }) => [code, weight, way]);
    expect(weightOf(walks(350), walks(300))).toEqual([['distance', 'chance', 'worse']]);
    expect(weightOf(walks(350), walks(150))).toEqual([['distance', 'matters', 'worse']]);
    const toe = (mmHg: number) => measured({ toe: { right: mmHg } });
    expect(weightOf(toe(90), toe(62))).toEqual([['toe-pressure', 'chance', 'worse']]);
    expect(weightOf(toe(62), toe(91))).toEqual([['toe-pressure', 'matters', 'better']]);
  });
});

describe('visits in time', () => {
  it('stand from the first to the last, those without a time first, and equal times as they came', () => {
    const at = fc.option(
      fc
        .date({ min: new Date('1990-01-01'), max: new Date('2030-01-01'), noInvalidDate: true })
        .map((date) => date.toISOString()),
      { nil: undefined },
    );
    fc.assert(
      fc.property(fc.array(at, { maxLength: 30 }), (times) => {
        const visits = times.map((time, i) => ({ id: String(i), ...(time && { at: time }) }));
        const ordered = visitsInOrder(visits);
        expect([...ordered].map(({ id }) => id).sort()).toEqual(visits.map(({ id }) => id).sort());
        ordered.slice(1).forEach((one, i) => {
          const before = ordered[i]!;
          const [a, b] = [timeOf(before.at), timeOf(one.at)];
          if (Number.isNaN(b)) expect(a).toBeNaN();
          else if (!Number.isNaN(a)) expect(a).toBeLessThanOrEqual(b);
          if (before.at === one.at) expect(Number(before.id)).toBeLessThan(Number(one.id));
        });
      }),
    );
  });

  it('a date counts as its noon; the clock on the wall is told by the offset alone', () => {
    expect(timeOf('2026-05-19')).toBe(Date.UTC(2026, 4, 19, 12));
    expect(offsetOf('2026-05-19')).toBe(0);
    expect(offsetOf('2026-05-19T09:40Z')).toBe(0);
    expect(offsetOf('2026-05-19T09:40+02:00')).toBe(7_200_000);
    expect(offsetOf('2026-05-19T09:40-03:30')).toBe(-12_600_000);
  });
});

it('a place counts as changed exactly where a comparison tells a change of it, by its gravest', () => {
  fc.assert(
    fc.property(anyExamination, anyExamination, (a, b) => {
      const told = new Map<string, string>();
      for (const change of compareExaminations(a, b).changes)
        if ('place' in change) {
          const key = `${change.place.side} ${change.place.site}`;
          if (!told.has(key)) told.set(key, change.weight);
        }
      const places = changedPlaces(a, b).map(
        ({ place, weight }) => [`${place.side} ${place.site}`, weight] as const,
      );
      expect(new Map(places)).toEqual(told);
    }),
    { numRuns: 20 },
  );
});
