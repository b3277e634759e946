const DAY = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
});
const MINUTE = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });

/** `2026-03-05` as "5 March 2026"; other text as it is. */
export function day(date: string | undefined): string {
  const value = new Date(`${date}T00:00:00Z`);
  return Number.isNaN(value.valueOf()) ? date || 'no date' : DAY.format(value);
}

/** A point in time as "5 March 2026, 14:05", the time where the reader is. */
export function moment(iso: string): string {
  const value = new Date(iso);
  if (Number.isNaN(value.valueOf())) return iso;
  return `${day(localDate(value))}, ${MINUTE.format(value)}`;
}

/** The calendar day where the reader is, as a date field wants it. */
export function localDate(value: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${value.getFullYear()}-${two(value.getMonth() + 1)}-${two(value.getDate())}`;
}

/** Faults that browsers name alike and each puts in words of its own. */
const FAULTS: Readonly<Record<string, string>> = {
  VersionError:
    'a later version of this page has kept records here. Load the page again to get that version.',
  QuotaExceededError: 'there is no room left on this machine.',
  SecurityError: 'it may keep nothing for this page.',
};

/** What went wrong: in our words where the fault is known, else in the browser's own. */
export function cause(error: unknown): string {
  const known = error instanceof DOMException ? FAULTS[error.name] : undefined;
  if (known) return known;
  return error instanceof Error && error.message ? error.message : String(error);
}
