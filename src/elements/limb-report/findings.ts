import { html, nothing, type TemplateResult } from 'lit';
import type { PartReport } from '../../report/index.js';
import type { ReportView } from './view.js';

/** Everything normal in a part, line by line; what a reader must know stands in the open. */
function normalLines({ at, normals: { sites, others } }: PartReport, { parts }: ReportView): string[] {
  const { report } = parts;
  return [
    ...sites.map((group) => {
      const { where, what } = report.sites(at, group);
      return `${where}: ${what}`;
    }),
    ...others.filter(({ telling }) => !telling).map((item) => report.phrase(item)),
  ];
}

/** What is normal, counted; what it is, on demand, and always on paper. */
function normals(
  count: number,
  about: string,
  lines: readonly string[],
  view: ReportView,
): TemplateResult | typeof nothing {
  if (!lines.length) return nothing;
  const said = view.parts.report.normals(count);
  const summary = about ? `${said}: ${about}` : said;
  return view.printing
    ? html`<p class="normals"><span>${said}.</span> ${lines.join('; ')}.</p>`
    : html`<details class="normals">
        <summary>${summary}</summary>
        <ul>
          ${lines.map((one) => html`<li>${one}</li>`)}
        </ul>
      </details>`;
}

/** What is said of a limb besides its sites, a line each. */
const KINDS = ['limb-history', 'context', 'limb-inspection', 'staging'] as const;

function onePart(part: PartReport, view: ReportView): TemplateResult {
  const { at, sites, others, negatives } = part;
  const { report } = view.parts;
  const lines = [
    ...sites.map((group) => {
      const { where, what } = report.sites(at, group);
      return html`<li><b>${where}:</b> ${what}</li>`;
    }),
    ...KINDS.flatMap((kind) => {
      const own = others.filter(({ line }) => line.code === kind);
      return own.length ? [html`<li>${own.map((item) => report.phrase(item)).join('; ')}</li>`] : [];
    }),
  ];
  return html`<div class="part" data-part=${at}>
    <h4>${report.part(at)}</h4>
    ${
      lines.length
        ? html`<ul class="found">
            ${lines}
          </ul>`
        : nothing
    }
    ${negatives.length ? html`<p>${negatives.map((item) => report.phrase(item)).join('; ')}.</p>` : nothing}
    ${normals(part.normals.count - negatives.length, '', normalLines(part, view), view)}
  </div>`;
}

const isTold = ({ sites, others, negatives }: PartReport): boolean =>
  sites.length + others.length + negatives.length > 0;

/** Findings by exception, limb by limb; the parts in which all is normal together. */
export function renderFindings(view: ReportView): TemplateResult | typeof nothing {
  const { report, parts } = view;
  const told = report.parts.filter(isTold);
  const rest = report.parts.filter((part) => !isTold(part) && part.normals.count > 0);
  if (!told.length && !rest.length) return nothing;
  const count = rest.reduce((sum, part) => sum + part.normals.count, 0);
  const scale = parts.report.scale(report.scale);
  return html`<section aria-labelledby="findings">
    <h3 id="findings">${parts.report.headings.findings}</h3>
    ${told.map((part) => onePart(part, view))}
    ${normals(
      count,
      parts.report.parts(rest.map(({ at }) => at)),
      rest.map((part) => `${parts.report.part(part.at)}: ${normalLines(part, view).join('; ')}`),
      view,
    )}
    ${scale ? html`<p class="second">${scale}</p>` : nothing}
  </section>`;
}
