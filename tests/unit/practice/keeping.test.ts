import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  conclude,
  MOST_RESULTS,
  parseCounts,
  perform,
  readResults,
  type Result,
  resultOf,
  resultsCSV,
  simulatedPatient,
  spreadOf,
  startRound,
  tallyOf,
} from '../../../src/practice/index.js';

const patient = simulatedPatient({ number: 5, difficulty: 'clear' });
const result = resultOf(
  patient,
  conclude(perform(startRound(patient), 'feel left femoral'), { urgency: 'none' }),
  '2026-11-26T12:00:00Z',
);

describe('results', () => {
  it('come back from where they were kept, and nothing else does', () => {
    expect(readResults(JSON.parse(JSON.stringify([result])))).toEqual([result]);
    const strange = [null, 3, 'x', {}, { ...result, points: 'many' }, { ...result, parts: { luck: [1, 2] } }];
    expect(readResults([...strange, result])).toEqual([result]);
    for (const value of [undefined, null, {}, 'x', 4]) expect(readResults(value)).toEqual([]);
    expect(readResults(Array.from({ length: MOST_RESULTS + 5 }, () => result))).toHaveLength(MOST_RESULTS);
  });

  it('are written as CSV, a row each, whatever a code holds', () => {
    const csv = resultsCSV([result, { ...result, patient: '=1+"2",3' }]);
    const rows = csv.split('\r\n');
    expect(rows).toHaveLength(4);
    expect(rows[0]).toMatch(/^patient,points,of,flagsMissed,cautions,acts,seconds,at,side,side of,/);
    expect(rows[1]).toMatch(/^clear-5,/);
    expect(rows[2]).toMatch(/^"'=1\+""2"",3",/);
    // A spreadsheet leaves out the space before a formula, and takes the wide signs of East Asia for the narrow.
    for (const patient of [' =1', '＝1'])
      expect(resultsCSV([{ ...result, patient }]).split('\r\n')[1]).toMatch(new RegExp(`^'${patient},`, 'u'));
  });

  it('come to a tally, part by part', () => {
    const twice: readonly Result[] = [result, result];
    expect(tallyOf(twice)).toHaveLength(Object.keys(result.parts).length);
    for (const { part, points, of } of tallyOf(twice)) {
      expect([points, of]).toEqual(result.parts[part]!.map((n) => 2 * n));
    }
    expect(tallyOf([])).toEqual([]);
  });
});

describe('a vote by hand count', () => {
  it('is read from one line, however its counts are parted', () => {
    for (const text of ['12 3 0 5', '12,3,0,5', ' 12/3/0/5 ', '12; 3; 0; 5'])
      expect(parseCounts(text, 4)).toEqual([12, 3, 0, 5]);
    expect(parseCounts('7 2', 4)).toEqual([7, 2, 0, 0]);
    for (const text of ['', 'a', '1 -2', '1.5', '1 2 3 4 5', '99999'])
      expect(parseCounts(text, 4)).toBeUndefined();
  });

  it('has shares that sum to one, or to nothing where no hand was raised', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(500), { minLength: 1, maxLength: 8 }), (counts) => {
        const { total, shares } = spreadOf(counts);
        const sum = shares.reduce((all, one) => all + one, 0);
        expect(sum).toBeCloseTo(total ? 1 : 0, 9);
      }),
    );
  });
});
