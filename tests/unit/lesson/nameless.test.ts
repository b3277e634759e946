import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Examination, parseExamination } from '../../../src/examination/index.js';
import { leavesOf } from '../../../src/interchange/fields.js';
import {
  examinationOf,
  lessonOfRecord,
  namelessOf,
  parseLesson,
  removedNames,
} from '../../../src/lesson/index.js';
import { readByRule, readExamination } from '../../../src/localisation/index.js';
import { type RedFlag, redFlags } from '../../../src/triage/index.js';
import { chronic, threatened } from '../../../stories/limb-records.js';
import { anyRecord } from '../../tools/any-record.js';

const texts = {
  title: { en: 'A record' },
  story: { en: 'Shown without name and dates.' },
  answer: { en: 'Discuss it.' },
};
const ABOUT = ['status', 'amendments', 'calls'];
const told = (kind: string, path: readonly (string | number)[]): boolean =>
  kind === 'text' || kind === 'instant' || ABOUT.includes(String(path[0]));

describe('a record without name and dates', () => {
  it('holds no free text and no instant of the record, and nothing of a later version', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const { examination, removed, unknown } = namelessOf(record);
        const out = leavesOf(examination);
        // The two texts that every record and mark must have are made anew.
        const texts = out.filter(({ kind }) => kind === 'text' || kind === 'instant');
        expect(texts.filter(({ field }) => !['format', 'marks.id'].includes(field.code))).toEqual([]);
        for (const { field, value } of texts)
          expect(String(value)).toMatch(field.code === 'format' ? /^pulse-map\/1/ : /^\d+$/);
        expect(out.some(({ path }) => ABOUT.includes(String(path[0])))).toBe(false);
        expect(examination.carried).toBeUndefined();
        expect(parseExamination(examination, { strict: true })).toEqual({ ok: true, value: examination });
        const left = leavesOf(record)
          .filter(({ kind, path }) => told(kind, path))
          .map(({ field }) => field.code);
        expect([...removed, 'format', 'marks.id'].sort()).toEqual(
          [...new Set([...left, 'format', 'marks.id'])].sort(),
        );
        if (!unknown) expect(record.carried ?? []).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('keeps every clinical word and number where it was, and reads the same', () => {
    const kept = (record: Parameters<typeof leavesOf>[0]): unknown[] =>
      leavesOf(record)
        .filter(({ kind, path }) => !told(kind, path) && kind !== 'empty')
        .map(({ path, value }) => [path, value]);
    fc.assert(
      fc.property(anyRecord, (record) => {
        const { examination } = namelessOf(record);
        expect(kept(examination)).toEqual(kept(record));
        expect(readByRule(examination)).toEqual(readByRule(record));
      }),
      { numRuns: 150 },
    );
  });

  it('reads the same by the network, whatever the record', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        // No finding of it is a point in time or a text.
        expect(readExamination(namelessOf(record).examination).network).toEqual(
          readExamination(record).network,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('has the same red flags but for whom one called, save those that count from the clock time of an onset', () => {
    const flags = (record: Examination): unknown =>
      redFlags(record).map(({ calls: _calls, ...flag }: RedFlag & { readonly calls?: unknown }) => flag);
    const untimed = anyRecord.filter((record) => !JSON.stringify(record).includes('"onsetAt"'));
    fc.assert(
      fc.property(untimed, (record) => {
        expect(flags(namelessOf(record).examination)).toEqual(flags(record));
      }),
      { numRuns: 150 },
    );
    // Two hours before the examination is what only the two points in time tell; as a number it stays.
    const timed = {
      ...threatened,
      examinedAt: '2026-11-02T21:00Z',
      history: { leg: { left: { onset: 'sudden' as const, onsetAt: '2026-11-02T19:00Z' } } },
    };
    expect(namelessOf(timed).examination.history?.leg?.left).toEqual({ onset: 'sudden' });
    const told = { ...timed, history: { leg: { left: { onset: 'sudden' as const, hours: 2 } } } };
    expect(flags(namelessOf(told).examination)).toEqual(flags(told));
  });

  it('changes nothing when it is done again', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const { examination } = namelessOf(record);
        expect(namelessOf(examination)).toEqual({ examination, removed: [], unknown: 0 });
      }),
      { numRuns: 100 },
    );
  });

  it('makes a lesson that reads back and finds what the record found', () => {
    for (const record of [chronic, threatened]) {
      const nameless = namelessOf({ ...record, examiner: 'L. Brandt', examinedAt: '2026-11-02T21:14+01:00' });
      const parsed = parseLesson(JSON.parse(JSON.stringify(lessonOfRecord(nameless, texts))));
      expect(parsed.ok).toBe(true);
      if (!parsed.ok) continue;
      expect(parsed.value.real).toBe(true);
      expect(examinationOf(parsed.value).pulses).toEqual(nameless.examination.pulses);
      expect(JSON.stringify(parsed.value)).not.toMatch(/Brandt|2026/);
      expect(removedNames(nameless, 'en').length).toBeGreaterThan(1);
      for (const name of removedNames(nameless, 'en')) expect(name).not.toMatch(/^[a-z]+[A-Z.]/);
    }
  });
});
