import { oppositeSide, type Place, placeFromKey, PLACES } from '../../src/anatomy/index.js';
import {
  bruitAt,
  clearPlace,
  emptyExamination,
  type Examination,
  type Grade,
  pulseAt,
  type PulseFinding,
  setBruit,
  setPulse,
} from '../../src/examination/index.js';

/** A place by its key; a typing mistake in a test stops the test. */
export function place(key: string): Place {
  const found = placeFromKey(key);
  if (!found) throw new RangeError(`no place "${key}"`);
  return found;
}

/** An examination from place keys: a grade, or a whole finding. The aorta goes by `midline abdominal-aorta`. */
export function examined(
  findings: Readonly<Record<string, Grade | PulseFinding>>,
  start: Examination = emptyExamination(),
): Examination {
  return Object.entries(findings).reduce(
    (e, [key, finding]) =>
      setPulse(e, place(key), typeof finding === 'string' ? { grade: finding } : finding),
    start,
  );
}

/** The same examination with right and left swapped. */
export function mirrored(examination: Examination): Examination {
  const cleared = PLACES.reduce(clearPlace, examination);
  return PLACES.reduce((e, at) => {
    const to = { site: at.site, side: oppositeSide(at.side) };
    const pulse = pulseAt(examination, at);
    const bruit = bruitAt(examination, at);
    const felt = pulse ? setPulse(e, to, pulse) : e;
    return bruit ? setBruit(felt, to, bruit) : felt;
  }, cleared);
}
