import { describe, expect, it } from 'vitest';
import { emptyExamination } from '../../../src/examination/index.js';
import { fromBundle, toBundle } from '../../../src/fhir.js';
import { examined } from '../../tools/examinations.js';

/* Bundles as other programs write them; the pulse follows the example "pulse-intensity-palpation" of US Core, the rest is from memory. */

const SCT = 'http://snomed.info/sct';
type Fields = Readonly<Record<string, unknown>>;
const loinc = (code: string) => ({ coding: [{ system: 'http://loinc.org', code }] });
const LEFT_FEMORAL = { coding: [{ system: SCT, code: '113270003' }] };
const answer = (code: string, text?: string) => ({
  valueCodeableConcept: { coding: [{ system: 'http://loinc.org', code }], ...(text && { text }) },
});
const pulse = (fields: Fields): Fields => ({
  resourceType: 'Observation',
  status: 'final',
  code: loinc('44974-4'),
  bodySite: LEFT_FEMORAL,
  ...fields,
});
const pressure = (fields: Fields): Fields => ({
  resourceType: 'Observation',
  status: 'final',
  code: loinc('8480-6'),
  valueQuantity: { value: 120, unit: 'mmHg', system: 'http://unitsofmeasure.org', code: 'mm[Hg]' },
  ...fields,
});
const read = (...resources: readonly Fields[]) =>
  fromBundle({
    resourceType: 'Bundle',
    type: 'collection',
    entry: resources.map((resource) => ({ resource })),
  });
const whys = (...resources: readonly Fields[]) =>
  read(...resources).unread.map(({ path, why }) => `${path.replace('entry[0].resource', '')} ${why}`);

describe('a pulse of another program', () => {
  it.each<readonly [string, Fields, string]>([
    ['its scale in text', answer('LA11842-4', '2+ of 3'), 'normal'],
    ['a numeral and its maximum', { valueCodeableConcept: { text: '1/3' } }, 'reduced'],
    ['the same as a string', { valueString: '3 of 3' }, 'bounding'],
    ['nought on any scale', answer('LA6111-4'), 'absent'],
    ['nought as an integer', { valueInteger: 0 }, 'absent'],
    ['a word of the record', { valueCodeableConcept: { text: 'Reduced' } }, 'reduced'],
    ['numeral and word', answer('LA11842-4', 'normal'), 'normal'],
  ])('is read by %s', (_, value, grade) => {
    const { examination, unread } = read(pulse(value));
    expect(unread).toEqual([]);
    expect(examination.pulses).toEqual({ femoral: { left: { grade } } });
  });

  it.each<readonly [string, Fields]>([
    ['a bare numeral', answer('LA11842-4')],
    ['a scale of 0 to 4, on which 2 is weak or normal', answer('LA11842-4', '2+ of 4')],
    ['two plus signs', { valueCodeableConcept: { text: '++' } }],
    ['weak, of whatever', { valueCodeableConcept: { text: 'weak' } }],
    ['code and text that differ', answer('LA11842-4', '1+ of 3')],
    ['a code that says absent and a text that says normal', answer('LA6111-4', 'normal')],
    ['a number as quantity', { valueQuantity: { value: 2 } }],
  ])('is a question of the scale for %s', (_, value) => {
    const { examination, unread } = read(pulse(value));
    expect(examination.pulses).toBeUndefined();
    expect(unread.map(({ why }) => why)).toEqual(['scale']);
  });

  const absent = answer('LA6111-4');
  it.each<readonly [string, unknown, object]>([
    ['a sided code', LEFT_FEMORAL, { femoral: { left: { grade: 'absent' } } }],
    [
      'an unsided code with the extension',
      {
        coding: [{ system: SCT, code: '7657000' }],
        extension: [
          {
            url: 'http://hl7.org/fhir/StructureDefinition/observation-structureLaterality',
            valueCodeableConcept: { coding: [{ system: SCT, code: '24028007' }] },
          },
        ],
      },
      { femoral: { right: { grade: 'absent' } } },
    ],
    [
      'an unsided code with the side in text',
      { coding: [{ system: SCT, code: '43899006' }], text: 'Left popliteal artery' },
      { popliteal: { left: { grade: 'absent' } } },
    ],
    ['text alone', { text: 'Right dorsalis pedis' }, { 'dorsalis-pedis': { right: { grade: 'absent' } } }],
    [
      'an open terminology',
      {
        coding: [{ system: 'http://purl.obolibrary.org/obo/uberon.owl', code: 'UBERON:0002250' }],
        text: 'left',
      },
      { popliteal: { left: { grade: 'absent' } } },
    ],
  ])('is placed by %s', (_, bodySite, pulses) => {
    expect(read(pulse({ ...absent, bodySite }))).toMatchObject({ examination: { pulses }, unread: [] });
  });

  it.each<readonly [string, Fields, string]>([
    ['no side', { bodySite: { coding: [{ system: SCT, code: '7657000' }] } }, '.bodySite no-side'],
    ['two sides', { bodySite: { ...LEFT_FEMORAL, text: 'Right femoral artery' } }, '.bodySite sides-differ'],
    ['no place', { bodySite: undefined }, '.bodySite no-place'],
    [
      'a place without a site',
      { bodySite: { coding: [{ system: SCT, code: '68053000' }], text: 'left' } },
      '.bodySite no-place',
    ],
    ['an error', { status: 'entered-in-error' }, ' status'],
    ['a modifier', { modifierExtension: [{ url: 'urn:x', valueBoolean: true }] }, ' modifier'],
    ['about something else than the patient', { focus: [{ reference: 'Patient/donor' }] }, ' modifier'],
    ['Doppler', { method: { coding: [{ system: SCT, code: '420717009' }] } }, '.method not-understood'],
    [
      'an interpretation that says another thing',
      {
        interpretation: [
          {
            coding: [
              { system: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation', code: 'N' },
            ],
          },
        ],
      },
      '.interpretation contradicts',
    ],
  ])('is not read for %s', (_, fields, why) => {
    expect(whys(pulse({ ...absent, ...fields }))).toEqual([why]);
    expect(read(pulse({ ...absent, ...fields })).examination.pulses).toBeUndefined();
  });

  it('is not examined for a reason, or without one that the record knows', () => {
    expect(read(pulse({ dataAbsentReason: { text: 'Cast' } })).examination.pulses).toEqual({
      femoral: { left: { couldNotExamine: 'cast' } },
    });
    expect(whys(pulse({ dataAbsentReason: { text: 'no time' } }))).toEqual(['.dataAbsentReason no-reason']);
  });

  it('is not chosen from two', () => {
    const { examination, unread } = read(pulse(absent), pulse({ valueCodeableConcept: { text: 'normal' } }));
    expect(examination.pulses).toBeUndefined();
    expect(unread.map(({ why }) => why)).toEqual(['two-values', 'two-values']);
  });
});

describe('pressures of another program', () => {
  it('are read at an artery, an upper arm or without a place, in mmHg only', () => {
    expect(
      read(pressure({ bodySite: { coding: [{ system: SCT, code: '792817008' }] } })).examination.pressures,
    ).toEqual({ 'dorsalis-pedis': { left: 120 } });
    expect(
      read(pressure({ bodySite: { coding: [{ system: SCT, code: '368209003' }] } })).examination.pressures,
    ).toEqual({ brachial: { right: 120 } });
    expect(read(pressure({})).examination.circulation).toEqual({ systolic: 120 });
    expect(whys(pressure({ bodySite: { coding: [{ system: SCT, code: '6685009' }] } }))).toEqual([
      '.bodySite which-artery',
    ]);
    expect(whys(pressure({ valueQuantity: { value: 16, unit: 'kPa' } }))).toEqual(['.valueQuantity unit']);
    expect(whys(pressure({ valueQuantity: { value: 120, comparator: '<', unit: 'mmHg' } }))).toEqual([
      '.valueQuantity not-understood',
    ]);
  });

  const mmHg = (value: number) => ({
    value,
    unit: 'mmHg',
    system: 'http://unitsofmeasure.org',
    code: 'mm[Hg]',
  });
  const cuff = (fields: Fields = {}): Fields => ({
    resourceType: 'Observation',
    status: 'final',
    code: loinc('85354-9'),
    component: [
      { code: loinc('8480-6'), valueQuantity: mmHg(128) },
      { code: loinc('8462-4'), valueQuantity: mmHg(76) },
    ],
    ...fields,
  });
  const at = (code: string, text?: string) => ({
    bodySite: { coding: [{ system: SCT, code }], ...(text && { text }) },
  });

  it('of a cuff are those of the circulation where no place is named', () => {
    expect(read(cuff())).toMatchObject({
      examination: { circulation: { systolic: 128, diastolic: 76 } },
      unread: [],
    });
  });

  it.each<readonly [string, Fields]>([
    ['a sided code', at('368209003')],
    ['text', { bodySite: { text: 'Left upper arm' } }],
    ['German text', { bodySite: { text: 'Oberarm rechts' } }],
  ])('of a cuff at an arm are read, and the arm is told not to be kept: %s', (_, place) => {
    const { examination, unread } = read(cuff(place));
    expect(examination.circulation).toEqual({ systolic: 128, diastolic: 76 });
    expect(unread).toEqual([{ path: 'entry[0].resource.bodySite', why: 'not-kept' }]);
  });

  it.each<readonly [string, Fields, string]>([
    ['an ankle', at('6685009'), 'which-artery'],
    ['an ankle in text', { bodySite: { text: 'right ankle' } }, 'no-place'],
    ['a place that is not known', at('00000000'), 'no-place'],
    ['an arm by its code and an ankle by its text', at('368209003', 'Right ankle'), 'contradicts'],
    ['one arm by its code and the other by its text', at('368209003', 'Left upper arm'), 'sides-differ'],
  ])('of a cuff at %s are never those of the circulation', (_, place, why) => {
    const { examination, unread } = read(cuff(place));
    expect(examination.circulation).toBeUndefined();
    expect(unread).toEqual([{ path: 'entry[0].resource.bodySite', why }]);
  });

  it('at a place whose code and text name different limbs are not read', () => {
    for (const [code, text] of [
      ['368209003', 'Right ankle'],
      ['792817008', 'left arm'],
    ] as const)
      expect(whys(pressure(at(code, text)))).toEqual(['.bodySite contradicts']);
  });

  it('never lose a place silently, whatever it is', () => {
    const places = ['368209003', '6685009', '29707007', '17137000', '7657000', '00000000'];
    for (const make of [cuff, pressure, pulse])
      for (const place of places) {
        const { examination, unread } = read(
          make({ ...at(place, 'left'), ...(make === pulse && answer('LA6111-4')) }),
        );
        const kept = JSON.stringify(examination).includes('"left"');
        expect(kept || unread.some(({ path }) => path.includes('bodySite')), `${make.name} ${place}`).toBe(
          true,
        );
      }
  });

  it('are refused beyond what the record takes', () => {
    expect(read(pressure({ valueQuantity: { value: 900, unit: 'mmHg' } }))).toMatchObject({
      examination: {},
      unread: [{ path: 'entry[0].resource.valueQuantity', why: 'refused' }],
    });
  });
});

describe('a bundle of another program', () => {
  const absent = pulse({
    ...answer('LA6111-4'),
    subject: { reference: 'Patient/1' },
    effectiveDateTime: '2026-05-01T10:30:00Z',
  });

  it('is read around what is not, each told with its place', () => {
    const { examination, unread } = read(
      { resourceType: 'Patient', id: '1' },
      absent,
      { resourceType: 'DiagnosticReport' },
      { resourceType: 'Observation', status: 'final', code: loinc('718-7') },
    );
    expect(examination).toMatchObject({
      examinedAt: '2026-05-01T10:30:00Z',
      pulses: { femoral: { left: { grade: 'absent' } } },
    });
    expect(unread).toEqual([
      { path: 'entry[0].resource', why: 'other-resource' },
      { path: 'entry[2].resource', why: 'other-resource' },
      { path: 'entry[3].resource.code', why: 'unknown-code' },
    ]);
  });

  it('is listed entry by entry for what is not read: a report, answers to another form, a capillary refill of nowhere', () => {
    const refill = {
      resourceType: 'Observation',
      status: 'final',
      code: loinc('44971-0'),
      valueQuantity: { value: 4, unit: 's' },
    };
    const answers = {
      resourceType: 'QuestionnaireResponse',
      status: 'completed',
      item: [{ linkId: '1', answer: [{ valueBoolean: true }] }],
    };
    const rate = {
      resourceType: 'Observation',
      status: 'final',
      code: loinc('8867-4'),
      valueQuantity: { value: 72, unit: '/min' },
      ...{ bodySite: { text: 'left wrist' } },
    };
    const { examination, unread } = read(
      { resourceType: 'DiagnosticReport', status: 'final' },
      answers,
      refill,
      rate,
    );
    expect(examination).toEqual({ ...emptyExamination(), circulation: { heartRate: 72 } });
    expect(unread).toEqual([
      { path: 'entry[0].resource', why: 'other-resource' },
      { path: 'entry[1].resource', why: 'other-resource' },
      { path: 'entry[2].resource.bodySite', why: 'no-place' },
      { path: 'entry[3].resource.bodySite', why: 'not-kept' },
    ]);
  });

  it('is told when it is about another patient, or several', () => {
    const asked = fromBundle(
      { resourceType: 'Bundle', entry: [{ resource: absent }] },
      { subject: 'Patient/2' },
    );
    expect(asked).toMatchObject({ unread: [{ path: 'entry[0].resource', why: 'other-patient' }] });
    expect(asked.examination.pulses).toBeUndefined();
    const other = { ...absent, subject: { reference: 'Patient/2' } };
    expect(read(absent, other).unread.map(({ why }) => why)).toEqual([
      'several-patients',
      'several-patients',
    ]);
    const one = fromBundle(
      { resourceType: 'Bundle', entry: [{ resource: absent }, { resource: other }] },
      { subject: 'http://x.org/Patient/1' },
    );
    expect(one).toMatchObject({
      examination: { pulses: { femoral: { left: { grade: 'absent' } } } },
      unread: [{ why: 'other-patient' }],
    });
  });

  it('is told when it holds several days, until one is named', () => {
    const later = pulse({
      valueCodeableConcept: { text: 'normal' },
      effectiveDateTime: '2026-06-01T10:30:00Z',
    });
    const bundle = { resourceType: 'Bundle', entry: [{ resource: absent }, { resource: later }] };
    expect(fromBundle(bundle).unread.map(({ why }) => why)).toEqual(['several-days', 'several-days']);
    expect(fromBundle(bundle, { day: '2026-06-01' })).toMatchObject({
      examination: { pulses: { femoral: { left: { grade: 'normal' } } } },
      unread: [{ why: 'other-day' }],
    });
  });
});

describe('a bundle of ours that was changed elsewhere', () => {
  const bundle = () =>
    JSON.parse(
      JSON.stringify(
        toBundle(examined({ 'left femoral': { grade: 'reduced', thrill: true } }), { derived: false }),
      ),
    ) as { entry: { resource: Record<string, unknown> }[] };
  const femoral = (of: ReturnType<typeof bundle>) => of.entry[1]?.resource as Record<string, never>;

  it.each<readonly [string, Fields, string]>([
    [
      'another numeral beside the word',
      {
        valueCodeableConcept: {
          coding: [
            { system: 'http://loinc.org', code: 'LA11843-2' },
            { system: 'urn:pulse-map:value', code: 'pulses.femoral.grade.reduced' },
          ],
        },
      },
      '.valueCodeableConcept contradicts',
    ],
    [
      'another side in text',
      {
        bodySite: {
          coding: [{ system: 'urn:pulse-map:place', code: 'left femoral' }],
          text: 'right femoral',
        },
      },
      ' sides-differ',
    ],
    [
      'another place',
      { bodySite: { coding: [{ system: 'urn:pulse-map:place', code: 'left popliteal' }] } },
      ' no-place',
    ],
    [
      'something that the record has no place for',
      { referenceRange: [{ text: 'x' }] },
      '.referenceRange not-kept',
    ],
  ])('tells of %s', (_, fields, why) => {
    const changed = bundle();
    Object.assign(femoral(changed), fields);
    expect(
      fromBundle(changed).unread.map((one) => `${one.path.replace('entry[1].resource', '')} ${one.why}`),
    ).toEqual([why]);
  });

  it('tells of an index that does not follow from its pressures', () => {
    const own = toBundle({
      format: 'pulse-map/1',
      scale: '0-3',
      pressures: { brachial: { left: 120 }, 'posterior-tibial': { left: 60 } },
    });
    const changed = JSON.parse(JSON.stringify(own).replace('"value":0.5,', '"value":1.05,')) as unknown;
    expect(fromBundle(own).unread).toEqual([]);
    expect(fromBundle(changed).unread.map(({ why }) => why)).toEqual(['derived-differs']);
  });
});
