import type { LanguageTag } from '../locale/list.js';
import type { Lexicon } from './meanings.js';
import { DE } from './words/de.js';
import { EN } from './words/en.js';

/**
 * What is read, language by language. It stands beside the reader and not with the words that are shown: nobody sees a lexicon, and a
 * page that takes no notes must not load one. The type asks for a lexicon of every language of the list.
 */
export const LEXICONS: Readonly<Record<LanguageTag, Lexicon>> = { en: EN, de: DE };
