import { css, html, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { type RoundMark, type RoundsRow, roundsPlot } from '../../drawing/rounds-plot.js';
import type { ChartWords } from '../../locale/chart.js';
import type { ObservationChart, Observed } from '../../triage/index.js';

/** Room above and below the lines of a row, and between them, in px. */
const PAD = 7;
const DEPTH = 22;
const HEIGHT = DEPTH + 2 * PAD;
/** From so many rounds on, plain marks would lie on each other; what is not normal is marked all the same. */
const CROWDED = 40;

const percent = (share: number): string => `${(2 + 96 * share).toFixed(2)}%`;
const level = (depth: number): number => PAD + DEPTH * depth;

function mark({ x, y, kind }: RoundMark, crowded: boolean): SVGTemplateResult | typeof nothing {
  const [cx, cy] = [percent(x), level(y)];
  if (kind === 'plain')
    return crowded ? nothing : svg`<circle class="plain" cx=${cx} cy=${cy} r="3.5"></circle>`;
  const sign = kind === 'lost' ? 'M-6-6H6V6H-6ZM-6-6 6 6M6-6-6 6' : 'M0-6 6 0 0 6-6 0Z';
  return svg`<svg class=${kind} x=${cx} y=${cy} overflow="visible"><path d=${sign}></path></svg>`;
}

function drawn({ stretches }: RoundsRow, rounds: number): TemplateResult {
  const steps = stretches.flatMap((stretch) => stretch.slice(1).map((to, i) => [stretch[i]!, to] as const));
  return html`<svg height=${HEIGHT} aria-hidden="true">
    ${[0, 1].map(
      (depth) => svg`<line class="level" x1="0" x2="100%" y1=${level(depth)} y2=${level(depth)}></line>`,
    )}
    ${steps.map(
      ([a, b]) =>
        svg`<line class="step" x1=${percent(a.x)} y1=${level(a.y)} x2=${percent(b.x)} y2=${level(b.y)}></line>`,
    )}
    ${stretches.flat().map((one) => mark(one, rounds > CROWDED))}
  </svg>`;
}

/** The rounds over the hours, a row a field, each with what stands. The table below says the same in words. */
export function renderCourse(
  chart: ObservationChart,
  words: ChartWords,
  said: (field: Observed) => string,
): TemplateResult | typeof nothing {
  const { observations } = chart;
  const last = observations.at(-1);
  if (!last) return nothing;
  const { rows, ticks } = roundsPlot(chart, -new Date(last.at).getTimezoneOffset() * 60_000);
  return html`<figure part="course" aria-label=${words.table.course}>
    ${rows
      .filter(({ stretches }) => stretches.length)
      .map(
        (row) =>
          html`<div class="course-row">
            <p>${words.table.fields[row.field]}: <b>${said(row.field)}</b></p>
            ${drawn(row, observations.length)}
          </div>`,
      )}
    <svg class="hours" height="36" aria-hidden="true">
      ${ticks.map(({ at, x }, i) => {
        const anchor = x < 0.1 ? 'start' : x > 0.9 ? 'end' : 'middle';
        const before = ticks[i - 1];
        const line = (said: string, y: number): SVGTemplateResult =>
          svg`<text x=${percent(x)} y=${y} text-anchor=${anchor}>${said}</text>`;
        const isNewDay = !before || words.day(before.at) !== words.day(at);
        return [line(words.time(at), 13), isNewDay ? line(words.day(at), 29) : nothing];
      })}
    </svg>
    <figcaption class="hint">${words.table.key}</figcaption>
  </figure>`;
}

export const courseStyles = css`
  figure {
    margin-block: 16px;
    max-inline-size: 720px;
    /* Time runs from left to right in every language. */
    direction: ltr;
  }
  .course-row {
    margin-block-end: 4px;
  }
  .course-row p {
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  .course-row b {
    font-weight: 600;
    color: var(--_ink);
  }
  figure svg {
    display: block;
    inline-size: 100%;
  }
  figure .level {
    stroke: var(--_line);
  }
  figure .step {
    stroke: var(--_ink-2);
    stroke-width: 1.5;
  }
  figure .plain {
    fill: var(--_paper);
    stroke: var(--_ink);
    stroke-width: 1.5;
  }
  figure .worse path {
    fill: var(--_ink);
  }
  figure .lost path {
    fill: var(--_paper);
    stroke: var(--_danger);
    stroke-width: 2;
  }
  figure text {
    font-size: calc(12 * var(--_text));
    fill: var(--_ink-2);
  }
`;
