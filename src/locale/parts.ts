import { enParts } from './en/parts.js';
import { type PartMessages, registeredFor } from './languages.js';

/*
 * The words of the examination around the pulses stand apart from those of the map, so that a page with the map alone does
 * not carry them.
 */

export { enParts };
export type { PartMessages };

/** The words of those parts for a language tag: the very tag, else its base language; what it leaves out is English. */
export function partMessagesFor(tag: string): PartMessages {
  const found = registeredFor(tag);
  return found ? { ...enParts, ...found } : enParts;
}
