/** Tells the author of a page of an attribute that holds none of the words it may hold, and what is done about it. */
export function warnOfAttribute(
  element: Element,
  name: string,
  expected: readonly string[],
  consequence: string,
): void {
  const found = String((element as unknown as Record<string, unknown>)[name]);
  // eslint-disable-next-line no-console -- a mistake of the page, told where its developer looks
  console.warn(
    `${element.localName}: found ${name}="${found}", expected ${expected.join(', ')}; ${consequence}`,
  );
}
