import { isListeningSite, isPulseSite, oppositeSide, type Place, PLACES } from '../anatomy/index.js';
import { isBruitLocked, isLocked, isPulseLocked } from './carried.js';
import { checkedFinding, checkedWord, compact, withFields } from './finish.js';
import { bruitAt, pulseAt } from './queries.js';
import type { Patch } from './types/common.js';
import {
  BRUIT_FIELDS,
  type BruitFinding,
  type FindingFields,
  PULSE_FIELDS,
  type PulseFinding,
} from './types/pulses.js';
import { type Examination, SCALE_IDS, type ScaleId } from './types/record.js';

/*
 * Edits are pure: each returns a new, deeply frozen examination and leaves the given one as it was. An edit that changes nothing
 * returns the very same object, so that a caller can tell; so does one of a finding that is locked. What an edit writes, any reader
 * takes: text that is too long, a word or number that is not allowed is an `EditError`, empty text takes its field away. Fields of
 * later versions stay.
 */

type Finding<P extends 'pulses' | 'bruits'> = P extends 'pulses' ? PulseFinding : BruitFinding;

function put<P extends 'pulses' | 'bruits'>(
  examination: Examination,
  part: P,
  { site, side }: Place,
  finding: Finding<P> | undefined,
): Examination {
  const all = examination[part] as Record<string, Record<string, unknown>> | undefined;
  const next = compact({ ...all, [site]: compact({ ...all?.[site], [side]: finding }) });
  return withFields(examination, { [part]: next });
}

function putPulse(examination: Examination, place: Place, finding: PulseFinding): Examination {
  const at = ['pulses', place.site, place.side];
  return put(examination, 'pulses', place, checkedFinding(PULSE_FIELDS, finding, at));
}

function putBruit(examination: Examination, place: Place, finding: BruitFinding): Examination {
  const at = ['bruits', place.site, place.side];
  return put(examination, 'bruits', place, checkedFinding(BRUIT_FIELDS, finding, at));
}

function check(place: Place, known: boolean): void {
  const sides = PLACES.filter((p) => p.site === place.site).map((p) => p.side);
  if (!known || !sides.includes(place.side)) {
    throw new RangeError(`no such site: "${place.side} ${place.site}"`);
  }
}

/**
 * Sets how grades are entered and shown. It checks without the schema, as the other edits here do.
 * @throws EditError for a scale that does not exist
 */
export function setScale(examination: Examination, scale: ScaleId): Examination {
  const known = checkedWord(scale, SCALE_IDS, ['scale']);
  return known === undefined || isLocked(examination, ['scale'])
    ? examination
    : withFields(examination, { scale: known });
}

/** What a patch leaves of a finding, without the fields that the patch rules out. */
function merged<T extends object>(own: T | undefined, patch: Patch<T>, out: readonly (keyof T)[]): T {
  return Object.fromEntries(
    Object.entries({ ...own, ...patch }).filter(([field]) => !out.includes(field as keyof T)),
  ) as T;
}

/**
 * Changes what was found at a pulse site; fields left out stay, fields set to `undefined` and empty notes go. What the
 * finger felt (grade, thrill, expansile) replaces a reason why it could not feel, and a reason replaces what was felt. A Doppler
 * signal stays with either: it may be heard where swelling keeps the finger away.
 * @throws RangeError for a site or side that does not exist, and for what the record does not take
 */
export function setPulse(examination: Examination, place: Place, patch: Patch<PulseFinding>): Examination {
  check(place, isPulseSite(place.site));
  if (isPulseLocked(examination, place)) return examination;
  const own = pulseAt(examination, place);
  const out: (keyof PulseFinding)[] = [];
  if (patch.grade || patch.thrill || patch.expansile) {
    out.push('couldNotExamine');
    if (patch.grade && !patch.increased) out.push('increased');
  } else if (patch.couldNotExamine) {
    out.push('grade', 'increased', 'expansile', 'thrill');
  }
  const grade = 'grade' in patch ? patch.grade : own?.grade;
  if (grade !== 'bounding') out.push('increased');
  return putPulse(examination, place, merged(own, patch, out));
}

/**
 * Changes what was heard at a listening site, in the manner of {@link setPulse}.
 * @throws RangeError for a site or side that does not exist, and for what the record does not take
 */
export function setBruit(examination: Examination, place: Place, patch: Patch<BruitFinding>): Examination {
  check(place, isListeningSite(place.site));
  if (isBruitLocked(examination, place)) return examination;
  const out: (keyof BruitFinding)[] = [];
  if (patch.bruit) out.push('couldNotExamine');
  else if (patch.couldNotExamine) out.push('bruit');
  return putBruit(examination, place, merged(bruitAt(examination, place), patch, out));
}

/** What stays when a finding is taken back: fields of later versions, which nobody here could see. */
function unseen<T extends object>(fields: FindingFields<T>, finding: T | undefined): T | undefined {
  if (!finding) return undefined;
  const rest = Object.entries(finding).filter(([field]) => !Object.hasOwn(fields, field));
  return rest.length ? (Object.fromEntries(rest) as T) : undefined;
}

/** Takes back what was felt at a place; what is locked stays. */
export function clearPulse(examination: Examination, place: Place): Examination {
  if (!isPulseSite(place.site) || isPulseLocked(examination, place)) return examination;
  return put(examination, 'pulses', place, unseen(PULSE_FIELDS, pulseAt(examination, place)));
}

/** Takes back what was heard at a place; what is locked stays. */
export function clearBruit(examination: Examination, place: Place): Examination {
  if (!isListeningSite(place.site) || isBruitLocked(examination, place)) return examination;
  return put(examination, 'bruits', place, unseen(BRUIT_FIELDS, bruitAt(examination, place)));
}

/** Takes everything back that was recorded at a place. */
export function clearPlace(examination: Examination, place: Place): Examination {
  return clearBruit(clearPulse(examination, place), place);
}

/**
 * What one side says of the other: all this version knows but its note, which is about one side only. Nothing where a part of it is
 * recorded in a way this version does not know.
 */
function mirrored<T extends { readonly note?: string }>(
  fields: FindingFields<T>,
  finding: T | undefined,
  locked: boolean,
): T | undefined {
  if (!finding || locked) return undefined;
  const known = Object.entries(finding).filter(([field]) => field !== 'note' && Object.hasOwn(fields, field));
  return known.length ? (Object.fromEntries(known) as T) : undefined;
}

/** What the other side of a place has. Not public: see {@link copyFromOtherSide}. */
export function otherSide(
  examination: Examination,
  { site, side }: Place,
): {
  readonly pulse: PulseFinding | undefined;
  readonly bruit: BruitFinding | undefined;
} {
  const from = { site, side: oppositeSide(side) };
  return {
    pulse: mirrored(PULSE_FIELDS, pulseAt(examination, from), isPulseLocked(examination, from)),
    bruit: mirrored(BRUIT_FIELDS, bruitAt(examination, from), isBruitLocked(examination, from)),
  };
}

/** A finding as the other side has it, with the note and the fields of later versions that stand here. */
function taken<T extends { readonly note?: string }>(
  fields: FindingFields<T>,
  other: T,
  own: T | undefined,
): T {
  return { ...unseen(fields, own), ...other, ...(own?.note && { note: own.note }) };
}

/**
 * Records at a place what stands at the same site of the other side; its own note stays. Where nothing stands on the other
 * side, or what stands on either is locked, and in the midline, nothing changes.
 */
export function copyFromOtherSide(examination: Examination, place: Place): Examination {
  if (place.side === 'midline') return examination;
  const { pulse, bruit } = otherSide(examination, place);
  let next = examination;
  if (pulse && !isPulseLocked(examination, place))
    next = putPulse(next, place, taken(PULSE_FIELDS, pulse, pulseAt(examination, place)));
  if (bruit && !isBruitLocked(examination, place))
    next = putBruit(next, place, taken(BRUIT_FIELDS, bruit, bruitAt(examination, place)));
  return next;
}
