import { decimals, joined } from '../phrases.js';

export { capitalised, paragraph, sentence } from '../phrases.js';

/** "a", "a und b", "a, b und c". */
export const list = (items: readonly string[], conjunction: 'und' | 'oder' = 'und'): string =>
  joined(items, conjunction);

/** A number with a decimal comma; with `digits` to so many decimals. */
export const decimal = decimals(',');

/** A probability as a whole number; what is nearly none or nearly certain is not called so. */
export function percent(probability: number): string {
  if (probability > 0 && probability < 0.005) return '<1 %';
  if (probability > 0.995 && probability < 1) return '>99 %';
  return `${Math.round(probability * 100)} %`;
}

/** Sources are cited as printed; only what we say of them ourselves is German. */
const SAID_OF_SOURCES: readonly (readonly [string, string])[] = [
  ['common practice, no source', 'gängige Praxis, ohne Quelle'],
  ['common practice', 'gängige Praxis'],
  ['from memory', 'aus dem Gedächtnis'],
  ['set by the examiner', 'selbst festgelegt'],
  ['safety rule of these tables', 'Sicherheitsregel dieser Tabellen'],
];
export const cited = (source: string): string =>
  SAID_OF_SOURCES.reduce((text, [english, german]) => text.replace(english, german), source);
