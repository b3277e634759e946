import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LIMBS, type Place, PLACES, PULSE_PLACES } from '../../../src/anatomy/index.js';
import {
  addMark,
  bruitAt,
  changeMark,
  clearLimb,
  clearPlace,
  copyFromOtherSide,
  emptyExamination,
  type Examination,
  fieldAt,
  fillFromOtherSide,
  FORMAT,
  formatExamination,
  isBruitLocked,
  isEmptyRecord,
  isHeard,
  isLocked,
  isPulseLocked,
  isStated,
  lockedPaths,
  moveMark,
  parseExamination,
  parseExaminationText,
  parseWith,
  patchAt,
  pressuresSchema,
  pulseAt,
  putBack,
  record,
  type RecordPath,
  redo,
  removeMarks,
  restNormal,
  setBruit,
  setFields,
  setPulse,
  startHistory,
  undo,
  unknownFields,
  unstatedPlaces,
} from '../../../src/examination/index.js';
import { anyExamination, anyStep, bruitPatch, pulsePatch } from '../../tools/arbitraries.js';
import { place } from '../../tools/examinations.js';
import { LEAVES, recordWith } from '../../tools/record-fields.js';

const TOMORROW = 'word-of-tomorrow';

function read(input: unknown): Examination {
  const parsed = parseExamination(input);
  if (!parsed.ok) throw new Error(`expected a record, found ${JSON.stringify(parsed.faults)}`);
  return parsed.value;
}

/** The record as its next reader gets it. */
const written = (examination: Examination): unknown => JSON.parse(formatExamination(examination));

describe('minor versions', () => {
  it.each(['pulse-map/1', 'pulse-map/1.0', FORMAT, 'pulse-map/1.7', 'pulse-map/1.99'])(
    '%s is read, and goes out untouched as it came',
    (format) => {
      const text = JSON.stringify({ format, scale: 'words', later: { a: [1] }, onset: 'acute' });
      const parsed = parseExaminationText(text);
      expect(parsed.ok && formatExamination(parsed.value)).toBe(text);
    },
  );

  it.each(['pulse-map/1.', 'pulse-map/1.01', 'pulse-map/1.7.2', 'pulse-map/1.x', 'pulse-map/01'])(
    '%s is no format',
    (format) => {
      expect(parseExamination({ format, scale: '0-3' })).toMatchObject({
        ok: false,
        faults: [{ code: 'not-allowed', path: ['format'] }],
      });
    },
  );

  it('a later major version is not read, whatever its minor', () => {
    for (const format of ['pulse-map/2', 'pulse-map/2.3', 'pulse-map/10'])
      expect(parseExamination({ format })).toMatchObject({ ok: false, faults: [{ code: 'later-version' }] });
  });

  it('an edit writes the minor version of this library, but never an earlier one than was there', () => {
    const edited = (format: string) =>
      setPulse(read({ format, scale: '0-3' }), place('left femoral'), { grade: 'normal' }).format;
    expect(edited('pulse-map/1')).toBe(FORMAT);
    expect(edited(FORMAT)).toBe(FORMAT);
    expect(edited('pulse-map/1.99')).toBe('pulse-map/1.99');
  });
});

/** A record with a field of a later version in every kind of object that is no entry of a list. */
const LATER = {
  format: 'pulse-map/1.7',
  scale: '0-3',
  device: { make: 'x', readings: [1, 2] },
  context: { diabetes: true, frailty: 3, injury: { left: 'knee', note: 'n' } },
  pulses: {
    'abdominal-aorta': { midline: { grade: 'normal', width: 25 } },
    femoral: { left: { grade: 'normal', rhythm: 'regular' }, right: { future: true }, both: null },
    profunda: { left: { grade: 'absent' } },
  },
  bruits: { femoral: { left: { bruit: 'none', pitch: 'high' } }, profunda: {} },
  delays: { radioRadial: 'none', brachial: 1 },
  history: { leg: { left: { symptom: 'none', since: '2020' } }, told: 'x' },
  inspection: { leg: { left: { colour: 'pale', hue: 4 } } },
  bedside: { elevation: { left: { pallor: true, watched: 2 } }, dance: {} },
  pressures: { toe: { left: 44, cuff: 's' }, room: 21 },
  staging: { leg: { left: { fontaine: { stage: 'IV' }, glass: 2 } } },
};
const FIELDS: readonly RecordPath[] = [
  ['device'],
  ['context', 'frailty'],
  ['context', 'injury', 'note'],
  ['pulses', 'abdominal-aorta', 'midline', 'width'],
  ['pulses', 'femoral', 'left', 'rhythm'],
  ['pulses', 'femoral', 'right', 'future'],
  ['pulses', 'femoral', 'both'],
  ['pulses', 'profunda'],
  ['bruits', 'femoral', 'left', 'pitch'],
  ['bruits', 'profunda'],
  ['delays', 'brachial'],
  ['history', 'leg', 'left', 'since'],
  ['history', 'told'],
  ['inspection', 'leg', 'left', 'hue'],
  ['bedside', 'elevation', 'left', 'watched'],
  ['bedside', 'dance'],
  ['pressures', 'toe', 'cuff'],
  ['pressures', 'room'],
  ['staging', 'leg', 'left', 'glass'],
];

/** Any edit of the library. */
const anyEdit: fc.Arbitrary<(examination: Examination) => Examination> = fc.oneof(
  anyStep,
  fc.constantFrom(...PLACES).map((at) => (e: Examination) => clearPlace(e, at)),
  fc.constantFrom(...PLACES).map((at) => (e: Examination) => copyFromOtherSide(e, at)),
  fc.constantFrom(...LIMBS).map((limb) => (e: Examination) => clearLimb(e, limb)),
  fc.constantFrom(...LIMBS).map((limb) => (e: Examination) => fillFromOtherSide(e, limb)),
  fc.constant((e: Examination) => restNormal(e)),
  fc
    .constantFrom('pulses', 'bruits', 'history', 'inspection', 'bedside', 'pressures', 'staging', 'context')
    .map((part) => (e: Examination) => setFields(e, { [part]: undefined })),
  fc.constant((e: Examination) => setFields(e, { inspection: { leg: { left: { colour: 'blue' } } } })),
  fc.constant((e: Examination) =>
    setFields(e, { pressures: patchAt(e.pressures, ['toe', 'left'], undefined) }),
  ),
  fc.constant((e: Examination) => moveMark(e, 'm1', 3, 3)),
  fc.constant((e: Examination) => changeMark(e, 'm1', { note: 'n' })),
  fc.constant((e: Examination) => removeMarks(e, 'm1')),
);
const edits = fc.array(anyEdit, { maxLength: 12 });

describe('fields of a later version', () => {
  it('are counted, by their paths', () => {
    expect(unknownFields(read(LATER))).toEqual(expect.arrayContaining([...FIELDS]));
    expect(unknownFields(read(LATER))).toHaveLength(FIELDS.length);
    expect(unknownFields(emptyExamination())).toEqual([]);
  });

  it('stay where they are through parse, every edit, undo and redo, copies and text', () => {
    const own = (examination: Examination) => FIELDS.map((path) => fieldAt(written(examination), path));
    const before = own(read(LATER));
    fc.assert(
      fc.property(edits, (steps) => {
        let history = startHistory(read(LATER));
        for (const step of steps) history = record(history, step(history.present));
        expect(own(history.present)).toEqual(before);
        expect(own(read(structuredClone(history.present)))).toEqual(before);
        expect(own(redo(undo(history)).present)).toEqual(before);
        expect(unknownFields(read(written(history.present)))).toHaveLength(FIELDS.length);
      }),
      { numRuns: 60 },
    );
  });

  it('within an entry that is taken away go with it, and stay while it is changed', () => {
    const fontaine = { stage: 'IV', by: 'x' };
    const before = read({ ...emptyExamination(), staging: { leg: { left: { fontaine } } } });
    const stage = (next: unknown) => setFields(before, { staging: next as Examination['staging'] }).staging;
    expect(stage({ leg: { left: { fontaine: { stage: 'I' } } } })).toEqual({
      leg: { left: { fontaine: { stage: 'I', by: 'x' } } },
    });
    expect(stage(undefined)).toBe(undefined);
  });

  it('never come from the other side', () => {
    const after = copyFromOtherSide(read(LATER), place('right femoral'));
    expect(pulseAt(after, place('right femoral'))).toEqual({ grade: 'normal', future: true });
  });

  it('make a record that is not empty, and are refused by a strict reader', () => {
    expect(isEmptyRecord(read({ format: 'pulse-map/1.7', scale: '0-3', device: 1 }))).toBe(false);
    const parsed = parseExamination(LATER, { strict: true });
    expect(parsed.ok ? [] : parsed.faults.map(({ code, path }) => [code, path])).toEqual(
      expect.arrayContaining(FIELDS.map((path) => ['unknown-field', path])),
    );
  });
});

const WORDS = LEAVES.filter(({ words }) => words.length);

describe('a word of a later version', () => {
  it('can stand in more than 200 fields of the record', () => {
    expect(WORDS.length).toBeGreaterThan(200);
  });

  it.each(WORDS.map(({ path, value }) => [path.join('.'), path, value] as const))(
    'at %s is carried, goes out at its place, and locks it',
    (_, path, known) => {
      const input = recordWith(path, TOMORROW);
      const examination = read(input);
      expect(written(examination)).toEqual(input);
      const { carried, ...typed } = examination;
      expect(carried).toHaveLength(1);
      expect(JSON.stringify(typed)).not.toContain(TOMORROW);
      // An empty list would say that it was asked, and none applies.
      expect(JSON.stringify(typed)).not.toContain('[]');
      expect(isLocked(examination, path)).toBe(true);
      expect(lockedPaths(examination, path.slice(0, 1))).toHaveLength(1);
      expect(isEmptyRecord(examination)).toBe(false);
      // A host that stores the object as it is loses nothing either.
      expect(read(structuredClone(examination))).toEqual(examination);
      expect(read(JSON.parse(JSON.stringify(examination)))).toEqual(examination);
      expect(read(written(examination))).toEqual(examination);
      expect(parseExamination(input, { strict: true })).toMatchObject({ ok: false, faults: [{ path }] });
      // Nothing is written in its place.
      const [field] = path as readonly [keyof Examination];
      const patch = fieldAt(recordWith(path, known), [field]);
      if (typeof path.at(-1) !== 'number' && !path.includes(0))
        expect(setFields(examination, { [field]: patch })).toBe(examination);
    },
  );

  it('comes back to its place for a reader that knows it', () => {
    const form = { ...emptyExamination(), carried: [{ path: ['onset'], value: 'acute' }] };
    expect(read(form)).toEqual({ ...emptyExamination(), onset: 'acute' });
  });

  it('of the scale is carried, and grades are shown in words', () => {
    const examination = read({ format: 'pulse-map/1.7', scale: '0-5' });
    expect(examination.scale).toBe('words');
    expect(written(examination)).toEqual({ format: 'pulse-map/1.7', scale: '0-5' });
    expect(setFields(examination, { scale: '0-3' })).toBe(examination);
  });

  it.each([
    ['where something stands', [{ path: ['onset'], value: 'x' }], { onset: 'acute' }, 'conflict'],
    ['in a text', [{ path: ['examiner', 'name'], value: 'x' }], { examiner: 'A' }, 'conflict'],
    ['nowhere', [{ path: [], value: 'x' }], {}, 'wrong-type'],
    ['without a value', [{ path: ['onset'] }], {}, 'missing'],
    ['as no list', {}, {}, 'wrong-type'],
  ])('carried %s makes a record that is refused', (_, carried, fields, code) => {
    expect(parseExamination({ ...emptyExamination(), ...fields, carried })).toMatchObject({
      ok: false,
      faults: [{ code }],
    });
  });

  it('in one mark takes that mark out of the list only, and it comes back between the others', () => {
    const marks = ['scar', 'tattoo', 'cold'].map((kind, i) => ({
      id: `m${i + 1}`,
      kind,
      points: [
        [700, 1100],
        [710, 1110],
      ],
    }));
    const examination = read({ format: 'pulse-map/1.7', scale: '0-3', marks });
    expect(examination.marks?.map(({ kind }) => kind)).toEqual(['scar', 'cold']);
    expect(fieldAt(written(examination), ['marks'])).toEqual(marks);
    const kinds = (e: Examination) => (written(e) as { marks: { kind: string }[] }).marks.map((m) => m.kind);
    expect(kinds(removeMarks(examination, 'm1', 'm3'))).toEqual(['tattoo']);
    const more = addMark(removeMarks(examination, 'm3'), { kind: 'scar', points: marks[0]!.points as never });
    expect(kinds(more)).toEqual(['scar', 'tattoo', 'scar']);
    expect(new Set((written(more) as { marks: { id: string }[] }).marks.map(({ id }) => id)).size).toBe(3);
  });

  it('keeps every one of several in one list in its order', () => {
    const risks = ['dragon-bite', 'stroke', 'moonlight', 'hypertension', 'tides'];
    const examination = read({ format: 'pulse-map/1.7', scale: '0-3', history: { risks } });
    expect(examination.history?.risks).toEqual(['stroke', 'hypertension']);
    expect(fieldAt(written(examination), ['history', 'risks'])).toEqual(risks);
  });

  it('never breaks a rule that looks at it, and hides no other fault', () => {
    const leg = { ulcer: TOMORROW, ulcerPlace: 'heel', temperature: 'cool', temperatureLevel: 'knee' };
    const examination = read({ format: 'pulse-map/1.7', scale: '0-3', inspection: { leg: { left: leg } } });
    expect(examination.inspection?.leg?.left).toEqual({
      ulcerPlace: 'heel',
      temperature: 'cool',
      temperatureLevel: 'knee',
    });
    // The rules of the rest hold on.
    const warm = { ...leg, temperature: 'warm' };
    const parsed = parseExamination({
      format: 'pulse-map/1.7',
      scale: '0-3',
      inspection: { leg: { left: warm } },
    });
    expect(parsed).toMatchObject({ ok: false, faults: [{ expected: { code: 'level-only-where-cool' } }] });
  });

  it('in a part is carried with its path in the part', () => {
    const input = { brachial: { right: 120, left: TOMORROW } };
    const parsed = parseWith(pressuresSchema, input);
    expect(parsed).toEqual({
      ok: true,
      value: { brachial: { right: 120 } },
      carried: [{ path: ['brachial', 'left'], value: TOMORROW }],
    });
    expect(parsed.ok && putBack(parsed.value as never, parsed.carried)).toEqual(input);
  });

  it('of a wrong kind of value is still a fault', () => {
    for (const value of [7, true, {}, [], null, ''])
      expect(parseExamination(recordWith(['onset'], value)).ok).toBe(false);
    // A number as text is no word.
    expect(parseExamination(recordWith(['pressures', 'toe', 'left'], '80')).ok).toBe(false);
  });
});

describe('many words of later versions', () => {
  const withWords = (count: number) => ({
    ...emptyExamination(),
    history: { risks: Array.from({ length: count }, (_, i) => (i === 3 ? 'stroke' : `later-${i}`)) },
  });

  it('are put back each at its place', () => {
    const parsed = parseExamination(withWords(60));
    expect(parsed.ok && JSON.parse(formatExamination(parsed.value))).toEqual(withWords(60));
  });

  it('keep nobody waiting: twelve thousand are read in a moment', () => {
    const input = withWords(12_000);
    const start = process.cpuUsage();
    expect(parseExamination(input).ok).toBe(true);
    // In processor time, which no other work on the machine makes longer; four thousand took two seconds.
    expect(process.cpuUsage(start).user).toBeLessThan(6_000_000);
  });
});

describe('a locked place', () => {
  const places = fc.constantFrom(...PULSE_PLACES);
  const lockedAt = (base: Examination, at: Place): Examination =>
    read({
      ...base,
      pulses: {
        ...base.pulses,
        [at.site]: { ...base.pulses?.[at.site as 'femoral'], [at.side]: { grade: 'thready', thrill: true } },
      },
    });

  it('is stated, is never counted as not examined, and no edit changes it', () => {
    fc.assert(
      fc.property(anyExamination, places, edits, pulsePatch, (base, at, steps, patch) => {
        const before = lockedAt(base, at);
        expect(isPulseLocked(before, at)).toBe(true);
        expect(unstatedPlaces(before)).not.toContainEqual(at);
        expect(setPulse(before, at, patch)).toBe(before);
        const removing = steps.reduce((e, step) => step(e), before);
        const path = ['pulses', at.site, at.side, 'grade'];
        expect(fieldAt(written(removing), path)).toBe('thready');
        expect(isPulseLocked(read(written(removing)), at)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('is not copied to the other side in part', () => {
    const before = lockedAt(emptyExamination(), place('right femoral'));
    expect(copyFromOtherSide(before, place('left femoral'))).toBe(before);
    expect(fillFromOtherSide(before, { side: 'left', kind: 'leg' })).toBe(before);
  });

  it('of the ear is locked for the ear alone', () => {
    const at = place('left femoral');
    const before = read({
      ...emptyExamination(),
      bruits: { femoral: { left: { bruit: 'musical' } } },
    });
    expect([isBruitLocked(before, at), isPulseLocked(before, at)]).toEqual([true, false]);
    expect(isHeard(bruitAt(before, at))).toBe(false);
    expect(setPulse(before, at, { grade: 'normal' })).not.toBe(before);
    fc.assert(fc.property(bruitPatch, (patch) => setBruit(before, at, patch) === before));
    expect(isStated(pulseAt(restNormal(before), at))).toBe(true);
  });
});
