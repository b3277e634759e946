import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chartFlags,
  chartRecord,
  emptyChart,
  type LimbObservation,
  nextDue,
  OBSERVED_WORDS,
  type ObservationChart,
  observe,
  parseChart,
  standing,
  type Urgent,
  urgencyRank,
} from '../../../src/triage/index.js';
import { formatExamination, parseExaminationText } from '../../../src/examination/index.js';

const LIMBS = [
  { kind: 'leg', side: 'left' },
  { kind: 'arm', side: 'right' },
] as const;
const at = (minute: number): string => new Date(Date.UTC(2026, 9, 28, 13, minute)).toISOString();
const graft = { artery: 'superficial-femoral', side: 'left', kind: 'bypass' } as const;
const urgency = (chart: ObservationChart): number =>
  Math.max(0, ...chartFlags(chart).map((flag) => urgencyRank(flag.urgency as Urgent)));

const word = <T extends string>(words: readonly T[]) =>
  fc.option(fc.constantFrom(...words), { nil: undefined });
const row = fc.record({
  signal: word(OBSERVED_WORDS.signal),
  colour: word(OBSERVED_WORDS.colour),
  sensation: word(OBSERVED_WORDS.sensation),
  movement: word(OBSERVED_WORDS.movement),
  refill: fc.option(fc.integer({ min: 0, max: 60 }), { nil: undefined }),
  pain: fc.option(fc.integer({ min: 0, max: 10 }), { nil: undefined }),
});
const chartOf = (
  rows: readonly Partial<LimbObservation>[],
  more: Partial<ObservationChart> = {},
): ObservationChart =>
  rows.reduce<ObservationChart>((chart, one, i) => observe(chart, { at: at(i * 60), ...one }), {
    ...emptyChart(LIMBS[0]),
    ...more,
  });

describe('a limb watched by the hour', () => {
  it('a lost signal raises a flag for now, in leg and arm, with a graft and without', () => {
    for (const limb of LIMBS)
      for (const more of [{}, ...(limb.kind === 'leg' ? [{ graft }] : [])]) {
        const chart = chartOf([{ signal: 'triphasic', colour: 'normal' }, { signal: 'absent' }], {
          limb,
          ...more,
        });
        expect(chartFlags(chart)[0]?.urgency).toBe('now');
        if ('graft' in more) expect(chartFlags(chart).map(({ code }) => code)).toContain('graft-occlusion');
      }
  });

  it('in which all is well raises none', () => {
    for (const limb of LIMBS)
      expect(
        chartFlags(
          chartOf(
            [
              {
                signal: 'triphasic',
                colour: 'normal',
                sensation: 'normal',
                movement: 'normal',
                refill: 2,
                pain: 1,
              },
            ],
            { limb },
          ),
        ),
      ).toEqual([]);
    expect(chartFlags(emptyChart(LIMBS[0]))).toEqual([]);
  });

  it('a worse word for any one thing, or a signal lost, never lowers the urgency', () => {
    let steps = 0;
    const known = new Map<string, number>();
    const of = (state: Partial<LimbObservation>, limb: (typeof LIMBS)[number]): number => {
      const key = JSON.stringify([limb.kind, state]);
      const found = known.get(key) ?? urgency(chartOf([state], { limb }));
      known.set(key, found);
      return found;
    };
    const { signal: signals, sensation: sensations, movement: movements } = OBSERVED_WORDS;
    const colours = ['normal', 'pale'] as const;
    for (const limb of LIMBS)
      for (const signal of [undefined, ...signals])
        for (const colour of [undefined, ...colours])
          for (const sensation of [undefined, ...sensations])
            for (const movement of [undefined, ...movements]) {
              const state = { signal, colour, sensation, movement };
              const before = of(state, limb);
              const worse = (field: keyof typeof state, words: readonly string[]) => {
                const next = words[words.indexOf(state[field] ?? '') + 1];
                if (!next) return;
                steps++;
                expect(
                  of({ ...state, [field]: next }, limb),
                  JSON.stringify([state, field, next]),
                ).toBeGreaterThanOrEqual(before);
              };
              if (signal) worse('signal', signals);
              if (colour) worse('colour', colours);
              if (sensation) worse('sensation', sensations);
              if (movement) worse('movement', movements);
            }
    expect(steps).toBeGreaterThan(500);
  });

  it('what was found stands where a later round says nothing of it', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
        const chart = chartOf(rows);
        const saved = parseChart(JSON.stringify(chart))!;
        expect(JSON.stringify(standing(chart))).toBe(JSON.stringify(standing(saved)));
        expect(chartFlags(chart)).toEqual(chartFlags(saved));
      }),
    );
    expect(standing(chartOf([{ sensation: 'lost' }, { sensation: undefined }]))).toMatchObject({
      sensation: 'lost',
    });
  });

  it('what was lost stands until it is found again, however many rounds leave it out', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
        const lost = chartOf([{ signal: 'absent' }, ...rows.map(({ signal: _, ...rest }) => rest)]);
        expect(standing(lost).signal).toBe('absent');
        expect(urgency(lost)).toBe(urgencyRank('now'));
      }),
      { numRuns: 30 },
    );
  });

  it('hands the triage a record that any reader takes, and says nothing in it that no row says', () => {
    fc.assert(
      fc.property(fc.array(row, { maxLength: 5 }), fc.constantFrom(...LIMBS), (rows, limb) => {
        const record = chartRecord(chartOf(rows, { limb }));
        expect(parseExaminationText(formatExamination(record)).ok).toBe(true);
        if (rows.every(({ signal }) => signal === undefined)) expect(record.pulses).toBeUndefined();
        if (
          rows.every(({ colour, sensation, movement, refill }) =>
            [colour, sensation, movement, refill].every((one) => one === undefined),
          )
        )
          expect(record.inspection).toBeUndefined();
      }),
      { numRuns: 40 },
    );
  });
});

describe('a chart', () => {
  it('comes back from its text as it was; rows stand in the order of their times', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.integer({ min: 0, max: 4000 }), row), { maxLength: 8 }), (rows) => {
        const chart = rows.reduce<ObservationChart>(
          (one, [minute, more]) =>
            observe(one, JSON.parse(JSON.stringify({ at: at(minute), ...more })) as LimbObservation),
          { ...emptyChart(LIMBS[0]), graft },
        );
        expect(parseChart(JSON.stringify(chart))).toEqual(chart);
        const times = chart.observations.map((one) => Date.parse(one.at));
        expect(times).toEqual([...new Set(times)].sort((a, b) => a - b));
      }),
    );
  });

  it('takes no word, number or time that is none, and reads no other text', () => {
    const chart = emptyChart(LIMBS[0]);
    expect(() => observe(chart, { at: 'soon' })).toThrow(RangeError);
    expect(() => observe(chart, { at: at(0), pain: 11 })).toThrow(RangeError);
    expect(() => observe(chart, { at: at(0), signal: 'loud' as never })).toThrow(RangeError);
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => parseChart(text) === undefined));
    // A time without a zone is another one on every machine.
    expect(() => observe(chart, { at: '2026-05-01T10:30' })).toThrow('with Z or an offset');
  });

  it('is no chart with a graft that is none', () => {
    const chart = chartOf([{ signal: 'absent' }]);
    expect(parseChart(JSON.stringify({ ...chart, graft }))).toEqual({ ...chart, graft });
    for (const wrong of [
      1,
      {},
      { ...graft, kind: 'x' },
      { ...graft, side: 'midline' },
      { ...graft, infectionSigns: 5 },
    ])
      expect(parseChart(JSON.stringify({ ...chart, graft: wrong })), JSON.stringify(wrong)).toBeUndefined();
  });

  it('is read whole however its rows stand, of two of one time the later given', () => {
    const rows = [3, 1, 2, 1].map((hour, i): LimbObservation => ({ at: at(60 * hour), pain: i }));
    const text = JSON.stringify({ ...emptyChart(LIMBS[0]), observations: rows });
    expect(parseChart(text)?.observations.map(({ pain }) => pain)).toEqual([3, 2, 0]);
    expect(parseChart(text)).toEqual(rows.reduce(observe, emptyChart(LIMBS[0])));
  });

  it('has its next round due an interval after the last, whoever is late', () => {
    const chart = chartOf([{ signal: 'biphasic' }], { every: 30 });
    expect(nextDue(chart, 0)).toBe(Date.parse(at(30)));
    expect(nextDue(emptyChart(LIMBS[0]), 7)).toBe(7);
  });
});
