import * as z from 'zod/mini';
import { EditError } from './faults.js';
import { withFields } from './finish.js';
import { faultsOf, readsUnknown } from './issues.js';
import { copyJson, equal, isObject, isOurs } from './json.js';
import { fieldAt } from './patch.js';
import { examinationFields } from './schema/record.js';
import type { Patch } from './types/common.js';
import type { Examination } from './types/record.js';

type Own = Omit<Examination, 'carried'>;

/** Without empty text, which takes its field away, and without fields that are `undefined`, at any depth. */
function tidied(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(tidied);
  if (!isObject(value) || isOurs(value)) return value;
  const entries = Object.entries(value).map(([name, field]) => [name, tidied(field)] as const);
  return Object.fromEntries(entries.filter(([, field]) => field !== undefined && field !== ''));
}

/** The field as it is written. */
function checked(examination: Examination, name: string, given: unknown): unknown {
  const field = tidied(given);
  if (field === undefined || field === '') return undefined;
  const schema = Object.hasOwn(examinationFields, name) ? examinationFields[name as keyof Own] : undefined;
  const json = copyJson(field, [name]);
  if (!schema) return json;
  const result = z.safeParse(schema as z.ZodMiniType, json);
  const locked = (examination.carried ?? []).map(({ path }) => path);
  for (const issue of result.success ? [] : result.error.issues) {
    const own = { ...issue, path: [name, ...issue.path] };
    if (readsUnknown(own, locked)) continue;
    const [fault] = faultsOf({ [name]: json }, own, () => []);
    if (fault) throw new EditError(fault);
  }
  return json;
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
 * Sets or, with `undefined`, removes top-level fields such as `scale`, `onset`, `examiner` or whole parts. Empty text is removed,
 * at any depth. Where a new part would say something of an entry that is locked (see `isLocked`), nothing changes.
 * @throws RangeError for what the record does not take, with the path of the field
 */
export function setFields(examination: Examination, fields: Patch<Own>): Examination {
  if (meetsLock(examination, fields)) return examination;
  const next = Object.entries(fields).map(([name, field]) => [name, checked(examination, name, field)]);
  return withFields(examination, Object.fromEntries(next));
}
