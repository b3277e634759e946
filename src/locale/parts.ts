import { enParts } from './en/parts.js';
import { type PartMessages, registeredFor, type RegisteredLanguage } from './languages.js';
import { inVoice, type Register } from './terms.js';
import { voiceFor } from './voice.js';

/*
 * The words of the examination around the pulses stand apart from those of the map, so that a page with the map alone does
 * not carry them.
 */

export { enParts };
export type { PartMessages };

const whole = new WeakMap<RegisteredLanguage, PartMessages>();

/** A language with what it leaves out in English, the same object each time. */
function completed(language: RegisteredLanguage): PartMessages {
  const known = whole.get(language) ?? { ...enParts, ...language };
  whole.set(language, known);
  return known;
}

/**
 * The words of those parts for a language tag: the very tag, else its base language; what it leaves out is English.
 * @param register terms of the trade, or plain words where the language has them
 */
export function partMessagesFor(tag: string, register: Register = 'trade'): PartMessages {
  const found = registeredFor(tag);
  return inVoice<PartMessages>(found ? completed(found) : enParts, voiceFor(tag, register));
}
