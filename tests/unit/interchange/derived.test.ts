import { describe, expect, it } from 'vitest';
import { placeKey, PULSE_PLACES } from '../../../src/anatomy/index.js';
import { type Examination, GRADES, setFields } from '../../../src/examination/index.js';
import { fromBundle, toBundle } from '../../../src/fhir.js';
import { readByRule } from '../../../src/localisation/index.js';
import '../../../src/locale/de/register.js';
import { stageLeg } from '../../../src/staging/index.js';
import { chronic } from '../../../stories/limb-records.js';
import { recordFrom } from '../../tools/any-record.js';
import { examined } from '../../tools/examinations.js';

interface Observation {
  readonly id: string;
  readonly code: {
    readonly coding: readonly { readonly system: string; readonly code: string }[];
    readonly text: string;
  };
  readonly bodySite?: { readonly text: string };
  readonly valueString?: string;
  readonly text: { readonly div: string };
  readonly note: readonly { readonly text: string }[];
  readonly derivedFrom?: readonly { readonly reference: string }[];
}

/** What a bundle says to follow from the record, by the code of what it is. */
function derivedIn(examination: Examination, language = 'en'): readonly (readonly [string, Observation])[] {
  return toBundle(examination, { language }).entry.flatMap(({ resource }) => {
    const one = resource as unknown as Observation;
    const code = one.code?.coding.find(({ system }) => system === 'urn:pulse-map:derived')?.code;
    return code === undefined ? [] : [[code, one] as const];
  });
}
const valuesOf = (examination: Examination, code: RegExp, language?: string): readonly string[] =>
  derivedIn(examination, language)
    .filter(([name]) => code.test(name))
    .map(([name, { bodySite, valueString }]) => `${name} ${bodySite?.text ?? ''}: ${valueString}`);

const withoutPopliteal = examined({ 'left femoral': 'normal', 'left popliteal': 'absent' });

describe('the localisation in a bundle', () => {
  it('is what the bedside rule says of each limb, with its side, from the pulses', () => {
    expect(valuesOf(withoutPopliteal, /^reading/)).toEqual([
      'reading.rule left leg: Occlusion between left femoral and left popliteal',
    ]);
    const [[, one] = []] = derivedIn(withoutPopliteal).filter(([code]) => code === 'reading.rule');
    expect(one?.derivedFrom).toHaveLength(2);
    const bundle = JSON.stringify(toBundle(withoutPopliteal).entry.slice(0, 3));
    for (const { reference } of one?.derivedFrom ?? []) expect(bundle).toContain(reference);
  });

  it('says in German what it says in English', () => {
    expect(valuesOf(withoutPopliteal, /^reading/, 'de')).toEqual([
      expect.stringMatching(/^reading\.rule linkes Bein: .*Femoralis links.*Poplitea links/),
    ]);
  });

  it('is there for every limb in which the rule finds something, and no other', () => {
    for (let seed = 1; seed <= 12; seed += 1) {
      const record = recordFrom(seed, 0.4);
      const limbs = Object.values(readByRule(record))
        .filter(({ outcome }) => outcome === 'lesion')
        .map(({ limb: { side, kind } }) => `${side} ${kind === 'head' ? 'head and neck' : kind}`);
      const told = derivedIn(record)
        .filter(([code]) => code === 'reading.rule')
        .flatMap(([, { bodySite }]) => bodySite?.text ?? []);
      // One sentence without a limb where every pulse is equally poor.
      if (told.length || limbs.length < 2) expect(told.sort()).toEqual(limbs.sort());
    }
  });

  it('is none where no pulse was graded, and never says normal without saying what that does not exclude', () => {
    expect(valuesOf(setFields(withoutPopliteal, { pulses: undefined, examiner: 'x' }), /^reading/)).toEqual(
      [],
    );
    const all = examined(
      Object.fromEntries(PULSE_PLACES.map((place) => [placeKey(place), 'normal'])) as never,
    );
    expect(valuesOf(all, /^reading/)).toEqual([expect.stringMatching(/not exclude/)]);
    const some = examined({ 'left femoral': 'normal', 'left popliteal': 'normal' });
    expect(valuesOf(some, /^reading/)).toEqual([expect.stringMatching(/sites? without a grade/)]);
  });
});

describe('the parts of WIfI in a bundle', () => {
  it('stand for a limb that the scheme is meant for, each as derived', () => {
    expect(
      valuesOf(chronic, /\.(wound|ischaemia|infection|wifi)$/).filter((one) => one.includes('right')),
    ).toEqual([
      'stage.leg.wound right leg: 2, deeper ulcer, or gangrene of digits',
      'stage.leg.ischaemia right leg: 2, moderate',
      'stage.leg.infection right leg: open: 1 or 2: mild or moderate',
      'stage.leg.wifi right leg: 4, high risk of amputation',
    ]);
  });

  it('are those of the staging and say nothing where that may be anything or does not apply', () => {
    for (let seed = 1; seed <= 8; seed += 1) {
      const record = recordFrom(seed, 0.5);
      const derived = derivedIn(record);
      for (const side of ['right', 'left'] as const) {
        const { applies, wound, ischaemia, infection, stage } = stageLeg(record, side).wifi;
        const parts = { wound, ischaemia, infection, wifi: stage };
        const expected = Object.entries(parts).flatMap(([name, { candidates }]) =>
          applies && candidates.length > 0 && candidates.length < 4 ? [`stage.leg.${name}`] : [],
        );
        const told = derived
          .filter(
            ([code, { bodySite }]) =>
              /\.(wound|ischaemia|infection|wifi)$/.test(code) && bodySite?.text === `${side} leg`,
          )
          .map(([code]) => code);
        expect(told.sort()).toEqual(expected.sort());
      }
    }
  });
});

describe('what follows from a record', () => {
  it('is named as computed in narrative and note, with its side, and never a diagnosis', () => {
    for (const [, one] of [...derivedIn(chronic), ...derivedIn(withoutPopliteal)]) {
      expect(one.note.map(({ text }) => text)).toEqual([
        'Derived by software from the recorded findings; to be judged by a licensed clinician.',
      ]);
      expect(one.text.div).toContain('Derived by software');
      expect(one.text.div).not.toMatch(/diagnos/i);
    }
  });

  it('is never read as a finding: without it the same record comes back, and from it alone none', () => {
    for (let seed = 1; seed <= 5; seed += 1) {
      const record = recordFrom(seed, 0.3);
      const whole = toBundle(record);
      expect(fromBundle(toBundle(record, { derived: false })).examination).toEqual(
        fromBundle(whole).examination,
      );
      const codes = (resource: unknown): string => JSON.stringify((resource as Observation).code);
      const entry = whole.entry.filter(({ resource }) => codes(resource).includes('urn:pulse-map:derived'));
      const { examination } = fromBundle({ ...whole, entry });
      expect(Object.keys(examination).sort()).toEqual(['format', 'scale']);
    }
  });

  it('is told when it was changed', () => {
    const bundle = JSON.stringify(toBundle(withoutPopliteal)).replace(
      '"Occlusion between left',
      '"Occlusion between right',
    );
    expect(fromBundle(JSON.parse(bundle)).unread.map(({ why }) => why)).toEqual(['derived-differs']);
  });

  it('knows every strength of a pulse', () => {
    for (const grade of GRADES)
      expect(fromBundle(toBundle(examined({ 'left femoral': grade }))).unread).toEqual([]);
  });
});
