import type { en } from './en/index.js';
import type { enParts } from './en/parts.js';
import { LANGUAGES } from './list.js';

/** The words of map and reading. */
export type Messages = typeof en;
/** The words of the examination around the pulses: history, inspection, tests, pressures, stages, flags. */
export type PartMessages = typeof enParts;
/** Every word of the library in one language. The shape is that of English, so the compiler finds what is missing. */
export type Language = Messages & PartMessages;
/** A language may leave out whole areas around the pulses; those stay English. */
export type RegisteredLanguage = Messages & Partial<PartMessages>;

interface Registry {
  readonly languages: Map<string, RegisteredLanguage>;
  readonly listeners: Set<() => void>;
}

/**
 * One for the whole page, however often the library is loaded: a language file beside the self-contained bundle is a bundle of
 * its own and must reach the same registry.
 */
const KEY = Symbol.for('pulse-map/languages');
const shared = globalThis as { [KEY]?: Registry };
const registry = (): Registry => (shared[KEY] ??= { languages: new Map(), listeners: new Set() });

/**
 * Makes a further language known to every element, also to those on the page already.
 * @param tag BCP 47 tag, such as `de` or `pt-BR`
 */
export function registerLanguage(tag: string, language: RegisteredLanguage): void {
  const { languages, listeners } = registry();
  languages.set(tag.toLowerCase(), language);
  for (const listener of listeners) listener();
}

/** The language registered for a tag: the very tag, else with its last subtags left off one by one. */
export function registeredFor(tag: string): RegisteredLanguage | undefined {
  const { languages } = registry();
  const subtags = tag.toLowerCase().split('-');
  for (; subtags.length; subtags.pop()) {
    const found = languages.get(subtags.join('-'));
    if (found) return found;
  }
  return undefined;
}

/**
 * Calls back whenever a language was registered.
 * @returns ends it
 */
export function onLanguage(listener: () => void): () => void {
  const { listeners } = registry();
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

/** The region of a tag that has words of its own in its language, in lower case. */
export function regionOf(tag: string): string | undefined {
  const regions = LANGUAGES.flatMap(({ regions: all }): readonly string[] => all);
  const lower = `${tag.toLowerCase()}-`;
  return regions.map((region) => region.toLowerCase()).find((region) => lower.startsWith(`${region}-`));
}
