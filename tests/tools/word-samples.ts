/** Arguments for every entry of the locale that is a function; a new entry without a sample here fails the type check. */
import type { Language } from '../../src/locale/index.js';
import { MAP_SAMPLES } from './word-samples-map.js';
import { PART_SAMPLES } from './word-samples-parts.js';
import type { Samples } from './word-samples-of.js';

export const SAMPLES: Samples<Language> = { ...MAP_SAMPLES, ...PART_SAMPLES };
