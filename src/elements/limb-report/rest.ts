import { html, nothing, type TemplateResult } from 'lit';
import { firstUses } from '../../locale/first-use.js';
import type { ReportView } from './view.js';

/** History and what is known, of the patient as a whole, with the methods that were chosen. */
export function renderBackground({ report, parts }: ReportView): TemplateResult | typeof nothing {
  const { headings, phrase } = parts.report;
  const { told, normal } = report.background;
  if (!told.length && !normal.length && !report.method.length) return nothing;
  return html`${
    told.length || normal.length
      ? html`<section aria-labelledby="background">
          <h3 id="background">${headings.background}</h3>
          ${
            told.length
              ? html`<ul>
                  ${told.map((item) => html`<li>${phrase(item)}</li>`)}
                </ul>`
              : nothing
          }
          ${normal.length ? html`<p class="second">${normal.map((item) => phrase(item)).join('; ')}.</p>` : nothing}
        </section>`
      : nothing
  }
  ${
    report.method.length
      ? html`<section aria-labelledby="method">
          <h3 id="method">${headings.method}</h3>
          <p class="second">${report.method.map((item) => phrase(item)).join('; ')}.</p>
        </section>`
      : nothing
  }`;
}

/** What could not be examined, with the reason, what nobody felt for, and what the flags still ask. */
export function renderNotExamined({ report, parts }: ReportView): TemplateResult {
  const { flags } = parts;
  const asked = report.triage.flags.length ? report.triage.questions : [];
  const inFull = firstUses(flags.abbreviations);
  const open = [...new Set(asked.map(({ code }) => inFull(flags.questions[code])))];
  const { headings, about, unfelt, nothingMissing } = parts.report;
  return html`<section aria-labelledby="not-examined">
    <h3 id="not-examined">${headings.notExamined}</h3>
    ${
      report.couldNot.length || report.unfelt.length
        ? html`<ul>
            ${report.couldNot.map((item) => html`<li>${about(item)}</li>`)}
            ${unfelt(report.unfelt).map((one) => html`<li>${one}</li>`)}
          </ul>`
        : html`<p class="second">${nothingMissing}</p>`
    }
    ${open.length ? html`<p class="second asked"><b>${flags.bar.asks}</b> ${open.join(' ')}</p>` : nothing}
  </section>`;
}
