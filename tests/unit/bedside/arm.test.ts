import { describe, expect, it } from 'vitest';
import {
  BARBEAU_CLASSES,
  type BedsideResult,
  type Grade,
  GRADES,
  type OutletSymptom,
  STOP_REASONS,
} from '../../../src/examination/index.js';
import {
  BARBEAU_TYPES,
  BEDSIDE_TEST_IDS,
  BEDSIDE_TESTS,
  type FalsePositives,
  releasedArtery,
} from '../../../src/bedside/index.js';

const {
  'hand-arch': hand,
  'cold-provocation': cold,
  scalene,
  hyperabduction,
  costoclavicular,
  'arm-stress': stress,
} = BEDSIDE_TESTS;

describe('hand-arch patency (Allen)', () => {
  // Barbeau 2004: at or below 9 s; radial harvest text: under 5; Ejrup 1966: at or below 6; from memory: 10; summary: 15.
  it.each([
    [undefined, 8.9, 'patent'],
    [undefined, 9, 'patent'],
    [undefined, 9.1, 'slow'],
    [5, 4.9, 'patent'],
    [5, 5, 'slow'],
    [5, 5.1, 'slow'],
    [6, 6, 'patent'],
    [6, 6.1, 'slow'],
    [10, 10, 'patent'],
    [10, 10.1, 'slow'],
    [15, 15, 'patent'],
    [15, 15.1, 'slow'],
  ])('by the limit %s pink after %f s is %s', (limit, seconds, verdict) => {
    expect(releasedArtery({ seconds }, limit)).toBe(verdict);
  });

  // A palm that stays white after one artery is let go means that this artery is blocked: common practice, no source.
  it('a palm that stays white points to the artery let go', () => {
    const reading = hand.evaluate({ radial: { seconds: 4 }, ulnar: { seconds: 60, returned: false } });
    expect(reading).toMatchObject({
      verdict: 'severe',
      code: 'blocked',
      params: { radial: 'patent', ulnar: 'blocked' },
    });
  });

  it('watched for less than the limit is no result yet', () => {
    expect(releasedArtery({ seconds: 9, returned: false })).toBe('incomplete');
    expect(releasedArtery({ seconds: 9.1, returned: false })).toBe('blocked');
  });

  it('is normal only when both arteries were let go in turn', () => {
    expect(hand.evaluate({ radial: { seconds: 3 }, ulnar: { seconds: 4 } }).verdict).toBe('normal');
    expect(hand.evaluate({ ulnar: { seconds: 4 } })).toMatchObject({
      verdict: 'incomplete',
      code: 'one-artery',
    });
    expect(hand.evaluate({ method: 'modified' }).verdict).toBe('incomplete');
  });

  // Barbeau 2004: A no damping, B damping, C loss with recovery within 2 min, D loss without; A, B and C acceptable.
  it.each(BARBEAU_CLASSES)('plethysmographic class %s', (type) => {
    expect(BARBEAU_TYPES[type].acceptable).toBe(type !== 'D');
    expect(hand.evaluate({ barbeau: type }).code).toBe(type === 'D' ? 'tracing-lost' : 'tracing-kept');
    expect(hand.evaluate({ barbeauReverse: type }).code).toBe(type === 'D' ? 'tracing-lost' : 'tracing-kept');
  });

  it('a lost tracing outweighs colour that came back in time', () => {
    expect(hand.evaluate({ radial: { seconds: 3 }, ulnar: { seconds: 4 }, barbeau: 'D' }).verdict).toBe(
      'severe',
    );
  });
});

describe('cold provocation (Raynaud)', () => {
  // Maverakis 2014: at least white and blue; the third phase is red.
  it.each<[BedsideResult<'cold-provocation'>, string, string]>([
    [{ white: 60, blue: 200, red: 500 }, 'three-phases', 'abnormal'],
    [{ white: 60, blue: 200 }, 'two-phases', 'abnormal'],
    [{ white: 60 }, 'single-phase', 'borderline'],
    [{ red: 60 }, 'single-phase', 'borderline'],
    [{ noChange: true }, 'no-change', 'normal'],
    [{}, 'incomplete', 'incomplete'],
  ])('%j is %s', (result, code, verdict) => {
    expect(cold.evaluate(result)).toMatchObject({ code, verdict });
  });

  // Digital temperature recovery after ice water, from memory: usually within 15 min, over 20 abnormal; by other texts over 10.
  it.each([
    [14, undefined, 'rewarming-only', 'normal'],
    [15, undefined, 'rewarming-only', 'normal'],
    [15.5, undefined, 'rewarming-only', 'borderline'],
    [20, undefined, 'rewarming-only', 'borderline'],
    [20.5, undefined, 'slow-rewarming', 'abnormal'],
    [10, 10, 'rewarming-only', 'normal'],
    [10.5, 10, 'slow-rewarming', 'abnormal'],
  ])('warm again after %f min by the limit %s is %s', (rewarm, limit, code, verdict) => {
    expect(cold.evaluate({ rewarm, ...(limit !== undefined && { limit }) })).toMatchObject({ code, verdict });
  });

  // The limits belong to ice water for 20 s; water of 15 °C for 60 s has none.
  it('gives no verdict on rewarming after another protocol, unless its limit was set', () => {
    const other = { water: 15, immersed: 60 } as const;
    expect(cold.evaluate({ ...other, rewarm: 12 })).toMatchObject({
      verdict: 'incomplete',
      notes: ['rewarming-no-limit'],
    });
    expect(cold.evaluate({ ...other, rewarm: 40 }).verdict).toBe('incomplete');
    expect(cold.evaluate({ ...other, rewarm: 12, limit: 10 }).verdict).toBe('abnormal');
    expect(cold.evaluate({ water: 2, immersed: 20, rewarm: 18 }).verdict).toBe('borderline');
  });
});

describe.each([
  ['hyperabduction (Wright)', hyperabduction],
  ['costoclavicular (Eden)', costoclavicular],
])('%s', (_, test) => {
  const evaluate = (before: Grade, during: Grade, symptoms: OutletSymptom[]) =>
    test.evaluate({ before, during, symptoms });

  // Criterion: radial pulse lost or reduced, or symptoms reproduced (J Am Board Fam Med table).
  it.each<[Grade, Grade, OutletSymptom[], string, string]>([
    ['normal', 'normal', [], 'negative', 'normal'],
    ['normal', 'bounding', [], 'negative', 'normal'],
    ['normal', 'reduced', [], 'pulse-reduced', 'borderline'],
    ['bounding', 'normal', [], 'pulse-reduced', 'borderline'],
    ['normal', 'absent', [], 'pulse-lost', 'borderline'],
    ['reduced', 'absent', [], 'pulse-lost', 'borderline'],
    ['normal', 'normal', ['tingling'], 'symptoms', 'abnormal'],
    ['normal', 'absent', ['pain'], 'pulse-and-symptoms', 'abnormal'],
    ['normal', 'normal', ['fatigue'], 'negative', 'normal'],
  ])('pulse %s then %s with %j is %s', (before, during, symptoms, code, verdict) => {
    expect(evaluate(before, during, symptoms)).toMatchObject({ code, verdict });
  });

  it.each(GRADES)('a pulse absent before cannot be lost, whatever it is during (%s)', (during) => {
    const reading = evaluate('absent', during, []);
    expect(reading.verdict).toBe('incomplete');
    expect(reading.notes).toContain('absent-before');
  });

  it('is incomplete while symptoms were not asked for, and says so', () => {
    const reading = test.evaluate({ before: 'normal', during: 'normal' });
    expect(reading).toMatchObject({ verdict: 'incomplete', notes: ['symptoms-not-asked'] });
  });
});

describe('scalene manoeuvre (Adson)', () => {
  it('takes the worst of its three ways and names them', () => {
    const reading = scalene.evaluate({
      toward: { before: 'normal', during: 'normal', symptoms: [] },
      away: { before: 'normal', during: 'absent', symptoms: ['tingling'] },
      traction: { before: 'normal', during: 'reduced', symptoms: [] },
    });
    expect(reading).toMatchObject({
      verdict: 'abnormal',
      code: 'pulse-and-symptoms',
      params: { ways: ['away'] },
    });
  });

  it('names every way that is equally positive', () => {
    const positive = { before: 'normal', during: 'absent', symptoms: [] } as BedsideResult<'hyperabduction'>;
    expect(scalene.evaluate({ toward: positive, traction: positive })).toMatchObject({
      params: { ways: ['toward', 'traction'] },
    });
  });

  it('is incomplete with no way tried', () => {
    expect(scalene.evaluate({}).verdict).toBe('incomplete');
  });
});

describe('elevated-arm stress (Roos)', () => {
  // Stopped by pain or tingling before 3 minutes positive, mere fatigue indeterminate: Roos; Plewa 1998.
  it.each<[BedsideResult<'arm-stress'>, string, string]>([
    [{ seconds: 179, stopped: 'pain' }, 'stopped-early', 'abnormal'],
    [{ seconds: 90, stopped: 'tingling' }, 'stopped-early', 'abnormal'],
    [{ seconds: 90, stopped: 'fatigue' }, 'fatigue-only', 'incomplete'],
    [{ seconds: 90, stopped: 'fatigue', felt: { fatigue: 40 } }, 'fatigue-only', 'incomplete'],
    [{ seconds: 90, stopped: 'fatigue', felt: { tingling: 40 } }, 'symptoms-early', 'abnormal'],
    [{ seconds: 90, stopped: 'other' }, 'too-short', 'incomplete'],
    [{ seconds: 179 }, 'too-short', 'incomplete'],
    // Three minutes done, and nobody asked what was felt: not a negative test.
    [{ seconds: 180 }, 'incomplete', 'incomplete'],
    [{ seconds: 180, felt: {} }, 'incomplete', 'incomplete'],
    [{ seconds: 180, before: 'normal', during: 'normal' }, 'incomplete', 'incomplete'],
    [{ seconds: 181, nothingFelt: true }, 'completed', 'normal'],
    [{ seconds: 180, stopped: 'pain' }, 'symptoms', 'abnormal'],
    [{ seconds: 180, felt: { heaviness: 100 } }, 'symptoms', 'abnormal'],
    [{ seconds: 180, felt: { fatigue: 100 } }, 'completed', 'normal'],
    [{ seconds: 180, nothingFelt: true }, 'completed', 'normal'],
    [{}, 'incomplete', 'incomplete'],
  ])('%j is %s', (result, code, verdict) => {
    expect(stress.evaluate(result)).toMatchObject({ code, verdict });
  });

  it.each(STOP_REASONS)('stopping early by %s never counts as a completed test', (stopped) => {
    expect(stress.evaluate({ seconds: 60, stopped }).code).not.toBe('completed');
  });

  it('says that symptoms were not asked for where three minutes passed without a word of them', () => {
    expect(stress.evaluate({ seconds: 180 }).notes).toEqual(['symptoms-not-asked']);
    expect(stress.evaluate({ seconds: 180, nothingFelt: true }).notes).toBeUndefined();
  });
});

describe('published false-positive rates beside each thoracic-outlet test', () => {
  const rate = (
    list: readonly FalsePositives[] | undefined,
    outcome: string,
    source: string,
    people = 'healthy',
  ) => list?.find((r) => r.outcome === outcome && r.source.includes(source) && r.people === people)?.percent;

  // Plewa 1998, percent of 53 healthy adults.
  it.each([
    [scalene, 'pulse', 11],
    [scalene, 'pain', 0],
    [scalene, 'tingling', 11],
    [costoclavicular, 'pulse', 11],
    [costoclavicular, 'pain', 0],
    [costoclavicular, 'tingling', 15],
    [stress, 'pulse', 62],
    [stress, 'pain', 21],
    [stress, 'tingling', 36],
    [stress, 'stopped', 16],
  ] as const)('Plewa: $0.id, %s', (test, outcome, percent) => {
    expect(rate(test.falsePositives, outcome, 'Plewa')).toBe(percent);
  });

  // Nord 2008, percent of healthy people and of people with carpal tunnel syndrome.
  it.each([
    [scalene, 9, 42],
    [costoclavicular, 16, 48],
    [stress, 47, 77],
  ] as const)('Nord: $0.id, %i and %i percent', (test, healthy, tunnel) => {
    expect(rate(test.falsePositives, 'positive', 'Nord')).toBe(healthy);
    expect(rate(test.falsePositives, 'positive', 'Nord', 'carpal-tunnel')).toBe(tunnel);
  });

  // Rayan and Jensen 1995, from memory.
  it.each([
    [scalene, 13.5],
    [costoclavicular, 47],
    [hyperabduction, 57],
  ] as const)('Rayan: $0.id, %f percent lose the pulse', (test, percent) => {
    expect(rate(test.falsePositives, 'pulse', 'Rayan')).toBe(percent);
  });
});

describe('every test', () => {
  it.each(BEDSIDE_TEST_IDS)('%s keeps "not done, and why" apart from every result', (id) => {
    expect(BEDSIDE_TESTS[id].evaluate({ notDone: 'declined' } as never)).toMatchObject({
      verdict: 'not-done',
      params: { reason: 'declined' },
    });
  });

  it.each(BEDSIDE_TEST_IDS)(
    '%s names a source for each of its limits and rates, and its usual limit is one of them',
    (id) => {
      const { limits, falsePositives = [] } = BEDSIDE_TESTS[id];
      if (limits) expect(limits.options.map(({ value }) => value)).toContain(limits.usual);
      for (const { source } of [...(limits?.options ?? []), ...falsePositives])
        expect(source.length).toBeGreaterThan(3);
    },
  );
});
