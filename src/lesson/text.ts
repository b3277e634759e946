import { type Fault, type RecordPath, refused, show } from '../examination/index.js';
import type { Lesson } from './lesson.js';
import { parseLesson } from './read.js';

/** Longest text that is read as a lesson, in UTF-16 units; many times what the longest needs. */
export const LONGEST_LESSON_TEXT = 1_000_000;
/** Deepest nesting that is followed; a lesson has less than 20 levels. */
const DEEPEST = 200;

/** Where each value of a JSON text begins, or where the text stops being JSON. */
export type JsonPlaces =
  { readonly ok: true; placeOf(path: RecordPath): number } | { readonly ok: false; readonly offset: number };

class NoJson extends Error {
  constructor(readonly offset: number) {
    super();
  }
}

const ATOM = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?|true|false|null/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const keyOf = (path: RecordPath): string => JSON.stringify(path);

/** Walks a JSON text as RFC 8259 has it and notes where its values begin. */
class Walk {
  readonly starts = new Map<string, number>();
  #at = 0;

  constructor(private readonly text: string) {}

  whole(): void {
    this.#value([]);
    if (this.#at < this.text.length) throw new NoJson(this.#at);
  }

  #space(): void {
    while (' \t\n\r'.includes(this.text.charAt(this.#at) || 'x')) this.#at += 1;
  }

  #take(mark: string): boolean {
    this.#space();
    if (this.text[this.#at] !== mark) return false;
    this.#at += 1;
    return true;
  }

  #want(mark: string): void {
    if (!this.#take(mark)) throw new NoJson(this.#at);
  }

  #match(pattern: RegExp): boolean {
    pattern.lastIndex = this.#at;
    if (!pattern.test(this.text)) return false;
    this.#at = pattern.lastIndex;
    return true;
  }

  #string(): string {
    this.#space();
    const from = this.#at;
    this.#want('"');
    for (;;) {
      const mark = this.text[this.#at];
      if (mark === '\\') {
        if (!this.#match(ESCAPE)) throw new NoJson(this.#at);
        continue;
      }
      // A line of text that ends without its mark is told where the line ends.
      if (mark === undefined || mark < ' ') throw new NoJson(this.#at);
      this.#at += 1;
      if (mark === '"') return JSON.parse(this.text.slice(from, this.#at)) as string;
    }
  }

  /** The entries between a pair of brackets. */
  #entries(end: string, entry: () => void): void {
    if (this.#take(end)) return;
    do entry();
    while (this.#take(','));
    this.#want(end);
  }

  #value(path: RecordPath): void {
    this.#space();
    if (path.length > DEEPEST) throw new NoJson(this.#at);
    this.starts.set(keyOf(path), this.#at);
    if (this.text[this.#at] === '"') this.#string();
    else if (this.#take('{'))
      this.#entries('}', () => {
        const name = this.#string();
        this.#want(':');
        this.#value([...path, name]);
      });
    else if (this.#take('[')) {
      let i = 0;
      this.#entries(']', () => this.#value([...path, i++]));
    } else if (!this.#match(ATOM)) throw new NoJson(this.#at);
    this.#space();
  }
}

/**
 * Where the values of a JSON text stand, so that a fault can be shown at its place.
 * @returns `placeOf` gives the offset at which the value of a path begins, or that of the closest around it; else the offset at which
 *   the text stops being JSON
 */
export function jsonPlaces(text: string): JsonPlaces {
  const walk = new Walk(text);
  try {
    walk.whole();
  } catch (error) {
    if (error instanceof NoJson) return { ok: false, offset: error.offset };
    throw error;
  }
  const placeOf = (path: RecordPath): number =>
    walk.starts.get(keyOf(path)) ?? (path.length ? placeOf(path.slice(0, -1)) : 0);
  return { ok: true, placeOf };
}

/** A fault and where in the text it stands. */
export interface PlacedFault {
  readonly fault: Fault;
  /** In UTF-16 units from the beginning of the text. */
  readonly offset: number;
}

/** A lesson, or what is wrong with its text: the first faults in the order of the text, and how many more there are. */
export type LessonTextRead =
  | { readonly ok: true; readonly lesson: Lesson }
  | { readonly ok: false; readonly faults: readonly PlacedFault[]; readonly more: number };

/** Reads the JSON text of a lesson. Never throws; see `parseLesson`. */
export function parseLessonText(text: string): LessonTextRead {
  const unreadable = (offset: number, expected: Fault['expected']): LessonTextRead => {
    const found = show(text.slice(offset, offset + 24) || undefined);
    const { faults, more } = refused({ code: 'unreadable', path: [], found, expected });
    return { ok: false, faults: faults.map((fault) => ({ fault, offset })), more };
  };
  if (text.length > LONGEST_LESSON_TEXT)
    return unreadable(0, { code: 'at-most', value: LONGEST_LESSON_TEXT, of: 'characters' });
  const places = jsonPlaces(text);
  if (!places.ok) return unreadable(places.offset, { code: 'type', type: 'json-text' });
  const parsed = parseLesson(JSON.parse(text));
  if (parsed.ok) return { ok: true, lesson: parsed.value };
  const faults = parsed.faults.map((fault) => ({ fault, offset: places.placeOf(fault.path) }));
  return { ok: false, faults: [...faults].sort((a, b) => a.offset - b.offset), more: parsed.more };
}

/** Line and column of an offset, both from 1. */
export function lineAt(text: string, offset: number): { readonly line: number; readonly column: number } {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length, column: (before.at(-1) ?? '').length + 1 };
}
