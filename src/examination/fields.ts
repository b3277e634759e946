import * as z from 'zod/mini';
import { placed } from './carried.js';
import { EditError } from './faults.js';
import { withFields } from './finish.js';
import { faultsOf, type Issue, readsUnknown } from './issues.js';
import { copyJson, equal, isObject, isOurs, startsWith } from './json.js';
import { unknownIn } from './known-fields.js';
import { fieldAt } from './patch.js';
import { examinationFields } from './schema/record.js';
import type { Patch } from './types/common.js';
import type { Json, RecordPath } from './types/json.js';
import type { Examination } from './types/record.js';

/** What a caller may set: the format follows from the fields, and what is carried stays. */
type Own = Omit<Examination, 'format' | 'carried'>;

/** Without empty text, which takes its field away, and without fields that are `undefined`, at any depth. */
function tidied(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(tidied);
  if (!isObject(value) || isOurs(value)) return value;
  const entries = Object.entries(value).map(([name, field]) => [name, tidied(field)] as const);
  return Object.fromEntries(entries.filter(([, field]) => field !== undefined && field !== ''));
}

function issuesOf(schema: z.ZodMiniType, part: Json | undefined): readonly Issue[] {
  const result = z.safeParse(schema, part);
  return result.success ? [] : result.error.issues;
}

/**
 * A part with the fields of later versions that stood in the one before. Those of a list's entry, and of an entry that is nothing without
 * what was taken away, go with it.
 */
function withUnseen(
  schema: z.ZodMiniType,
  part: Json | undefined,
  before: Json | undefined,
): Json | undefined {
  if (before === undefined) return part;
  return unknownIn(schema, before)
    .filter((path) => path.every((key) => typeof key === 'string'))
    .filter((path) => fieldAt(part, path) === undefined)
    .reduce((whole, path) => {
      const next = placed(whole, path, fieldAt(before, path) as Json);
      const isMissed = (issue: Issue): boolean => startsWith(path, (issue.path as RecordPath).slice(0, -1));
      const misses = (value: Json | undefined): number => issuesOf(schema, value).filter(isMissed).length;
      return next !== undefined && misses(next) <= misses(whole ?? {}) ? next : whole;
    }, part);
}

/** The field as it is written. */
function checked(examination: Examination, name: keyof Own, given: unknown): unknown {
  const field = tidied(given);
  const json = field === undefined || field === '' ? undefined : copyJson(field, [name]);
  if (!Object.hasOwn(examinationFields, name)) return json;
  const schema: z.ZodMiniType = examinationFields[name];
  const next = withUnseen(schema, json, examination[name] as Json | undefined);
  const locked = (examination.carried ?? []).map(({ path }) => path);
  for (const issue of issuesOf(schema, next)) {
    const own = { ...issue, path: [name, ...issue.path] };
    if (readsUnknown(own, locked)) continue;
    const [fault] = faultsOf({ [name]: next }, own, () => []);
    if (fault) throw new EditError(fault);
  }
  return next;
}

/** Whether new fields say something at a place that holds what this version does not know. */
function meetsLock(examination: Examination, fields: object): boolean {
  return (examination.carried ?? []).some(({ path }) => {
    const [field] = path;
    if (!Object.hasOwn(fields, String(field))) return false;
    if (path.length === 1) return true;
    // A member of a list: the others of the list keep their places.
    if (typeof path.at(-1) === 'number' && !path.slice(0, -1).some((key) => typeof key === 'number')) {
      const list = path.slice(0, -1);
      const isOfObjects = isObject(examination.carried?.find((one) => one.path === path)?.value);
      return !isOfObjects && !equal(fieldAt(fields, list), fieldAt(examination, list));
    }
    return fieldAt(fields, path) !== undefined;
  });
}

/**
 * Sets or, with `undefined`, removes top-level fields such as `onset`, `examiner` or whole parts. Empty text is removed, at any depth;
 * fields of later versions within a part stay. Where a new part would say something of an entry that is locked (see `isLocked`),
 * nothing changes.
 * @throws RangeError for what the record does not take, with the path of the field
 */
export function setFields(examination: Examination, fields: Patch<Own>): Examination {
  if (meetsLock(examination, fields)) return examination;
  const next = Object.entries(fields)
    .filter(([name]) => name !== 'format' && name !== 'carried')
    .map(([name, field]) => [name, checked(examination, name as keyof Own, field)]);
  return withFields(examination, Object.fromEntries(next));
}
