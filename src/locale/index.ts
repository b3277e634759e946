import { en } from './en/index.js';
import { type Messages, registeredFor } from './languages.js';

export {
  type Language,
  type Messages,
  onLanguage,
  type PartMessages,
  registerLanguage,
  type RegisteredLanguage,
} from './languages.js';
export { LANGUAGES, type LanguageEntry, type LanguageTag } from './list.js';
export { en };

/** The words of map and reading for a language tag: the very tag, else its base language, else English. */
export function messagesFor(tag: string): Messages {
  return registeredFor(tag) ?? en;
}
