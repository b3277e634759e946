import type { Examination } from '../examination/index.js';

/** One visit of a patient, as a host keeps it. */
export interface PatientVisit {
  /** By which the host knows it; each once. */
  readonly id: string;
  /** When: an ISO date, or a point of time with `Z` or an offset. Missing: no line shows the visit, and it stands before all others. */
  readonly at?: string;
  /** The record, as data or as the text that a control submitted. */
  readonly examination: Examination | string | null | undefined;
  /** A few words of the host's own, such as the reason of the visit. */
  readonly note?: string;
  /** The red flag that stands at this visit, in a few words of the host's own. */
  readonly flag?: string;
  /** Set where the visit was entered in error: it is shown struck through, and counts for nothing. */
  readonly enteredInError?: boolean;
}

/** Milliseconds of an hour and a minute. */
const MINUTE = 60_000;
const OFFSET = /([+-])(\d\d):?(\d\d)$/;

/** When a visit took place, in ms since 1970; `NaN` where that is not said. A date counts as its noon, wherever it was written. */
export function timeOf(at: string | undefined): number {
  if (!at) return NaN;
  return Date.parse(/^\d{4}-\d\d-\d\d$/.test(at) ? `${at}T12:00:00Z` : at);
}

/** How far the clock that wrote a point of time is ahead of UTC, in ms; a date or a time without offset has none. */
export function offsetOf(at: string | undefined): number {
  const found = at ? OFFSET.exec(at) : null;
  // The day of a date looks like an offset.
  if (!found || !at?.includes('T')) return 0;
  const [, sign, hours, minutes] = found;
  return (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes)) * MINUTE;
}

/** Visits from the first to the last; those without a time come first. Equal times keep the order they came in. */
export function visitsInOrder<T extends Pick<PatientVisit, 'at'>>(visits: readonly T[]): readonly T[] {
  const timed = visits.map((visit) => ({ visit, time: timeOf(visit.at) }));
  const rank = (time: number): number => (Number.isNaN(time) ? -Infinity : time);
  return timed
    .sort((a, b) => (rank(a.time) === rank(b.time) ? 0 : rank(a.time) - rank(b.time)))
    .map(({ visit }) => visit);
}
