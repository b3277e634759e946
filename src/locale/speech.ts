/** "a", "a and b", "a, b and c", with the conjunction of the language. */
function joined(items: readonly string[], conjunction: string): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${conjunction} ${items.at(-1)}`;
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
