import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  emptyExamination,
  type Examination,
  parseExamination,
  setFields,
} from '../../../src/examination/index.js';
import { equal } from '../../../src/examination/json.js';
import {
  FHIR_VERSIONS,
  fromBundle,
  fromResponse,
  toBundle,
  toQuestionnaire,
  toResponse,
} from '../../../src/fhir.js';
import { FIELDS, leavesOf } from '../../../src/interchange/fields.js';
import { BY_LINK } from '../../../src/interchange/form/items.js';
import '../../../src/locale/de/register.js';
import { answersFaults, formFaults } from '../../fhir/form.js';
import { faultsOf } from '../../fhir/validate.js';
import { anyRecord, recordFrom } from '../../tools/any-record.js';
import { examined } from '../../tools/examinations.js';

/** How many records each property is tried with; `FHIR_RUNS=2000` before the command tries thousands. */
const numRuns = Number(process.env.FHIR_RUNS ?? 25);
const LANGUAGES = ['en', 'de'] as const;
const WAYS = FHIR_VERSIONS.flatMap((fhirVersion) => LANGUAGES.map((language) => ({ fhirVersion, language })));
const subject = { reference: 'Patient/1', display: 'An invented patient' };
const json = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

/** In a bundle, since the outside checks look at bundles. */
const bundled = (...resources: readonly unknown[]) => ({
  resourceType: 'Bundle',
  type: 'collection',
  entry: resources.map((resource, i) => ({
    fullUrl: `urn:uuid:00000000-0000-5000-8000-00000000000${i}`,
    resource,
  })),
});
type Item = { readonly [name: string]: unknown };
const answering = (...item: readonly Item[]) => ({
  resourceType: 'QuestionnaireResponse',
  status: 'completed',
  item,
});
const value = (code: string) => ({ valueCoding: { system: 'urn:pulse-map:value', code } });
const whys = (response: unknown) => fromResponse(response).unread.map(({ path, why }) => `${path} ${why}`);

describe('the form of the record', () => {
  it.each(WAYS)('passes every outside check: $fhirVersion, $language', (way) => {
    const form = json(toQuestionnaire(way));
    expect(faultsOf(bundled(form), way.fhirVersion)).toEqual([]);
    // In one language: the other differs in its words only, see below.
    if (way.language === 'en') expect(formFaults(form, way.fhirVersion)).toEqual([]);
  });

  it('asks every field of the record, on each of its sides, and offers every word', () => {
    for (const { code, template, sides, words, kind } of FIELDS.filter((field) => field.template.length)) {
      const keys = template.filter((key) => key !== '$index');
      for (const side of keys.includes('$side') ? sides : ['']) {
        const linkId = keys.map((key) => (key === '$side' ? side : key)).join('.');
        const item = BY_LINK.get(linkId);
        expect(item, `${code} ${side}`).toBeDefined();
        const word = kind === 'pressure' ? BY_LINK.get(`${linkId}.word`) : item;
        expect(word?.options).toEqual(expect.arrayContaining([...words]));
      }
    }
  });

  it('names the side in every question that has one, and never the other', () => {
    for (const item of flat(toQuestionnaire().item as readonly Item[])) {
      const [side] = /\.(left|right)(?=\.|$)/.exec(String(item.linkId))?.slice(1) ?? [];
      if (!side) continue;
      expect(item.text).toMatch(new RegExp(`\\b${side}\\b`));
      expect(item.text).not.toMatch(side === 'left' ? /\bright\b/ : /\bleft\b/);
    }
  });

  it('names the limb that a question is about', () => {
    const bedside = flat(toQuestionnaire().item as readonly Item[]).filter(({ linkId }) =>
      /^bedside\..*\.(left|right)(\.|$)/.test(String(linkId)),
    );
    // The tests of the arm by name; all others are done on a leg.
    for (const { linkId, text } of bedside)
      expect(text, String(linkId)).toMatch(
        /hand|cold|scalene|hyper|costo|arm-stress/.test(String(linkId))
          ? /(left|right) arm/
          : /(left|right) leg/,
      );
    expect(bedside.length).toBeGreaterThan(100);
  });

  it('is the same each time, and in another language but for what is read', () => {
    expect(JSON.stringify(toQuestionnaire())).toBe(JSON.stringify(toQuestionnaire()));
    const links = (language: string) =>
      flat(toQuestionnaire({ language }).item as readonly Item[]).map(({ linkId, type }) => [linkId, type]);
    expect(links('de')).toEqual(links('en'));
  });
});

function flat(items: readonly Item[]): readonly Item[] {
  return items.flatMap((item) => [item, ...flat((item.item ?? []) as readonly Item[])]);
}

describe('a record as answers', () => {
  it.each(WAYS)('comes back equal with nothing unread: $fhirVersion, $language', (way) => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const { examination, unread } = fromResponse(json(toResponse(record, way)));
        expect(unread).toEqual([]);
        expect(equal(examination, record)).toBe(true);
      }),
      { numRuns },
    );
  });

  it.each(WAYS)('keeps to its form and passes every outside check: $fhirVersion, $language', (way) => {
    const form = json(toQuestionnaire(way));
    const records = [recordFrom(1, 1), ...fc.sample(anyRecord, 8)];
    for (const record of records) {
      const response = json(toResponse(record, { ...way, subject }));
      expect(answersFaults(form, response)).toEqual([]);
      expect(faultsOf(bundled(response), way.fhirVersion)).toEqual([]);
    }
  });

  it('comes back equal when it is empty, and when every field is filled', () => {
    for (const record of [emptyExamination('words'), recordFrom(0, 1), recordFrom(1, 1)])
      expect(fromResponse(toResponse(record))).toEqual({ examination: record, unread: [] });
  });

  it('comes back equal out of a bundle, too, and is left where its Observations stand beside it', () => {
    const record = recordFrom(7, 0.4);
    const answers = toResponse(record, { subject });
    expect(fromBundle(bundled(answers))).toEqual({ examination: record, unread: [] });
    const both = toBundle(record, { subject });
    const read = fromBundle({ ...both, entry: [...both.entry, { resource: answers }] });
    expect(read).toEqual({
      examination: record,
      unread: [{ path: `entry[${both.entry.length}].resource`, why: 'other-resource' }],
    });
    expect(fromBundle(bundled(answers, answers)).unread.map(({ why }) => why)).toEqual([
      'several',
      'several',
    ]);
  });

  it('says nothing of what was not said: one answer gives one value', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const { item } = toResponse(record, {});
        const answers = flat(item as readonly Item[]).flatMap(
          (one) => (one.answer ?? []) as readonly unknown[],
        );
        const words = leavesOf(record).map((leaf) =>
          leaf.kind === 'words' ? (leaf.value as readonly unknown[]).length : 1,
        );
        const kept = flat(item as readonly Item[]).filter(({ linkId }) => linkId === 'kept').length;
        expect(answers.length).toBe(words.reduce((sum, one) => sum + one, 0) + kept);
      }),
      { numRuns },
    );
  });

  it.each([
    ['preliminary', 'in-progress'],
    ['final', 'completed'],
  ] as const)('that is %s is %s', (status, written) => {
    const record = setFields(examined({ 'left femoral': 'normal' }), { status });
    expect(toResponse(record).status).toBe(written);
    expect(fromResponse(toResponse(record)).examination).toEqual(record);
  });

  it('that was entered in error comes back as such, and another program’s is not read', () => {
    const record: Examination = {
      ...examined({ 'left femoral': 'normal' }),
      amendments: [{ kind: 'entered-in-error', at: '2026-05-01T10:30Z' }],
    };
    expect(toResponse(record).status).toBe('entered-in-error');
    expect(fromResponse(toResponse(record))).toEqual({ examination: record, unread: [] });
    const other = { ...toResponse(examined({ 'left femoral': 'normal' })), status: 'entered-in-error' };
    expect(whys(other)).toEqual([' status']);
    expect(fromResponse(other).examination).toEqual(emptyExamination());
  });
});

type Change = (items: (path: string) => Record<string, unknown>, whole: Record<string, unknown>) => void;
/** Single departures from the form; the checks above count only if they refuse each of these. */
const DEPARTURES: Readonly<Record<string, Change>> = {
  'an unknown question': (at) => void (at('pulses.femoral.left.grade').linkId = 'pulses.femoral.strength'),
  'a question in another group': (at) =>
    void (at('pulses.femoral.left.grade').linkId = 'pulses.femoral.right.grade'),
  'another type': (at) => void (at('pulses.femoral.left.grade').answer = [{ valueString: 'absent' }]),
  'a word that is not offered': (at) =>
    void (at('pulses.femoral.left.grade').answer = [value('pulses.femoral.grade.thready')]),
  'two answers to one question': (at) =>
    void (at('pulses.femoral.left.grade').answer = [
      value('pulses.femoral.grade.absent'),
      value('pulses.femoral.grade.normal'),
    ]),
  'no answer': (at) => void delete at('pulses.femoral.left.grade').answer,
  'an answered group': (at) => void (at('pulses.femoral').answer = [{ valueBoolean: true }]),
  'another unit': (at) =>
    void (at('pressures.brachial.left').answer = [{ valueQuantity: { value: 16, code: 'kPa' } }]),
  'another wording': (at) => void (at('pulses.femoral.left.grade').text = 'Pulse, right femoral'),
  'questions out of order': (_, whole) => void (whole.item as unknown[]).reverse(),
  'another form': (_, whole) => void (whole.questionnaire = 'urn:x|1'),
};

describe('answers that depart from their form', () => {
  const record: Examination = {
    ...examined({ 'left femoral': 'absent', 'right femoral': 'normal' }),
    pressures: { brachial: { left: 120 } },
  };
  const form = toQuestionnaire();

  it.each(Object.keys(DEPARTURES))('are refused by the check: %s', (name) => {
    const response = json(toResponse(record)) as unknown as Record<string, unknown>;
    expect(answersFaults(form, response)).toEqual([]);
    const items = flat(response.item as readonly Item[]) as readonly Record<string, unknown>[];
    DEPARTURES[name]?.((linkId) => items.find((one) => one.linkId === linkId)!, response);
    expect(answersFaults(form, json(response))).not.toEqual([]);
  });
});

describe('answers of another program', () => {
  const grade = (answer: unknown, more: Item = {}) => ({
    linkId: 'pulses.femoral.left.grade',
    answer: [answer],
    ...more,
  });

  it('are read without groups, in groups of their own, and below answers', () => {
    const own = grade(value('pulses.femoral.grade.absent'));
    const pulses = { femoral: { left: { grade: 'absent' } } };
    for (const response of [
      answering(own),
      answering({ linkId: 'page 1', item: [own] }),
      answering({ linkId: 'scale', answer: [{ ...value('scale.0-3'), item: [own] }] }),
    ])
      expect(fromResponse(response)).toMatchObject({ examination: { pulses }, unread: [] });
  });

  it.each<readonly [string, Item, unknown]>([
    ['the very word', grade({ valueString: 'absent' }), { femoral: { left: { grade: 'absent' } } }],
    [
      'yes, where only that can be said',
      { linkId: 'pulses.femoral.left.thrill', answer: [{ valueBoolean: true }] },
      { femoral: { left: { thrill: true } } },
    ],
  ])('are read by %s', (_, item, pulses) => {
    const { examination, unread } = fromResponse(answering(item));
    expect(unread).toEqual([]);
    expect(examination.pulses).toEqual(pulses);
  });

  it.each<readonly [string, readonly Item[], readonly string[]]>([
    ['another question', [{ linkId: 'pain', answer: [{ valueBoolean: true }] }], ['item[0] unknown-code']],
    [
      'the text of another side',
      [grade(value('pulses.femoral.grade.absent'), { text: 'Right femoral' })],
      ['item[0] sides-differ'],
    ],
    [
      'another system',
      [grade({ valueCoding: { system: 'urn:x', code: 'pulses.femoral.grade.absent' } })],
      ['item[0].answer[0] not-understood'],
    ],
    ['a numeral', [grade({ valueInteger: 2 })], ['item[0].answer[0] not-understood']],
    ['a word of its own', [grade({ valueString: 'weak' })], ['item[0].answer[0] not-understood']],
    ['two types', [grade({ valueString: 'absent', valueInteger: 0 })], ['item[0].answer[0] contradicts']],
    [
      'no, where the record has no place for it',
      [{ linkId: 'pulses.femoral.left.thrill', answer: [{ valueBoolean: false }] }],
      ['item[0].answer[0] not-kept'],
    ],
    [
      'a number without a unit',
      [{ linkId: 'pressures.brachial.left', answer: [{ valueDecimal: 120 }] }],
      ['item[0].answer[0] unit'],
    ],
    [
      'a day without an hour',
      [{ linkId: 'examinedAt', answer: [{ valueDate: '2026-05-01' }] }],
      ['item[0].answer[0] partial-time'],
    ],
    [
      'a question of a list outside of it',
      [{ linkId: 'context.access.kind', answer: [value('context.access.kind.graft')] }],
      ['item[0] not-understood'],
    ],
    [
      'two answers',
      [grade(value('pulses.femoral.grade.absent')), grade(value('pulses.femoral.grade.normal'))],
      ['item[0].answer[0] two-values', 'item[1].answer[0] two-values'],
    ],
    [
      'a modifier',
      [grade(value('pulses.femoral.grade.absent'), { modifierExtension: [{}] })],
      ['item[0] modifier'],
    ],
  ])('are told for %s', (_, items, told) => {
    expect(whys(answering(...items))).toEqual(told);
    expect(fromResponse(answering(...items)).examination).toEqual(emptyExamination());
  });

  it('say preliminary while the form is open, and are not read once it was given up', () => {
    const open = { ...answering(grade(value('pulses.femoral.grade.absent'))), status: 'in-progress' };
    expect(fromResponse(open).examination.status).toBe('preliminary');
    expect(whys({ ...open, status: 'stopped' })).toEqual([' status']);
    expect(whys({ ...open, status: undefined })).toEqual([' status']);
  });

  it('about another patient are not read', () => {
    const answers = {
      ...answering(grade(value('pulses.femoral.grade.absent'))),
      subject: { reference: 'Patient/2' },
    };
    const read = fromResponse(answers, { subject: 'Patient/1' });
    expect(read).toEqual({ examination: emptyExamination(), unread: [{ path: '', why: 'other-patient' }] });
  });
});

describe('any JSON read as answers', () => {
  it('never throws, and gives a record whatever it is', () => {
    const read = (input: unknown): void => {
      const { examination, unread } = fromResponse(input);
      expect(parseExamination(examination).ok).toBe(true);
      for (const one of unread) expect(one.why.length).toBeGreaterThan(0);
    };
    const links = fc.constantFrom(...BY_LINK.keys(), 'kept', '__proto__', '');
    const odd = fc.oneof(
      fc.jsonValue(),
      fc.constantFrom<unknown>('pulses.femoral.grade.absent', '\ud800', -0, [[]]),
    );
    const answer = fc.oneof(
      fc.dictionary(
        fc.constantFrom(
          'valueCoding',
          'valueString',
          'valueQuantity',
          'valueBoolean',
          'valueDateTime',
          'item',
        ),
        odd,
      ),
      odd,
    );
    const item = fc.letrec((tie) => ({
      item: fc.record({
        linkId: fc.oneof(links, odd),
        answer: fc.oneof(fc.array(answer, { maxLength: 3 }), odd),
        item: fc.oneof({ depthSize: 'small' }, fc.constant([]), odd, fc.array(tie('item'), { maxLength: 3 })),
      }),
    })).item;
    fc.assert(fc.property(fc.jsonValue(), read));
    fc.assert(
      fc.property(fc.array(item), (items) => read(answering(...(items as Item[])))),
      { numRuns: 200 },
    );
    expect(fromResponse({ resourceType: 'Bundle' }).unread).toEqual([{ path: '', why: 'no-response' }]);
  });

  it('reads on around what is nested deep, and takes twenty thousand answers', () => {
    let deep: Item = { linkId: 'x' };
    for (let i = 0; i < 50_000; i += 1) deep = { linkId: 'x', item: [deep] };
    const own = { linkId: 'scale', answer: [value('scale.words')] };
    const { examination, unread } = fromResponse(answering(deep, own));
    expect(examination).toEqual(emptyExamination('words'));
    expect(unread.map(({ why }) => why)).toEqual(['not-understood']);
    const many = {
      linkId: 'context.medicines',
      answer: Array.from({ length: 20_000 }, () => value('context.medicines.statin')),
    };
    expect(parseExamination(fromResponse(answering(many)).examination).ok).toBe(true);
  });
});
