import { html, nothing, type TemplateResult } from 'lit';
import { type BedsideTest, holdsAt } from '../../bedside/index.js';
import type { PartMessages } from '../../locale/parts.js';
import { rateRanges } from '../../statements/index.js';

/** Published figures of a test at the limit in use; their sources stand behind the mark. */
export function renderRates(
  { falsePositives = [], accuracy }: BedsideTest,
  limit: number | undefined,
  words: PartMessages['bedside'],
): TemplateResult | typeof nothing {
  if (!falsePositives.length && !accuracy) return nothing;
  const shortly = rateRanges(falsePositives, limit);
  return html`${shortly.map((ranges) => html`<p class="hint">${words.ratesInShort(ranges)}</p>`)}
    ${accuracy && holdsAt(accuracy, limit) ? html`<p class="hint">${words.accuracy(accuracy)}</p>` : nothing}
    <details class="rates">
      <summary>${words.rates}</summary>
      <ul>
        ${accuracy ? html`<li>${words.accuracy(accuracy)}</li>` : nothing}
        ${falsePositives.map((rate) => html`<li>${words.rate(rate)}.</li>`)}
      </ul>
    </details>`;
}
