import { describe, expect, it } from 'vitest';
import {
  DEEPEST,
  LONGEST_RECORD,
  MOST_FAULTS,
  MOST_VALUES,
  parseExamination,
  parseExaminationText,
} from '../../../src/examination/index.js';
import { faultLine } from '../../tools/faults.js';

const base = { format: 'pulse-map/1', scale: '0-3' };

/** A list with every reading of a member counted. */
function counted<T>(list: readonly T[]): { list: readonly T[]; readings: () => number } {
  let readings = 0;
  const get = (target: readonly T[], key: PropertyKey): unknown => {
    readings += 1;
    return Reflect.get(target, key);
  };
  return { list: new Proxy(list, { get }), readings: () => readings };
}

const many = (count: number, value: unknown) =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => [`k${i}`, value]));

describe('a record with much wrong in it', () => {
  it('lists the first faults and counts the rest', () => {
    const marks = Array.from({ length: 50 }, () => 7);
    const parsed = parseExamination({ ...base, marks });
    expect(parsed).toMatchObject({ ok: false, more: 50 - MOST_FAULTS });
    expect(!parsed.ok && parsed.faults).toHaveLength(MOST_FAULTS);
    const strict = parseExamination({ ...base, ...many(1000, 1) }, { strict: true });
    expect(strict).toMatchObject({ ok: false, more: 1000 - MOST_FAULTS });
  });

  it('counts none where all are listed', () => {
    expect(parseExamination({ ...base, onset: 7 })).toMatchObject({ ok: false, more: 0 });
  });
});

describe('a record that is too large', () => {
  it('is refused before its fields are looked at', () => {
    const field = counted([]);
    const parsed = parseExamination({ ...base, ...many(MOST_VALUES, field.list) });
    expect(parsed.ok ? [] : parsed.faults.map(faultLine)).toEqual([
      `unreadable at : {…}, not at-most ${MOST_VALUES} values`,
    ]);
    expect(field.readings()).toBe(0);
  });

  it('is refused wherever the values are', () => {
    const { list, readings } = counted(new Array<number>(1_000_000).fill(0));
    expect(parseExamination({ ...base, later: { deep: list } })).toMatchObject({
      ok: false,
      faults: [{ code: 'unreadable', path: ['later', 'deep'] }],
    });
    expect(readings()).toBeLessThan(10);
    const rows = Array.from({ length: 1000 }, () => new Array<number>(1000).fill(0));
    expect(parseExamination({ ...base, later: rows })).toMatchObject({ ok: false });
  });

  it('is read up to the bound, with every field of a later version kept', () => {
    const parsed = parseExamination({ ...base, later: new Array<number>(MOST_VALUES - 10).fill(0) });
    expect(parsed.ok).toBe(true);
  });

  it('is refused when it is nested too deep, a cycle included', () => {
    let deep: unknown = 0;
    for (let i = 0; i < DEEPEST + 1; i += 1) deep = [deep];
    const parsed = parseExamination({ ...base, deep });
    expect(parsed.ok ? [] : parsed.faults.map(faultLine)).toEqual([
      expect.stringContaining(`not at-most ${DEEPEST} levels`),
    ]);
    const cycle: Record<string, unknown> = { ...base };
    cycle.self = cycle;
    expect(parseExamination(cycle).ok).toBe(false);
  });

  it('is refused by the length of its text, without being parsed', () => {
    const parsed = parseExaminationText(`{"x":"${'x'.repeat(LONGEST_RECORD)}"}`);
    expect(parsed.ok ? [] : parsed.faults.map(faultLine)).toEqual([
      expect.stringContaining(`not at-most ${LONGEST_RECORD} characters`),
    ]);
  });

  it('shows no more of a value than fits in a sentence', () => {
    const parsed = parseExamination({ ...base, pulses: new Array(100_000).fill('x'.repeat(10)) });
    expect(parsed.ok ? [] : parsed.faults.map(({ found }) => found.length)).toEqual([60]);
  });
});
