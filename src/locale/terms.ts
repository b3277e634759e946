/** Who is spoken to: colleagues, in the terms of the trade, or anyone, in plain words. */
export const REGISTERS = ['trade', 'plain'] as const;
export type Register = (typeof REGISTERS)[number];

/** How words are chosen where a language has more than one. */
export interface Voice {
  readonly register: Register;
  /** A region with words of its own, as a lower-case tag such as `en-us`. */
  readonly region?: string | undefined;
}

/** A term in the words of the trade, and what it is called otherwise. */
export interface Term {
  readonly trade: string;
  readonly plain?: string;
  /** By lower-case tag of the region. */
  readonly regions?: Readonly<Record<string, string>>;
}

/**
 * The voice while words are being rendered; rendering is synchronous, so that it never outlives a call. One for the whole
 * page, as the registry of languages: a language file beside the bundle is a bundle of its own.
 */
const KEY = Symbol.for('pulse-map/voice');
const shared = globalThis as { [KEY]?: { voice: Voice } };
const state = (): { voice: Voice } => (shared[KEY] ??= { voice: { register: 'trade' } });

function wordFor({ trade, plain, regions }: Term): string {
  const { voice } = state();
  const regional = voice.region === undefined ? undefined : regions?.[voice.region];
  return (voice.register === 'plain' ? plain : undefined) ?? regional ?? trade;
}

/** The terms of a language as words; each is looked up when it is read, in the voice that holds then. */
export function termsFrom<K extends string>(terms: Readonly<Record<K, Term>>): Readonly<Record<K, string>> {
  const words = {} as Record<K, string>;
  for (const key of Object.keys(terms) as K[]) {
    Object.defineProperty(words, key, { enumerable: true, get: () => wordFor(terms[key]) });
  }
  return words;
}

/** Both tables in one; unlike a spread it keeps terms that are looked up when they are read. */
export function together<A extends object, B extends object>(a: A, b: B): A & B {
  return Object.defineProperties(
    {},
    {
      ...Object.getOwnPropertyDescriptors(a),
      ...Object.getOwnPropertyDescriptors(b),
    },
  ) as A & B;
}

function speaking<R>(as: Voice, say: () => R): R {
  const now = state();
  const before = now.voice;
  now.voice = as;
  try {
    return say();
  } finally {
    now.voice = before;
  }
}

function copy(value: unknown, as: Voice): unknown {
  if (typeof value === 'function') {
    const say = value as (...args: unknown[]) => unknown;
    return (...args: unknown[]) => speaking(as, () => say(...args));
  }
  if (Array.isArray(value)) return value.map((one) => copy(one, as));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, copy(one, as)]));
}

const copies = new WeakMap<object, Map<string, object>>();

/** The same words in another voice; asked for again, the very same object. */
export function inVoice<W extends object>(words: W, as: Voice): W {
  if (as.register === 'trade' && as.region === undefined) return words;
  const known = copies.get(words) ?? new Map<string, object>();
  copies.set(words, known);
  const key = `${as.register} ${as.region ?? ''}`;
  const found = known.get(key) ?? speaking(as, () => copy(words, as) as W);
  known.set(key, found);
  return found as W;
}
