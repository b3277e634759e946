import { Later } from '../common/later.js';

/**
 * The chunk that the map fetches after its first paint. Code that uses it writes `later.part?.…`, and shows nothing of it until
 * it has arrived: the price of a first paint that loads a quarter less.
 */
export const later = new Later(() => import('./later.js'));
