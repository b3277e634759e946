import { isListeningSite, isPulseSite, type Place, PULSE_PLACES } from '../anatomy/index.js';
import { isPulseLocked } from './carried.js';
import type { Mark } from './types/marks.js';
import type { BruitFinding, PulseFinding } from './types/pulses.js';
import type { Examination } from './types/record.js';

type Sides<T> = { readonly right?: T; readonly left?: T; readonly midline?: T };

/** What was found at a pulse site; `undefined` when nobody examined it. */
export function pulseAt(
  examination: Pick<Examination, 'pulses'>,
  { site, side }: Place,
): PulseFinding | undefined {
  if (!isPulseSite(site)) return undefined;
  return (examination.pulses?.[site] as Sides<PulseFinding> | undefined)?.[side];
}

/** What was heard at a listening site; `undefined` when nobody listened. */
export function bruitAt(examination: Examination, { site, side }: Place): BruitFinding | undefined {
  if (!isListeningSite(site)) return undefined;
  return (examination.bruits?.[site] as Sides<BruitFinding> | undefined)?.[side];
}

/** Whether a pulse site is settled: graded, or said to be impossible to examine. */
export function isStated(finding: PulseFinding | undefined): boolean {
  return finding?.grade !== undefined || finding?.couldNotExamine !== undefined;
}

/** Whether a listening site is settled: something or nothing was heard, or it is said to be impossible to examine. */
export function isHeard(finding: BruitFinding | undefined): boolean {
  return finding?.bruit !== undefined || finding?.couldNotExamine !== undefined;
}

/** The pulse places that nobody has felt yet, in the order of examination. One recorded in a way this version does not know was felt. */
export function unstatedPlaces(examination: Examination) {
  return PULSE_PLACES.filter(
    (place) => !isStated(pulseAt(examination, place)) && !isPulseLocked(examination, place),
  );
}

/** Fields that say how or by whom, not what was found: a record with only these is empty. */
const SETTINGS = new Set(['format', 'scale']);

/** Whether anything has been recorded. */
export function isEmptyRecord(examination: Examination): boolean {
  return Object.keys(examination).every((key) => SETTINGS.has(key));
}

/** The marks on the skin, in the order they were recorded. */
export function skinMarks({ marks }: Examination): readonly Mark[] {
  return marks ?? [];
}
