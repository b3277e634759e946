import { SIDES } from '../anatomy/index.js';
import { readBedside } from '../bedside/index.js';
import type { Examination } from '../examination/index.js';
import { LESSON_CAUSES, type LessonCause } from '../lesson/index.js';
import { redFlags } from '../triage/index.js';
import { type Truth, withinReach } from './truth.js';

/** What a learner can name as the cause. */
export const PRACTICE_CAUSES = LESSON_CAUSES;
export type PracticeCause = LessonCause;

/** What there is to be found, and how old the patient is where that is known, in years. */
interface Facts {
  readonly record: Examination;
  readonly age: number | undefined;
}
type Told = (facts: Facts) => boolean;

const irregular: Told = ({ record }) => record.history?.rhythm === 'atrial-fibrillation';
const claudicated: Told = ({ record: { context, history } }) =>
  SIDES.some(
    (side) =>
      (context?.legClaudication?.[side] ?? 'none') !== 'none' ||
      history?.leg?.[side]?.symptom === 'claudication',
  );
const bulges: Told = ({ record: { pulses, context } }) =>
  Boolean(context?.aneurysms?.length) ||
  Object.values(pulses ?? {}).some((sides) =>
    Object.values(sides as Readonly<Record<string, { readonly expansile?: true }>>).some(
      ({ expansile }) => expansile,
    ),
  );
const torn: Told = ({ record }) => redFlags(record).some(({ code }) => code === 'dissection');
const legsLag: Told = ({ record: { delays } }) =>
  SIDES.some((side) => delays?.radioFemoral?.[side] === 'delayed');
const pressed: Told = ({ record }) =>
  SIDES.some((side) =>
    POSITIONS.some((id) => /abnormal|borderline/.test(readBedside(id, side, record.bedside)?.verdict ?? '')),
  );
const POSITIONS = ['scalene', 'costoclavicular', 'hyperabduction', 'arm-stress'] as const;
/** Onset before it is a criterion of Takayasu's arteritis (Arend WP et al., Arthritis Rheum 1990;33:1129, from memory). */
const young: Told = ({ age }) => age !== undefined && age <= 40;
/** A smoker under fifty: two of the criteria of Buerger's disease (Shionoya S, Cardiovasc Surg 1993;1:207, from memory). */
const youngSmoker: Told = ({ record, age }) =>
  age !== undefined && age < 50 && record.context?.smoking === 'current';
const lowPressure: Told = ({ record: { circulation } }) =>
  circulation?.shock === true || (circulation?.systolic ?? LOW_SYSTOLIC) < LOW_SYSTOLIC;
/** Below it, in mmHg, the pressure at the arm itself speaks for low flow. Rule of thumb. */
const LOW_SYSTOLIC = 100;
/** Disease of the arms alone, on both sides. */
const bothArmsAlone: Told = ({ record }) => {
  const reach = withinReach(record);
  return reach.length > 1 && reach.every((limb) => limb.endsWith('arm'));
};

/**
 * What is easily taken for what, and the finding that parts the two; without it the findings leave both open. Common practice, no source,
 * save where one is named.
 */
const TAKEN_FOR: Readonly<
  Partial<Record<LessonCause, readonly (readonly [other: LessonCause, told: Told])[]>>
> = {
  embolism: [['thrombosis', irregular]],
  thrombosis: [['embolism', claudicated]],
  aneurysm: [
    ['thrombosis', bulges],
    ['embolism', bulges],
  ],
  dissection: [['embolism', torn]],
  'large-vessel': [['atherosclerosis', young]],
  atherosclerosis: [['large-vessel', (facts) => !bothArmsAlone(facts)]],
  'small-artery': [['atherosclerosis', youngSmoker]],
  coarctation: [['atherosclerosis', legsLag]],
  'low-flow': [['cold', lowPressure]],
  cold: [['low-flow', (facts) => !lowPressure(facts)]],
};
/** Causes that are no disease of an artery of the limbs. */
const OF_THE_BODY: readonly LessonCause[] = ['low-flow', 'cold', 'none'];

/** What shows of a cause where no pulse, bruit or index is altered. */
const OWN_SIGN: Readonly<Partial<Record<LessonCause, Told>>> = {
  aneurysm: bulges,
  coarctation: legsLag,
  dissection: torn,
  entrapment: pressed,
};

/**
 * Every cause that all there is to be found leaves open, the true one first: an embolus in a regular heart cannot be told at the bedside
 * from a clot grown in place, and a narrowing that no hand, ear or cuff shows from health.
 */
export function causesLeftOpen({ record, cause, patient }: Truth): readonly LessonCause[] {
  if (!cause) return [];
  const facts: Facts = { record, age: patient?.age };
  const others = (TAKEN_FOR[cause] ?? []).flatMap(([other, told]) => (told(facts) ? [] : [other]));
  const shows = withinReach(record).length > 0 || OWN_SIGN[cause]?.(facts) === true;
  const hidden = !OF_THE_BODY.includes(cause) && !shows;
  return [...new Set([cause, ...others, ...(hidden ? (['none'] as const) : [])])];
}
