import {
  type BruitFinding,
  EditError,
  type Examination,
  type PulseFinding,
  setBruit,
  setFields,
  setPulse,
} from '../examination/index.js';
import { fieldAt, patchAt } from '../examination/patch.js';
import { isListeningSite, isPulseSite, type Place } from '../anatomy/index.js';
import type { SummaryLine } from '../statements/index.js';
import { type BodyPart, itemsOf, type ReportItem } from './items.js';
import type { FindingPath } from './paths.js';

/**
 * What an earlier visit found and nobody has confirmed today. It is no part of today's record: not in the reading, not in the flags,
 * not in what is saved.
 */
export interface Unconfirmed {
  /** Names it among all others. */
  readonly key: string;
  readonly lines: readonly SummaryLine[];
  /** Where it stands in the record. */
  readonly from: readonly FindingPath[];
  /** Missing where it is about the patient as a whole. */
  readonly at?: BodyPart;
}

/**
 * What may be taken over by a word of confirmation: what hand and ear find again, and what stays true of a patient. What is measured,
 * timed, staged or called for is of its day, and so is how and when a complaint began.
 */
const LASTING: readonly RegExp[] = [
  /^(pulses|bruits|inspection)\./,
  /^history\.(leg|arm)\.(right|left)\.(symptom|severity|coldFingers|dizzyOnUse|chestPainOnUse|note)$/,
  /^history\.(rhythm|risks|operations)$/,
  /^context\.(?!injury|mechanism)/,
];

const isLasting = ({ from }: ReportItem): boolean =>
  from.length > 0 && from.every((path) => LASTING.some((pattern) => pattern.test(path)));

/** Items that stand or fall together: those of the same fields, and what one limb complains of. */
function keyOf({ from, line, at }: ReportItem): string {
  return line.code === 'limb-history' ? `history ${at}` : from.join(' ');
}

const standsIn = (record: Examination, path: FindingPath): boolean =>
  fieldAt(record, path.split('.')) !== undefined;

/** What the earlier visit found, in the order of the bedside, as far as today's record says nothing of it. */
export function unconfirmed(earlier: Examination, now: Examination): readonly Unconfirmed[] {
  const { history, context, inspection, sites } = itemsOf(earlier);
  const groups = new Map<string, ReportItem[]>();
  for (const item of [...context, ...history, ...inspection, ...sites].filter(isLasting)) {
    const key = keyOf(item);
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups].flatMap(([key, items]): Unconfirmed[] => {
    const from = [...new Set(items.flatMap((item) => item.from))];
    if (from.some((path) => standsIn(now, path)) || !from.some((path) => standsIn(earlier, path))) return [];
    const { at } = items[0]!;
    const lines = items.map(({ line }) => line as SummaryLine);
    return [{ key, lines, from, ...(at && { at }) }];
  });
}

/** One field of an earlier record as found again today; the very same record where it cannot be. */
function found(now: Examination, earlier: Examination, path: FindingPath): Examination {
  const [part, ...rest] = path.split('.') as [keyof Examination, ...string[]];
  const value = fieldAt(earlier, [part, ...rest]);
  if (value === undefined || standsIn(now, path)) return now;
  const place = { site: rest[0], side: rest[1] } as Place;
  if (part === 'pulses') return isPulseSite(place.site) ? setPulse(now, place, value as PulseFinding) : now;
  if (part === 'bruits')
    return isListeningSite(place.site) ? setBruit(now, place, value as BruitFinding) : now;
  return setFields(now, { [part]: patchAt(now[part] as object | undefined, rest, value) });
}

/**
 * Today's record with what a person has confirmed: exactly the fields of these entries, as they stood at the earlier visit. What today's
 * record says already stays.
 * @param entries of {@link unconfirmed} of the same two records
 */
export function confirmed(
  earlier: Examination,
  now: Examination,
  entries: readonly Unconfirmed[],
): Examination {
  return entries.reduce((record, { from }) => {
    try {
      return from.reduce((one, path) => found(one, earlier, path), record);
    } catch (error) {
      // A later version's word that today's record has no room for: nothing of the entry is taken.
      if (error instanceof EditError) return record;
      throw error;
    }
  }, now);
}
