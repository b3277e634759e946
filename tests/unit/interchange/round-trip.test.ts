import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination, parseExamination } from '../../../src/examination/index.js';
import { equal } from '../../../src/examination/json.js';
import {
  BUNDLE_KINDS,
  FHIR_VERSIONS,
  fromBundle,
  fromResponse,
  toBundle,
  toResponse,
} from '../../../src/fhir.js';
import '../../../src/locale/de/register.js';
import { anyRecord, recordFrom } from '../../tools/any-record.js';

const timestamp = '2026-05-01T12:00:00Z';
/** How many records each property is tried with; `FHIR_RUNS=2000` before the command tries thousands. */
const numRuns = Number(process.env.FHIR_RUNS ?? 25);
const WAYS = FHIR_VERSIONS.flatMap((fhirVersion) =>
  BUNDLE_KINDS.flatMap((kind) => [false, true].map((snomed) => ({ fhirVersion, kind, snomed }))),
);

describe('a record through FHIR', () => {
  it.each(WAYS)('comes back equal with nothing unread: $fhirVersion, $kind, SNOMED CT $snomed', (way) => {
    fc.assert(
      fc.property(anyRecord, fc.constantFrom('en', 'de'), (record, language) => {
        const bundle: unknown = JSON.parse(JSON.stringify(toBundle(record, { ...way, language, timestamp })));
        const { examination, unread } = fromBundle(bundle);
        expect(unread).toEqual([]);
        expect(equal(examination, record)).toBe(true);
        expect(parseExamination(examination).ok).toBe(true);
      }),
      { numRuns },
    );
  });

  it('comes back equal from entries in any order', () => {
    fc.assert(
      fc.property(
        anyRecord,
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        (record, chances) => {
          const bundle = toBundle(record, { derived: false });
          const order = new Map(bundle.entry.map((entry) => [entry, chances.next().value as number]));
          const entry = [...bundle.entry].sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0));
          expect(fromBundle({ ...bundle, entry })).toEqual({ examination: record, unread: [] });
        },
      ),
      { numRuns },
    );
  });

  it('comes back equal when every field is filled', () => {
    for (let seed = 0; seed < 2; seed += 1) {
      const record = recordFrom(seed, 1);
      expect(fromBundle(toBundle(record))).toEqual({ examination: record, unread: [] });
    }
  });

  it('comes back equal when a later version knows a side where this one knows none', () => {
    const record = {
      ...emptyExamination(),
      pulses: { 'abdominal-aorta': { right: [{}] }, femoral: { midline: 1 } },
    } as unknown as Examination;
    expect(fromBundle(toBundle(record))).toEqual({ examination: record, unread: [] });
    expect(fromResponse(toResponse(record))).toEqual({ examination: record, unread: [] });
  });

  it('comes back equal when it is empty', () => {
    const record = emptyExamination('words');
    expect(fromBundle(toBundle(record))).toEqual({ examination: record, unread: [] });
  });
});
