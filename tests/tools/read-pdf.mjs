// Reads a PDF back: the text of each page, its size, and the tags that a screen reader goes by.

/** Every tag of a structure tree with the ids of its content, in reading order. */
function tagsOf(node, inside = []) {
  if (!node) return [];
  const role = node.role;
  const own = role && role !== 'Root' ? [...inside, role] : inside;
  if (node.type === 'content') return [{ roles: inside, id: node.id }];
  return (node.children ?? []).flatMap((child) => tagsOf(child, own));
}

const squeezed = (text) => text.replace(/\s+/g, ' ').trim();

/**
 * @param {Uint8Array} data
 * @returns {Promise<{ tagged: boolean, pages: { text: string, width: number, height: number, headings: string[] }[] }>} sizes in mm
 */
export async function readPdf(data) {
  // Loaded here, so that tests that print nothing do without it.
  const { getDocumentProxy } = await import('unpdf');
  const file = await getDocumentProxy(data);
  const mark = await file.getMarkInfo();
  const pages = [];
  for (let i = 1; i <= file.numPages; i++) {
    const page = await file.getPage(i);
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    const texts = new Map();
    let id;
    for (const item of items) {
      if (item.type === 'beginMarkedContentProps') id = item.id;
      else if (item.type === 'endMarkedContent') id = undefined;
      else if (typeof item.str === 'string')
        texts.set(id, `${texts.get(id) ?? ''}${item.str}${item.hasEOL ? ' ' : ''}`);
    }
    const tags = tagsOf(await page.getStructTree());
    const headings = new Map();
    for (const { roles, id: content } of tags) {
      const at = roles.findIndex((role) => /^H[1-6]$/.test(role));
      if (at < 0) continue;
      headings.set(content, texts.get(content) ?? '');
    }
    const [left, bottom, right, top] = page.view;
    pages.push({
      text: squeezed([...texts.values()].join(' ')),
      width: ((right - left) / 72) * 25.4,
      height: ((top - bottom) / 72) * 25.4,
      headings: [...headings.values()].map(squeezed).filter(Boolean),
    });
  }
  return { tagged: mark?.Marked === true, pages };
}
