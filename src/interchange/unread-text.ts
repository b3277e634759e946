import { partMessagesFor } from '../locale/parts.js';
import type { Register } from '../locale/terms.js';
import type { UnreadCode } from '../statements/index.js';

/**
 * The sentence that says why something of a bundle was not read.
 * @param language BCP 47 tag of a registered language; English where not given or not registered
 */
export function unreadText(why: UnreadCode, language = 'en', register: Register = 'trade'): string {
  return partMessagesFor(language, register).exchange.why[why];
}
