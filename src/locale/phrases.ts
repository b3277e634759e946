/** "a", "a and b", "a, b and c", with the conjunction of the language. */
function joined(items: readonly string[], conjunction: string): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${conjunction} ${items.at(-1)}`;
}

/** The text with its first letter large. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Sentences one after the other. */
export function paragraph(sentences: readonly string[]): string {
  return sentences.filter((text) => text !== '').join(' ');
}

/** Writes a number with the decimal mark of the language; with `digits` to so many decimals. */
function decimals(mark: string): (value: number | string | boolean | undefined, digits?: number) => string {
  return (value, digits) => {
    const text = digits === undefined ? String(value) : Number(value).toFixed(digits);
    return text.replace('.', mark);
  };
}

/** A probability as a whole number; what is nearly none or nearly certain is not called so. */
function percentFrom(sign: string): (probability: number) => string {
  return (probability) => {
    if (probability > 0 && probability < 0.005) return `<1${sign}`;
    if (probability > 0.995 && probability < 1) return `>99${sign}`;
    return `${Math.round(probability * 100)}${sign}`;
  };
}

/** How a language lists and counts. */
export interface Speech {
  /** "a", "a and b", "a, b and c". */
  readonly list: (items: readonly string[], conjunction?: string) => string;
  /** "a", "a or b", "a, b or c". */
  readonly either: (items: readonly string[]) => string;
  /** A number with the decimal mark of the language; with `digits` to so many decimals. */
  readonly decimal: (value: number | string | boolean | undefined, digits?: number) => string;
  /** A probability as a whole number of percent. */
  readonly percent: (probability: number) => string;
}

/**
 * How a language lists and counts, from its words for it.
 * @param percent what follows the number, with any space
 */
export function speechFrom(of: {
  readonly and: string;
  readonly or: string;
  readonly mark: string;
  readonly percent: string;
}): Speech {
  return {
    list: (items, conjunction = of.and) => joined(items, conjunction),
    either: (items) => joined(items, of.or),
    decimal: decimals(of.mark),
    percent: percentFrom(of.percent),
  };
}

/**
 * The time on the clock of the place where it was recorded, as a tag's language writes it.
 * @param instant ISO 8601 with `Z` or an offset
 */
export function clockTime(instant: string, tag: string): string {
  const shown = new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeStyle: 'short', timeZone: 'UTC' });
  return `${shown.format(Date.parse(`${instant.slice(0, 16)}Z`))}${instant.endsWith('Z') ? ' UTC' : ''}`;
}

/** The same without its date. */
export function timeOfDay(instant: string, tag: string): string {
  const shown = new Intl.DateTimeFormat(tag, { timeStyle: 'short', timeZone: 'UTC' });
  return `${shown.format(Date.parse(`${instant.slice(0, 16)}Z`))}${instant.endsWith('Z') ? ' UTC' : ''}`;
}

/** A point of time as a date, as a tag's language writes it; empty when there is none. */
export function dateIn(tag: string): (time: string | undefined) => string {
  const shown = new Intl.DateTimeFormat(tag, { day: 'numeric', month: 'long', year: 'numeric' });
  return (time) => (time ? shown.format(Date.parse(time)) : '');
}
