import type { RecordPath } from './types/json.js';

export type FaultCode =
  /** The text is not JSON, is too large, or the value could not be read at all. */
  | 'unreadable'
  /** The record was written by a later major version of this library. */
  | 'later-version'
  /** A field that must be there is missing. */
  | 'missing'
  /** A field or site that does not exist. */
  | 'unknown-field'
  /** Another kind of value than expected. */
  | 'wrong-type'
  /** A value outside the allowed words, numbers or lengths. */
  | 'not-allowed'
  /** Two fields contradict each other. */
  | 'conflict';

/** What a value must keep to besides its type, its words and its bounds. Each language has a sentence for each. */
export const RULE_CODES = [
  'instant',
  'one-decimal',
  'each-once',
  'ids-differ',
  'area-points',
  'on-plate',
  'grade-or-reason',
  'bruit-or-reason',
  'thrill-only-felt',
  'expansile-only-felt',
  'increased-only-bounding',
  'distance-only-with-symptom',
  'place-only-with-ulcer',
  'cause-only-with-ulcer',
  'size-only-with-ulcer',
  'extent-only-with-gangrene',
  'reach-only-with-redness',
  'level-only-where-cool',
  'one-arm-above-zero',
  'diastolic-below-systolic',
  'route-only-of-bypass',
  'colours-or-no-change',
  'place-is-free',
  'sums-to-one',
  'acute-weights-sum-to-one',
  'chronic-weights-sum-to-one',
  'signals-sum-to-one',
  'bands-sum-to-one',
  'one-band-more',
  'shares-at-most-one',
  'strength-never-rises',
  'stretch',
  'stretches-as-keys',
  'short-name',
  'some-language',
  'title-languages',
  'someone-to-examine',
  'spot-of-artery',
] as const;
export type RuleCode = (typeof RULE_CODES)[number];

/** Kinds of value. `json` is plain JSON of any kind, `json-text` is text that holds JSON. */
export const VALUE_TYPES = ['object', 'list', 'text', 'number', 'boolean', 'json', 'json-text'] as const;
export type ValueType = (typeof VALUE_TYPES)[number];

/** What a bound counts. `values` and `levels` are those of the whole input. */
export const COUNTED = ['number', 'characters', 'entries', 'values', 'levels'] as const;
export type Counted = (typeof COUNTED)[number];

/** What would have been right. */
export type Expectation =
  | { readonly code: 'one-of'; readonly values: readonly (string | number | boolean)[] }
  | { readonly code: 'type'; readonly type: ValueType }
  /** One of the names a field may have here. */
  | { readonly code: 'fields'; readonly names: readonly string[] }
  | { readonly code: 'at-least' | 'at-most' | 'more-than'; readonly value: number; readonly of: Counted }
  /** A number in mmHg within the bounds, 0 for no signal, or one of the words. */
  | {
      readonly code: 'pressure';
      readonly least: number;
      readonly most: number;
      readonly words: readonly string[];
    }
  | { readonly code: RuleCode };

/** One thing wrong with a value: where, what was found there, what was expected instead. */
export interface Fault {
  readonly code: FaultCode;
  readonly path: RecordPath;
  /** What stood there, as short JSON; empty where nothing stood. */
  readonly found: string;
  readonly expected: Expectation;
}

/** What could not be read: the first faults, at most `MOST_FAULTS`, and how many more there are. */
export interface Refused {
  readonly ok: false;
  readonly faults: readonly Fault[];
  readonly more: number;
}

/** A value that was read, or what is wrong with it. */
export type Parsed<T> = { readonly ok: true; readonly value: T } | Refused;

/** Most faults listed of one value; the rest are counted. */
export const MOST_FAULTS = 20;

/** The outcome of a value with a single fault. */
export function refused(fault: Fault): Refused {
  return { ok: false, faults: [fault], more: 0 };
}

/** An edit would have written what no reader takes; `fault` says where and why. */
export class EditError extends RangeError {
  constructor(readonly fault: Fault) {
    const { path, found, expected } = fault;
    super(`${path.join('.')}: found ${found || 'nothing'}, expected ${JSON.stringify(expected)}`);
    this.name = 'EditError';
  }
}

const LONGEST_FOUND = 60;

/** Writes JSON piece by piece until there is enough of it, so that a huge value costs no more than a small one. */
function* pieces(value: unknown): Generator<string> {
  if (typeof value === 'string') {
    yield JSON.stringify(value.slice(0, LONGEST_FOUND));
  } else if (Array.isArray(value)) {
    yield '[';
    for (let i = 0; i < value.length; i += 1) {
      if (i) yield ',';
      yield* pieces(value[i]);
    }
    yield ']';
  } else if (typeof value === 'object' && value !== null) {
    yield '{';
    let separator = '';
    for (const key in value) {
      if (!Object.hasOwn(value, key)) continue;
      yield `${separator}${JSON.stringify(key.slice(0, LONGEST_FOUND))}:`;
      yield* pieces((value as Record<string, unknown>)[key]);
      separator = ',';
    }
    yield '}';
  } else {
    yield typeof value === 'bigint' || typeof value === 'symbol' || typeof value === 'function'
      ? typeof value
      : String(value);
  }
}

/** A value as short JSON for a fault; empty for nothing. */
export function show(value: unknown): string {
  if (value === undefined) return '';
  let text = '';
  try {
    for (const piece of pieces(value)) {
      text += piece;
      if (text.length > LONGEST_FOUND) return `${text.slice(0, LONGEST_FOUND - 1)}…`;
    }
  } catch {
    return typeof value;
  }
  return text;
}
