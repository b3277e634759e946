import { html, type TemplateResult } from 'lit';
import type { Messages } from '../../locale/index.js';

/** The list of keys. */
export function renderHelp(words: Messages): TemplateResult {
  return html`<section class="help" aria-label=${words.map.help}>
    <b>${words.map.help}</b>
    <dl>
      ${[...words.map.keys, ...words.marks.keys].map(
        ([key, does]) =>
          html`<div>
            <dt>${key}</dt>
            <dd>${does}</dd>
          </div>`,
      )}
    </dl>
  </section>`;
}
