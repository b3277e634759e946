import { remembered } from '../examination/index.js';
import { cuffCautions, readCompression, triage } from '../triage/index.js';
import { SIDES } from '../anatomy/index.js';
import { type PracticeAct, type PracticeActId, practiceActId } from './acts.js';
import { type FirstStep, type PracticeAnswer, recordThere } from './round.js';
import { secondsFor } from './times.js';
import { type Truth, withinReach } from './truth.js';

/** What should have been thought of before. */
export const PRACTICE_CAUTIONS = [
  /** A cuff where a caution stands against it. */
  'cuff',
  /** A limb raised that was starving for blood. */
  'raised',
  /** A walk with pain at rest, a wound, or an acute limb. */
  'walked',
  /** The call could have been made long before. */
  'late-call',
  /** Compression, warming or raising, or a scan before a call, where it harms. */
  'first',
] as const;
export type PracticeCautionCode = (typeof PRACTICE_CAUTIONS)[number];

export interface PracticeCaution {
  readonly code: PracticeCautionCode;
  /** The act that ignored it. */
  readonly act?: PracticeActId;
  readonly first?: FirstStep;
  /** Seconds at which the call could have been made. */
  readonly seconds?: number;
}

/** How long after the findings called for it a call counts as late, in seconds. Common practice, no source. */
export const CALL_WITHIN = 300;

const urgencyOf = remembered((record) => triage(record).urgency);
const cautionsAgainst = remembered((record) => cuffCautions(record));

/** Whether a first step would harm, by all that is truly there to be found. */
export function harms(first: FirstStep, { record }: Truth): boolean {
  const urgency = urgencyOf(record);
  if (first === 'imaging-first') return urgency === 'now';
  if (first === 'raise-and-warm') return urgency !== 'none' || withinReach(record).length > 0;
  if (first === 'compress')
    return SIDES.some((side) => readCompression(record, side).verdict === 'advice-first');
  return false;
}

/** The cautions that acts and answer ignored; of one act at most one. Whether it could be known beforehand is no excuse: look first. */
export function cautionsIgnored(
  truth: Truth,
  acts: readonly PracticeAct[],
  answer: PracticeAnswer,
): readonly PracticeCaution[] {
  const { record } = truth;
  const urgency = urgencyOf(record);
  const cuffs = cautionsAgainst(record);
  const threatened = SIDES.filter((side) => {
    const { symptom } = record.history?.leg?.[side] ?? {};
    return symptom === 'rest-pain' || symptom === 'tissue-loss';
  });
  const found = acts.flatMap((act): PracticeCaution[] => {
    const own = practiceActId(act);
    if (act.kind === 'cuff') {
      const kind = act.cuff === 'arm' || act.cuff === 'wrist' ? 'arm' : 'leg';
      const against = cuffs.some(({ limb }) => limb.kind === kind && limb.side === act.side);
      return against ? [{ code: 'cuff', act: own }] : [];
    }
    if (act.kind === 'test' && act.test === 'elevation')
      return urgency === 'now' && threatened.includes(act.side) ? [{ code: 'raised', act: own }] : [];
    if (act.kind === 'exercise')
      return urgency === 'now' || threatened.length ? [{ code: 'walked', act: own }] : [];
    return [];
  });
  const { first } = answer;
  if (first && harms(first, truth)) found.push({ code: 'first', first });
  const called = answer.urgency === 'now' ? lateCall(truth, acts) : undefined;
  if (called !== undefined) found.push({ code: 'late-call', seconds: called });
  return found;
}

/** When the findings first called for someone at once, in seconds, where the examination went on long after. */
function lateCall(truth: Truth, acts: readonly PracticeAct[]): number | undefined {
  const all = secondsFor(acts);
  for (let done = 1; done <= acts.length; done++) {
    const so = acts.slice(0, done);
    const seconds = secondsFor(so);
    if (all - seconds <= CALL_WITHIN) return undefined;
    if (triage(recordThere(truth, so)).urgency === 'now') return seconds;
  }
  return undefined;
}
