import {
  type Level,
  LIMB_KINDS,
  type LimbKey,
  type LimbKind,
  type ListeningSiteId,
  type Place,
  type PulseSiteId,
} from '../anatomy/index.js';
import type { BedsideTestId, Examination } from '../examination/index.js';
import { type Patient, type PatientInput, patientOf } from '../flow/index.js';
import type { LanguageTag } from '../locale/index.js';
import type { LessonCause } from './causes.js';

/** The form that lessons are written in. */
export const LESSON_FORMAT = 'pulse-map-lesson/1';

/** A text of the author in one or several languages. */
export type LessonText = Readonly<Partial<Record<LanguageTag, string>>>;

/** What is done in one step of the sequence. */
export type LessonAct =
  | { readonly kind: 'history' }
  | { readonly kind: 'inspection' }
  | { readonly kind: 'test'; readonly test: BedsideTestId }
  | { readonly kind: 'pulse'; readonly place: Place<PulseSiteId> }
  | { readonly kind: 'delays' }
  | { readonly kind: 'listen'; readonly site: ListeningSiteId }
  | { readonly kind: 'pressures' }
  | { readonly kind: 'conclusion' };

/** Name of a step: `inspection`, `test elevation`, `pulse right femoral`, `listen femoral`. */
export type StepId = string;

/** What the author adds to a step. */
export interface StepAddition {
  /** For the teacher alone. */
  readonly notes?: LessonText;
  /** Put to the room before the finding is shown. */
  readonly question?: LessonText;
}

/** One step of a lesson, as its sequence gives it. */
export interface LessonStep extends StepAddition {
  readonly id: StepId;
  readonly act: LessonAct;
}

/** What is wrong with the patient, by level. */
export interface LessonLesion {
  readonly limb: LimbKey;
  readonly level: Level;
}

/** What the lesson leads to. */
export interface LessonAnswer {
  /** Empty where no artery is to blame. */
  readonly lesions: readonly LessonLesion[];
  /** Missing where the author names none; a learner is then not asked for it. */
  readonly cause?: LessonCause;
  readonly text: LessonText;
  /** Says that, and why, the reading of the findings concludes otherwise; missing where it agrees. */
  readonly differs?: LessonText;
}

/** A lesson as read. */
export interface Lesson {
  readonly format: typeof LESSON_FORMAT;
  /** Short name by which it is kept and addressed: small letters, digits and hyphens. */
  readonly id: string;
  readonly title: LessonText;
  /** Who the patient is, and what brings them. */
  readonly story: LessonText;
  /** The findings are those of a real person, whose name and dates are left out; see `lessonOfRecord`. Missing: they are invented. */
  readonly real?: true;
  /** Minutes that it is planned for. */
  readonly minutes?: number;
  /** The limbs examined. */
  readonly limbs: readonly LimbKind[];
  /** Whose findings come from physics. */
  readonly patient?: Patient;
  /** A record: beside a patient what physics does not compute, alone the whole of the findings. */
  readonly examination?: Examination;
  /** Steps of the sequence that are left out. */
  readonly without: readonly StepId[];
  readonly steps: Readonly<Record<StepId, StepAddition>>;
  readonly answer: LessonAnswer;
}

/** A lesson as written down: what has a default may be left out. */
export type LessonInput = Omit<Lesson, 'limbs' | 'patient' | 'without' | 'steps'> &
  Partial<Pick<Lesson, 'limbs' | 'without' | 'steps'>> & { readonly patient?: PatientInput };

/** Fills in every default of a lesson whose form is known to be right; `parseLesson` reads one that comes from elsewhere. */
export function lessonOf({ patient, ...input }: LessonInput): Lesson {
  return {
    limbs: LIMB_KINDS,
    without: [],
    steps: {},
    ...input,
    ...(patient && { patient: patientOf(patient) }),
  };
}

/**
 * The text in a language: in the very one or its base language, else in English, else in any.
 * @param tag BCP 47
 */
export function textIn(text: LessonText, tag: string): string {
  const base = tag.toLowerCase().split('-')[0] as LanguageTag;
  return text[base] ?? text.en ?? Object.values(text)[0] ?? '';
}
