import fc from 'fast-check';
import { LEVELS, LIMBS, limbKey } from '../../src/anatomy/index.js';
import { ACUTE_CLASSES, FONTAINE_STAGES } from '../../src/examination/index.js';
import { truthOf } from '../../src/practice/hidden.js';
import {
  FIRST_STEPS,
  type HiddenPatient,
  type NamedStage,
  perform,
  PRACTICE_ACT_IDS,
  PRACTICE_CAUSES,
  type PracticeAnswer,
  rightAnswer,
  type Round,
  simulatedPatient,
  startRound,
} from '../../src/practice/index.js';
import { URGENCY_ORDER } from '../../src/triage/index.js';

/** The same few patients for all properties: of every difficulty, among them acute, chronic, several levels, sound, low flow. */
export const PATIENTS: readonly HiddenPatient[] = [
  ...[1, 4, 11, 14, 15, 23].map((number) => simulatedPatient({ number, difficulty: 'clear' })),
  ...[1, 9, 15, 18, 23].map((number) => simulatedPatient({ number, difficulty: 'usual' })),
  ...[3, 4, 6, 25].map((number) => simulatedPatient({ number, difficulty: 'hard' })),
];

export const patients = fc.constantFrom(...PATIENTS);
export const someActs = fc.uniqueArray(fc.constantFrom(...PRACTICE_ACT_IDS), { maxLength: 24 });
const stages: readonly NamedStage[] = [
  ...ACUTE_CLASSES.map((one): NamedStage => `acute ${one}`),
  ...FONTAINE_STAGES.map((one): NamedStage => `fontaine ${one}`),
];
const anyAnswer: fc.Arbitrary<PracticeAnswer> = fc.record(
  {
    lesions: fc.uniqueArray(
      fc.record({
        limb: fc.constantFrom(...LIMBS.filter(({ kind }) => kind !== 'head').map(limbKey)),
        level: fc.constantFrom(...LEVELS),
      }),
      { maxLength: 4, selector: ({ limb, level }) => `${limb} ${level}` },
    ),
    cause: fc.constantFrom(...PRACTICE_CAUSES),
    stage: fc.constantFrom(...stages),
    urgency: fc.constantFrom(...URGENCY_ORDER),
    first: fc.constantFrom(...FIRST_STEPS),
  },
  { requiredKeys: [] },
);

/** The best answer that there is to a patient. */
export function bestAnswer(patient: HiddenPatient): PracticeAnswer {
  const { lesions, cause, stages: open, urgency, first } = rightAnswer(truthOf(patient));
  return {
    lesions: lesions.map(({ limb, levels }) => ({ limb, level: levels[0] })),
    ...(cause && { cause }),
    ...(open[0] && { stage: open[0] }),
    urgency,
    first: first[0]!,
  };
}

/** Half of the answers are right wherever they are given, so that properties are tried where there is something to lose. */
export const answersTo = (patient: HiddenPatient): fc.Arbitrary<PracticeAnswer> =>
  fc.oneof(
    anyAnswer,
    fc
      .subarray(Object.entries(bestAnswer(patient)))
      .map((entries) => Object.fromEntries(entries) as PracticeAnswer),
  );

export const rounds = patients.chain((patient) =>
  fc.record({ patient: fc.constant(patient), ids: someActs, answer: answersTo(patient) }),
);
export const roundOf = (patient: HiddenPatient, ids: readonly string[]): Round =>
  ids.reduce<Round>((round, id) => perform(round, id), startRound(patient));
