/** Tells the author of a page that a property or attribute cannot hold what it was given, and what is done about it. */
export function warn(
  element: Element,
  name: string,
  found: string,
  expected: string,
  consequence: string,
): void {
  // eslint-disable-next-line no-console -- a mistake of the page, told where its developer looks
  console.warn(`${element.localName}: found ${name}=${found}, expected ${expected}; ${consequence}`);
}

/** The same of a property that holds none of the words it may hold. */
export function warnOfAttribute(
  element: Element,
  name: string,
  expected: readonly string[],
  consequence: string,
): void {
  const found = String((element as unknown as Record<string, unknown>)[name]);
  warn(element, name, `"${found}"`, expected.join(', '), consequence);
}
