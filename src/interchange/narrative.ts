import type { Json } from '../examination/index.js';
import { escapedHtml } from './letter/render.js';
import { legible } from './resource.js';

/** Text as XHTML shows it. No markup of a record is ever taken for markup. */
function xhtml(text: string): string {
  return escapedHtml(legible(text));
}

/** A narrative of some lines. */
export function narrative(lines: readonly string[], language: string): Json {
  const paragraphs = lines.map((line) => `<p>${xhtml(line)}</p>`).join('');
  const tag = xhtml(language);
  return {
    status: 'generated',
    div: `<div xmlns="http://www.w3.org/1999/xhtml" lang="${tag}" xml:lang="${tag}">${paragraphs}</div>`,
  };
}
