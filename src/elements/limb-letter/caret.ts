/** Where in a text field a point of the page lies, as a place of its text; `undefined` where the browser does not tell. */
export function caretUnder(field: HTMLTextAreaElement, x: number, y: number): number | undefined {
  const root = field.getRootNode();
  const shadowRoots: ShadowRoot[] = [];
  for (let one: Node = root; one instanceof ShadowRoot; one = one.host.getRootNode()) shadowRoots.push(one);
  const found = document.caretPositionFromPoint?.(x, y, { shadowRoots });
  return found?.offsetNode === field ? found.offset : undefined;
}
