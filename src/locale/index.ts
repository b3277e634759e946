import { en } from './en/index.js';
import { type Messages, registeredFor } from './languages.js';
import { inVoice, type Register } from './terms.js';
import { voiceFor } from './voice.js';

export {
  type Language,
  type Messages,
  onLanguage,
  type PartMessages,
  registerLanguage,
  type RegisteredLanguage,
} from './languages.js';
export { LANGUAGES, type LanguageEntry, type LanguageTag } from './list.js';
export { type Register, REGISTERS } from './terms.js';
export { en };

/**
 * The words of map and reading for a language tag: the very tag, else its base language, else English.
 * @param tag BCP 47; a region with words of its own, such as `en-US`, gets them
 * @param register terms of the trade, or plain words where the language has them
 */
export function messagesFor(tag: string, register: Register = 'trade'): Messages {
  return inVoice<Messages>(registeredFor(tag) ?? en, voiceFor(tag, register));
}
