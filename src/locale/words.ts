/** A word, or what else is said, for each of these. */
export type Of<K extends string | number, V = string> = Readonly<Record<K, V>>;

/** Something to choose: what it is called, and a word for each choice. */
export interface Choice<K extends string> {
  readonly label: string;
  readonly words: Of<K>;
}
export const choice = <K extends string>(label: string, words: Of<K>): Choice<K> => ({ label, words });

/** Something that is so or is not. */
export interface YesNo {
  readonly yes: string;
  readonly no: string;
}
export const yesNo = (yes: string, no: string): YesNo => ({ yes, no });

/** A word for each of these, looked up when it is read, since it may differ by register. */
export function wordFor<K extends string>(keys: readonly K[], word: (key: K) => string): Of<K> {
  const words = {} as Record<K, string>;
  for (const key of keys) Object.defineProperty(words, key, { enumerable: true, get: () => word(key) });
  return words;
}

/** The same words, each changed by a function when it is read. */
export const eachWord = <K extends string>(words: Of<K>, change: (word: string) => string): Of<K> =>
  wordFor(Object.keys(words) as K[], (key) => change(words[key]));

/** A table without some of its entries; unlike a rest of it, it keeps what is looked up when it is read. */
export function without<T extends object, K extends keyof T & string>(
  table: T,
  ...keys: readonly K[]
): Omit<T, K> {
  const all = Object.entries(Object.getOwnPropertyDescriptors(table));
  const kept = all.filter(([key]) => !keys.includes(key as K));
  return Object.defineProperties({}, Object.fromEntries(kept)) as Omit<T, K>;
}
