/** The elements a person would find by role and name, in the page itself. */
export function namedIn<E extends Element>(root: Element, selector: string, name: string | RegExp): E[] {
  return [...root.querySelectorAll<E>(selector)].filter((element) => {
    const text = (element.getAttribute('aria-label') ?? element.textContent ?? '')
      .replace(/\s+/g, ' ')
      .trim();
    return typeof name === 'string' ? text === name : name.test(text);
  });
}

/** The only one of these elements. */
export function oneIn<E extends Element>(root: Element, selector: string, name: string | RegExp): E {
  const found = namedIn<E>(root, selector, name);
  if (found.length !== 1)
    throw new Error(`${found.length} of ${selector} named ${String(name)}, expected one`);
  return found[0] as E;
}
