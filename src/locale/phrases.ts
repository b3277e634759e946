/** The text with its first letter large. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Sentences one after the other. */
export function paragraph(sentences: readonly string[]): string {
  return sentences.filter((text) => text !== '').join(' ');
}

/**
 * The time on the clock of the place where it was recorded, as a tag's language writes it.
 * @param instant ISO 8601 with `Z` or an offset
 */
export function clockTime(instant: string, tag: string): string {
  const shown = new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeStyle: 'short', timeZone: 'UTC' });
  return `${shown.format(Date.parse(`${instant.slice(0, 16)}Z`))}${instant.endsWith('Z') ? ' UTC' : ''}`;
}

/**
 * A day of the calendar, as a tag's language writes it; empty where the text is none.
 * @param day `2026-03-05`
 */
export function calendarDay(day: string, tag: string): string {
  const at = /^\d{4}-\d{2}-\d{2}$/.test(day) ? Date.parse(`${day}T00:00Z`) : NaN;
  if (Number.isNaN(at)) return '';
  return new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeZone: 'UTC' }).format(at);
}

/** The time of `clockTime` without its date. */
export function timeOfDay(instant: string, tag: string): string {
  const shown = new Intl.DateTimeFormat(tag, { timeStyle: 'short', timeZone: 'UTC' });
  return `${shown.format(Date.parse(`${instant.slice(0, 16)}Z`))}${instant.endsWith('Z') ? ' UTC' : ''}`;
}

/** A point of time as a date, as a tag's language writes it; empty when there is none, or none that can be read. */
export function dateIn(tag: string): (time: string | undefined) => string {
  const shown = new Intl.DateTimeFormat(tag, { day: 'numeric', month: 'long', year: 'numeric' });
  return (time = '') => {
    const at = Date.parse(time);
    return Number.isNaN(at) ? '' : shown.format(at);
  };
}
