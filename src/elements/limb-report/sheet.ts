import { html, nothing, type TemplateResult } from 'lit';
import { isEmptyRecord, parseExaminationText } from '../../examination/index.js';
import { reportOf } from '../../report/index.js';
import { glyphStyles } from '../common/glyph.js';
import { limbLineStyles } from '../pulse-reading/limb-line.js';
import { renderConclusion } from './conclusion.js';
import { renderLines, renderPicture } from './figure.js';
import { renderFindings } from './findings.js';
import { renderFlags } from './flags.js';
import { renderPressures, renderStages, renderTests } from './measures.js';
import { renderBackground, renderNotExamined } from './rest.js';
import { reportStyles } from './styles.js';
import { renderFooter, renderHead, renderInError } from './about.js';
import type { ReportView, SheetView } from './view.js';

export { parseExaminationText };

export const sheetStyles = [glyphStyles, limbLineStyles, reportStyles];

/** A finished examination, from flags to caution. */
export function renderSheet(view: SheetView): TemplateResult {
  const { examination, earlier, settings, parts } = view;
  const all: ReportView = { ...view, report: reportOf(examination, { earlier, settings }) };
  const empty = isEmptyRecord(examination);
  const inError = all.report.status === 'entered-in-error';
  // On paper the stages fill what the picture leaves of its column, which is room for larger print; the rest stands beside them.
  const stages = empty ? nothing : renderStages(all);
  const background = empty ? nothing : renderBackground(all);
  const rest = empty ? nothing : renderNotExamined(all);
  return html`<article part="report" class="report ${inError ? 'in-error' : ''}" aria-labelledby="subject">
    ${inError ? renderInError(all) : nothing} ${renderHead(all)}
    ${
      empty
        ? html`<p>${parts.whole.nothing}</p>`
        : html`${renderFlags(all)} ${renderConclusion(all)}
            <div class="body">
              <div class="main">
                ${renderLines(all)} ${renderFindings(all)} ${renderPressures(all)}
                ${view.printing ? background : stages} ${renderTests(all)} ${view.printing ? rest : nothing}
              </div>
              <div class="aside">
                ${renderPicture(all)} ${view.printing ? stages : html`${rest} ${background}`}
              </div>
            </div>`
    }
    ${renderFooter(all)}
  </article>`;
}
