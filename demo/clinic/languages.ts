import { LANGUAGES, type LanguageTag } from 'pulse-map/core';

/** Fetches the words of each language beside English, which is built in; one without an entry fails the type check. */
const WORDS: Readonly<Record<Exclude<LanguageTag, 'en'>, () => Promise<unknown>>> = {
  de: () => import('pulse-map/locale/de'),
};

/** The listed language of this tag, else English. */
export function languageOf(tag: string | null): LanguageTag {
  return LANGUAGES.find((one) => one.tag === tag)?.tag ?? 'en';
}

/** Fetches a language's words; elements re-render when they arrive, others wait for them. */
export async function fetchWords(tag: LanguageTag): Promise<void> {
  if (tag !== 'en') await WORDS[tag]();
}
