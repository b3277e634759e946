import type { Summary, SummaryParagraph } from './summary.js';

const textOf = ({ sentences }: SummaryParagraph): string => sentences.map(({ text }) => text).join(' ');

/** Paragraphs with the greeting where it belongs: after what the reader must know first. */
function blocks({ greeting, paragraphs }: Summary): { heading: string; text: string }[] {
  const first = paragraphs.filter(({ id }) => id === 'status' || id === 'flags');
  const rest = paragraphs.filter((one) => !first.includes(one));
  const told = (all: readonly SummaryParagraph[]) =>
    all.map((one) => ({ heading: one.heading, text: textOf(one) }));
  return [...told(first), ...(greeting ? [{ heading: '', text: greeting }] : []), ...told(rest)];
}

/** A summary as plain text, paragraphs parted by an empty line; a heading stands on a line of its own. */
export function summaryText(summary: Summary): string {
  return blocks(summary)
    .map(({ heading, text }) => (heading ? `${heading}\n${text}` : text))
    .join('\n\n');
}

/** Escapes what Markdown would take for a mark of its own, at a line's start or within it. */
function escapedMarkdown(text: string): string {
  return text
    .replace(/[\\`*_{}[\]<>|~]/g, '\\$&')
    .replace(/^(\s*)([#+-])/gm, '$1\\$2')
    .replace(/^(\s*\d+)([.)])/gm, '$1\\$2');
}

/** A summary as Markdown (CommonMark): paragraphs, headings of the second level. */
export function summaryMarkdown(summary: Summary): string {
  return blocks(summary)
    .map(
      ({ heading, text }) => `${heading ? `## ${escapedMarkdown(heading)}\n\n` : ''}${escapedMarkdown(text)}`,
    )
    .join('\n\n');
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as it stands in HTML, in an element or a quoted attribute. */
export function escapedHtml(text: string): string {
  return text.replace(/[&<>"']/g, (character) => ENTITIES[character] as string);
}

/** A summary as a piece of HTML: `p`, and `h2` before the paragraphs that have a heading. Everything recorded is escaped. */
export function summaryHtml(summary: Summary): string {
  const lines = (text: string): string => escapedHtml(text).replace(/\n/g, '<br>');
  const body = blocks(summary)
    .map(({ heading, text }) => `${heading ? `<h2>${escapedHtml(heading)}</h2>\n` : ''}<p>${lines(text)}</p>`)
    .join('\n');
  return `<div lang="${escapedHtml(summary.language)}">\n${body}\n</div>`;
}
