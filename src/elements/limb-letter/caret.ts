/** Where in a text field a point of the page lies, as a place of its text; `undefined` where there is none. */
export function caretUnder(field: HTMLTextAreaElement, x: number, y: number): number | undefined {
  // Not every WebKit has it.
  if (!('caretPositionFromPoint' in document)) return wordUnder(field, x, y);
  const root = field.getRootNode();
  const shadowRoots: ShadowRoot[] = [];
  for (let one: Node = root; one instanceof ShadowRoot; one = one.host.getRootNode()) shadowRoots.push(one);
  const found = document.caretPositionFromPoint(x, y, { shadowRoots });
  return found?.offsetNode === field ? found.offset : undefined;
}

/** All that decides where the words of a text field stand. */
const SETTING = [
  'direction',
  'font',
  'letter-spacing',
  'line-height',
  'overflow-wrap',
  'padding',
  'tab-size',
  'text-align',
  'text-indent',
  'word-break',
  'word-spacing',
];

/** The place at which the word under a point begins, or the one before it: the text is set once more, unseen, and looked through. */
export function wordUnder(field: HTMLTextAreaElement, x: number, y: number): number | undefined {
  const twin = document.createElement('div');
  const setting = getComputedStyle(field);
  for (const name of SETTING) twin.style.setProperty(name, setting.getPropertyValue(name));
  Object.assign(twin.style, {
    position: 'fixed',
    insetBlockStart: '0',
    insetInlineStart: '0',
    boxSizing: 'border-box',
    inlineSize: `${field.clientWidth}px`,
    whiteSpace: 'pre-wrap',
    visibility: 'hidden',
  });
  const text = twin.appendChild(document.createTextNode(field.value));
  field.after(twin);
  const [seen, own] = [field.getBoundingClientRect(), twin.getBoundingClientRect()];
  const at = {
    x: x - seen.x - field.clientLeft + own.x,
    y: y - seen.y - field.clientTop + field.scrollTop + own.y,
  };
  const range = document.createRange();
  const isBefore = (word: number): boolean => {
    range.setStart(text, word);
    range.setEnd(text, word + 1);
    // WebKit counts the end of the line before as well.
    const { left, top, bottom } = [...range.getClientRects()].at(-1)!;
    const between = Math.max(0, (parseFloat(setting.lineHeight) || 0) - (bottom - top)) / 2;
    return bottom + between <= at.y || (top - between <= at.y && left <= at.x);
  };
  const words = [...field.value.matchAll(/\S+/g)].map(({ index }) => index);
  let [from, to] = [0, words.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (isBefore(words[middle]!)) from = middle + 1;
    else to = middle;
  }
  twin.remove();
  return words[from - 1] ?? words[0];
}
