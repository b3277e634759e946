import { decimals, joined } from '../phrases.js';

export { capitalised, paragraph, sentence } from '../phrases.js';

/** "a", "a and b", "a, b and c". */
export const list = (items: readonly string[], conjunction: 'and' | 'or' = 'and'): string =>
  joined(items, conjunction);

/** A number with a decimal point; with `digits` to so many decimals. */
export const decimal = decimals('.');
