import { html, nothing, type TemplateResult } from 'lit';
import type { Examination, RecordPath } from '../../examination/index.js';
import type { ShownMessages } from '../../locale/shown.js';

/** How much of a record is kept that this version cannot show, in one sentence. */
export function unknownNote(
  examination: Examination,
  fields: (examination: Examination) => readonly RecordPath[],
  words: ShownMessages,
): TemplateResult | typeof nothing {
  const count = fields(examination).length + (examination.carried?.length ?? 0);
  return count ? html`<p class="legend hint">${words.examination.unknownEntries(count)}</p>` : nothing;
}
