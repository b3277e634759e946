import { html, nothing, type TemplateResult } from 'lit';
import type { ReportView } from './view.js';

/** Who and when. */
export function renderHead({ report, subject, details, day, parts }: ReportView): TemplateResult {
  const { report: words } = parts;
  return html`<header class="top">
    <div>
      <h2 id="subject">${subject || words.noName}</h2>
      ${details ? html`<p class="second">${details}</p>` : nothing}
    </div>
    <p class="second when">
      ${words.title}<br />${words.examined(report.examinedAt, day)}
      ${report.status && report.status !== 'final' ? html`<br /><b>${words.status[report.status]}</b>` : nothing}
    </p>
  </header>`;
}

/** That the examination is not to be used, before everything it says. */
export function renderInError({ report, parts }: ReportView): TemplateResult {
  const { report: words } = parts;
  const marked = report.amendments.findLast(({ kind }) => kind === 'entered-in-error');
  return html`<section class="banner" role="note" aria-label=${words.status['entered-in-error']}>
    <h3>${words.status['entered-in-error']}</h3>
    <p>${words.inError}</p>
    ${marked ? html`<p>${words.amendment(marked)}.</p>` : nothing}
  </section>`;
}

/** Who examined, what was changed later, and what the report is not. */
export function renderFooter({ report, words, parts }: ReportView): TemplateResult {
  const { report: said, flags } = parts;
  return html`<footer>
    <div>
      <p><b>${report.examiner ? `${said.examiner}: ${report.examiner}` : said.noExaminer}</b></p>
      ${
        report.amendments.length
          ? html`<h3>${said.headings.amendments}</h3>
              <ul class="amendments">
                ${report.amendments.map((one) => html`<li>${said.amendment(one)}.</li>`)}
              </ul>`
          : nothing
      }
    </div>
    <div class="caution">
      ${report.unchecked ? html`<p>${flags.unchecked(report.unchecked)}</p>` : nothing}
      <p>${words.map.caution}</p>
    </div>
  </footer>`;
}
