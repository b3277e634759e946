import { en } from './en/index.js';

/** Every word a person reads. Another language is an object of the same shape. */
export type Messages = typeof en;

const LANGUAGES = new Map<string, Messages>([['en', en]]);

/** Makes a further language known, by its BCP 47 tag. */
export function registerLanguage(tag: string, messages: Messages): void {
  LANGUAGES.set(tag.toLowerCase(), messages);
}

/** The words for a language tag: the very tag, else its base language, else English. */
export function messagesFor(tag: string): Messages {
  const wanted = tag.toLowerCase();
  return LANGUAGES.get(wanted) ?? LANGUAGES.get(wanted.split('-')[0] ?? '') ?? en;
}

export { en };
