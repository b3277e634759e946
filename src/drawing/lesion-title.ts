import { namedStretches } from '../anatomy/index.js';
import type { Messages } from '../locale/index.js';
import type { LesionMark } from './flow.js';

/** What a lesion is called: where it lies and how likely it is there. */
export function lesionTitle({ kind, between, pieces, strength }: LesionMark, words: Messages): string {
  const where = between
    ? words.localisation.between(between)
    : words.anatomy.stretches(namedStretches(pieces.map(({ piece }) => piece.key))).join(', ');
  return words.map.lesionMark(kind, where, strength === undefined ? '' : words.reading.percent(strength));
}
