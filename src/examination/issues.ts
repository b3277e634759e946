import type * as z from 'zod/mini';
import { type Expectation, type Fault, type FaultCode, show, type ValueType } from './faults.js';
import { startsWith } from './json.js';
import { fieldAt } from './patch.js';
import type { RuleParams } from './schema/common.js';
import type { RecordPath } from './types/json.js';

/* What the schemas complain of, as faults. */

export type Issue = z.core.$ZodIssue;

function paramsOf(issue: Issue): RuleParams | undefined {
  return issue.code === 'custom' ? (issue.params as RuleParams | undefined) : undefined;
}

/** Whether a word stands where other words may: it may come from a later version. */
export function isUnknownWord(issue: Issue, found: unknown): boolean {
  if (typeof found !== 'string' || found === '') return false;
  if (issue.code === 'invalid_value') return issue.values.every((value) => typeof value === 'string');
  // A number as text is no word.
  return paramsOf(issue)?.expected.code === 'pressure' && Number.isNaN(Number(found));
}

/** Whether a rule was broken for want of something that is carried: then nobody can tell whether it is. */
export function readsUnknown(issue: Issue, carried: readonly RecordPath[]): boolean {
  const around = (issue.path as RecordPath).slice(0, -1);
  const reads = paramsOf(issue)?.reads ?? [];
  return reads.some((field) => carried.some((path) => startsWith(path, [...around, field])));
}

const TYPES: Readonly<Record<string, ValueType>> = {
  array: 'list',
  string: 'text',
  record: 'object',
  tuple: 'list',
};
const COUNTED = { string: 'characters', array: 'entries' } as const;

function expectation(issue: Issue): Expectation {
  switch (issue.code) {
    case 'invalid_value':
      return { code: 'one-of', values: issue.values as (string | number | boolean)[] };
    case 'invalid_type':
      return { code: 'type', type: TYPES[issue.expected] ?? (issue.expected as ValueType) };
    case 'too_small':
    case 'too_big': {
      const of = COUNTED[issue.origin as keyof typeof COUNTED] ?? 'number';
      if (issue.code === 'too_big') return { code: 'at-most', value: Number(issue.maximum), of };
      const code = issue.inclusive === false ? 'more-than' : 'at-least';
      return { code, value: Number(issue.minimum), of };
    }
    case 'invalid_key': {
      const [words] = issue.issues;
      const names = words?.code === 'invalid_value' ? words.values.map(String) : [];
      return { code: 'fields', names };
    }
    default:
      return paramsOf(issue)?.expected ?? { code: 'type', type: 'json' };
  }
}

function codeOf(issue: Issue, found: unknown): FaultCode {
  const alone = issue.code !== 'custom' || paramsOf(issue)?.alone;
  if (found === undefined && alone) return 'missing';
  if (issue.code === 'invalid_type') return 'wrong-type';
  if (issue.code === 'invalid_key') return 'unknown-field';
  return alone ? 'not-allowed' : 'conflict';
}

/**
 * One complaint as faults.
 * @param known the names of the fields that may stand at a path
 */
export function faultsOf(
  input: unknown,
  issue: Issue,
  known: (path: RecordPath) => readonly string[],
): readonly Fault[] {
  const path = issue.path as RecordPath;
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      code: 'unknown-field',
      path: [...path, key],
      found: show(fieldAt(input, [...path, key])),
      expected: { code: 'fields', names: known(path) },
    }));
  const found = fieldAt(input, path);
  return [{ code: codeOf(issue, found), path, found: show(found), expected: expectation(issue) }];
}
