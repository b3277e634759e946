import { regionsOf } from '../anatomy/index.js';
import { once } from './once.js';
import { type Mark, MARK_FORMS } from './types/marks.js';

/** What a mark covers on the whole figure, wherever it was drawn, largest share first; empty when it lies off the skin. */
export const figureRegions = once(({ kind, points }: Readonly<Pick<Mark, 'kind' | 'points'>>) =>
  regionsOf(points, MARK_FORMS[kind]),
);
