/** "a", "a und b", "a, b und c". */
export function list(items: readonly string[], last = 'und'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** The sentence with its first letter large. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A number with a decimal comma; with `digits` to so many decimals. */
export function decimal(value: number | string | boolean | undefined, digits?: number): string {
  const text = digits === undefined ? String(value) : Number(value).toFixed(digits);
  return text.replace('.', ',');
}
