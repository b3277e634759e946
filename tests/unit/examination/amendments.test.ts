import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Amendment,
  amend,
  AMENDMENT_KINDS,
  emptyExamination,
  formatExamination,
  isInError,
  MOST_AMENDMENTS,
  parseExamination,
  parseExaminationText,
  statusOf,
} from '../../../src/examination/index.js';
import { examined } from '../../tools/examinations.js';
import { anyExamination } from '../../tools/arbitraries.js';

const AT = '2026-11-02T21:34+01:00';
const anyAmendment: fc.Arbitrary<Amendment> = fc.record(
  {
    kind: fc.constantFrom(...AMENDMENT_KINDS),
    at: fc.constant(AT),
    by: fc.string({ minLength: 1, maxLength: 20 }),
    why: fc.string({ minLength: 1, maxLength: 20 }),
  },
  { requiredKeys: ['kind', 'at'] },
);

describe('statusOf(record)', () => {
  it('is as the page said while nothing was amended', () => {
    expect(statusOf(emptyExamination())).toBeUndefined();
    expect(statusOf({ ...emptyExamination(), status: 'preliminary' })).toBe('preliminary');
    expect(statusOf({ ...emptyExamination(), status: 'final' })).toBe('final');
  });

  it('stays entered in error through every later amendment, until restored', () => {
    fc.assert(
      fc.property(fc.array(anyAmendment, { maxLength: 12 }), (amendments) => {
        const record = { ...emptyExamination(), amendments };
        const telling = amendments.filter(({ kind }) => kind !== 'amended').map(({ kind }) => kind);
        expect(isInError(record)).toBe(telling.at(-1) === 'entered-in-error');
        if (!isInError(record)) expect(statusOf(record)).toBe(amendments.length ? 'amended' : undefined);
      }),
    );
  });
});

describe('amend(record, amendment)', () => {
  it('erases nothing, whatever it is, and reads back as it was', () => {
    fc.assert(
      fc.property(anyExamination, anyAmendment, (record, amendment) => {
        const next = amend(record, amendment);
        const { amendments, format: _written, ...rest } = next;
        const { format: _before, ...before } = record;
        expect(rest).toEqual(before);
        expect(amendments).toEqual([amendment]);
        expect(parseExaminationText(formatExamination(next))).toEqual({ ok: true, value: next });
      }),
      { numRuns: 40 },
    );
  });

  it('keeps who, when and why as the page supplies them, in their order', () => {
    const first = amend(examined({ 'left femoral': 'absent' }), {
      kind: 'amended',
      at: AT,
      by: 'R. Haddad',
      why: 'Wrong side',
    });
    const second = amend(first, { kind: 'entered-in-error', at: '2026-11-03T08:00Z', why: 'Other patient' });
    expect(second.amendments).toEqual([
      { kind: 'amended', at: AT, by: 'R. Haddad', why: 'Wrong side' },
      { kind: 'entered-in-error', at: '2026-11-03T08:00Z', why: 'Other patient' },
    ]);
    expect(second.pulses).toEqual(first.pulses);
  });

  it.each([
    ['a time without a zone', { kind: 'amended', at: '2026-11-02T21:34' }],
    ['no time', { kind: 'amended', at: 'yesterday' }],
    ['a day that is none', { kind: 'amended', at: '2026-02-30T10:00Z' }],
    ['a kind that is none', { kind: 'erased', at: AT }],
    ['a reason that is no text', { kind: 'amended', at: AT, why: 3 }],
  ])('refuses %s', (_what, amendment) => {
    expect(() => amend(emptyExamination(), amendment as Amendment)).toThrow(RangeError);
    const raw = { ...emptyExamination(), amendments: [amendment] };
    expect(parseExamination(raw, { strict: true }).ok).toBe(false);
  });

  it('refuses more than fit', () => {
    const full = {
      ...emptyExamination(),
      amendments: Array.from({ length: MOST_AMENDMENTS }, () => ({ kind: 'amended' as const, at: AT })),
    };
    expect(() => amend(full, { kind: 'amended', at: AT })).toThrow(RangeError);
  });
});
