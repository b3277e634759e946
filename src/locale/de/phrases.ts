import { speechFrom } from '../speech.js';

export { dateIn, sentence } from '../phrases.js';

export const speech = speechFrom({ and: 'und', or: 'oder', mark: ',', percent: ' %' });
export const { list, either, decimal, percent } = speech;

/** "IIa bis IIb". */
export const range = (from: string, to: string): string => `${from} bis ${to}`;
