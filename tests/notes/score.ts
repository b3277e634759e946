import { readFileSync } from 'node:fs';
import { isListeningSite, isPulseSite, LATERALITIES } from '../../src/anatomy/index.js';
import { GRADES, SCALE_IDS, type ScaleId } from '../../src/examination/index.js';
import { LANGUAGES, type LanguageTag } from '../../src/locale/list.js';
import { chosenFindings, type NoteFinding, type NoteReading, readNote } from '../../src/notes/index.js';

/** A note with what a careful reader finds in it; the form of a file that `npm run notes` scores. */
export interface NoteItem {
  readonly id: string;
  readonly language: LanguageTag;
  readonly scale: ScaleId;
  readonly text: string;
  /** By site and side as in a record: a grade as a word, or a finding with `grade`, `couldNotExamine` and other fields. */
  readonly pulses?: unknown;
  /** By site and side: `none`, `systolic`, `continuous`, or a finding with `bruit`; `true` stands for any bruit. */
  readonly bruits?: unknown;
  /** By site and side: a reason, or a finding with `couldNotExamine` or `reason`; `true` stands for any reason. */
  readonly couldNot?: unknown;
  /** What the note leaves open, in words; not scored. */
  readonly doubts?: unknown;
}

export interface NoteFigures {
  /** Notes. */
  readonly items: number;
  /** Notes of which every finding is right, and none is wrong. */
  readonly exact: number;
  /** Findings that are expected. */
  readonly findings: number;
  readonly right: number;
  /** Findings that are not expected: another grade, another side, or nothing at all. */
  readonly wrong: number;
  /** Expected findings that were neither read nor asked about. */
  readonly missed: number;
  /** Expected findings that an open question would give. */
  readonly asked: number;
}

type Values = Map<string, string>;
const ANY = '*';

/** One value of an expectation as the word it stands for. */
function valueOf(value: unknown, field: string): string | undefined {
  if (typeof value === 'string') return value;
  if (value === true) return ANY;
  if (value === null || typeof value !== 'object') return undefined;
  const fields = value as Record<string, unknown>;
  const found = fields[field] ?? (field === 'couldNotExamine' ? fields.reason : undefined);
  return typeof found === 'string' ? found : undefined;
}

/** Reads `{ site: { side: value } }`, `{ "side site": value }`, or a list of `{ site, side, … }`. */
function entriesOf(part: unknown): { site: string; side: string; value: unknown }[] {
  if (Array.isArray(part)) {
    return part.flatMap((one: unknown) => {
      const { site, side, ...rest } = one as Record<string, unknown>;
      const words = Object.values(rest);
      const value = words.length === 1 && typeof words[0] === 'string' ? words[0] : rest;
      return typeof site === 'string' && typeof side === 'string' ? [{ site, side, value }] : [];
    });
  }
  return Object.entries((part ?? {}) as Record<string, unknown>).flatMap(([key, own]) => {
    const [side, site] = key.split(' ');
    if (site && (LATERALITIES as readonly string[]).includes(side!))
      return [{ site, side: side!, value: own }];
    return Object.entries((own ?? {}) as Record<string, unknown>).map(([at, value]) => ({
      site: key,
      side: at,
      value,
    }));
  });
}

function expectedOf(item: NoteItem): Values {
  const values: Values = new Map();
  const put = (kind: string, site: string, side: string, value: string | undefined, known: boolean): void => {
    if (!known || !(LATERALITIES as readonly string[]).includes(side)) {
      throw new Error(`${item.id}: no such place "${side} ${site}"`);
    }
    if (value !== undefined) values.set(`${kind} ${side} ${site}`, value);
  };
  for (const { site, side, value } of entriesOf(item.pulses)) {
    const grade = valueOf(value, 'grade');
    if (typeof value === 'string' && !(GRADES as readonly string[]).includes(value)) {
      throw new Error(`${item.id}: "${value}" is no grade`);
    }
    put('pulse', site, side, grade, isPulseSite(site));
    if (typeof value === 'object' && value !== null) {
      const own = value as Record<string, unknown>;
      if (typeof own.couldNotExamine === 'string')
        put('could-not', site, side, own.couldNotExamine, isPulseSite(site));
      for (const field of ['doppler', 'thrill', 'expansile']) {
        if (own[field] !== undefined) put(field, site, side, String(own[field]), isPulseSite(site));
      }
    }
  }
  for (const { site, side, value } of entriesOf(item.bruits)) {
    put('bruit', site, side, valueOf(value, 'bruit'), isListeningSite(site));
  }
  for (const { site, side, value } of entriesOf(item.couldNot)) {
    put('could-not', site, side, valueOf(value, 'couldNotExamine'), isPulseSite(site));
  }
  return values;
}

/** A finding as kinds and values; signals and thrills count only where a note's expectation speaks of them. */
function foundIn(findings: readonly NoteFinding[], expected: Values): Values {
  const values: Values = new Map();
  const spoken = new Set([...expected.keys()].map((key) => key.split(' ')[0]));
  for (const { part, place, patch } of findings) {
    for (const [field, value] of Object.entries(patch)) {
      const kind = field === 'grade' ? 'pulse' : field === 'couldNotExamine' ? 'could-not' : field;
      if (kind === 'increased' || (['doppler', 'thrill', 'expansile'].includes(kind) && !spoken.has(kind)))
        continue;
      if (part === 'pulses' || kind === 'bruit')
        values.set(`${kind} ${place.side} ${place.site}`, String(value));
    }
  }
  return values;
}

const fits = (expected: string | undefined, found: string | undefined): boolean =>
  expected !== undefined &&
  found !== undefined &&
  (expected === found || (expected === ANY && found !== 'none'));

export interface NoteScore {
  readonly exact: boolean;
  readonly findings: number;
  readonly right: readonly string[];
  readonly wrong: readonly string[];
  readonly missed: readonly string[];
  readonly asked: readonly string[];
  readonly reading: NoteReading;
}

/** Compares the reading of one note with what is expected of it. */
export function scoreNote(item: NoteItem): NoteScore {
  const expected = expectedOf(item);
  const reading = readNote(item.text, { scale: item.scale, language: item.language });
  const found = foundIn(chosenFindings(reading), expected);
  const open = reading.doubts.filter(({ taken }) => !taken);
  const offered = open.flatMap(({ choices }) => choices.map((choice) => foundIn(choice, expected)));
  const keys = [...expected.keys()];
  const right = keys.filter((key) => fits(expected.get(key), found.get(key)));
  const rest = keys.filter((key) => !right.includes(key));
  const asked = rest.filter(
    (key) => !found.has(key) && offered.some((choice) => fits(expected.get(key), choice.get(key))),
  );
  const wrong = [...found]
    .filter(([key, value]) => !fits(expected.get(key), value))
    .map(([key, value]) => `${key}: ${value}`);
  const missed = rest.filter((key) => !asked.includes(key)).map((key) => `${key}: ${expected.get(key)}`);
  return {
    exact: right.length === keys.length && !wrong.length,
    findings: keys.length,
    right,
    wrong,
    missed,
    asked,
    reading,
  };
}

/** Reads a file of notes. */
export function readNoteItems(path: string): NoteItem[] {
  const items = JSON.parse(readFileSync(path, 'utf8')) as NoteItem[];
  if (!Array.isArray(items)) throw new Error(`${path}: expected a list of notes`);
  for (const { id, language, scale, text } of items) {
    const known = LANGUAGES.some(({ tag }) => tag === language) && SCALE_IDS.includes(scale);
    if (!known || typeof text !== 'string')
      throw new Error(`${path}: "${id}" lacks a language, a scale or its text`);
  }
  return items;
}

export function noteFigures(items: readonly NoteItem[]): NoteFigures {
  const scores = items.map(scoreNote);
  const sum = (of: (score: NoteScore) => number): number =>
    scores.reduce((total, score) => total + of(score), 0);
  return {
    items: scores.length,
    exact: scores.filter(({ exact }) => exact).length,
    findings: sum(({ findings }) => findings),
    right: sum(({ right }) => right.length),
    wrong: sum(({ wrong }) => wrong.length),
    missed: sum(({ missed }) => missed.length),
    asked: sum(({ asked }) => asked.length),
  };
}
