import {
  isListeningSite,
  isPulseSite,
  type Limb,
  oppositeSide,
  type Place,
  PLACES,
  siteDefinition,
} from '../anatomy/index.js';
import { bruitAt, isHeard, isStated, pulseAt, unstatedPlaces } from './queries.js';
import type { BruitFinding, PulseFinding } from './schema/pulses.js';
import type { Examination } from './schema/record.js';

/*
 * Edits are pure: each returns a new examination and leaves the given one as it was. An edit that changes nothing returns
 * the very same object, so that a caller can tell.
 */

/** A copy without fields that are `undefined`; `undefined` when nothing is left. */
function compact<T extends object>(value: T): T | undefined {
  const entries = Object.entries(value).filter(([, field]) => field !== undefined);
  return entries.length ? (Object.fromEntries(entries) as T) : undefined;
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** Sets or, with `undefined`, removes top-level fields such as `scale`, `onset`, `examiner`. */
export function setFields(examination: Examination, fields: Partial<Examination>): Examination {
  const next = compact({ ...examination, ...fields }) as Examination;
  return same(next, examination) ? examination : next;
}

function put(
  examination: Examination,
  part: 'pulses' | 'bruits',
  { site, side }: Place,
  finding: PulseFinding | BruitFinding | undefined,
): Examination {
  const all = examination[part] as Record<string, Record<string, unknown>> | undefined;
  const sides = compact({ ...all?.[site], [side]: finding });
  const next = compact({ ...all, [site]: sides });
  return setFields(examination, { [part]: next });
}

function check(place: Place, known: boolean): void {
  const sides = PLACES.filter((p) => p.site === place.site).map((p) => p.side);
  if (!known || !sides.includes(place.side)) {
    throw new RangeError(`no such site: "${place.side} ${place.site}"`);
  }
}

/**
 * Changes what was found at a pulse site; fields left out stay, fields set to `undefined` and empty notes go. What the
 * finger felt (grade, thrill, expansile) replaces a reason why it could not feel, and a reason replaces what was felt. A Doppler
 * signal stays with either: it may be heard where swelling keeps the finger away.
 * @throws RangeError for a site or side that does not exist
 */
export function setPulse(examination: Examination, place: Place, patch: Partial<PulseFinding>): Examination {
  check(place, isPulseSite(place.site));
  const merged: PulseFinding = { ...pulseAt(examination, place), ...patch };
  if (patch.grade || patch.thrill || patch.expansile) {
    delete merged.couldNotExamine;
    if (patch.grade && !patch.increased) delete merged.increased;
  } else if (patch.couldNotExamine) {
    for (const field of ['grade', 'increased', 'expansile', 'thrill'] as const) delete merged[field];
  }
  if (merged.grade !== 'bounding') delete merged.increased;
  if (merged.note === '') delete merged.note;
  return put(examination, 'pulses', place, compact(merged));
}

/**
 * Changes what was heard at a listening site, in the manner of {@link setPulse}.
 * @throws RangeError for a site or side that does not exist
 */
export function setBruit(examination: Examination, place: Place, patch: Partial<BruitFinding>): Examination {
  check(place, isListeningSite(place.site));
  const merged: BruitFinding = { ...bruitAt(examination, place), ...patch };
  if (patch.bruit) delete merged.couldNotExamine;
  else if (patch.couldNotExamine) delete merged.bruit;
  if (merged.note === '') delete merged.note;
  return put(examination, 'bruits', place, compact(merged));
}

/** Takes back what was felt at a place. */
export function clearPulse(examination: Examination, place: Place): Examination {
  return isPulseSite(place.site) ? put(examination, 'pulses', place, undefined) : examination;
}

/** Takes back what was heard at a place. */
export function clearBruit(examination: Examination, place: Place): Examination {
  return isListeningSite(place.site) ? put(examination, 'bruits', place, undefined) : examination;
}

/** Takes everything back that was recorded at a place. */
export function clearPlace(examination: Examination, place: Place): Examination {
  return clearBruit(clearPulse(examination, place), place);
}

/** Records every pulse not yet stated as normal. Never touches a stated site. */
export function restNormal(examination: Examination): Examination {
  return unstatedPlaces(examination).reduce(
    (next, place) => setPulse(next, place, { grade: 'normal' }),
    examination,
  );
}

/** The places of a limb on its own side: sites of the trunk that are paired count with the leg. */
export function placesOfLimb({ side, kind }: Limb): Place[] {
  return PLACES.filter((place) => {
    const { region } = siteDefinition(place.site);
    return place.side === side && (region === kind || (kind === 'leg' && region === 'trunk'));
  });
}

/** Takes everything back that was recorded on a limb. */
export function clearLimb(examination: Examination, limb: Limb): Examination {
  return placesOfLimb(limb).reduce(clearPlace, examination);
}

/** What one side says of the other: everything but its note, which is about one side only. */
function withoutNote<T extends { note?: string | undefined }>(finding: T | undefined): T | undefined {
  return finding && compact({ ...finding, note: undefined });
}

/**
 * Records at a place what stands at the same site of the other side; its own note stays. Where nothing stands on the other
 * side, and in the midline, nothing changes.
 */
export function copyFromOtherSide(examination: Examination, place: Place): Examination {
  if (place.side === 'midline') return examination;
  const from = { site: place.site, side: oppositeSide(place.side) };
  let next = examination;
  const pulse = withoutNote(pulseAt(examination, from));
  if (pulse)
    next = put(next, 'pulses', place, compact({ ...pulse, note: pulseAt(examination, place)?.note }));
  const bruit = withoutNote(bruitAt(examination, from));
  if (bruit)
    next = put(next, 'bruits', place, compact({ ...bruit, note: bruitAt(examination, place)?.note }));
  return next;
}

/**
 * Records on a limb, wherever no pulse or no bruit is stated yet, the grade, bruit or reason of the other side. Never touches what is
 * stated, and leaves notes and marks where they are.
 */
export function fillFromOtherSide(examination: Examination, limb: Limb): Examination {
  return placesOfLimb(limb).reduce((filled, place) => {
    const from = { site: place.site, side: oppositeSide(place.side) };
    const pulse = withoutNote(pulseAt(examination, from));
    const bruit = withoutNote(bruitAt(examination, from));
    let next = filled;
    const own = pulseAt(examination, place);
    // Its own marks win: where a thrill was felt, the other side's reason is not taken over.
    if (isStated(pulse) && !isStated(own)) next = setPulse(next, place, { ...pulse, ...own });
    if (isHeard(bruit) && !isHeard(bruitAt(examination, place))) next = setBruit(next, place, bruit ?? {});
    return next;
  }, examination);
}
