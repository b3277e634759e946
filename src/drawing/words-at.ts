import type { Place } from '../anatomy/index.js';
import { bruitAt, type Examination, isBruitLocked, isPulseLocked, pulseAt } from '../examination/index.js';
import type { ShownMessages } from '../locale/shown.js';

/** Whether a later version recorded something here that this one does not know. */
export function isUnknownAt(examination: Examination, place: Place): boolean {
  return isPulseLocked(examination, place) || isBruitLocked(examination, place);
}

/**
 * What is recorded at a place, in words; empty when nothing is.
 * @param pulse overrides the recorded pulse, for previews
 * @param between what stands between two findings
 */
export function wordsAt(
  examination: Examination,
  place: Place,
  words: ShownMessages,
  pulse = pulseAt(examination, place),
  between = '; ',
): string {
  const known = words.map.findings(pulse, bruitAt(examination, place), examination.scale, between);
  const unknown = isUnknownAt(examination, place) ? words.examination.unknownHere : '';
  return [known, unknown].filter(Boolean).join(between);
}
