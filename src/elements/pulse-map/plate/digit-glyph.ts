import { nothing, svg, type SVGTemplateResult } from 'lit';
import { DIGIT_GLYPHS, type DigitView } from '../../../drawing/plates/digits.js';

/** The glyph of a digit in its 24-unit box. */
export function digitGlyph({ kind }: Pick<DigitView, 'kind'>, halo: boolean): SVGTemplateResult {
  const [shape, second] = DIGIT_GLYPHS[kind];
  return svg`<g class="tip t-${kind}">${halo ? svg`<path class="halo" d=${shape.d}></path>` : nothing}<path class=${shape.paint} d=${shape.d}></path>${second ? svg`<path class=${second.paint} d=${second.d}></path>` : nothing}</g>`;
}
