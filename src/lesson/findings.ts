import type { LimbKind } from '../anatomy/index.js';
import { emptyExamination, type Examination, type PressureSite } from '../examination/index.js';
import { examine, type ExaminedPart } from '../flow/index.js';
import type { Lesson, LessonAct, LessonStep, StepId } from './lesson.js';
import { sequenceOf } from './steps.js';

/** What the honest examiner of a simulated patient examines: what hand, ear, watch and cuff find at rest. */
export const LESSON_PARTS: readonly ExaminedPart[] = [
  'pulses',
  'bruits',
  'delays',
  'pressures',
  'bedside',
  'history',
];

type Tree = { readonly [key: string]: unknown };
const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Both, the second before the first where they name the same. */
function merged<T>(below: T, above: unknown): T {
  if (!isTree(below) || !isTree(above)) return (above === undefined ? below : above) as T;
  const all: Record<string, unknown> = { ...below };
  for (const [key, value] of Object.entries(above)) all[key] = merged<unknown>(all[key], value);
  return all as T;
}

/** The cuffs of each limb. Both arms stand beside the legs, whose indices are made with them. */
const CUFFS: Readonly<Record<LimbKind, readonly PressureSite[]>> = {
  leg: ['brachial', 'high-thigh', 'low-thigh', 'calf', 'dorsalis-pedis', 'posterior-tibial', 'toe'],
  arm: ['brachial', 'radial', 'ulnar', 'finger'],
  head: [],
};

function picked(from: object | undefined, names: readonly string[]): Tree | undefined {
  const found = Object.entries(from ?? {}).filter(
    ([name, value]) => names.includes(name) && value !== undefined,
  );
  return found.length ? Object.fromEntries(found) : undefined;
}

/** The part of a record that an act finds; nothing where it finds nothing. Every act has a part of its own. */
function partOf(record: Examination, act: LessonAct, limbs: readonly LimbKind[]): Tree {
  switch (act.kind) {
    case 'history':
      return picked(record, ['onset', 'context', 'circulation', 'history']) ?? {};
    case 'inspection':
      return picked(record, ['inspection', 'marks']) ?? {};
    case 'delays':
      return picked(record, ['delays']) ?? {};
    case 'conclusion':
      return picked(record, ['staging']) ?? {};
    case 'test': {
      const bedside = picked(record.bedside, [act.test]);
      return bedside ? { bedside } : {};
    }
    case 'listen': {
      const bruits = picked(record.bruits, [act.site]);
      return bruits ? { bruits } : {};
    }
    case 'pulse': {
      const { site, side } = act.place;
      const sides = picked(record.pulses?.[site], [side]);
      return sides ? { pulses: { [site]: sides } } : {};
    }
    case 'pressures': {
      const all = limbs.length === 3;
      const cuffs = limbs.flatMap((limb) => CUFFS[limb]);
      const legs = limbs.includes('leg') ? ['tcpo2', 'volumeCurve', 'afterExercise'] : [];
      const pressures = all
        ? record.pressures
        : picked(record.pressures, [...cuffs, ...legs, 'unit', 'note']);
      return { ...(pressures && { pressures }), ...picked(record, ['method']) };
    }
  }
}

const whole = new WeakMap<Lesson, Examination>();

/** All that there is to find, before limbs and steps are left out; computed once a lesson. */
function everything(lesson: Lesson): Examination {
  const known = whole.get(lesson);
  if (known) return known;
  const { patient, examination } = lesson;
  const found = patient
    ? examine(patient, { parts: LESSON_PARTS, ...(examination && { scale: examination.scale }) })
    : emptyExamination(examination?.scale);
  const { format, scale } = found;
  const record: Examination = { ...merged(found, examination), format, scale };
  whole.set(lesson, record);
  return record;
}

/** The steps of a lesson in the order of the examination, with what the author added to each. */
export function stepsOf(lesson: Lesson): readonly LessonStep[] {
  return sequenceOf(lesson, new Set(Object.keys(everything(lesson).bedside ?? {})));
}

/**
 * The record as far as it is known once these steps were revealed, in whatever order. Nothing of any other step is in it, nor is who
 * examined, and when.
 */
export function recordOf(lesson: Lesson, revealed: Iterable<StepId>): Examination {
  const record = everything(lesson);
  const shown = new Set(revealed);
  const { format, scale } = record;
  let built: Examination = { format, scale };
  for (const { id, act } of stepsOf(lesson)) {
    if (shown.has(id)) built = merged(built, partOf(record, act, lesson.limbs));
  }
  return built;
}

/** What one step finds, as a record with nothing else in it. */
export function findingAt(lesson: Lesson, step: StepId): Examination {
  return recordOf(lesson, [step]);
}

/** Whether a step finds anything; where it does not, nothing was examined there, which is not the same as normal. */
export function findsAnything(lesson: Lesson, step: StepId): boolean {
  return Object.keys(findingAt(lesson, step)).length > 2;
}

/** What the lesson's examiner finds in all: the record once every step was revealed. */
export function examinationOf(lesson: Lesson): Examination {
  return recordOf(
    lesson,
    stepsOf(lesson).map(({ id }) => id),
  );
}
