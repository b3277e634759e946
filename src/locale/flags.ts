import { flags as english, type FlagWords } from './en/flags.js';
import { registeredFor } from './languages.js';

export type { FlagWords };

/**
 * The words of the red flags alone, for a language tag as {@link registeredFor} takes it, else in English: the map shows
 * flags and carries no other part.
 */
export function flagWordsFor(tag: string): FlagWords {
  return registeredFor(tag)?.flags ?? english;
}
