import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LIMB_KINDS, PULSE_PLACES } from '../../../src/anatomy/index.js';
import { examine } from '../../../src/flow/index.js';
import {
  examinationOf,
  findingAt,
  findsAnything,
  LESSON_PARTS,
  lessonJsonSchema,
  lessonOf,
  type Lesson,
  type LessonInput,
  parseLesson,
  recordOf,
  STEP_IDS,
  stepsOf,
  textIn,
} from '../../../src/lesson/index.js';
import { readExamination } from '../../../src/localisation/index.js';
import { anyPatient } from '../flow/patients.js';

const bare: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'invented',
  title: { en: 'Title', de: 'Titel' },
  story: { en: 'Story', de: 'Geschichte' },
  patient: { lesions: [{ piece: 'left superficial-femoral', extent: 'whole' }] },
  answer: { lesions: [], text: { en: 'Answer', de: 'Antwort' } },
};

const ids = (lesson: Lesson): string[] => stepsOf(lesson).map(({ id }) => id);

/** Any lesson about a simulated patient, with some of its steps. */
const anyLesson: fc.Arbitrary<Lesson> = fc
  .record({
    patient: anyPatient,
    limbs: fc.subarray([...LIMB_KINDS], { minLength: 1 }),
    without: fc.subarray([...STEP_IDS], { maxLength: 6 }),
  })
  .map((some) => lessonOf({ ...bare, ...some }));

describe('the steps of a lesson', () => {
  it('follow the sequence of the examination', () => {
    const all = ids(lessonOf(bare));
    const at = (id: string): number => all.indexOf(id);
    expect(all[0]).toBe('history');
    const order = [
      'history',
      'inspection',
      'test elevation',
      'pulse right superficial-temporal',
      'pulse left dorsalis-pedis',
      'delays',
      'listen carotid',
      'listen popliteal',
      'test colour-return',
      'test hand-arch',
      'pressures',
      'conclusion',
    ];
    expect(order.map(at)).toEqual(order.map(at).sort((a, b) => a - b));
    expect(order.map(at)).not.toContain(-1);
    expect(all.filter((id) => id.startsWith('pulse ')).length).toBe(PULSE_PLACES.length);
    expect(new Set(all).size).toBe(all.length);
  });

  it('are those of the limbs examined, without what the author leaves out', () => {
    const legs = ids(lessonOf({ ...bare, limbs: ['leg'], without: ['delays'] }));
    expect(legs.join()).not.toMatch(/radial|carotid|hand-arch|delays/);
    expect(legs).toContain('pulse midline abdominal-aorta');
    expect(legs).toContain('listen renal');
  });

  it('have tests in a position of the arm only where such a test was done', () => {
    expect(ids(lessonOf(bare))).not.toContain('test hyperabduction');
    const outlet = { outlet: { right: { hyperabduction: 90 } } };
    expect(ids(lessonOf({ ...bare, patient: outlet }))).toContain('test hyperabduction');
  });

  it('carry what the author adds', () => {
    const notes = { en: 'Note', de: 'Notiz' };
    const steps = stepsOf(lessonOf({ ...bare, steps: { delays: { notes } } }));
    expect(steps.find(({ id }) => id === 'delays')?.notes).toBe(notes);
  });
});

describe('the record of a lesson', () => {
  it('holds after all steps what the simulated examination holds', () => {
    fc.assert(
      fc.property(anyPatient, (patient) => {
        const lesson = lessonOf({ ...bare, patient });
        expect(examinationOf(lesson)).toEqual(examine(patient, { parts: LESSON_PARTS }));
      }),
      { numRuns: 12 },
    );
  });

  it('holds nothing of a step that was not revealed, and its reading knows no more', () => {
    const pick = fc.array(fc.nat(), { maxLength: 30 });
    fc.assert(
      fc.property(anyLesson, pick, (lesson, picks) => {
        const all = ids(lesson);
        const shown = picks.map((n) => all[n % all.length]!);
        const record = recordOf(lesson, shown);
        // A lesson about nothing but that record: what is not revealed cannot be known to it at all.
        const { patient: _, ...rest } = lesson;
        const blind: Lesson = { ...rest, examination: record };
        const known = ids(blind);
        for (const id of all) {
          const finding = findingAt(lesson, id);
          if (shown.includes(id)) expect(recordOf(blind, [id])).toEqual(finding);
          else if (known.includes(id)) expect(findsAnything(blind, id), id).toBe(false);
        }
        expect(recordOf(blind, known)).toEqual(record);
        expect(readExamination(record).rule).toEqual(readExamination(examinationOf(blind)).rule);
      }),
      { numRuns: 25 },
    );
  });

  it('does not depend on the order in which steps are revealed', () => {
    fc.assert(
      fc.property(anyLesson, fc.nat(), (lesson, seed) => {
        const all = ids(lesson);
        const some = all.filter((_, i) => (i * 7 + seed) % 3 > 0);
        expect(recordOf(lesson, [...some].reverse())).toEqual(recordOf(lesson, some));
      }),
      { numRuns: 12 },
    );
  });

  it('leaves out who examined and when, and takes what physics does not compute from the file', () => {
    const examination = {
      format: 'pulse-map/1.1',
      scale: '0-4',
      examinedAt: '2026-05-01T10:30Z',
      examiner: 'somebody',
      inspection: { leg: { left: { colour: 'pale' } } },
      pulses: { femoral: { left: { grade: 'bounding' } } },
    } as const;
    const record = examinationOf(lessonOf({ ...bare, examination }));
    expect(record).not.toHaveProperty('examinedAt');
    expect(record).not.toHaveProperty('examiner');
    expect(record.scale).toBe('0-4');
    expect(record.inspection?.leg?.left?.colour).toBe('pale');
    expect(record.pulses?.femoral?.left?.grade).toBe('bounding');
    expect(record.pulses?.popliteal?.left?.grade).toBe('absent');
  });

  it('says of a step with nothing recorded that nothing was examined, not that it was normal', () => {
    const { patient: _, ...rest } = bare;
    const empty = lessonOf({ ...rest, examination: { format: 'pulse-map/1.1', scale: '0-3' } });
    for (const id of ids(empty)) expect(findsAnything(empty, id), id).toBe(false);
  });
});

describe('a lesson file', () => {
  const faultsOf = (change: object): [string, string][] => {
    const parsed = parseLesson({ ...bare, ...change });
    return parsed.ok
      ? []
      : parsed.faults.map(({ path, expected }) => [path.join('.'), JSON.stringify(expected)]);
  };

  it('is read with every default filled in', () => {
    const parsed = parseLesson(JSON.parse(JSON.stringify(bare)));
    expect(parsed).toEqual({ ok: true, value: lessonOf(bare) });
  });

  it.each<[string, object, string]>([
    ['another format', { format: 'pulse-map-lesson/9' }, 'format'],
    ['an id with blanks', { id: 'Two words' }, 'id'],
    ['no text at all', { title: {} }, 'title'],
    ['a language that is none', { title: { en: 'a', xx: 'b' } }, 'title.xx'],
    ['a text that lacks a language of the title', { story: { en: 'only English' } }, 'story'],
    ['the same in a step', { steps: { delays: { notes: { de: 'nur deutsch' } } } }, 'steps.delays.notes'],
    ['an unknown limb', { limbs: ['tail'] }, 'limbs.0'],
    ['a step that does not exist', { without: ['pulse left spleen'] }, 'without.0'],
    [
      'an artery that does not exist',
      { patient: { lesions: [{ piece: 'left spleen' }] } },
      'patient.lesions.0.piece',
    ],
    ['neither patient nor examination', { patient: undefined }, 'patient'],
    ['a record that is none', { examination: { format: 'x', scale: '0-3' } }, 'examination.format'],
    [
      'an unknown level',
      { answer: { lesions: [{ limb: 'left leg', level: 'hip' }], text: bare.answer.text } },
      'answer.lesions.0.level',
    ],
    ['an unknown field', { colour: 'blue' }, 'colour'],
  ])('with %s is refused by path and expectation', (_, change, path) => {
    const faults = faultsOf(change);
    expect(faults.map(([at]) => at)).toContain(path);
    for (const [, expected] of faults) expect(expected.length).toBeGreaterThan(4);
  });

  it('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(fc.anything(), (input) => {
        expect(parseLesson(input).ok).toBe(false);
      }),
    );
  });

  it('has a JSON Schema that names its fields', () => {
    const schema = lessonJsonSchema() as { properties: Record<string, unknown>; required: string[] };
    expect(Object.keys(schema.properties)).toEqual(
      expect.arrayContaining(['patient', 'examination', 'steps', 'answer']),
    );
    expect(schema.required).toEqual(expect.arrayContaining(['format', 'id', 'title', 'story', 'answer']));
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
  });

  it('says a text in the language asked for, else in English, else in any', () => {
    expect(textIn({ en: 'a', de: 'b' }, 'de-AT')).toBe('b');
    expect(textIn({ en: 'a', de: 'b' }, 'fr')).toBe('a');
    expect(textIn({ de: 'b' }, 'fr')).toBe('b');
  });
});
