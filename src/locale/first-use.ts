import { sentence } from './phrases.js';

/** An abbreviation, and what it is written out as; the long form holds the short one. */
export interface Abbreviation {
  readonly short: string;
  readonly long: string;
}

/** Where a text holds an abbreviation as a word of its own; -1 where it does not. */
function wordAt(text: string, short: string): number {
  const isPart = (character: string | undefined): boolean => /[\p{L}\p{N}]/u.test(character ?? '');
  for (let at = text.indexOf(short); at >= 0; at = text.indexOf(short, at + 1)) {
    if (!isPart(text[at - 1]) && !isPart(text[at + short.length])) return at;
  }
  return -1;
}

/** Whether a sentence begins here. */
const begins = (text: string, at: number): boolean => at === 0 || /[.?!] $/.test(text.slice(0, at));

/**
 * Writes out every abbreviation where it stands first within a block that is read as one: hand it the texts of the block in
 * the order in which they are read. Later uses stay short, and a long form that stands again becomes the short one.
 */
export function firstUses(abbreviations: Readonly<Record<string, Abbreviation>>): (text: string) => string {
  const told = new Set<string>();
  return (text) =>
    Object.values(abbreviations).reduce((now, { short, long }) => {
      const written = now.toLowerCase().indexOf(long.toLowerCase());
      if (told.has(short))
        return written < 0 ? now : now.slice(0, written) + short + now.slice(written + long.length);
      const at = wordAt(now, short);
      if (at < 0) return now;
      told.add(short);
      if (written >= 0 && written <= at) return now;
      return now.slice(0, at) + (begins(now, at) ? sentence(long) : long) + now.slice(at + short.length);
    }, text);
}
