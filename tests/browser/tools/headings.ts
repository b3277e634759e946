/** Whether nobody can perceive it. */
const unseen = (element: Element): boolean => !element.checkVisibility() || element.matches('[inert]');

/** The headings below a node in the order in which a reader of headings lists them, shadow trees included: level and text. */
export function headingsIn(node: Node): readonly (readonly [level: number, text: string])[] {
  const below = (nodes: Iterable<Node>) => [...nodes].flatMap(headingsIn);
  if (!(node instanceof Element)) return below(node.childNodes);
  // A slot takes the place of its box without having one of its own.
  if (node instanceof HTMLSlotElement)
    return below(node.assignedNodes().length ? node.assignedNodes() : node.childNodes);
  if (getComputedStyle(node).display !== 'contents' && unseen(node)) return [];
  const level = /^H([1-6])$/.exec(node.tagName)?.[1];
  if (level) return [[Number(level), node.textContent.replace(/\s+/g, ' ').trim()]];
  return below((node.shadowRoot ?? node).childNodes);
}

/** Headings that stand more than one level below the one before them, or that come first and are no `h1`. */
export const skippedIn = (headings: ReturnType<typeof headingsIn>): string[] =>
  headings.flatMap(([level, text], i) =>
    level > (headings[i - 1]?.[0] ?? 0) + 1 ? [`${level} ${text}`] : [],
  );
