import { describe, expect, it } from 'vitest';
import { type Examination, SCALE_IDS, setFields } from '../../../src/examination/index.js';
import { FHIR_VERSIONS, fromBundle, toBundle } from '../../../src/fhir.js';
import { LOINC, LOINC_GRADES, SNOMED, SNOMED_PLACES } from '../../../src/interchange/codes.js';
import { recordFrom } from '../../tools/any-record.js';
import { isLoincCode, isSnomedId } from '../../tools/check-digits.js';
import { examined } from '../../tools/examinations.js';

/* What an export says of each finding; outside.test.ts holds its form to checks made by others. */

interface Concept {
  readonly coding?: readonly { readonly system: string; readonly code: string }[];
  readonly text?: string;
}
interface Observation {
  readonly resourceType: string;
  readonly id: string;
  readonly code: Concept;
  readonly bodySite?: Concept & {
    readonly extension?: readonly { readonly url: string; readonly valueCodeableConcept: Concept }[];
  };
  readonly valueCodeableConcept?: Concept;
  readonly dataAbsentReason?: Concept;
  readonly interpretation?: readonly Concept[];
  readonly effectiveDateTime?: string;
  readonly component?: readonly { readonly code: Concept; readonly valueCodeableConcept?: Concept }[];
}
const observations = (bundle: ReturnType<typeof toBundle>): Observation[] =>
  bundle.entry
    .map(({ resource }) => resource as unknown as Observation)
    .filter(({ resourceType }) => resourceType === 'Observation');
const codes = (concept: Concept | undefined, system: string): string[] =>
  (concept?.coding ?? []).filter((coding) => coding.system === system).map(({ code }) => code);
const about = (bundle: ReturnType<typeof toBundle>, code: string, place: string): Observation =>
  observations(bundle).find(
    (one) =>
      codes(one.code, 'urn:pulse-map:field').includes(code) &&
      codes(one.bodySite, 'urn:pulse-map:place').includes(place),
  ) as Observation;

const SCT = 'http://snomed.info/sct';
const LATERALITY = 'http://hl7.org/fhir/StructureDefinition/observation-structureLaterality';

describe('an absent pulse and one that was not examined', () => {
  const record = examined({ 'left femoral': 'absent', 'right femoral': { couldNotExamine: 'dressing' } });

  it.each(SCALE_IDS)('are told apart on the scale %s, and come back', (scale) => {
    const own = setFields(record, { scale });
    const bundle = toBundle(own);
    const absent = about(bundle, 'pulses.femoral', 'left femoral');
    expect(codes(absent.valueCodeableConcept, 'http://loinc.org')).toEqual(['LA6111-4']);
    expect(absent.interpretation?.flatMap((one) => one.coding?.map(({ code }) => code))).toEqual(['ND']);
    expect(absent.dataAbsentReason).toBeUndefined();
    const dressed = about(bundle, 'pulses.femoral', 'right femoral');
    expect(dressed.valueCodeableConcept).toBeUndefined();
    expect(dressed.interpretation).toBeUndefined();
    expect(
      codes(dressed.dataAbsentReason, 'http://terminology.hl7.org/CodeSystem/data-absent-reason'),
    ).toEqual(['not-performed']);
    expect(dressed.dataAbsentReason?.text).toBe('dressing');
    expect(fromBundle(bundle)).toEqual({ examination: own, unread: [] });
  });
});

describe('right and left', () => {
  it.each([true, false])('never swap in any code, extension or text, SNOMED CT %s', (snomed) => {
    for (const seed of [1, 2, 3]) {
      for (const { bodySite } of observations(toBundle(recordFrom(seed, 0.8), { snomed }))) {
        if (!bodySite) continue;
        const [own = ''] = codes(bodySite, 'urn:pulse-map:place');
        const [side = ''] = own.split(' ');
        const other = side === 'right' ? 'left' : 'right';
        expect(bodySite.text).toContain(side === 'midline' ? 'aorta' : side);
        expect(bodySite.text).not.toContain(other);
        for (const code of codes(bodySite, SCT))
          expect([undefined, side]).toContain(SNOMED_PLACES.get(code)?.side);
        for (const extension of bodySite.extension ?? []) {
          expect(codes(extension.valueCodeableConcept, SCT)).toEqual(snomed ? [SNOMED[side as 'left']] : []);
          expect(extension.valueCodeableConcept.text).toBe(side);
        }
      }
    }
  });
});

describe('references and ids', () => {
  const bundle = toBundle(recordFrom(4, 0.5), { kind: 'document', timestamp: '2026-05-01T10:00:00Z' });

  it('lead to entries of the bundle, each named once', () => {
    const urls = bundle.entry.map(({ fullUrl }) => fullUrl);
    expect(new Set(urls).size).toBe(urls.length);
    const named = [...JSON.stringify(bundle.entry).matchAll(/"reference":"(urn:uuid:[^"]*)"/g)].map(
      ([, url]) => url,
    );
    expect(named.length).toBeGreaterThan(10);
    for (const url of named) expect(urls).toContain(url);
  });

  it('are the same for equal records, whatever the order of their fields, and others for others', () => {
    const record = recordFrom(4, 0.5);
    const turned = Object.fromEntries(Object.entries(record).reverse()) as unknown as Examination;
    const ids = (of: Examination): string[] =>
      observations(toBundle(of))
        .map(({ id }) => id)
        .sort();
    expect(ids(turned)).toEqual(ids(record));
    expect(ids(setFields(record, { examiner: 'someone else' }))).not.toEqual(ids(record));
    const named = (of: Examination): string => toBundle(of, { id: 'visit 7' }).entry[0]?.fullUrl ?? '';
    expect(named(setFields(record, { examiner: 'someone else' }))).toBe(named(record));
  });

  it('are written the same each time', () => {
    expect(JSON.stringify(toBundle(recordFrom(4, 0.5)))).toBe(JSON.stringify(toBundle(recordFrom(4, 0.5))));
  });
});

describe('the laterality extension', () => {
  it.each([true, false])(
    'stands where no published code has the side, and only there, SNOMED CT %s',
    (snomed) => {
      let [sided, unsided] = [0, 0];
      for (const { bodySite } of observations(toBundle(recordFrom(1, 1), { snomed }))) {
        if (!bodySite) continue;
        const hasSide =
          codes(bodySite, SCT).some((code) => SNOMED_PLACES.get(code)?.side) ||
          bodySite.text?.includes('aorta');
        const extensions = (bodySite.extension ?? []).filter(({ url }) => url === LATERALITY);
        expect(extensions).toHaveLength(hasSide ? 0 : 1);
        if (hasSide) sided += 1;
        else unsided += 1;
      }
      expect(Math.min(sided, unsided)).toBeGreaterThan(0);
    },
  );
});

describe('a strength', () => {
  it('is never exported without its scale in text', () => {
    for (const scale of SCALE_IDS) {
      const bundle = toBundle(setFields(recordFrom(1, 1), { scale }));
      const values = observations(bundle).flatMap(({ valueCodeableConcept: value }) =>
        codes(value, 'urn:pulse-map:value').some((code) => /^pulses\..*\.grade\./.test(code))
          ? [value?.text ?? '']
          : [],
      );
      expect(values.length).toBeGreaterThan(5);
      for (const text of values)
        expect(text).toMatch(
          { '0-3': /\(scale: 0 to 3\)/, '0-4': /\(scale: 0 to 4\)/, words: /\(scale: words\)/ }[scale],
        );
    }
  });
});

describe('a time', () => {
  it.each([
    ['2026-05-01T10:30+02:00', '2026-05-01T10:30:00+02:00'],
    ['2026-05-01T10:30:15.5Z', '2026-05-01T10:30:15.5Z'],
    ['2026-05-01T10:30+23:30', '2026-04-30T11:00:00Z'],
    ['0000-01-01T00:00Z', undefined],
  ])('%s carries its offset, and comes back as it was', (examinedAt, written) => {
    const record = setFields(examined({ 'left femoral': 'normal' }), { examinedAt });
    const bundle = toBundle(record);
    for (const one of observations(bundle)) expect(one.effectiveDateTime).toBe(written);
    expect(fromBundle(bundle).examination).toEqual(record);
  });

  it('without its hour stays partial: it is told, and no hour is made up', () => {
    const { examination, unread } = fromBundle({
      resourceType: 'Bundle',
      entry: [
        {
          resource: {
            resourceType: 'Observation',
            status: 'final',
            code: { coding: [{ system: 'http://loinc.org', code: '8867-4' }] },
            effectiveDateTime: '2026-05',
            valueQuantity: { value: 80, unit: '/min' },
          },
        },
      ],
    });
    expect(examination).toMatchObject({ circulation: { heartRate: 80 } });
    expect(examination.examinedAt).toBeUndefined();
    expect(unread).toEqual([{ path: 'entry[0].resource.effectiveDateTime', why: 'partial-time' }]);
  });
});

describe('the versions', () => {
  it.each(FHIR_VERSIONS)('%s has no body structure, and nothing that only the other has', (fhirVersion) => {
    const json = JSON.stringify(
      toBundle(recordFrom(1, 1), { fhirVersion, kind: 'document', timestamp: '2026-05-01T10:00:00Z' }),
    );
    expect(json).not.toMatch(/"(bodyStructure|triggeredBy|instantiates\w+|valueAttachment|valueReference)"/);
  });
});

describe('the codes', () => {
  it('carry their check digits', () => {
    const snomed = [...Object.values(SNOMED), ...SNOMED_PLACES.keys()];
    expect(snomed.length).toBeGreaterThan(40);
    for (const code of snomed) expect(isSnomedId(code), code).toBe(true);
    for (const code of Object.values(LOINC)) expect(isLoincCode(code), code).toBe(true);
  });

  it('of the answers 1+ to 4+ follow one another, and so do their check digits', () => {
    // How the letters of an answer code count was not found; whatever it is, one more in the last place is 2 less in a mod-10 check digit.
    const [first, ...others] = LOINC_GRADES.slice(1).map(
      (code) => /^LA(\d+)-(\d)$/.exec(code)?.slice(1).map(Number) ?? [],
    );
    others.forEach(([number = 0, check], i) => {
      expect(number).toBe((first?.[0] ?? 0) + i + 1);
      expect(check).toBe(((first?.[1] ?? 0) + 10 - 2 * (i + 1)) % 10);
    });
  });

  it('name no SNOMED CT unless it was asked for', () => {
    const record = recordFrom(1, 1);
    expect(JSON.stringify(toBundle(record))).not.toContain(SCT);
    expect(JSON.stringify(toBundle(record, { snomed: true }))).toContain(SCT);
  });
});
