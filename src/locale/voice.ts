import { american } from './en/american.js';
import { regionOf } from './languages.js';
import type { Register, Voice } from './terms.js';

/** How regions spell, by lower-case tag. */
const SPELLINGS: Readonly<Record<string, (text: string) => string>> = { 'en-us': american };

/** The voice in which words are told for a language tag. */
export function voiceFor(tag: string, register: Register): Voice {
  const region = regionOf(tag);
  return { register, region, spell: region === undefined ? undefined : SPELLINGS[region] };
}
