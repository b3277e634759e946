import { decimals, joined } from '../phrases.js';

export { capitalised, paragraph, sentence } from '../phrases.js';

/** "a", "a and b", "a, b and c". */
export const list = (items: readonly string[], conjunction: 'and' | 'or' = 'and'): string =>
  joined(items, conjunction);

/** A number with a decimal point; with `digits` to so many decimals. */
export const decimal = decimals('.');

/** A probability as a whole number; what is nearly none or nearly certain is not called so. */
export function percent(probability: number): string {
  if (probability > 0 && probability < 0.005) return '<1%';
  if (probability > 0.995 && probability < 1) return '>99%';
  return `${Math.round(probability * 100)}%`;
}
