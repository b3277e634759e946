import type { Examination } from '../examination/index.js';
import { PRACTICE_ACTS, type PracticeAct, type PracticeActId, practiceActId, pathsOf } from './acts.js';
import { type HiddenPatient, truthOf } from './hidden.js';
import { rightAnswer, type RightAnswer } from './marks.js';
import { holdsAnything, pickedOf } from './records.js';

/** One line of an examiner's mark sheet. */
export interface ChecklistItem {
  readonly id: PracticeActId;
  readonly act: PracticeAct;
  /** What is to be found, as a record with nothing else in it. */
  readonly expected: Examination;
}

/** What an examiner holds beside a practical examination: it tells the truth, and so is never the candidate's. */
export interface Checklist {
  readonly items: readonly ChecklistItem[];
  readonly right: RightAnswer;
}

/** The examiner's sheet for a patient: every act that finds something, with what it should find, and the right answer. */
export function checklistOf(patient: HiddenPatient): Checklist {
  const truth = truthOf(patient);
  const items = PRACTICE_ACTS.flatMap((act): ChecklistItem[] => {
    const expected = pickedOf(truth.record, pathsOf(act));
    return holdsAnything(expected) ? [{ id: practiceActId(act), act, expected }] : [];
  });
  return { items, right: rightAnswer(truth) };
}
