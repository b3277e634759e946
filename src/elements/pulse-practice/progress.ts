import { css, html, nothing, svg, type TemplateResult } from 'lit';
import type { Level } from '../../anatomy/index.js';
import { dateIn } from '../../locale/phrases.js';
import { progressPlot, type ProgressRow, type Result, tallyOf, trendOf } from '../../practice/index.js';
import type { KeptResults } from './kept.js';
import type { Speech } from './said.js';

/** Height of a row, and radius of a mark, in px. */
const HEIGHT = 18;
const RADIUS = 5;

const levelSaid = (level: Level | 'none', { messages, parts }: Speech): string =>
  level === 'none' ? parts.practice.noDisease : messages.anatomy.levels[level];

/** One level: what was right of what was tried, in words, and each patient as a mark. */
function levelRow({ level, tried, right, marks }: ProgressRow, speech: Speech): TemplateResult {
  const words = speech.parts.practice;
  const [full, hollow] = [RADIUS, RADIUS - 0.75];
  return html`<li>
    <p><span>${levelSaid(level, speech)}</span> <b>${words.rightOf(right, tried)}</b></p>
    <svg height=${HEIGHT} aria-hidden="true">
      <line class="level" x1="0" x2="100%" y1=${HEIGHT / 2} y2=${HEIGHT / 2}></line>
      ${marks.map(
        ({ x, right: was }) =>
          svg`<circle class=${was ? 'was-right' : 'was-wrong'} cx=${`${(100 * x).toFixed(2)}%`} cy=${HEIGHT / 2} r=${was ? full : hollow}></circle>`,
      )}
    </svg>
  </li>`;
}

/** From when to when the drawn results are; nothing where no clock told. */
function span(results: readonly Result[], speech: Speech): TemplateResult | typeof nothing {
  const date = dateIn(speech.tag);
  const [first, last] = [results[0]?.at, results.at(-1)?.at].map(date);
  if (!first || !last) return nothing;
  return html`<p class="span hint"><span>${first}</span><span>${last === first ? nothing : last}</span></p>`;
}

function chart(results: readonly Result[], speech: Speech): TemplateResult {
  const words = speech.parts.practice;
  const { rows, from } = progressPlot(results);
  if (!rows.length) return html`<p>${words.noLevelNamed}</p>`;
  const legend = (was: string, name: string): TemplateResult =>
    html`<svg class="key" width="14" height="14" aria-hidden="true">
        <circle class=${was} cx="7" cy="7" r=${RADIUS - (was === 'was-right' ? 0 : 0.75)}></circle></svg
      >${name}`;
  return html`<h3>${words.byLevel}</h3>
    <ul class="levels">
      ${rows.map((row) => levelRow(row, speech))}
    </ul>
    ${span(results.slice(from), speech)}
    <p class="hint keys" aria-hidden="true">
      <span>${legend('was-right', words.keyRight)}</span><span>${legend('was-wrong', words.keyWrong)}</span>
      <span>${words.oldestFirst(from)}</span>
    </p>`;
}

/** What a learner's patients came to: by level over time, part by part, and each of the latest. */
export function renderProgress(
  { results, forgotten }: Pick<KeptResults, 'results' | 'forgotten'>,
  kept: boolean,
  speech: Speech,
  on: { readonly download: () => void; readonly forget: () => void; readonly restore: () => void },
): TemplateResult {
  const words = speech.parts.practice;
  const trend = trendOf(results);
  // The region stands there before anything is told in it, or nothing would be read out.
  const told = html`<p class="row" role="status">
    ${
      forgotten
        ? html`<span>${words.forgotten(forgotten)}</span>
            <button type="button" class="button" data-do="restore" @click=${on.restore}>
              ${words.bringBack}
            </button>`
        : nothing
    }
  </p>`;
  if (!trend) return told;
  const { last, before } = trend;
  return html`${told}
    <details class="extra progress">
      <summary>${words.progress} (${results.length})</summary>
      <p>${words.trend(last.count, last.share, before?.count ?? 0, before?.share ?? 0)}</p>
      ${chart(results, speech)}
      <h3>${words.byPart}</h3>
      <table class="marks">
        <tbody>
          ${tallyOf(results).map(
            ({ part, points, of }) =>
              html`<tr>
                <th scope="row">${words.parts[part]}</th>
                <td class="n">${words.points(points, of)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
      <h3>${words.latest}</h3>
      <ol class="latest">
        ${results
          .slice(-10)
          .map(
            ({ patient, points, of }) =>
              html`<li>
                <span>${words.patient(patient)}</span><span class="n">${words.points(points, of)}</span>
              </li>`,
          )}
      </ol>
      <p class="hint">${kept ? words.keptHere : words.keptNowhere}</p>
      <p class="row">
        <button type="button" class="button" data-do="download" @click=${on.download}>
          ${words.download}
        </button>
        <button type="button" class="button" data-do="forget" @click=${on.forget}>${words.forget}</button>
      </p>
    </details>`;
}

export const progressStyles = css`
  .progress > p {
    max-inline-size: 70ch;
  }
  .progress h3 {
    font-size: inherit;
    line-height: inherit;
    margin-block: 12px 4px;
  }
  /* Beside the form alone it has no side to stand in. */
  .setup ~ .progress,
  .setup ~ [role='status'] {
    margin-inline: 20px;
  }
  .levels p > span::first-letter {
    text-transform: uppercase;
  }
  .levels p > span {
    display: inline-block;
  }
  .latest {
    margin-block-end: 8px;
  }
  .levels,
  .progress .span {
    max-inline-size: 720px;
  }
  .levels {
    /* Time runs from left to right in every language. */
    direction: ltr;
  }
  .levels p,
  .latest li {
    display: flex;
    justify-content: space-between;
    gap: 12px;
  }
  .levels b,
  .latest .n {
    font-weight: 600;
    white-space: nowrap;
  }
  .levels svg {
    display: block;
    inline-size: 100%;
    margin-block-end: 6px;
  }
  .latest li {
    padding-block: 4px;
    border-block-start: 1px solid var(--_line);
  }
  .progress .level {
    stroke: var(--_line);
  }
  .was-right {
    fill: var(--_ink);
  }
  .was-wrong {
    fill: var(--_paper);
    stroke: var(--_ink);
    stroke-width: 1.5;
  }
  .progress .span {
    display: flex;
    justify-content: space-between;
    direction: ltr;
  }
  .keys {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 16px;
  }
  .keys span {
    display: inline-flex;
    align-items: center;
    gap: 4px;
  }
  @media (forced-colors: active) {
    .progress svg {
      forced-color-adjust: none;
    }
    .was-right {
      fill: CanvasText;
    }
    .was-wrong {
      fill: Canvas;
      stroke: CanvasText;
    }
    .progress .level {
      stroke: CanvasText;
    }
  }
`;
