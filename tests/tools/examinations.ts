import {
  oppositeSide,
  type Place,
  placeFromKey,
  placeKey,
  PLACES,
  placesUpstream,
  PULSE_PLACES,
  type PulseSiteId,
  stationsOf,
} from '../../src/anatomy/index.js';
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

const endOf = (kind: 'arm' | 'leg'): readonly PulseSiteId[] =>
  stationsOf({ side: 'left', kind })
    .at(-1)
    ?.map(({ site }) => site) ?? [];
/** The pulse sites at the ends of the limbs. */
export const [WRIST, FOOT] = [endOf('arm'), endOf('leg')];

/** This pulse place and every one that is fed through it, so that a worked example need not list the rest of a limb. */
export function outwardFrom(key: string): string[] {
  const from = place(key);
  return PULSE_PLACES.filter((at) => at === from || placesUpstream(at, PLACES).includes(from)).map(placeKey);
}

/** One grade at each of these places. */
export function graded(keys: readonly string[], grade: Grade): Record<string, Grade> {
  return Object.fromEntries(keys.map((key) => [key, grade]));
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
