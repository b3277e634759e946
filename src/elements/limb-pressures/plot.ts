import { css, html, nothing, svg, type TemplateResult } from 'lit';
import type { PressureUnit } from '../../examination/index.js';
import type { PlotLine, PressurePlot } from '../../drawing/pressure-plot.js';
import type { PartMessages } from '../../locale/parts.js';

function mark({ side, points }: PlotLine): TemplateResult[] {
  return points.map(({ x, y }) =>
    side === 'right'
      ? (svg`<circle class="mark" cx=${x} cy=${y} r="5.5"></circle>` as unknown as TemplateResult)
      : (svg`<rect class="mark" x=${x - 5.5} y=${y - 5.5} width="11" height="11"></rect>` as unknown as TemplateResult),
  );
}

/** The pressures of both legs from arm to toe. Right is a solid line with circles, left a dashed one with squares. */
export function renderPlot(
  plot: PressurePlot,
  unit: PressureUnit,
  { pressures: words, whole }: PartMessages,
): TemplateResult | typeof nothing {
  if (!plot.lines.length) return nothing;
  const said = plot.lines.map((l) =>
    words.plotSummary(
      l.side,
      l.points.map(({ station, mmHg }) => [station, mmHg] as const),
      unit,
    ),
  );
  return html`<figure class="plot">
    <svg viewBox="0 0 ${plot.width} ${plot.height}" role="img" aria-label="${words.plot}. ${said.join(' ')}">
      ${plot.levels.map(
        ({ mmHg, y }) =>
          svg`<path class="level" d="M34 ${y}H328"></path><text class="tick" x="28" y=${y + 4} text-anchor="end">${words.number(mmHg, unit)}</text>`,
      )}
      ${plot.stations.map(
        ({ station, x }) =>
          svg`<text class="tick" x=${x} y=${plot.height - 14} text-anchor="middle">${words.stations[station]}</text>`,
      )}
      ${plot.lines.map(
        (l) =>
          svg`<g class=${l.side}><path class="line" d=${l.path}></path>${mark(l)}<text class="letter" x=${l.letter.x} y=${l.letter.y}>${whole.letters[l.side]}</text></g>`,
      )}
    </svg>
  </figure>`;
}

export const plotStyles = css`
  .plot svg {
    inline-size: 100%;
    block-size: auto;
    overflow: visible;
  }
  .plot .level {
    stroke: var(--_line);
  }
  .plot .tick {
    font-size: 13px;
    fill: var(--_ink-2);
  }
  .plot .line {
    fill: none;
    stroke-width: 2.4;
  }
  .plot .right .line {
    stroke: var(--_pulse);
  }
  .plot .left .line {
    stroke: var(--_gone);
    stroke-dasharray: 7 4;
  }
  .plot .right .mark {
    fill: var(--_paper);
    stroke: var(--_pulse);
    stroke-width: 2.2;
  }
  .plot .left .mark {
    fill: var(--_gone);
  }
  .plot .letter {
    font-size: 15px;
    font-weight: 700;
  }
  .plot .right .letter {
    fill: var(--_pulse);
  }
  .plot .left .letter {
    fill: var(--_gone);
  }
`;
