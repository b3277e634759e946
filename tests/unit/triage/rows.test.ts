import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination, parseExamination } from '../../../src/examination/index.js';
import {
  type FlagCode,
  type QuestionCode,
  triage,
  type Urgent,
  urgencyRank,
} from '../../../src/triage/index.js';
import rows from './rows.json' with { type: 'json' };

interface Expect {
  urgencyAtLeast?: Urgent;
  urgencyAtMost?: Urgent;
  flag?: FlagCode;
  notFlags?: FlagCode[];
  asks?: QuestionCode[];
  asksNot?: QuestionCode[];
  classAtLeast?: string;
  classAtMost?: string;
  hours?: number;
}
interface Row {
  id: string;
  title: string;
  record: object;
  expect: Expect;
  source: string;
}

const ROWS = rows as unknown as readonly Row[];
function recordOf({ record, id }: Row): Examination {
  const read = parseExamination({ ...emptyExamination(), ...record }, { strict: true });
  if (!read.ok) throw new Error(`${id}: ${JSON.stringify(read.faults)}`);
  return read.value;
}
const urgent = ROWS.filter(({ expect: e }) => e.urgencyAtLeast ?? e.urgencyAtMost ?? e.asks ?? e.asksNot);

describe('every row of the decision tables', () => {
  it('is one of 249, each with its source, 44 of them calm', () => {
    expect(ROWS).toHaveLength(249);
    expect(new Set(ROWS.map(({ id }) => id)).size).toBe(249);
    expect(ROWS.every(({ source }) => source.length > 0)).toBe(true);
    expect(ROWS.filter(({ expect: e }) => e.urgencyAtMost === 'none')).toHaveLength(44);
  });

  it('is a valid record, with every field known', () => {
    for (const row of ROWS) expect(recordOf(row).format).toBe(emptyExamination().format);
  });

  it.each(urgent.map((row) => [row.id, row.title, row] as const))('%s: %s', (_id, _title, row) => {
    const { urgency, flags, questions } = triage(recordOf(row));
    const { urgencyAtLeast, urgencyAtMost, flag, notFlags = [], asks = [], asksNot = [] } = row.expect;
    const codes = flags.map(({ code }) => code);
    const seen = JSON.stringify(flags.map(({ code, urgency: u, limb }) => [code, u, limb?.side, limb?.kind]));
    if (urgencyAtLeast)
      expect(urgencyRank(urgency), seen).toBeGreaterThanOrEqual(urgencyRank(urgencyAtLeast));
    if (urgencyAtMost) expect(urgencyRank(urgency), seen).toBeLessThanOrEqual(urgencyRank(urgencyAtMost));
    if (flag) expect(codes, seen).toContain(flag);
    for (const code of notFlags) expect(codes).not.toContain(code);
    const asked = questions.map(({ code }) => code);
    for (const code of asks) expect(asked).toContain(code);
    for (const code of asksNot) expect(asked).not.toContain(code);
    for (const { because } of flags) expect(because.length, seen).toBeGreaterThan(0);
  });

  const classed = ROWS.filter(({ expect: e }) => e.classAtLeast);
  it.each(classed.map((row) => [row.id, row.title, row] as const))('%s, class: %s', (_id, _title, row) => {
    const flag = triage(recordOf(row)).flags.find((f) => f.class);
    expect(flag?.class).toEqual({ atLeast: row.expect.classAtLeast, atMost: row.expect.classAtMost });
    if (row.expect.hours !== undefined) expect(flag?.sinceOnset).toBe(row.expect.hours);
  });
});
