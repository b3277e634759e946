import type { LanguageTag } from '../../src/locale/list.js';
import { german } from './de.js';
import { english } from './en.js';
import type { LanguageSamples } from './types.js';

export type { LanguageSamples };

/** What the tests know of every listed language; one without samples fails the type check. */
export const LANGUAGE_SAMPLES: Readonly<Record<LanguageTag, LanguageSamples>> = { en: english, de: german };
export const ALL_SAMPLES = Object.values(LANGUAGE_SAMPLES);
/** Every language but English, which is the one the others are checked against. */
export const TRANSLATIONS = ALL_SAMPLES.filter(({ tag }) => tag !== 'en');
