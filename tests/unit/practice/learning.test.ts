import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LEVELS } from '../../../src/anatomy/index.js';
import { truthOf } from '../../../src/practice/hidden.js';
import {
  conclude,
  MARKED_PARTS,
  MOST_DRAWN_RESULTS,
  PRACTICE_ACT_IDS,
  progressByLevel,
  progressPlot,
  readResults,
  type Result,
  resultOf,
  rightAnswer,
  trendOf,
} from '../../../src/practice/index.js';
import { bestAnswer, PATIENTS, roundOf } from '../../tools/practice-rounds.js';

const BLANK: Result = {
  patient: '1',
  points: 0,
  of: 20,
  parts: {},
  flagsMissed: 0,
  cautions: 0,
  acts: 0,
  seconds: 0,
  levels: [],
};
const limbLevels = fc.uniqueArray(
  fc
    .tuple(fc.constantFrom('left leg', 'right arm'), fc.constantFrom(...LEVELS))
    .map(([limb, level]) => `${limb} ${level}`),
  { maxLength: 4 },
);
const anyResult: fc.Arbitrary<Result> = limbLevels.chain((levels) =>
  fc
    .record({
      points: fc.nat(20),
      levels: fc.constant(levels),
      located: fc.option(fc.subarray(levels), { nil: undefined }),
      open: fc.option(fc.subarray([...MARKED_PARTS]), { nil: undefined }),
      level: fc.constantFrom(0, 5),
    })
    .map(({ level, located, open, ...rest }) => ({
      ...BLANK,
      ...rest,
      parts: { level: [level, 5] as const },
      ...(located && { located }),
      ...(open && { open }),
    })),
);

describe('progress by level', () => {
  it('counts no more right than tried, and tries each patient once a level, in the order of time', () => {
    fc.assert(
      fc.property(fc.array(anyResult, { maxLength: 40 }), (results) => {
        for (const { level, tries, right } of progressByLevel(results)) {
          expect(tries.length).toBeGreaterThan(0);
          expect(right).toBe(tries.filter((one) => one.right).length);
          const order = tries.map(({ index }) => index);
          expect(order).toEqual([...new Set(order)].sort((a, b) => a - b));
          for (const { index, right: was } of tries) {
            const { levels, located, open } = results[index]!;
            expect(open).not.toContain('level');
            const own = levels.filter((one) => one.endsWith(` ${level}`));
            expect(own.length > 0 || (level === 'none' && levels.length === 0)).toBe(true);
            if (level !== 'none') expect(was).toBe(own.every((one) => located?.includes(one)));
          }
        }
      }),
    );
  });

  it('takes what was not answered, or not kept by an earlier version, for not tried', () => {
    const levels = ['left leg femoro-popliteal'];
    const right = { ...BLANK, levels, located: levels, open: [] };
    expect(progressByLevel([right])[0]).toMatchObject({ level: 'femoro-popliteal', right: 1 });
    expect(progressByLevel([{ ...right, open: ['level'] }])).toEqual([]);
    expect(progressByLevel([{ ...BLANK, levels }])).toEqual([]);
  });

  it('is that of the rounds: a right answer is right at every level, an empty one is no try', () => {
    for (const patient of PATIENTS) {
      const round = roundOf(patient, PRACTICE_ACT_IDS);
      const best = resultOf(patient, conclude(round, bestAnswer(patient)));
      const levels = rightAnswer(truthOf(patient)).lesions.map((one) => one.levels[0]);
      const rows = progressByLevel([best]);
      expect(rows.map(({ level }) => level).sort(), patient.code).toEqual(
        levels.length ? [...new Set<string>(levels)].sort() : ['none'],
      );
      expect(rows.every(({ right }) => right === 1)).toBe(true);
      expect(progressByLevel([resultOf(patient, conclude(round, {}))])).toEqual([]);
      expect(readResults(JSON.parse(JSON.stringify([best])))).toEqual([best]);
    }
  });
});

describe('the chart of progress', () => {
  it('has its marks within its room, in the order of time, the latest of them, and counts all', () => {
    fc.assert(
      fc.property(fc.array(anyResult, { maxLength: 60 }), (results) => {
        const { rows, from } = progressPlot(results);
        expect(results.length - from).toBeLessThanOrEqual(MOST_DRAWN_RESULTS);
        const tries = progressByLevel(results);
        expect(rows.map(({ level, tried, right }) => [level, tried, right])).toEqual(
          tries.map(({ level, tries: all, right }) => [level, all.length, right]),
        );
        rows.forEach(({ marks }, i) => {
          const drawn = tries[i]!.tries.filter(({ index }) => index >= from);
          expect(marks.map(({ right }) => right)).toEqual(drawn.map(({ right }) => right));
          marks.forEach(({ x }, at) => {
            expect(x).toBeGreaterThan(0);
            expect(x).toBeLessThan(1);
            if (at) expect(x).toBeGreaterThan(marks[at - 1]!.x);
          });
        });
      }),
    );
  });
});

describe('the trend', () => {
  it('is a share of the points of the latest patients, beside those before, each patient once', () => {
    fc.assert(
      fc.property(fc.array(anyResult, { maxLength: 20 }), (results) => {
        const trend = trendOf(results);
        expect(trend === undefined).toBe(results.length === 0);
        if (!trend) return;
        expect(trend.last.count).toBe(Math.min(5, results.length));
        expect(trend.before?.count ?? 0).toBe(Math.min(5, Math.max(0, results.length - 5)));
        for (const { share } of [trend.last, trend.before ?? trend.last])
          expect(share >= 0 && share <= 1).toBe(true);
      }),
    );
    const [good, bad] = [
      { ...BLANK, points: 20 },
      { ...BLANK, points: 5 },
    ];
    expect(trendOf([bad, bad, good, good, good, good, good])).toEqual({
      last: { count: 5, share: 1 },
      before: { count: 2, share: 0.25 },
    });
  });
});
