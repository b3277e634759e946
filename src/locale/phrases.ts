/** "a", "a and b", "a, b and c", with the conjunction of the language. */
export function joined(items: readonly string[], conjunction: string): string {
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
export function decimals(
  mark: string,
): (value: number | string | boolean | undefined, digits?: number) => string {
  return (value, digits) => {
    const text = digits === undefined ? String(value) : Number(value).toFixed(digits);
    return text.replace('.', mark);
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

/** The same words, each with its first letter large. */
export function capitalised<K extends string>(words: Readonly<Record<K, string>>): Record<K, string> {
  return Object.fromEntries(
    Object.entries<string>(words).map(([key, word]) => [key, sentence(word)]),
  ) as Record<K, string>;
}
