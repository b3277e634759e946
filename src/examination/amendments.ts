import { setFields } from './fields.js';
import type { Amendment, RecordState } from './types/amendments.js';
import type { Examination } from './types/record.js';

/** How a record stands: `amended` and `entered-in-error` follow from its amendments, the rest is as the page said. */
export type RecordStatus = RecordState | 'amended' | 'entered-in-error';

/**
 * How a record stands; `undefined` where nobody said. An examination that was entered in error stays so whatever else is amended, until
 * it is restored.
 */
export function statusOf({ status, amendments = [] }: Examination): RecordStatus | undefined {
  const last = amendments.findLast(({ kind }) => kind !== 'amended');
  if (last?.kind === 'entered-in-error') return 'entered-in-error';
  return amendments.length ? 'amended' : status;
}

/** Whether an examination was entered in error and must not be read as this patient's. */
export function isInError(examination: Examination): boolean {
  return statusOf(examination) === 'entered-in-error';
}

/**
 * Adds an amendment to a record. Nothing else changes: an examination entered in error is marked and keeps all that it says.
 * @throws EditError for a kind that is none, a time that is none, and beyond `MOST_AMENDMENTS`
 */
export function amend(examination: Examination, amendment: Amendment): Examination {
  return setFields(examination, { amendments: [...(examination.amendments ?? []), amendment] });
}
