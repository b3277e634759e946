import { Later } from '../common/later.js';
import type * as Pictures from './picture/export.js';

/**
 * The chunk that the map fetches after its first paint. Code that uses it writes `later.part?.…`, and shows nothing of it until
 * it has arrived: the price of a first paint that loads a quarter less.
 */
export const later = new Later(() => import('./later.js'));

/**
 * What draws pictures.
 * @throws Error until it has arrived
 */
export function drawing(): Pick<typeof Pictures, 'drawStill' | 'drawPNG'> {
  if (later.part) return later.part;
  throw new Error('picture: found its code not fetched yet, expected it a moment after the first paint');
}
