import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  emptyExamination,
  type Examination,
  type Json,
  parseExamination,
  recordDifferences,
  setBruit,
  setPulse,
} from '../../../src/examination/index.js';
import { LEAVES, recordWith } from '../../tools/record-fields.js';

const RECORDS: readonly Examination[] = LEAVES.flatMap((leaf) => {
  const parsed = parseExamination(recordWith(leaf.path, leaf.value, 'pulse-map/1'));
  return parsed.ok ? [parsed.value] : [];
});

/** A record with every difference put in. */
function applied(before: Examination, after: Examination): unknown {
  const made = structuredClone(before) as unknown as Record<string, Json>;
  for (const { path, to } of recordDifferences(before, after)) {
    let at = made as Record<string, unknown>;
    for (const key of path.slice(0, -1)) at = (at[key] ??= {}) as Record<string, unknown>;
    const last = String(path.at(-1));
    if (to === undefined) delete at[last];
    else at[last] = to;
  }
  return made;
}

/** Without the objects that hold nothing. */
function bare(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  const kept = Object.entries(value).flatMap(([key, inner]) => {
    const left = bare(inner);
    return left === undefined ? [] : [[key, left]];
  });
  return kept.length ? Object.fromEntries(kept) : undefined;
}

/** With the fields of every object in the reverse order. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .map(([key, inner]) => [key, turned(inner)] as const)
      .reverse(),
  );
}

describe('what differs between two records', () => {
  it('is nothing where only the order of the fields does', () => {
    for (const one of RECORDS) expect(recordDifferences(one, turned(one) as Examination)).toEqual([]);
  });

  it('is a finding of a place as a whole, with the place', () => {
    const none = emptyExamination();
    const weak = setPulse(none, { site: 'femoral', side: 'left' }, { grade: 'reduced' });
    const both = setBruit(weak, { site: 'femoral', side: 'left' }, { bruit: 'systolic' });
    expect(recordDifferences(weak, both)).toEqual([
      {
        path: ['bruits', 'femoral', 'left'],
        place: 'left femoral',
        from: undefined,
        to: { bruit: 'systolic' },
      },
    ]);
    expect(recordDifferences(weak, none)).toEqual([
      {
        path: ['pulses', 'femoral', 'left'],
        place: 'left femoral',
        from: { grade: 'reduced' },
        to: undefined,
      },
    ]);
    const aorta = setPulse(none, { site: 'abdominal-aorta', side: 'midline' }, { grade: 'normal' });
    expect(recordDifferences(none, aorta).map(({ place }) => place)).toEqual(['midline abdominal-aorta']);
  });

  it('covers every field of the record', () => {
    expect(RECORDS.length).toBeGreaterThan(0.9 * LEAVES.length);
    for (const [i, record] of RECORDS.entries()) {
      const empty = emptyExamination('0-3');
      const equal = JSON.stringify(record) === JSON.stringify(empty);
      expect(recordDifferences(empty, record).length === 0, `${i}: ${JSON.stringify(record)}`).toBe(equal);
    }
  });

  it('makes the one record of the other, whatever they hold, and is nothing between equals', () => {
    const any = fc.constantFrom(...RECORDS);
    fc.assert(
      fc.property(any, any, (before, after) => {
        expect(bare(applied(before, after))).toEqual(bare(structuredClone(after)));
        expect(recordDifferences(after, structuredClone(after))).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });
});
