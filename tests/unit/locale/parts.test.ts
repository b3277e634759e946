import { describe, expect, it } from 'vitest';
import * as fc from 'fast-check';
import {
  ACUTE_CLASSES,
  type Bedside,
  type BedsideTestId,
  BARBEAU_CLASSES,
  emptyExamination,
  type Examination,
  GRADES,
  OUTLET_SYMPTOMS,
  REASONS,
  STOP_REASONS,
} from '../../../src/examination/index.js';
import { BEDSIDE_TEST_IDS, BEDSIDE_TESTS, readBedside } from '../../../src/bedside/index.js';
import { readPressures } from '../../../src/pressures/index.js';
import { MISSING_CODES, NOTE_CODES, stageArm, stageLeg } from '../../../src/staging/index.js';
import { FLAG_CODES, FLAGS, QUESTION_CODES, redFlags } from '../../../src/triage/index.js';
import { GROUNDS } from '../../tools/ground-samples.js';
import { en, messagesFor, registerLanguage } from '../../../src/locale/index.js';
import { enParts, partMessagesFor } from '../../../src/locale/parts.js';
import { bedsideLines, summaryStatements } from '../../../src/statements/index.js';

const { bedside, flags, pressures, staging, whole } = enParts;

/** A sentence a person can read: not empty, nothing left unfilled, no code shown. */
function readable(text: string): void {
  expect(text.trim()).not.toBe('');
  expect(text).not.toMatch(/undefined|NaN|null|\[object|Infinity/);
}

const seconds = fc.option(fc.integer({ min: 0, max: 300 }), { nil: undefined });
const flag = fc.option(fc.constant(true as const), { nil: undefined });
const yesNo = fc.option(fc.boolean(), { nil: undefined });
const oneOf = <T>(words: readonly T[]) => fc.option(fc.constantFrom(...words), { nil: undefined });
const base = { notDone: fc.option(fc.constantFrom(...REASONS), { nil: undefined, freq: 9 }) };
const position = {
  before: oneOf(GRADES),
  during: oneOf(GRADES),
  symptoms: fc.option(fc.uniqueArray(fc.constantFrom(...OUTLET_SYMPTOMS)), { nil: undefined }),
  seconds,
};
const release = fc.option(fc.record({ seconds, returned: yesNo }), { nil: undefined });
const RESULTS: Record<BedsideTestId, fc.Arbitrary<unknown>> = {
  elevation: fc.record({
    ...base,
    pallor: yesNo,
    angle: fc.option(fc.integer({ min: 0, max: 90 }), { nil: undefined }),
    seconds,
  }),
  'colour-return': fc.record({ ...base, seconds, returned: yesNo }),
  'dependent-rubor': fc.record({ ...base, rubor: yesNo, seconds }),
  'venous-filling': fc.record({ ...base, seconds, filled: yesNo, incompetentVeins: flag }),
  'hand-arch': fc.record({
    ...base,
    radial: release,
    ulnar: release,
    barbeau: oneOf(BARBEAU_CLASSES),
    barbeauReverse: oneOf(BARBEAU_CLASSES),
  }),
  'cold-provocation': fc.record({ ...base, white: seconds, blue: seconds, red: seconds, rewarm: seconds }),
  scalene: fc.record({
    ...base,
    toward: fc.option(fc.record(position), { nil: undefined }),
    away: fc.option(fc.record(position), { nil: undefined }),
  }),
  hyperabduction: fc.record({ ...base, ...position }),
  costoclavicular: fc.record({ ...base, ...position }),
  'arm-stress': fc.record({
    ...base,
    seconds,
    stopped: oneOf(STOP_REASONS),
    felt: fc.option(fc.record({ tingling: seconds, fatigue: seconds }), { nil: undefined }),
  }),
};

describe('the words of the bedside tests', () => {
  it.each(BEDSIDE_TEST_IDS)('%s: every reading of every result is a sentence that names its limit', (id) => {
    fc.assert(
      fc.property(RESULTS[id], (result) => {
        const part = { [id]: { left: result } } as Bedside;
        const reading = readBedside(id, 'left', part);
        if (!reading) throw new Error('no reading');
        const said = bedside.read(id, reading);
        readable(said);
        if (['severe', 'abnormal'].includes(reading.verdict) && reading.code.includes('prolonged')) {
          expect(said).toContain(String(reading.limit));
        }
        for (const note of reading.notes ?? []) readable(bedside.notes[note]);
        for (const line of bedsideLines(part)) readable(bedside.line(line));
      }),
    );
  });

  it.each(BEDSIDE_TEST_IDS)(
    '%s is named with the person’s name the trade uses, and told how it is done',
    (id) => {
      const { eponym, limits, falsePositives = [] } = BEDSIDE_TESTS[id];
      const { name, purpose, steps, caution } = bedside.how[id];
      for (const text of [name, purpose, caution, ...steps]) readable(text);
      expect(bedside.named(id, eponym)).toBe(eponym ? `${name} (${eponym})` : name);
      for (const { value } of limits?.options ?? [])
        readable(bedside.limitOption(value, limits?.unit ?? 's'));
      for (const rate of falsePositives) readable(bedside.rate(rate));
    },
  );

  it('a reason for not doing a test is said in words', () => {
    const reading = BEDSIDE_TESTS.elevation.evaluate({ notDone: 'line-in-place' });
    expect(bedside.read('elevation', reading)).toBe('Not done: line in place.');
  });
});

describe('the words of stages and flags', () => {
  it('has words for every ground, gap and note', () => {
    for (const ground of GROUNDS) readable(flags.ground(ground));
    for (const code of QUESTION_CODES) readable(flags.questions[code]);
    for (const code of MISSING_CODES) readable(flags.missing[code]);
    for (const code of NOTE_CODES) readable(staging.notes[code]);
  });

  it('has a heading and an action that defers to a local pathway for every flag', () => {
    for (const code of FLAG_CODES) {
      const shown = {
        code,
        urgency: 'now',
        limb: { kind: 'leg', side: 'right' },
        because: [],
        whom: FLAGS[code],
        ask: [],
      } as const;
      readable(flags.heading(shown));
      expect(flags.action(shown)).toMatch(/pathway/);
    }
  });

  it('claims no diagnosis: what is not certain says that it may be', () => {
    const threatened = redFlags({
      ...emptyExamination(),
      onset: 'acute',
      pulses: { femoral: { right: { grade: 'absent' } } },
      inspection: { leg: { right: { movement: 'weak' } } },
    })[0];
    expect(threatened && flags.heading(threatened)).toBe(
      'Acute limb ischaemia likely, limb may be threatened (Rutherford IIb): right leg',
    );
    expect(threatened && flags.because(threatened)).toBe(
      'Acute onset, absent: right femoral pulse and power weak.',
    );
    expect(flags.caution).toMatch(/not a diagnosis/);
  });

  it('says every derived and overruled stage', () => {
    const examination: Examination = {
      ...emptyExamination(),
      onset: 'acute',
      history: { leg: { left: { symptom: 'rest-pain', hours: 5 } } },
      inspection: { leg: { left: { sensation: 'digits' } } },
      staging: { leg: { left: { acute: { stage: 'IIb', derived: 'IIa', why: 'worsening' } } } },
    };
    const { acute } = stageLeg(examination, 'left');
    for (const ground of acute.grounds) readable(flags.ground(ground));
    expect(staging.said(examination.staging ?? {})).toEqual([
      'left leg, Acute limb ischaemia class (Rutherford): set by the clinician to IIb, immediately threatened (derived was IIa), because worsening',
    ]);
    for (const stage of ACUTE_CLASSES) readable(staging.stage('acute', stage));
    expect(stageArm(examination, 'left').stage).toBeUndefined();
  });
});

describe('the words of pressures', () => {
  it('says an index with the sum it came from', () => {
    const reading = readPressures({ brachial: { right: 142, left: 138 }, 'posterior-tibial': { left: 82 } });
    const [index] = reading.indices;
    expect(index && pressures.index(index)).toBe('0.58, abnormal');
    expect(index && pressures.sum(index, 'mmHg')).toBe('82 ÷ 142');
    expect(index && pressures.sum(index, 'kPa')).toBe('10.9 ÷ 18.9');
  });

  it('says every segment, arm and exercise finding readably', () => {
    const reading = readPressures({
      brachial: { right: 150, left: 120 },
      radial: { right: 100 },
      ulnar: { right: 140 },
      'high-thigh': { left: 120, right: 180 },
      calf: { left: 70 },
      'posterior-tibial': { left: 60 },
      afterExercise: { 'posterior-tibial': { left: 20 } },
    });
    const said = [
      ...reading.segments.map((f) => pressures.segment(f, 'mmHg')),
      ...reading.arms.map((f) => pressures.arm(f, 'mmHg')),
      ...reading.exercise.map((e) => pressures.exercise(e, 'mmHg')),
    ];
    expect(said.length).toBeGreaterThan(4);
    said.forEach(readable);
    expect(said.join(' ')).toContain('suggests disease at the femoro-popliteal level');
  });
});

describe('the summary', () => {
  it('leaves out parts with nothing in them, and is empty for an empty record', () => {
    expect(whole.summary(summaryStatements(emptyExamination()))).toEqual([]);
    const parts = whole.summary(
      summaryStatements({ ...emptyExamination(), pressures: { toe: { left: 44 } } }),
    );
    expect(parts).toEqual([{ id: 'pressures', heading: 'Pressures', lines: ['Left great toe 44 mmHg.'] }]);
  });
});

describe('languages', () => {
  it('cover map and parts by one registration', () => {
    registerLanguage('xx', { ...en, ...enParts, whole: { ...whole, name: 'Untersuchung' } });
    expect(partMessagesFor('xx-YY').whole.name).toBe('Untersuchung');
    expect(messagesFor('xx-YY').map).toBe(en.map);
  });

  it('are English where a language leaves a part out, and where none is known', () => {
    registerLanguage('yy', { ...en, whole: { ...whole, name: 'Examen' } });
    expect(partMessagesFor('yy').whole.name).toBe('Examen');
    expect(partMessagesFor('yy').history).toBe(enParts.history);
    expect(partMessagesFor('zz')).toBe(enParts);
  });
});
