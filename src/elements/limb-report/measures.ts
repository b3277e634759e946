import { html, nothing, type TemplateResult } from 'lit';
import { SIDES } from '../../anatomy/index.js';
import { PRESSURE_SITES } from '../../examination/index.js';
import { sentence } from '../../locale/phrases.js';
import { sayNote, sayVerdict } from '../../locale/pressure-notes.js';
import { firstUses } from '../../locale/first-use.js';
import type { PressureReport, StageReport } from '../../report/index.js';
import { isUsed } from '../limb-pressures/used.js';
import type { ReportView } from './view.js';

/** Pressures that stand in the table, at rest; the rest is told in lines. */
function table({ reading, unit }: PressureReport, { examination, words, parts }: ReportView): TemplateResult {
  const { pressures = {} } = examination;
  const said = parts.pressures;
  const rows = PRESSURE_SITES.filter((site) => SIDES.some((side) => pressures[site]?.[side] !== undefined));
  const kinds = [...new Set(reading.indices.map(({ kind }) => kind))];
  return html`<table>
    <thead>
      <tr>
        <td></td>
        ${SIDES.map((side) => html`<th scope="col">${sentence(words.anatomy.sides[side])}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (site) =>
          html`<tr>
            <th scope="row">${said.sites[site]}</th>
            ${SIDES.map((side) => {
              const value = pressures[site]?.[side];
              return html`<td class=${isUsed(reading.indices, site, side) ? 'used' : nothing}>
                ${value === undefined ? '–' : said.pressure(value, unit)}
              </td>`;
            })}
          </tr>`,
      )}
      ${kinds.map(
        (kind) =>
          html`<tr class="index">
            <th scope="row">${said.kinds[kind]}</th>
            ${SIDES.map((side) => {
              const index = reading.indices.find((one) => one.kind === kind && one.side === side);
              const odd = index?.band !== undefined && index.band !== 'normal';
              return html`<td>
                ${index ? (odd ? html`<b>${said.index(index)}</b>` : said.index(index)) : '–'}
              </td>`;
            })}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/** Pressures and indices, what they point to, and how they were worked out. */
export function renderPressures(view: ReportView): TemplateResult | typeof nothing {
  const { report, parts } = view;
  const { pressures } = report;
  const { headings, phrase } = parts.report;
  if (!pressures) return nothing;
  const { unit, items, verdicts, notes } = pressures;
  const lines = items.filter(
    ({ line, weight }) =>
      line.code === 'pressure' && line.statement.code !== 'pressure' && weight !== 'could-not',
  );
  const hasTable = items.some(({ line }) => line.code === 'pressure' && line.statement.code === 'pressure');
  return html`<section aria-labelledby="pressures">
    <h3 id="pressures">${headings.pressures}</h3>
    ${hasTable ? table(pressures, view) : nothing}
    ${lines.length ? html`<p>${lines.map((item) => phrase(item)).join('; ')}.</p>` : nothing}
    ${verdicts.map((verdict) => html`<p><b>${sayVerdict(parts.pressures, verdict, unit)}</b></p>`)}
    ${notes.map((note) => html`<p class="second">${sayNote(parts.pressures, note, unit)}</p>`)}
  </section>`;
}

/** The tests that were done, each with the limit it was read by. */
export function renderTests({ report, parts }: ReportView): TemplateResult | typeof nothing {
  if (!report.tests.length) return nothing;
  const { headings, phrase } = parts.report;
  return html`<section aria-labelledby="tests">
    <h3 id="tests">${headings.tests}</h3>
    <ul>
      ${report.tests.map((item) => html`<li>${phrase(item)}</li>`)}
    </ul>
  </section>`;
}

function stage({ limb, scheme, stage: final, derived }: StageReport, { parts }: ReportView): TemplateResult {
  const { staging: words, flags, report } = parts;
  const inFull = firstUses(flags.abbreviations);
  const { overrule, grounds } = derived;
  return html`<div class="stage">
    <dt>${report.part(limb)}, ${words.schemes[scheme]}</dt>
    <dd>
      ${
        final === undefined
          ? words.open(scheme, derived.candidates)
          : html`<b>${words.stage(scheme, final)}</b>`
      }${overrule ? html`. ${sentence(words.overrule(scheme, overrule))}.` : nothing}
      ${grounds.length ? html`<span class="second">${inFull(words.from(grounds.map((g) => flags.ground(g))))}</span>` : nothing}
    </dd>
  </div>`;
}

/** Stages as they finally stand, with what they rest on. */
export function renderStages(view: ReportView): TemplateResult | typeof nothing {
  const { report, parts } = view;
  const own = report.ownStages.filter(
    ({ from }) =>
      !report.stages.some(
        ({ limb, scheme, derived }) =>
          derived.overrule && from[0] === `staging.${limb.split(' ').reverse().join('.')}.${scheme}`,
      ),
  );
  if (!report.stages.length && !own.length) return nothing;
  return html`<section aria-labelledby="stages">
    <h3 id="stages">${parts.report.headings.stages}</h3>
    ${report.stages.length ? html`<dl>${report.stages.map((one) => stage(one, view))}</dl>` : nothing}
    ${own.map((item) => html`<p>${parts.report.phrase(item)}.</p>`)}
  </section>`;
}
