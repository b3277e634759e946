/** Registers German for every element of the page, and exports its words. */
import { type Language, registerLanguage } from '../languages.js';
import { de as map } from './index.js';
import { deParts } from './parts.js';

/** Every word of the library in German. */
export const de: Language = { ...map, ...deParts };

registerLanguage('de', de);
