import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Side } from '../../anatomy/index.js';
import type { TrendMeasure } from '../../comparison/trends.js';
import type { PlacedPoint, TimeAxis, TrendPlot } from '../../drawing/trend-plot.js';
import type { VisitsWords } from '../../locale/visits.js';
import { type SourceWords, sourcesMark } from '../common/sources-mark.js';

/** One measure with its plot, and where the reader stands in it. */
export interface ShownPlot {
  readonly measure: TrendMeasure;
  readonly plot: TrendPlot;
  /** The values of the visit that is read, drawn on top. */
  readonly read: readonly PlacedPoint[];
  readonly readSides: readonly Side[];
  readonly said: string;
  /** What the band is, where there is one. */
  readonly band: string | undefined;
  readonly source: string;
}

const mark = (side: Side, x: number, y: number, kind = 'mark', size = 4.5) =>
  side === 'right'
    ? svg`<circle class=${kind} cx=${x} cy=${y} r=${size}></circle>`
    : svg`<rect class=${kind} x=${x - size} y=${y - size} width=${2 * size} height=${2 * size}></rect>`;

export function renderPlot(
  { measure, plot, read, readSides, said, band, source }: ShownPlot,
  axis: TimeAxis,
  cursor: number | undefined,
  words: VisitsWords,
  letters: Readonly<Record<Side, string>>,
  tick: (time: number) => string,
  sources: SourceWords,
): TemplateResult {
  const { frame, width, height } = plot;
  return html`<figure part="plot">
    <figcaption><b>${words.table.measures[measure]}</b> <span class="said">${said}</span></figcaption>
    <svg width=${width} height=${height} viewBox="0 0 ${width} ${height}" aria-hidden="true">
      ${plot.levels.map(
        ({ value, y }) =>
          svg`<path class="level" d="M${frame.left} ${y}H${frame.right}"></path><text class="tick" x=${frame.left - 11} y=${y + 4} text-anchor="end">${words.level(measure, value)}</text>`,
      )}
      ${axis.ticks.map(
        ({ time, x }) =>
          svg`<path class="stop" d="M${x} ${frame.bottom}v5"></path><text class="tick" x=${x} y=${height - 5} text-anchor="middle">${tick(time)}</text>`,
      )}
      ${plot.bands.map(
        ({ side, x, y, width: wide, height: high }) =>
          svg`<g class="band ${side}"><rect x=${x} y=${y} width=${wide} height=${high}></rect><path d="M${x} ${y}h${wide}M${x} ${y + high}h${wide}"></path></g>`,
      )}
      ${cursor === undefined ? nothing : svg`<path class="cursor" d="M${cursor} ${frame.top}V${frame.bottom}"></path>`}
      ${plot.lines.map(
        ({ side, path, marks, letter }) =>
          svg`<g class=${side}><path class="line" d=${path}></path>${marks.map(({ x, y }) => mark(side, x, y))}${letter ? svg`<text class="letter" x=${letter.x} y=${letter.y} text-anchor="middle">${letters[side]}</text>` : nothing}</g>`,
      )}
      ${read.map(({ x, y }, i) => svg`<g class=${readSides[i]}>${mark(readSides[i]!, x, y, 'read', 6.5)}</g>`)}
    </svg>
    ${
      band
        ? html`<div class="band-told">
            <p class="hint">${band}</p>
            ${sourcesMark([source], sources)}
          </div>`
        : nothing
    }
  </figure>`;
}
