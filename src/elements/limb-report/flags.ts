import { html, nothing, type TemplateResult } from 'lit';
import { firstUses } from '../../locale/first-use.js';
import type { RedFlag } from '../../triage/index.js';
import { ICONS } from '../common/icons.js';
import type { ReportView } from './view.js';

/** What a flag says besides its heading: what to do, how soon, what raised it and who was called. */
function flag(of: RedFlag, { parts, report: { calls } }: ReportView, first: boolean): TemplateResult {
  const { flags: words, report: said } = parts;
  const inFull = firstUses(words.abbreviations);
  const times = [
    ...(of.sinceOnset === undefined ? [] : [words.since(of.sinceOnset)]),
    ...(of.flowWithin ? [words.hours(of.flowWithin)] : []),
    ...(of.clock?.code === 'days-to-flow' ? [words.target(of.clock)] : []),
    ...(of.class ? [words.classOpen(of.class)] : []),
  ];
  return html`<div part="flag" class="flag ${of.urgency}">
    <h4>${inFull(words.heading(of))}</h4>
    <p class="act"><b>${words.when(of)}.</b> ${inFull(words.action(of))}</p>
    <p>${inFull(words.because(of))}</p>
    ${times.length ? html`<p>${times.join(' ')}</p>` : nothing}
    ${
      first && calls.length
        ? html`<ul class="calls" aria-label=${said.headings.calls}>
            ${calls.map((call) => html`<li>${said.phrase(call)}.</li>`)}
          </ul>`
        : nothing
    }
  </div>`;
}

/** Red flags, the gravest first; calls that no flag asked for stand with them too. */
export function renderFlags(view: ReportView): TemplateResult | typeof nothing {
  const { report, parts } = view;
  const { flags } = report.triage;
  const { headings, phrase } = parts.report;
  if (!flags.length)
    return report.calls.length
      ? html`<section class="plain" aria-labelledby="calls">
          <h3 id="calls">${headings.calls}</h3>
          <ul>
            ${report.calls.map((call) => html`<li>${phrase(call)}.</li>`)}
          </ul>
        </section>`
      : nothing;
  return html`<section class="flags ${flags[0]?.urgency ?? ''}" aria-labelledby="flags">
    <h3 id="flags"><span class="mark">${ICONS.alarm}</span>${headings.flags}</h3>
    ${flags.map((one, i) => flag(one, view, i === 0))}
  </section>`;
}
