import { nothing, svg, type SVGTemplateResult } from 'lit';
import { RIDGE_SIGN } from '../../../drawing/index.js';
import { type LegendSign, placedLegend, SIGN } from '../../../drawing/still/index.js';
import type { ScaleId } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import { sentence } from '../../../locale/phrases.js';
import { glyphParts, markIcon } from '../../common/glyph.js';
import type { FigureView } from '../figure/render.js';
import { digitGlyph } from '../plate/digit-glyph.js';
import { skinIcon } from '../skin/layer.js';

function drawn(sign: LegendSign): SVGTemplateResult {
  switch (sign.of) {
    case 'glyph':
      return svg`<g transform="scale(${SIGN / 24})">${glyphParts(sign.shown)}</g>`;
    case 'mark':
      return markIcon(sign.mark, SIGN);
    case 'lesion':
      return svg`<g class="lesions"><g class=${sign.kind}><path class="ridge" d=${RIDGE_SIGN.outline}></path><path class="feet" d=${RIDGE_SIGN.feet}></path></g></g>`;
    case 'digit':
      return svg`<g transform="scale(${SIGN / 24})">${digitGlyph(sign, false)}</g>`;
    case 'skin':
      return svg`<g transform="scale(.8)">${skinIcon(sign.kind, `legend-${sign.kind}`)}</g>`;
    default:
      return svg`<path class="sign ${sign.of}" d=${sign.d}></path>`;
  }
}

/**
 * The legend under a printed figure, in as many rows as it needs.
 * @param gap between figure and legend in px
 */
export function pictureLegend(
  view: FigureView,
  words: Messages,
  scale: ScaleId,
  gap: number,
): { readonly template: SVGTemplateResult; readonly height: number } {
  const { items, height } = placedLegend(
    { ...view, words, skin: view.skin.kinds(), digits: view.digits?.seen() },
    scale,
    gap,
  );
  const entries = items.map(
    ({ sign, text, x, y, lead }) =>
      svg`<g transform="translate(${x} ${y})">${sign ? drawn(sign) : nothing}<text class="label" x=${lead} y="15">${sentence(text)}</text></g>`,
  );
  return { template: svg`<g class="labels">${entries}</g>`, height };
}
