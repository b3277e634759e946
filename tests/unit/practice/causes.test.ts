import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { type LessonCause, SHIPPED_LESSON_IDS, shippedLesson } from '../../../src/lesson/index.js';
import { truthOf } from '../../../src/practice/hidden.js';
import {
  actsOf,
  causesLeftOpen,
  conclude,
  lessonPatient,
  marksFor,
  PRACTICE_ACTS,
  PRACTICE_CAUSES,
  resultOf,
  resultsCSV,
  rightAnswer,
  simulatedPatient,
  type Truth,
  withinReach,
} from '../../../src/practice/index.js';
import { redFlags } from '../../../src/triage/index.js';
import { PATIENTS, roundOf, rounds } from '../../tools/practice-rounds.js';

/** A leg without a pulse below the groin, and what else is known. */
const leg = (more: Partial<Examination> = {}): Examination => ({
  ...emptyExamination(),
  pulses: { popliteal: { left: { grade: 'absent' } } },
  ...more,
});
const truth = (cause: LessonCause, record: Examination, age?: number): Truth => ({
  record,
  cause,
  lesions: [{ limb: 'left leg', levels: ['femoro-popliteal'] }],
  ...(age !== undefined && { patient: { ...truthOf(PATIENTS[0]!).patient!, age } }),
});

/*
 * Common practice, no source, save ages: 40 by Arend 1990 (Takayasu), 50 by Shionoya 1993 (Buerger), both from memory; 100 mmHg is a rule
 * of thumb.
 */
describe('the causes that findings leave open', () => {
  it('are an embolus and a clot grown in place, until the heart is irregular', () => {
    expect(causesLeftOpen(truth('embolism', leg()))).toEqual(['embolism', 'thrombosis']);
    const irregular = leg({ history: { rhythm: 'atrial-fibrillation' } });
    expect(causesLeftOpen(truth('embolism', irregular))).toEqual(['embolism']);
    expect(causesLeftOpen(truth('thrombosis', leg()))).toEqual(['thrombosis', 'embolism']);
    const walked = leg({ context: { legClaudication: { left: 'calf-upper' } } });
    expect(causesLeftOpen(truth('thrombosis', walked))).toEqual(['thrombosis']);
  });

  it('are parted by what bulges, tears, lags or is low, and by age and tobacco', () => {
    const bulging = leg({ pulses: { popliteal: { right: { expansile: true }, left: { grade: 'absent' } } } });
    expect(causesLeftOpen(truth('aneurysm', bulging))).toEqual(['aneurysm']);
    expect(causesLeftOpen(truth('aneurysm', leg()))).toContain('embolism');
    expect(causesLeftOpen(truth('dissection', leg()))).toEqual(['dissection', 'embolism']);
    const lagging = leg({ delays: { radioFemoral: { left: 'delayed' } } });
    expect(causesLeftOpen(truth('coarctation', lagging))).toEqual(['coarctation']);
    expect(causesLeftOpen(truth('coarctation', leg()))).toEqual(['coarctation', 'atherosclerosis']);
    expect(causesLeftOpen(truth('large-vessel', leg(), 40))).toEqual(['large-vessel']);
    expect(causesLeftOpen(truth('large-vessel', leg(), 41))).toEqual(['large-vessel', 'atherosclerosis']);
    const smoker = leg({ context: { smoking: 'current' } });
    expect(causesLeftOpen(truth('small-artery', smoker, 49))).toEqual(['small-artery']);
    expect(causesLeftOpen(truth('small-artery', smoker, 50))).toEqual(['small-artery', 'atherosclerosis']);
    expect(causesLeftOpen(truth('small-artery', leg(), 49))).toEqual(['small-artery', 'atherosclerosis']);
    const shocked = leg({ circulation: { shock: true } });
    expect(causesLeftOpen(truth('low-flow', shocked))).toEqual(['low-flow']);
    expect(causesLeftOpen(truth('low-flow', leg({ circulation: { systolic: 100 } })))).toContain('cold');
    expect(causesLeftOpen(truth('low-flow', leg({ circulation: { systolic: 99 } })))).toEqual(['low-flow']);
  });

  it('are the narrowing and none at all where no hand, ear or cuff shows it', () => {
    expect(causesLeftOpen(truth('atherosclerosis', emptyExamination()))).toEqual(['atherosclerosis', 'none']);
    expect(causesLeftOpen(truth('atherosclerosis', leg()))).toEqual(['atherosclerosis']);
    expect(causesLeftOpen(truth('none', emptyExamination()))).toEqual(['none']);
    const arms = (['right', 'left'] as const).reduce<Examination>(
      (record, side) => ({
        ...record,
        pulses: { radial: { ...record.pulses?.radial, [side]: { grade: 'absent' } } },
      }),
      emptyExamination(),
    );
    expect(causesLeftOpen(truth('atherosclerosis', arms))).toEqual(['atherosclerosis', 'large-vessel']);
  });

  it('begin with the patient’s own, are words of the list, and are none where nobody named one', () => {
    for (const patient of PATIENTS) {
      const left = causesLeftOpen(truthOf(patient));
      expect(left[0], patient.code).toBe(truthOf(patient).cause);
      expect(new Set(left).size).toBe(left.length);
      expect(PRACTICE_CAUSES).toEqual(expect.arrayContaining([...left]));
    }
    const { cause: _cause, ...nameless } = truthOf(PATIENTS[0]!);
    expect(causesLeftOpen(nameless)).toEqual([]);
  });
});

describe('the mark of the cause', () => {
  it('is full for every cause that the findings leave open, and nothing for any other', () => {
    for (const patient of PATIENTS) {
      const { causes } = rightAnswer(truthOf(patient));
      for (const cause of PRACTICE_CAUSES) {
        const { parts } = marksFor(truthOf(patient), PRACTICE_ACTS, { cause });
        const mark = parts.find(({ part }) => part === 'cause')!;
        expect([patient.code, cause, mark.points]).toEqual([
          patient.code,
          cause,
          causes.includes(cause) ? mark.of : 0,
        ]);
      }
    }
  });

  it('is not asked for where the author of a lesson names none', async () => {
    const lesson = await shippedLesson('superficial-femoral');
    const { cause: _cause, ...answer } = lesson.answer;
    const { parts } = marksFor(truthOf(lessonPatient({ ...lesson, answer }, 1)), PRACTICE_ACTS, {
      cause: 'cold',
    });
    expect(parts.map(({ part }) => part)).not.toContain('cause');
  });
});

describe('an answer', () => {
  it('earns no more than what was answered, and what was not is open: neither right nor wrong', () => {
    fc.assert(
      fc.property(rounds, ({ patient, ids, answer }) => {
        const { parts, points } = marksFor(truthOf(patient), actsOf(roundOf(patient, ids)), answer);
        const given: Readonly<Record<string, boolean>> = {
          side: answer.lesions !== undefined,
          level: answer.lesions !== undefined,
          thrift: answer.lesions !== undefined,
          cause: answer.cause !== undefined,
          stage: answer.stage !== undefined,
          urgency: answer.urgency !== undefined,
          first: answer.first !== undefined,
        };
        for (const mark of parts) {
          expect([mark.part, mark.open ?? false]).toEqual([mark.part, !given[mark.part]]);
          if (mark.open) expect([mark.points, mark.ungrounded]).toEqual([0, undefined]);
        }
        const answered = parts.filter(({ open }) => !open).reduce((sum, { of }) => sum + of, 0);
        expect(points).toBeLessThanOrEqual(answered);
      }),
      { numRuns: 60 },
    );
  });

  it('is kept and written as CSV with the cause named, the causes that fit, and what was left open', () => {
    const patient = simulatedPatient({ number: 15, difficulty: 'clear' });
    const round = conclude(roundOf(patient, ['ask onset', 'ask background']), { cause: 'thrombosis' });
    const result = resultOf(patient, round);
    expect(result.causeNamed).toBe('thrombosis');
    expect(result.causes).toEqual(rightAnswer(truthOf(patient)).causes);
    expect(result.open).toEqual(expect.arrayContaining(['level', 'stage', 'urgency', 'first']));
    // No field of this one holds a comma or a quotation mark.
    const [heading, row] = resultsCSV([result])
      .split('\r\n')
      .map((line) => line.split(',').map((field) => field.replace(/^"(.*)"$/, '$1')));
    const at = (name: string): string | undefined => row![heading!.indexOf(name)];
    expect(at('cause named')).toBe('thrombosis');
    expect(at('causes that fit')).toBe(result.causes!.join('; '));
    expect(at('not answered')).toBe(result.open!.join('; '));
    expect(row).toHaveLength(heading!.length);
  });
});

describe.each(SHIPPED_LESSON_IDS)('the cause of the lesson %s', (id) => {
  it('is told by its author, and by what there is to be found', async () => {
    const lesson = await shippedLesson(id);
    const { cause } = lesson.answer;
    expect(cause).toBeDefined();
    const patient = truthOf(lessonPatient(lesson, 1));
    // No artery to blame, and nothing found in one: the cause says so. Pressed arteries are open at rest.
    if (!lesson.answer.lesions.length) expect(['none', 'low-flow', 'entrapment']).toContain(cause);
    else expect(['none', 'low-flow']).not.toContain(cause);
    expect(causesLeftOpen(patient), 'the lesson teaches one cause').toEqual([cause]);
    if (cause === 'dissection')
      expect(redFlags(patient.record).map(({ code }) => code)).toContain('dissection');
    if (cause === 'none' && id !== 'absent-dorsalis-pedis') expect(withinReach(patient.record)).toEqual([]);
  });
});
