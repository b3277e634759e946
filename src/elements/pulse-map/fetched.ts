import type { Messages } from '../../locale/index.js';
import type { Register } from '../../locale/terms.js';
import { Later } from '../common/later.js';
import { reader } from '../pulse-reading/reader.js';
import type * as Pictures from './picture/export.js';

/**
 * The chunk that the map fetches after its first paint. Code that uses it writes `later.part?.…`, and shows nothing of it until
 * it has arrived: the price of a first paint that loads a quarter less.
 */
export const later = new Later(() => import('./later.js'));

/** Every word of the map and its reading, in a language and register; nothing until they have arrived. */
export function allWordsFor(tag: string, register: Register): Messages | undefined {
  return (later.part?.limbs ?? reader.part)?.messagesFor(tag, register);
}

/**
 * What draws pictures.
 * @throws Error until it has arrived
 */
export function drawing(): Pick<typeof Pictures, 'drawStill' | 'drawPNG'> {
  if (later.part) return later.part;
  throw new Error('picture: found its code not fetched yet, expected it a moment after the first paint');
}
