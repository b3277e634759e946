import { speechFrom } from '../speech.js';

export { dateIn, sentence } from '../phrases.js';

export const speech = speechFrom({ and: 'and', or: 'or', mark: '.', percent: '%' });
export const { list, either, decimal, percent } = speech;

/** "IIa to IIb". */
export const range = (from: string, to: string): string => `${from} to ${to}`;
