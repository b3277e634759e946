import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultsOf } from '../../fhir/validate.js';
import { BUNDLE_KINDS, FHIR_VERSIONS, toBundle } from '../../../src/fhir.js';
import { anyRecord, recordFrom } from '../../tools/any-record.js';
import { examined } from '../../tools/examinations.js';

const timestamp = '2026-05-01T12:00:00Z';
const subject = { reference: 'Patient/1', display: 'An invented patient' };
const WAYS = FHIR_VERSIONS.flatMap((fhirVersion) => BUNDLE_KINDS.map((kind) => ({ fhirVersion, kind })));

describe('an export', () => {
  it.each(WAYS)('passes every outside check: $fhirVersion, $kind', (way) => {
    fc.assert(
      fc.property(anyRecord, fc.boolean(), (record, snomed) => {
        expect(faultsOf(toBundle(record, { ...way, snomed, subject, timestamp }), way.fhirVersion)).toEqual(
          [],
        );
      }),
      { numRuns: 6 },
    );
  });

  it.each(WAYS)('passes with every field filled: $fhirVersion, $kind', (way) => {
    expect(
      faultsOf(toBundle(recordFrom(1, 1), { ...way, snomed: true, subject, timestamp }), way.fhirVersion),
    ).toEqual([]);
  });
});

type Any = Record<string, never>;
type Change = (bundle: { entry: { fullUrl: string; resource: Any }[]; type: unknown }) => void;
const resource = (bundle: Parameters<Change>[0], code: string): Record<string, unknown> =>
  bundle.entry.find(({ resource: one }) =>
    JSON.stringify(one).includes(`"urn:pulse-map:field","code":"${code}"`),
  )?.resource ?? {};

/** Single faults that a validator has to see, each put into a good bundle. */
const FAULTS: Readonly<Record<string, Change>> = {
  'a missing status': (b) => void delete resource(b, 'pulses.femoral').status,
  'a status that is none': (b) => void (resource(b, 'pulses.femoral').status = 'finished'),
  'a missing code': (b) => void delete resource(b, 'pulses.femoral').code,
  'an unknown property': (b) => void (resource(b, 'pulses.femoral').strength = 2),
  'a list where there is one': (b) => void (resource(b, 'pulses.femoral').bodySite = [{ text: 'x' }]),
  'an object where there is a list': (b) => void (resource(b, 'pulses.femoral').category = { text: 'exam' }),
  'a bad date': (b) => void (resource(b, 'pulses.femoral').effectiveDateTime = '2026-13-45'),
  'two values': (b) => void (resource(b, 'pulses.femoral').valueString = 'x'),
  'a value beside a reason for none': (b) =>
    void (resource(b, 'pulses.femoral').dataAbsentReason = { text: 'x' }),
  'text for a number': (b) =>
    void Object.assign(resource(b, 'pulses.femoral'), {
      valueCodeableConcept: undefined,
      valueQuantity: { value: 'two' },
    }),
  'a component without a code': (b) =>
    void (resource(b, 'pulses.femoral').component = [{ valueString: 'x' }]),
  'the same fullUrl twice': (b) => void Object.assign(b.entry[2] ?? {}, { fullUrl: b.entry[1]?.fullUrl }),
  'an extension with value and children': (b) =>
    void (resource(b, 'pulses.femoral').extension = [
      { url: 'urn:x', valueString: 'x', extension: [{ url: 'urn:y', valueString: 'y' }] },
    ]),
  'an id that is none': (b) => void (resource(b, 'pulses.femoral').id = 'no id!'),
  'a kind of bundle that is none': (b) => void (b.type = 'heap'),
  'text for a reference': (b) => void (resource(b, 'pulses.femoral').subject = 'Patient/1'),
  'an empty list': (b) => void (resource(b, 'pulses.femoral').note = []),
  'a kind of resource that is none': (b) => void (resource(b, 'pulses.femoral').resourceType = 'Observatory'),
};

describe('a single fault', () => {
  const record = examined({ 'left femoral': 'reduced', 'right femoral': 'absent' });

  it('is one of eighteen', () => {
    expect(Object.keys(FAULTS)).toHaveLength(18);
  });

  it.each(FHIR_VERSIONS.flatMap((version) => Object.keys(FAULTS).map((name) => [version, name] as const)))(
    'is refused in %s: %s',
    (version, name) => {
      const good = toBundle(record, { fhirVersion: version, subject });
      expect(faultsOf(good, version)).toEqual([]);
      const bad = JSON.parse(JSON.stringify(good)) as Parameters<Change>[0];
      FAULTS[name]?.(bad);
      const json = JSON.parse(JSON.stringify(bad)) as unknown;
      expect(json).not.toEqual(JSON.parse(JSON.stringify(good)));
      expect(faultsOf(json, version)).not.toEqual([]);
    },
  );
});
