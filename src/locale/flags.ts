import { flags as english } from './en/flags.js';
import type { FlagWords } from './flag-words.js';
import { registeredFor } from './languages.js';
import { inVoice, type Register } from './terms.js';
import { voiceFor } from './voice.js';

export type { FlagWords };

/**
 * The words of the red flags alone, for a language tag as {@link registeredFor} takes it, else in English: the map shows
 * flags and carries no other part.
 */
export function flagWordsFor(tag: string, register: Register = 'trade'): FlagWords {
  return inVoice<FlagWords>(registeredFor(tag)?.flags ?? english, voiceFor(tag, register));
}
