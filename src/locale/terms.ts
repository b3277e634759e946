/** Who is spoken to: colleagues, in the terms of the trade, or anyone, in plain words. */
export const REGISTERS = ['trade', 'plain'] as const;
export type Register = (typeof REGISTERS)[number];

/** How words are chosen where a language has more than one. */
export interface Voice {
  readonly register: Register;
  /** A region with words of its own, as a lower-case tag such as `en-us`. */
  readonly region?: string | undefined;
  /** How that region spells. */
  readonly spell?: ((text: string) => string) | undefined;
}

/** A term in the words of the trade, and in plain words. */
export interface Term {
  readonly trade: string;
  readonly plain?: string;
}

/**
 * The voice while words are being rendered; rendering is synchronous, so that it never outlives a call. One for the whole
 * page, as the registry of languages: a language file beside the bundle is a bundle of its own.
 */
const KEY = Symbol.for('pulse-map/voice');
const shared = globalThis as { [KEY]?: { voice: Voice } };
const state = (): { voice: Voice } => (shared[KEY] ??= { voice: { register: 'trade' } });

function spelt(text: string, { spell }: Voice): string {
  return spell ? spell(text) : text;
}

/** Parameters and statements that hold what a person typed; elsewhere a single word is a code. */
const TYPED = ['note', 'operations', 'why', 'by'];

/** Every text within a value that a person may have typed. */
function typedIn(value: unknown, typed = false): string[] {
  if (typeof value === 'string') return typed || !/^[\w-]+$/.test(value) ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  const within = typed || TYPED.includes(String((value as { code?: unknown }).code));
  return Object.entries(value).flatMap(([key, one]) => typedIn(one, within || TYPED.includes(key)));
}

/** What was said in the spelling of the region, but for what was handed in: a note stays as a person typed it. */
function speltAround(said: unknown, handedIn: unknown, voice: Voice): unknown {
  if (!voice.spell) return said;
  const kept = typedIn(handedIn)
    .filter((text) => spelt(text, voice) !== text)
    .sort((a, b) => b.length - a.length);
  const around = (text: string, [first, ...more]: readonly string[]): string =>
    first === undefined
      ? spelt(text, voice)
      : text
          .split(first)
          .map((part) => around(part, more))
          .join(first);
  const walk = (value: unknown): unknown => {
    if (typeof value === 'string') return around(value, kept);
    if (Array.isArray(value)) return value.map(walk);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, walk(one)]));
  };
  return walk(said);
}

function wordFor(term: Term | string): string {
  const { voice } = state();
  const { trade, plain }: Term = typeof term === 'string' ? { trade: term } : term;
  return spelt((voice.register === 'plain' ? plain : undefined) ?? trade, voice);
}

/** A sentence as it stands, in the spelling of the region; for what is said within a function. */
export function say(trade: string, plain?: string): string {
  return wordFor(plain === undefined ? trade : { trade, plain });
}

/** The terms of a language as words; each is looked up when it is read, in the voice that holds then. */
export function termsFrom<K extends string>(
  terms: Readonly<Record<K, Term | string>>,
): Readonly<Record<K, string>> {
  const words = {} as Record<K, string>;
  for (const key of Object.keys(terms) as K[]) {
    Object.defineProperty(words, key, { enumerable: true, get: () => wordFor(terms[key]) });
  }
  return words;
}

type Fn = (...args: never[]) => unknown;

/** The entries of a table of words that a register says otherwise. */
export type Otherwise<T> = T extends string | Fn | readonly unknown[]
  ? T
  : { readonly [K in keyof T]?: Otherwise<T[K]> };

const isTable = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * A table of words in both registers: an entry is looked up when it is read, in plain words where there are any and the
 * plain register holds then. Read entries where they are said; a copy stays in the voice it was made in.
 */
export function inRegisters<T extends object>(trade: T, plain: Otherwise<NoInfer<T>>): T {
  const both = {} as T;
  for (const key of Object.keys(trade) as (keyof T & string)[]) {
    const own: unknown = trade[key];
    const other = (plain as { [K in keyof T]?: unknown })[key];
    const table = isTable(own) ? inRegisters(own, (other ?? {}) as Otherwise<typeof own>) : undefined;
    Object.defineProperty(both, key, {
      enumerable: true,
      get: () => table ?? (other !== undefined && state().voice.register === 'plain' ? other : trade[key]),
    });
  }
  return both;
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

function speaking<R>(as: Voice, render: () => R): R {
  const now = state();
  const before = now.voice;
  now.voice = as;
  try {
    return render();
  } finally {
    now.voice = before;
  }
}

function copy(value: unknown, as: Voice): unknown {
  if (typeof value === 'function') {
    const render = value as (...args: unknown[]) => unknown;
    return (...args: unknown[]) =>
      speltAround(
        speaking(as, () => render(...args)),
        args,
        as,
      );
  }
  if (typeof value === 'string') return spelt(value, as);
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
