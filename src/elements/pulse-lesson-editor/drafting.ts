import type { Lesson, LessonInput } from '../../lesson/index.js';
import type { LessonEditorWords } from '../../locale/lesson-editor.js';
import type { LanguageTag } from '../../locale/list.js';

/** JSON as people read it. */
export const written = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

/** A lesson to begin with, in one language. */
export function begunLesson({ begun }: LessonEditorWords, tag: LanguageTag): string {
  const lesson: LessonInput = {
    format: 'pulse-map-lesson/1',
    id: 'new-lesson',
    title: { [tag]: begun.title },
    story: { [tag]: begun.story },
    minutes: 20,
    limbs: ['leg'],
    patient: { age: 65, lesions: [{ piece: 'left superficial-femoral', extent: 'whole' }] },
    steps: {},
    answer: {
      lesions: [{ limb: 'left leg', level: 'femoro-popliteal' }],
      text: { [tag]: begun.answer },
    },
  };
  return written(lesson);
}

/** Whether a step has both question and notes already. */
export function isSaid({ steps }: Lesson, step: string): boolean {
  return Boolean(steps[step]?.question && steps[step].notes);
}

/**
 * The text of a lesson with a question and notes at a step, each to be written, in every language of the title; what stands there stays.
 * @param text of a lesson
 */
export function withStep(text: string, step: string, blank: string): string {
  const lesson = JSON.parse(text) as LessonInput;
  const blanks = Object.fromEntries(Object.keys(lesson.title).map((tag) => [tag, blank]));
  const here = { question: blanks, notes: blanks, ...lesson.steps?.[step] };
  const { answer, steps, ...rest } = lesson;
  return written({ ...rest, steps: { ...steps, [step]: here }, answer });
}
