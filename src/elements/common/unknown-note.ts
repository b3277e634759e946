import { html, nothing, type TemplateResult } from 'lit';
import type { Examination, RecordPath } from '../../examination/index.js';
import type { ShownMessages } from '../../locale/shown.js';

/** Of each record how much, since every act renders it several times and marks on the skin are many fields. */
const COUNTS = new WeakMap<Examination, number>();

/** How much of a record is kept that this version cannot show, in one sentence. */
export function unknownNote(
  examination: Examination,
  fields: (examination: Examination) => readonly RecordPath[],
  words: ShownMessages,
): TemplateResult | typeof nothing {
  let count = COUNTS.get(examination);
  if (count === undefined) {
    count = fields(examination).length + (examination.carried?.length ?? 0);
    COUNTS.set(examination, count);
  }
  return count ? html`<p class="legend hint">${words.examination.unknownEntries(count)}</p>` : nothing;
}
