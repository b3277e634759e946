/** Whether a class of an element has a property of this name that takes a value. */
function takes(element: HTMLElement, name: string): boolean {
  for (let at: unknown = Object.getPrototypeOf(element); at; at = Object.getPrototypeOf(at)) {
    const found = Object.getOwnPropertyDescriptor(at, name);
    if (found) return found.set !== undefined;
  }
  return false;
}

/**
 * Hands an element what a page set before its class was known. That lies on it as plain properties, which would hide the real ones. In
 * the order in which it was set.
 */
export function adoptProperties(element: HTMLElement): void {
  for (const name of Object.keys(element)) {
    if (!takes(element, name)) continue;
    const given: unknown = Reflect.get(element, name);
    Reflect.deleteProperty(element, name);
    Reflect.set(element, name, given);
  }
}
