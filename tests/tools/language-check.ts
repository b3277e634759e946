/** Checks the words of a language against English and against other languages; returns what is wrong with them. */
import type { Language } from '../../src/locale/index.js';
import type { LanguageSamples } from '../languages/types.js';
import { SAMPLES } from './word-samples.js';

type Fn = (...args: unknown[]) => unknown;
type Words = Readonly<Record<string, unknown>>;

/** One entry: where it stands, what English holds there, another language, and the samples of its arguments. */
interface Entry {
  readonly path: string;
  readonly meant: unknown;
  readonly said: unknown;
  readonly samples: readonly unknown[][] | undefined;
}

const isObject = (value: unknown): value is Words => typeof value === 'object' && value !== null;

/** Walks both languages and the samples side by side, key by key of either. */
function entries(meant: Words, said: Words, samples: Words | undefined, path = ''): Entry[] {
  return [...new Set([...Object.keys(meant), ...Object.keys(said)])].flatMap((key): Entry[] => {
    const at = path ? `${path} › ${key}` : key;
    const [theirs, ours, sample] = [meant[key], said[key], samples?.[key]];
    return isObject(theirs) && isObject(ours)
      ? entries(theirs, ours, sample as Words | undefined, at)
      : [{ path: at, meant: theirs, said: ours, samples: sample as Entry['samples'] }];
  });
}

/** Everything a call says, as texts in order; an id only names a thing. */
function texts(result: unknown): string[] {
  if (typeof result === 'string') return [result];
  if (!isObject(result)) return [String(result)];
  return Object.entries(result).flatMap(([key, value]) => (key === 'id' ? [] : texts(value)));
}

export interface Told {
  readonly path: string;
  readonly said: string;
  readonly meant: string;
}

export interface LanguageTexts {
  /** Entries that are missing, of another kind, or without samples. */
  readonly faults: readonly string[];
  /** Everything the language says, beside what English says. */
  readonly told: readonly Told[];
}

/** Everything a language says for every sample, with what English says for it. */
export function languageTexts(english: Language, language: Language): LanguageTexts {
  const faults: string[] = [];
  const told: Told[] = [];
  const all = entries(english as unknown as Words, language as unknown as Words, SAMPLES as unknown as Words);
  for (const { path, meant, said, samples } of all) {
    if (typeof said !== typeof meant) {
      faults.push(`${path}: found ${typeof said}, expected ${typeof meant}`);
    } else if (typeof meant !== 'function') {
      told.push({ path, said: String(said), meant: String(meant) });
    } else if (!samples?.length) {
      faults.push(`${path}: found no samples, expected at least one`);
    } else {
      for (const args of samples) {
        const [ours, theirs] = [texts((said as Fn)(...args)), texts((meant as Fn)(...args))];
        if (ours.length !== theirs.length) {
          faults.push(`${path}: found ${ours.length} things, expected ${theirs.length} as in English`);
        }
        ours.forEach((text, i) => told.push({ path, said: text, meant: theirs[i] ?? '' }));
      }
    }
  }
  return { faults, told };
}

/** The words of a text; what the samples put in is "xyz". */
const wordsOf = (text: string, quoted: RegExp): string[] =>
  (text.replace(quoted, '').match(/\p{L}+/gu) ?? []).map((word) => word.toLowerCase());

/** Texts with English in them by right: names of fields of the record, and titles of works. */
const QUOTES_ENGLISH = ['examination › fault', 'flags › cite'];

/** What is wrong with a translation's texts: left out, left in English, or numbers written as in another language. */
function translationFaults(
  { told }: LanguageTexts,
  { foreign, alike, quoted, wrongNumber }: LanguageSamples,
): string[] {
  return told.flatMap(({ path, said, meant }) => {
    const where = `${path}: "${said}" for "${meant}"`;
    const wrong: string[] = [];
    if ((said.trim() === '') !== (meant.trim() === '')) wrong.push(`${where}: nothing said`);
    if (/undefined|NaN|null|\[object|Infinity| {2}|\s[,.;]/.test(said))
      wrong.push(`${where}: not a sentence`);
    if (QUOTES_ENGLISH.includes(path)) return wrong;
    const words = wordsOf(said, quoted);
    if (said === meant && words.some((word) => !alike.has(word))) wrong.push(`${where}: left in English`);
    const strange = words.filter((word) => foreign.has(word));
    if (strange.length) wrong.push(`${where}: holds ${strange.join(', ')}`);
    if (wrongNumber.test(said)) wrong.push(`${where}: a number written as elsewhere`);
    return wrong;
  });
}

/** A text of at least so many words says something of its own. */
const OWN_WORDS = 3;
/** Two languages may have this share of longer texts in common: names of works, mostly. */
const MOST_IN_COMMON = 0.1;

/** The share of a language's longer texts that stand letter for letter in another language. */
export function shareInCommon(one: LanguageTexts, other: LanguageTexts): number {
  const theirs = new Set(other.told.map(({ said }) => said));
  const own = [...new Set(one.told.map(({ said }) => said))].filter(
    (said) => (said.match(/\p{L}+/gu) ?? []).length >= OWN_WORDS,
  );
  return own.filter((said) => theirs.has(said)).length / Math.max(1, own.length);
}

/** Everything wrong with a language, checked against English and every other one. */
export function languageFaults(
  english: Language,
  language: Language,
  samples: LanguageSamples,
  others: readonly (readonly [name: string, language: Language])[],
): string[] {
  const own = languageTexts(english, language);
  const copies = others.flatMap(([name, other]) => {
    const share = shareInCommon(own, languageTexts(english, other));
    return share > MOST_IN_COMMON
      ? [`${(share * 100).toFixed(0)}% of its texts stand in ${name} letter for letter`]
      : [];
  });
  return [...own.faults, ...translationFaults(own, samples), ...copies];
}
