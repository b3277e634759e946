import { say, type Term } from './terms.js';

/** A text of a language: the same for everyone, or a term of the trade with its plain words. */
export type Word = string | Term;
/** A word for each of these. */
export type Of<K extends string | number> = Readonly<Record<K, Word>>;

/** A term of the trade, and what anyone understands. */
export const term = (trade: string, plain: string): Term => ({ trade, plain });

/** Something to choose: what it is called, and a word for each choice. */
export interface Choice<K extends string> {
  readonly label: Word;
  readonly words: Of<K>;
}
export const choice = <K extends string>(label: Word, words: Of<K>): Choice<K> => ({ label, words });

/** Something that is so or is not. */
export interface YesNo {
  readonly yes: Word;
  readonly no: Word;
}
export const yesNo = (yes: Word, no: Word): YesNo => ({ yes, no });

/** A table of words as it is read: every term a text. */
export type Spoken<T> = T extends string | Term
  ? string
  : T extends readonly unknown[] | ((...args: never[]) => unknown)
    ? T
    : { readonly [K in keyof T]: Spoken<T[K]> };

const isTerm = (value: object): value is Term => 'trade' in value && typeof value.trade === 'string';

function reader(value: unknown): PropertyDescriptor {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return { value };
  if (isTerm(value)) return { get: () => say(value.trade, value.plain) };
  return { value: wordsFrom(value) };
}

/** A table of words, nested as one likes, with its terms looked up when they are read. */
export function wordsFrom<T extends object>(table: T): Spoken<T> {
  const words = {};
  for (const [key, value] of Object.entries(table))
    Object.defineProperty(words, key, { ...reader(value), enumerable: true });
  return words as Spoken<T>;
}

/** A word for each of these, looked up when it is read. */
export function wordFor<K extends string>(
  keys: readonly K[],
  word: (key: K) => string,
): Readonly<Record<K, string>> {
  const words = {} as Record<K, string>;
  for (const key of keys) Object.defineProperty(words, key, { enumerable: true, get: () => word(key) });
  return words;
}

/** The same words, each changed by a function when it is read. */
export const eachWord = <K extends string>(
  words: Readonly<Record<K, string>>,
  change: (word: string) => string,
): Readonly<Record<K, string>> => wordFor(Object.keys(words) as K[], (key) => change(words[key]));
