import { type Examination, type Fault, type Parsed, show } from '../../examination/index.js';

/** What a host wrote into a control. `text` is what a form submits; `undefined` where JSON cannot say it, as for a cycle. */
export interface Given {
  readonly input: unknown;
  readonly text: string | undefined;
}

/**
 * What a control holds:
 * - `readable`: data it can show and edit;
 * - `waiting`: a text whose reader is still being fetched;
 * - `sealed`: something it cannot read, which is kept and submitted as it came.
 */
export type Held<T> =
  | { readonly state: 'readable'; readonly value: T }
  | { readonly state: 'waiting'; readonly given: Given }
  | { readonly state: 'sealed'; readonly given: Given; readonly faults: readonly Fault[] };

/** What reads a record, in a chunk of its own where the first paint does not need it. */
export interface RecordReader {
  parseExaminationText(text: string): Parsed<Examination>;
}

/** Reads a text. Never throws. */
export type Reader<T> = (text: string) => Parsed<T>;

/** What a host wrote as the text that a form would carry; `undefined` where JSON cannot say it. Never throws. */
export function textGiven(input: unknown): string | undefined {
  if (typeof input === 'string') return input;
  try {
    return JSON.stringify(input) as string | undefined;
  } catch {
    return undefined;
  }
}

export function readable<T>(value: T): Held<T> {
  return { state: 'readable', value };
}

function read<T>(from: Given, reader: Reader<T>): Held<T> {
  if (from.text === undefined) {
    const faults: Fault[] = [
      { code: 'unreadable', path: [], found: show(from.input), expected: { code: 'type', type: 'json' } },
    ];
    return { state: 'sealed', given: from, faults };
  }
  const parsed = reader(from.text);
  return parsed.ok ? readable(parsed.value) : { state: 'sealed', given: from, faults: parsed.faults };
}

/**
 * Takes what a host wrote: text, data, or nothing.
 * @param input anything; `null`, `undefined` and blank text are nothing
 * @param nothing what an empty control holds
 * @param reader without it the value waits
 */
export function hold<T>(input: unknown, nothing: T, reader: Reader<T> | undefined): Held<T> {
  if (input === null || input === undefined) return readable(nothing);
  if (typeof input === 'string' && input.trim() === '') return readable(nothing);
  const from = { input, text: textGiven(input) };
  return reader || from.text === undefined
    ? read(from, reader as Reader<T>)
    : { state: 'waiting', given: from };
}

/** Reads what could not be read so far with a reader that has come, or that another kind of value asks for. */
export function reread<T>(held: Held<T>, reader: Reader<T>): Held<T> {
  return held.state === 'readable' ? held : read(held.given, reader);
}

/** The text a form submits; of an unread value the very text that was given. */
export function textOf<T>(held: Held<T>, write: (value: T) => string): string {
  return held.state === 'readable' ? write(held.value) : (held.given.text ?? '');
}

/** Whether both would submit the same and are read alike. */
export function sameHeld<T>(a: Held<T>, b: Held<T>): boolean {
  const write = (value: T): string => JSON.stringify(value) ?? '';
  const lost = (held: Held<T>): boolean => held.state !== 'readable' && held.given.text === undefined;
  return a.state === b.state && lost(a) === lost(b) && textOf(a, write) === textOf(b, write);
}

export function faultsIn(held: Held<unknown>): readonly Fault[] {
  return held.state === 'sealed' ? held.faults : [];
}

/** Whether something was given of which not even a text can be kept. */
export function isLost(held: Held<unknown>): boolean {
  return held.state === 'sealed' && held.given.text === undefined;
}
