import type { BedsideReading, BedsideTest } from './test.js';
import { INCOMPLETE, limitFor, type Limits, NOT_DONE, PRACTICE } from './test.js';

const BROWSE = "Browse's Introduction to the Symptoms and Signs of Surgical Disease, 4th ed., p. 175";

/** Pallor below this angle means severe ischaemia. Sources differ; the result stores the limit that was used. */
const limits: Limits = {
  unit: 'deg',
  usual: 20,
  options: [
    { value: 20, normalAt: true, source: BROWSE },
    { value: 30, normalAt: true, source: PRACTICE },
    { value: 15, normalAt: true, source: `${BROWSE} (lower end of 15 to 30)` },
  ],
};

/** Angles at which an ischaemic leg turns pale, and the angle at which a normal leg keeps its colour, in degrees. */
export const ISCHAEMIC_ANGLES = { from: 15, to: 30, source: BROWSE } as const;
export const NORMAL_ANGLE = { value: 90, source: BROWSE } as const;

/** Time until pallor, in seconds: seconds in severe disease, two to three minutes in mild. */
export const PALLOR_TIMES = { severeTo: 30, mildFrom: 120, source: PRACTICE } as const;

export type PallorGrade = 0 | 1 | 2 | 3 | 4;

/** Grades of pallor on raising the leg to 60 degrees, by the time it takes, in seconds. */
export const PALLOR_GRADES = {
  angle: 60,
  grade3To: 30,
  grade1At: 60,
  source: 'Spittell-type grading, restated by Stephens E, Medscape, peripheral vascular disease',
} as const;

/** The grade of pallor, 0 (none) to 4 (pale lying level); `undefined` when the measurements do not determine it. */
export function pallorGrade(result: {
  pallor?: boolean | undefined;
  angle?: number | undefined;
  seconds?: number | undefined;
}): PallorGrade | undefined {
  const { pallor, angle, seconds } = result;
  if (pallor && angle === 0) return 4;
  if (angle !== PALLOR_GRADES.angle || seconds === undefined) return undefined;
  if (!pallor) return seconds >= PALLOR_GRADES.grade1At ? 0 : undefined;
  if (seconds <= PALLOR_GRADES.grade3To) return 3;
  if (seconds < PALLOR_GRADES.grade1At) return 2;
  return seconds === PALLOR_GRADES.grade1At ? 1 : 0;
}

function pace(seconds: number | undefined): 'within-seconds' | 'minutes' | 'between' | undefined {
  if (seconds === undefined) return undefined;
  if (seconds <= PALLOR_TIMES.severeTo) return 'within-seconds';
  return seconds >= PALLOR_TIMES.mildFrom ? 'minutes' : 'between';
}

/** Raises the leg until the sole turns pale, and records the angle and the time. */
export const elevation: BedsideTest<'elevation'> = {
  id: 'elevation',
  eponym: 'Buerger',
  limb: 'leg',
  limits,
  evaluate(result, chosen): BedsideReading<'elevation'> {
    if (result.notDone) return NOT_DONE(result.notDone);
    const { pallor, angle, seconds } = result;
    if (pallor === undefined || angle === undefined) return INCOMPLETE;
    const grade = pallorGrade(result);
    const time = pace(seconds);
    const params = {
      angle,
      ...(seconds !== undefined && { seconds }),
      ...(grade !== undefined && { grade }),
    };
    if (!pallor) {
      // Either to the full, or by the protocol of the grades: 60 degrees, held for its time.
      return angle >= NORMAL_ANGLE.value || grade === 0
        ? { verdict: 'normal', code: 'keeps-colour', params }
        : { verdict: 'incomplete', code: 'not-raised-fully', params };
    }
    const notes = time && time !== 'between' ? ([`pallor-${time}`] as const) : [];
    const { value: limit } = limitFor(limits, result.limit, chosen);
    const base = { limit, params, notes };
    if (angle < limit) return { verdict: 'severe', code: 'pale-below-limit', ...base };
    if (angle <= ISCHAEMIC_ANGLES.to) return { verdict: 'abnormal', code: 'pale-in-range', ...base };
    return { verdict: 'abnormal', code: 'pale-high', ...base };
  },
};
