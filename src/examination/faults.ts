import type * as z from 'zod/mini';

export type FaultCode =
  /** The text is not JSON, or the value could not be read at all. */
  | 'unreadable'
  /** The record was written by a later version of this library. */
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

/** One thing wrong with a value: where, what was found there, what was expected instead. */
export interface Fault {
  readonly code: FaultCode;
  readonly path: readonly (string | number)[];
  /** What stood there, as short JSON. */
  readonly found: string;
  /** What would have been right; several entries are alternatives. */
  readonly expected: readonly string[];
}

export type Parsed<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly faults: readonly Fault[] };

const LONGEST_FOUND = 60;

/** A value as short text for a fault. */
export function show(value: unknown): string {
  if (value === undefined) return 'nothing';
  let text: string | undefined;
  try {
    text = JSON.stringify(value);
  } catch {
    text = undefined;
  }
  text ??= typeof value;
  return text.length > LONGEST_FOUND ? `${text.slice(0, LONGEST_FOUND - 1)}…` : text;
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    input,
  );
}

type Issue = z.core.$ZodIssue;

function unit(origin: string, count: number | bigint): string {
  if (origin !== 'string') return '';
  return Number(count) === 1 ? ' character' : ' characters';
}

function expectation(issue: Issue): readonly string[] {
  switch (issue.code) {
    case 'invalid_value':
      return issue.values.map((value) => show(value));
    case 'invalid_type':
      return [issue.expected];
    case 'too_small':
      return [`at least ${issue.minimum}${unit(issue.origin, issue.minimum)}`];
    case 'too_big':
      return [`at most ${issue.maximum}${unit(issue.origin, issue.maximum)}`];
    case 'invalid_format':
      return [issue.message];
    case 'custom':
      return [String((issue.params as { expected?: unknown } | undefined)?.expected ?? issue.message)];
    default:
      return [issue.message];
  }
}

function codeOf(issue: Issue, found: unknown): FaultCode {
  if (found === undefined && issue.code !== 'custom') return 'missing';
  if (issue.code === 'invalid_type') return 'wrong-type';
  if (issue.code === 'custom') return (issue.params?.code as FaultCode | undefined) ?? 'conflict';
  return 'not-allowed';
}

/**
 * Turns a schema's complaints into faults.
 * @param known gives the allowed field names at a path, for unknown fields
 */
export function faultsOf(
  input: unknown,
  issues: readonly Issue[],
  known: (path: readonly PropertyKey[]) => readonly string[] = () => [],
): Fault[] {
  return issues.flatMap((issue): Fault[] => {
    const path = issue.path as (string | number)[];
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.map((key) => ({
        code: 'unknown-field',
        path: [...path, key],
        found: show(valueAt(input, [...path, key])),
        expected: known(path),
      }));
    }
    const found = valueAt(input, path);
    return [{ code: codeOf(issue, found), path, found: show(found), expected: expectation(issue) }];
  });
}
