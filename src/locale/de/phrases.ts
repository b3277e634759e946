import { decimals, joined } from '../phrases.js';

export { capitalised, paragraph, sentence } from '../phrases.js';

/** "a", "a und b", "a, b und c". */
export const list = (items: readonly string[], conjunction: 'und' | 'oder' = 'und'): string =>
  joined(items, conjunction);

/** A number with a decimal comma; with `digits` to so many decimals. */
export const decimal = decimals(',');
