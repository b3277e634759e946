import { html, nothing, type TemplateResult } from 'lit';
import type { LimbConclusion } from '../../report/index.js';
import type { ReportView } from './view.js';

/** The limb's complaint and index, which give the sentence its weight. */
function beside({ limb }: LimbConclusion, { report, parts }: ReportView): string {
  const told = report.parts
    .find(({ at }) => at === limb)
    ?.others.filter(({ line, weight }) => line.code === 'limb-history' && weight === 'abnormal');
  const side = limb.split(' ')[0];
  const indices = report.pressures?.reading.indices.filter(
    (index) => index.side === side && (limb.endsWith('leg') ? /ankle|toe/ : /wrist|finger/).test(index.kind),
  );
  return [
    ...(told ?? []).map((item) => parts.report.phrase(item)),
    ...(indices ?? []).map((index) => `${parts.pressures.kinds[index.kind]} ${parts.pressures.index(index)}`),
  ]
    .filter(Boolean)
    .join('; ');
}

function oneLimb(conclusion: LimbConclusion, view: ReportView): TemplateResult {
  const { words } = view;
  const { where, rule, reasons, voices, firm, contradictions } = conclusion;
  const agreed = voices && words.localisation.voices(voices);
  const besides = beside(conclusion, view);
  return html`<div class="limb">
    <p class="lead">${where ? words.localisation.headline(where) : words.rule.lead(rule)}.</p>
    ${besides ? html`<p>${besides}.</p>` : nothing}
    <p class="second">
      ${where ? `${words.rule.heading}: ${words.rule.lead(rule)}.` : nothing}
      ${reasons.map((one) => html`${words.rule.reason(one)} `)}
      ${agreed ? html`<b>${agreed.claim}</b> ${agreed.why}` : nothing}
      ${firm ? words.localisation.firmness(firm.code) : nothing}
    </p>
    ${contradictions.map((one) => html`<p><b>${words.rule.checkAgain}:</b> ${words.rule.contradiction(one)}</p>`)}
  </div>`;
}

/** What the findings come to, limb by limb; never a diagnosis. */
export function renderConclusion(view: ReportView): TemplateResult {
  const { report, words, parts } = view;
  const { everywhere, limbs, leads, natures, conflicts, impossible } = report.conclusion;
  const nothingSaid = !everywhere && !limbs.length && !leads.length;
  return html`<section part="conclusion" class="conclusion" aria-labelledby="conclusion">
    <h3 id="conclusion">${parts.report.headings.conclusion}</h3>
    ${everywhere ? html`<p class="lead">${words.rule.lead(everywhere)}.</p>` : nothing}
    ${limbs.map((limb) => oneLimb(limb, view))}
    ${leads.map((lead) => html`<p class="lead">${words.rule.lead(lead)}.</p>`)}
    ${nothingSaid ? html`<p>${parts.report.noConclusion}</p>` : nothing}
    ${
      natures.length
        ? html`<p>
            ${words.localisation.natureHeading}:
            ${natures.map((one) => html`${words.localisation.nature(one)} `)}
          </p>`
        : nothing
    }
    ${impossible ? html`<p><b>${words.rule.checkAgain}:</b> ${words.localisation.impossible(impossible)}</p>` : nothing}
    ${conflicts.map((one) => html`<p><b>${words.rule.checkAgain}:</b> ${words.localisation.conflict(one)}</p>`)}
  </section>`;
}
