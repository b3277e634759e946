import { speechFrom } from '../phrases.js';

export { capitalised, dateIn, paragraph, sentence } from '../phrases.js';

export const speech = speechFrom({ and: 'und', or: 'oder', mark: ',', percent: ' %' });
export const { list, either, decimal, percent } = speech;

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

/** "IIa bis IIb". */
export const range = (from: string, to: string): string => `${from} bis ${to}`;
