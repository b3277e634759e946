import type { Level, LimbKey } from '../anatomy/index.js';
import {
  type AcuteClass,
  emptyExamination,
  type Examination,
  type FontaineStage,
} from '../examination/index.js';
import type { Urgent } from '../triage/index.js';
import type { PracticeCause } from './causes.js';
import { type PracticeAct, type PracticeActId, practiceActId, practiceActOf, pathsOf } from './acts.js';
import { type HiddenPatient, truthOf } from './hidden.js';
import { holdsAnything, joined, pickedOf } from './records.js';
import { secondsFor } from './times.js';
import type { Truth } from './truth.js';

/** What is done first once the examination ends. */
export const FIRST_STEPS = [
  'call-now',
  'circulation',
  'same-day',
  'refer',
  'risk-and-walking',
  'look-elsewhere',
  'imaging-first',
  'compress',
  'raise-and-warm',
] as const;
export type FirstStep = (typeof FIRST_STEPS)[number];

/** A stage as a learner names it: of acute ischaemia, or of chronic disease. */
export type NamedStage = `acute ${AcuteClass}` | `fontaine ${FontaineStage}`;

/** A lesion as a learner names it. */
export interface NamedLesion {
  readonly limb: LimbKey;
  readonly level: Level;
}

/** What a learner concludes. What is left out was not answered. */
export interface PracticeAnswer {
  /** Empty: no arterial disease of the limbs. */
  readonly lesions?: readonly NamedLesion[];
  readonly cause?: PracticeCause;
  readonly stage?: NamedStage;
  readonly urgency?: Urgent;
  readonly first?: FirstStep;
}

/** A round: which patient, what was done in which order, and the answer once it was given. It holds nothing of the truth. */
export interface Round {
  readonly patient: string;
  readonly acts: readonly PracticeActId[];
  readonly answer?: PracticeAnswer;
}

export const startRound = (patient: HiddenPatient): Round => ({ patient: patient.code, acts: [] });

/** The acts of a round, in their order. */
export const actsOf = ({ acts }: Round): readonly PracticeAct[] =>
  acts.flatMap((id) => practiceActOf(id) ?? []);

/**
 * Does an act. What is known cannot be forgotten: there is no way back, a second time finds the same and costs nothing, and after the
 * answer nothing more is examined.
 * @throws RangeError for an act that there is none of
 */
export function perform(round: Round, act: PracticeAct | PracticeActId): Round {
  const id = typeof act === 'string' ? act : practiceActId(act);
  if (!practiceActOf(id)) throw new RangeError(`no such act: "${id}"`);
  return round.answer || round.acts.includes(id) ? round : { ...round, acts: [...round.acts, id] };
}

/** Ends the examination with an answer, once and for all. */
export function conclude(round: Round, answer: PracticeAnswer): Round {
  return round.answer ? round : { ...round, answer };
}

/** Seconds at the bedside so far. */
export const secondsAt = (round: Round): number => secondsFor(actsOf(round));

/** The record that the learner's acts have built: what hand and ear found, which may err, and nothing else. */
export function recordKnown(patient: HiddenPatient, round: Round): Examination {
  return actsOf(round).reduce<Examination>(
    (record, act) => joined(record, patient.find(act)),
    emptyExamination(patient.scale),
  );
}

/** Whether an act finds anything of this patient. Where it does not, nothing is known of it, which is not the same as normal. */
export const findsAnything = (patient: HiddenPatient, act: PracticeAct): boolean =>
  holdsAnything(patient.find(act));

/** What was truly there to be found by the acts of a round. */
export function recordThere({ record }: Truth, acts: readonly PracticeAct[]): Examination {
  return pickedOf(record, acts.flatMap(pathsOf));
}

/**
 * The truth of a patient, once the round has its answer.
 * @throws Error before: nothing that is shown to a learner may hold it
 */
export function revealed(patient: HiddenPatient, round: Round): Truth {
  if (!round.answer || round.patient !== patient.code)
    throw new Error('truth: found a round without an answer, expected one about this patient that has it');
  return truthOf(patient);
}
