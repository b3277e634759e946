// What a person perceives: elements by role and accessible name, looked for through open shadow roots. Enough of the
// accessible-name rules for this library's own markup; tests/browser/pulse-map/accessibility.test.ts holds it against
// what the browser itself computes.

const IMPLICIT: Record<string, string> = {
  button: 'button',
  select: 'combobox',
  textarea: 'textbox',
  h2: 'heading',
  h3: 'heading',
  h4: 'heading',
  table: 'table',
  tr: 'row',
  dialog: 'dialog',
};

function roleOf(element: Element): string | undefined {
  const named = element.hasAttribute('aria-label');
  const implicit =
    (element.localName === 'section' && named && 'region') ||
    (element.localName === 'a' && element.hasAttribute('href') && 'link') ||
    IMPLICIT[element.localName];
  return element.getAttribute('role') ?? implicit;
}

function textOf(node: Node): string {
  if (node.nodeType === Node.TEXT_NODE) return node.textContent ?? '';
  if (!(node instanceof Element)) return '';
  if (node.getAttribute('aria-hidden') === 'true' || !node.checkVisibility()) return '';
  if (['style', 'script', 'select', 'textarea', 'input'].includes(node.localName)) return '';
  return [...node.childNodes].map(textOf).join(' ');
}

const tidy = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** The words by which an element is called. */
export function nameOf(element: Element): string {
  const label = element.getAttribute('aria-label');
  if (label) return label;
  const { labels } = element as HTMLInputElement;
  if (labels?.length) return tidy([...labels].map(textOf).join(' '));
  return tidy(textOf(element));
}

/** Every element below a root, shadow trees included. */
export function everything(root: Element | ShadowRoot): Element[] {
  const found: Element[] = [];
  const walk = (node: Element | ShadowRoot): void => {
    if (node instanceof Element) {
      found.push(node);
      if (node.shadowRoot) walk(node.shadowRoot);
    }
    for (const child of node.children) walk(child);
  };
  walk(root);
  return found;
}

type Name = string | RegExp;

function called(element: Element, name: Name | undefined): boolean {
  if (name === undefined) return true;
  const own = nameOf(element);
  return typeof name === 'string' ? own === name : name.test(own);
}

/** Every visible element of a role, or those of one name. */
export function allByRole<E extends Element = HTMLElement>(root: Element, role: string, name?: Name): E[] {
  return everything(root).filter(
    (element) =>
      roleOf(element) === role &&
      element.checkVisibility({ visibilityProperty: true }) &&
      !element.closest('[aria-hidden=true]') &&
      called(element, name),
  ) as unknown as E[];
}

/** The one visible element of a role and name. Fails by telling what is there instead. */
export function byRole<E extends Element = HTMLElement>(root: Element, role: string, name?: Name): E {
  const found = allByRole<E>(root, role, name);
  if (found.length === 1) return found[0] as E;
  const there = allByRole(root, role).map((element) => `"${nameOf(element)}"`);
  throw new Error(
    `${found.length} elements of role ${role}${name ? ` called ${String(name)}` : ''}; there are: ${there.join(', ')}`,
  );
}

/** What can be read in an element, shadow trees included. */
export function readableText(root: Element): string {
  const read = (node: Node): string => {
    if (node.nodeType === Node.TEXT_NODE) return node.textContent ?? '';
    if (!(node instanceof Element || node instanceof ShadowRoot)) return '';
    if (node instanceof Element && ['style', 'script'].includes(node.localName)) return '';
    if (node instanceof Element && !node.checkVisibility({ visibilityProperty: true })) return '';
    const children =
      node instanceof Element && node.shadowRoot ? node.shadowRoot.childNodes : node.childNodes;
    return [...children].map(read).join(' ');
  };
  return tidy(read(root));
}

/** Two frames: what was asked for has been painted. */
export async function painted(): Promise<void> {
  await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
}
