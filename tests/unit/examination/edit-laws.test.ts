import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LISTENING_PLACES, PULSE_PLACES } from '../../../src/anatomy/index.js';
import {
  addMark,
  BRUIT_FIELDS,
  changeMark,
  EditError,
  emptyExamination,
  type Examination,
  formatExamination,
  LONGEST_TEXT,
  MARK_KINDS,
  parseExamination,
  parseExaminationText,
  PULSE_FIELDS,
  removeMarks,
  restNormal,
  setBruit,
  setFields,
  setPulse,
  skinMarks,
} from '../../../src/examination/index.js';
import { anyExamination, anyStep, bruitPatch, pulsePatch } from '../../tools/arbitraries.js';
import { place } from '../../tools/examinations.js';
import { runs } from '../../tools/runs.js';
import { LEAVES, recordWith } from '../../tools/record-fields.js';

/** What hands, forms and other programs may put in a field. */
const ODD: readonly unknown[] = [
  undefined,
  null,
  '',
  ' ',
  'nonsense',
  'x'.repeat(LONGEST_TEXT),
  'x'.repeat(LONGEST_TEXT + 1),
  '\u000b\ud800',
  true,
  false,
  0,
  -0,
  -1,
  0.5,
  5e-324,
  1e9,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  10n,
  Symbol('s'),
  () => 1,
  new Date(0),
  new Map(),
  [],
  [undefined],
  ['nonsense'],
  {},
  { future: 1 },
  { right: Number.NaN },
];
const odd = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...ODD) },
  { weight: 1, arbitrary: fc.anything({ withBigInt: true, withNullPrototype: true }) },
);

function isFrozen(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  return Object.isFrozen(value) && Object.values(value).every(isFrozen);
}

/**
 * What every edit holds to: it refuses by a RangeError, or what it gives is frozen, and is read again the same from its text and from a copy.
 * The record it was given is as it was.
 */
function holds(
  before: Examination,
  edit: (examination: Examination) => Examination,
): Examination | undefined {
  const text = JSON.stringify(before);
  let after: Examination;
  try {
    after = edit(before);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return undefined;
  } finally {
    expect(JSON.stringify(before)).toBe(text);
  }
  expect(isFrozen(after)).toBe(true);
  expect(parseExaminationText(formatExamination(after))).toEqual({ ok: true, value: after });
  expect(parseExamination(structuredClone(after))).toEqual({ ok: true, value: after });
  return after;
}

const TOP = LEAVES.filter(({ path }) => path[0] !== 'format');

describe('every field of the record', () => {
  it('is set by setFields, and reads as it was set', () => {
    for (const { path, value } of TOP) {
      const [name] = path as readonly [keyof Examination];
      const record = recordWith(path, value) as Examination;
      const after = holds(emptyExamination(), (e) => setFields(e, { [name]: record[name] }));
      expect(after?.[name], path.join('.')).toEqual(record[name]);
    }
  });

  it.each([...new Set(TOP.map(({ path }) => String(path[0])))])(
    'of %s refuses what the parser refuses, whatever stands there, and nothing else',
    (part) => {
      for (const { path } of TOP.filter((leaf) => leaf.path[0] === part))
        for (const value of ODD) {
          const record = recordWith(path, value) as Examination;
          const after = holds(emptyExamination(), (e) =>
            setFields(e, { [part]: record[part as keyof Examination] }),
          );
          const readable = parseExamination(record, { strict: true }).ok;
          if (!after) expect(readable, `${path.join('.')} ${String(value)}`).toBe(false);
        }
    },
  );

  it('takes its text away when that is empty', () => {
    const texts = TOP.filter(({ value }) => value === 'x' || value === '2026-05-01T10:30Z');
    expect(texts.length).toBeGreaterThan(40);
    for (const { path } of texts) {
      // Compulsory: the id of a mark, the time of a call. Without it they are refused.
      if (path.at(-1) === 'id' || /^(calls|amendments)\.0\.at$/.test(path.join('.'))) continue;
      const [name] = path as readonly [keyof Examination];
      const after = setFields(emptyExamination(), { [name]: (recordWith(path, '') as Examination)[name] });
      expect(JSON.stringify(after), path.join('.')).not.toContain('""');
    }
  });

  it('names itself in the error, with what was expected', () => {
    const leg = { left: { refill: Number.NaN } };
    const long = 'x'.repeat(LONGEST_TEXT + 1);
    const femoral = place('left femoral');
    const errors: [() => unknown, RegExp][] = [
      [
        () => setFields(emptyExamination(), { inspection: { leg } }),
        /^inspection\.leg\.left\.refill: found NaN/,
      ],
      [() => setFields(emptyExamination(), { examiner: long }), /^examiner: .*"at-most","value":2000/],
      [() => setPulse(emptyExamination(), femoral, { note: long }), /^pulses\.femoral\.left\.note: .*2000/],
      [
        () => setBruit(emptyExamination(), femoral, { bruit: 'loud' as never }),
        /^bruits\.femoral\.left\.bruit: found "loud", .*"systolic"/,
      ],
      [() => setFields(emptyExamination(), { scale: undefined }), /^scale: found nothing/],
    ];
    for (const [edit, message] of errors) {
      expect(edit).toThrow(message);
      expect(edit).toThrow(EditError);
    }
  });
});

describe('every edit', () => {
  const patchOf = (fields: object) =>
    fc.record(Object.fromEntries(Object.keys(fields).map((name) => [name, odd])), { requiredKeys: [] });

  it('of a finding holds to it, whatever is in the patch', () => {
    fc.assert(
      fc.property(
        anyExamination,
        fc.constantFrom(...PULSE_PLACES),
        fc.constantFrom(...LISTENING_PLACES),
        fc.oneof(patchOf(PULSE_FIELDS), pulsePatch),
        fc.oneof(patchOf(BRUIT_FIELDS), bruitPatch),
        (before, felt, heard, pulse, bruit) => {
          holds(before, (e) => setPulse(e, felt, pulse as never));
          holds(before, (e) => setBruit(e, heard, bruit as never));
        },
      ),
      { numRuns: runs(150) },
    );
  });

  it('of a mark holds to it, whatever it is made of', () => {
    const coordinate = fc.oneof(
      fc.double({ min: -50, max: 2000 }),
      fc.constantFrom(Number.NaN, Infinity, -0),
    );
    const points = fc.array(fc.tuple(coordinate, coordinate), { maxLength: 5 });
    const kind = fc.constantFrom(...MARK_KINDS, 'tattoo' as never);
    fc.assert(
      fc.property(anyExamination, kind, points, odd, (before, of, at, note) => {
        const mark = { kind: of, points: at, note: note as never };
        const added = holds(before, (e) => addMark(e, mark));
        const { id } = skinMarks(before).at(-1) ?? { id: 'm1' };
        holds(before, (e) => changeMark(e, id, { note: note as never }));
        holds(before, (e) => changeMark(e, id, { kind: of }));
        holds(before, (e) => changeMark(e, id, { points: at }));
        holds(before, (e) => changeMark(e, id, { id: 'stolen' } as never));
        holds(added ?? before, (e) => removeMarks(e, id));
      }),
      { numRuns: runs(150) },
    );
  });

  it('shares with the record before what it does not change', () => {
    fc.assert(
      fc.property(anyExamination, anyStep, (before, step) => {
        const after = holds(before, step)!;
        for (const name of Object.keys(after) as (keyof Examination)[])
          if (JSON.stringify(after[name]) === JSON.stringify(before[name]))
            expect(after[name]).toBe(before[name]);
      }),
      { numRuns: runs(100) },
    );
  });

  it('leaves what it was given free: only what is handed out is frozen', () => {
    const finding = { grade: 'normal' as const, note: 'x' };
    const history = { risks: ['stroke' as const] };
    const raw = { ...emptyExamination(), pulses: { femoral: { left: { grade: 'absent' as const } } } };
    const after = setFields(setPulse(raw, place('right femoral'), finding), { history });
    expect([finding, history, history.risks, raw, raw.pulses].some(Object.isFrozen)).toBe(false);
    history.risks.length = 0;
    expect(after.history?.risks).toEqual(['stroke']);
  });

  it('gives an examination to which nothing can be assigned', () => {
    const parsed = parseExamination(JSON.parse(JSON.stringify(restNormal(emptyExamination()))));
    const examination = (parsed as { value: Examination }).value;
    expect(isFrozen(examination)).toBe(true);
    expect(() => {
      // @ts-expect-error The type forbids it, and so does the object.
      examination.pulses!.femoral!.left!.grade = 'absent';
    }).toThrow(TypeError);
    expect(isFrozen(emptyExamination())).toBe(true);
  });
});
