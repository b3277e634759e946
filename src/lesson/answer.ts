import { type LimbKey, type Level, LIMBS, limbKey } from '../anatomy/index.js';
import { readExamination } from '../localisation/index.js';
import { examinationOf } from './findings.js';
import type { Lesson } from './lesson.js';

/** One limb, what the lesson says of it, and what the reading of all its findings concludes. */
export interface LimbAgreement {
  readonly limb: LimbKey;
  readonly told: readonly Level[];
  /** Missing where the reading finds the pulses of the limb open. */
  readonly concluded?: Level;
  readonly agrees: boolean;
}

/**
 * Holds the answer of a lesson against the belief network, limb by limb. The network names for each limb the level that takes its
 * pulse away; the lesson agrees where that is one of the levels it tells, or where neither has any.
 */
export function agreementOf(lesson: Lesson): readonly LimbAgreement[] {
  const { network } = readExamination(examinationOf(lesson));
  return LIMBS.filter(({ kind }) => lesson.limbs.includes(kind)).map((limb): LimbAgreement => {
    const key = limbKey(limb);
    const told = lesson.answer.lesions.filter((one) => one.limb === key).map(({ level }) => level);
    const read = network.status === 'read' ? network.limbs[key] : undefined;
    const concluded = read?.examined ? read.headline?.level : undefined;
    const agrees = concluded === undefined ? !told.length : told.includes(concluded);
    return { limb: key, told, ...(concluded && { concluded }), agrees };
  });
}
