import { describe, expect, it } from 'vitest';
import { emptyExamination } from '../../../src/examination/index.js';
import {
  bedsideLines,
  contextStatements,
  foundStatements,
  historyStatements,
  inspectionStatements,
  limbHistoryStatements,
  rateRanges,
  SUMMARY_PARTS,
  summaryStatements,
} from '../../../src/statements/index.js';
import { BEDSIDE_TEST_IDS, BEDSIDE_TESTS } from '../../../src/bedside/index.js';
import { BEDSIDE, WHOLE } from '../../tools/word-records.js';

describe('the summary as statements', () => {
  it('is plain data, part by part in the order of the bedside', () => {
    const parts = summaryStatements(WHOLE);
    expect(JSON.parse(JSON.stringify(parts))).toEqual(parts);
    expect(parts.map(({ id }) => id)).toEqual(SUMMARY_PARTS.filter((id) => parts.some((p) => p.id === id)));
    expect(parts.every(({ lines }) => lines.length > 0)).toBe(true);
  });

  it('leaves out what is not recorded, and never turns it into a no', () => {
    expect(summaryStatements(emptyExamination())).toEqual([]);
    expect(summaryStatements({ ...emptyExamination(), staging: { leg: { left: {} } } })).toEqual([]);
    expect(contextStatements({})).toEqual([]);
    expect(historyStatements({})).toEqual([]);
    expect(historyStatements({ risks: [] })).toEqual([{ code: 'no-risks' }]);
    expect(contextStatements({ diabetes: false })).toEqual([{ code: 'no-diabetes' }]);
    expect(inspectionStatements({ infection: [] }, 'leg')).toEqual([{ code: 'infection', value: [] }]);
  });

  it.each([
    [1, { code: 'hours', hours: 1 }],
    [47, { code: 'hours', hours: 47 }],
    [48, { code: 'days', days: 2 }],
    [72, { code: 'days', days: 3 }],
  ])('speaks of %i hours as %j', (hours, said) => {
    expect(limbHistoryStatements({ hours })).toEqual([said]);
  });

  it('tells a note that stands with both findings of a site once', () => {
    const notes = (pulse: string, bruit: string) =>
      foundStatements({ note: pulse }, { note: bruit }, '0-3').map((one) => one.code);
    expect(notes('a', 'a')).toEqual(['note']);
    expect(notes('a', 'b')).toEqual(['note', 'note']);
  });

  it('has a line for each side of each test recorded, with symptoms as a list', () => {
    const [first] = BEDSIDE;
    const lines = bedsideLines(first ?? {});
    const recorded = Object.values(first ?? {}).flatMap((sides) => Object.keys(sides));
    expect(lines.length).toBe(recorded.length);
    const symptoms = JSON.stringify(lines).match(/"symptoms":[^,]/g) ?? [];
    expect(symptoms.length).toBeGreaterThan(3);
    for (const found of symptoms) expect(found).toBe('"symptoms":[');
  });

  it('gives the least and the most of what sources say of one outcome', () => {
    const rate = (percent: number) =>
      ({ outcome: 'positive', percent, people: 'healthy', source: 'invented' }) as const;
    expect(rateRanges([rate(20), rate(9), rate(11)])).toEqual([
      [{ outcome: 'positive', people: 'healthy', least: 9, most: 20 }],
    ]);
  });

  it('draws no rates together that were counted differently, and leaves out those of another limit', () => {
    const rates = BEDSIDE_TEST_IDS.flatMap((id) => BEDSIDE_TESTS[id].falsePositives ?? []);
    for (const limit of [undefined, 5, 6, 9])
      for (const range of rateRanges(rates, limit).flat()) {
        const from = rates.filter(
          ({ outcome, people, bound, condition }) =>
            outcome === range.outcome &&
            people === range.people &&
            bound === range.bound &&
            JSON.stringify(condition) === JSON.stringify(range.condition),
        );
        expect(Math.min(...from.map(({ percent }) => percent))).toBe(range.least);
        expect(Math.max(...from.map(({ percent }) => percent))).toBe(range.most);
        expect([undefined, limit]).toContain(range.condition?.over);
      }
    // Barbeau 2004 and Ejrup 1966: 6.3% over 9 s and 34% over 5 s are figures of two ways of doing the test.
    const hand = BEDSIDE_TESTS['hand-arch'].falsePositives ?? [];
    const told = (limit: number) =>
      rateRanges(hand, limit)
        .flat()
        .map(({ people, most }) => [people, most]);
    expect(told(9)).toEqual([['transradial-access', 6.3]]);
    expect(told(5)).toEqual([['healthy', 34]]);
    expect(told(10)).toEqual([]);
  });
});
