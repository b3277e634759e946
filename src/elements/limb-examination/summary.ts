import { html, type TemplateResult } from 'lit';
import type { Examination } from '../../examination/index.js';
import type { PartMessages } from '../../locale/parts.js';
import { summaryStatements } from '../../statements/index.js';

/** Everything recorded, in sentences, part by part. */
export function renderSummary(examination: Examination, words: PartMessages['whole']): TemplateResult {
  const parts = words.summary(summaryStatements(examination));
  if (!parts.length) return html`<p class="hint">${words.nothing}</p>`;
  return html`<div part="summary" class="summary">
    ${parts.map(
      ({ heading, lines }) =>
        html`<h3>${heading}</h3>
          <ul>
            ${lines.map((line) => html`<li>${line}</li>`)}
          </ul>`,
    )}
  </div>`;
}
