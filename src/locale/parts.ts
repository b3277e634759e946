import { bedside } from './en/bedside.js';
import { flags } from './en/flags.js';
import { history } from './en/history.js';
import { inspection } from './en/inspection.js';
import { pressures } from './en/pressures.js';
import { staging } from './en/staging.js';
import { whole } from './en/whole.js';

/*
 * The words of the examination around the pulses stand apart from those of the map, so that a page with the map alone does
 * not carry them.
 */

/** English words of history, inspection, tests, pressures, stages and flags. */
export const enParts = { bedside, flags, history, inspection, pressures, staging, whole };
/** Every word of those parts. Another language is an object of the same shape. */
export type PartMessages = typeof enParts;

const LANGUAGES = new Map<string, PartMessages>([['en', enParts]]);

/** Makes a further language known, by its BCP 47 tag. */
export function registerPartLanguage(tag: string, messages: PartMessages): void {
  LANGUAGES.set(tag.toLowerCase(), messages);
}

/** The words for a language tag: the very tag, else its base language, else English. */
export function partMessagesFor(tag: string): PartMessages {
  const wanted = tag.toLowerCase();
  return LANGUAGES.get(wanted) ?? LANGUAGES.get(wanted.split('-')[0] ?? '') ?? enParts;
}
