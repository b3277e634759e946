import { regionsOf, type SkinName } from '../anatomy/index.js';
import { type Mark, MARK_FORMS } from './types/marks.js';

/** Apart from the edits of marks, which know the plates: a reading needs the whole figure alone. */
type Placed = Readonly<Pick<Mark, 'kind' | 'points' | 'on'>>;

/** The same derivation of a mark, made once for each: a mark is replaced, never changed. */
export function once(derive: (mark: Placed) => readonly SkinName[]): typeof derive {
  const known = new WeakMap<object, readonly SkinName[]>();
  return (mark) => {
    const names = known.get(mark) ?? derive(mark);
    known.set(mark, names);
    return names;
  };
}

/** What a mark covers on the whole figure, wherever it was drawn, largest share first; empty when it lies off the skin. */
export const figureRegions = once(({ kind, points }) => regionsOf(points, MARK_FORMS[kind]));
