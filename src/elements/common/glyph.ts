import { nothing, svg, type SVGTemplateResult, unsafeCSS } from 'lit';
import { GLYPHS, MARK_BOXES, type MarkKind, MARKS, NUMERAL_SHIFT, NUMERALS } from '../../drawing/glyphs.js';
import { GLYPH_PAINT, styleSheetOf } from '../../drawing/paint.js';
import type { Shown } from '../../drawing/shown.js';

/**
 * The parts of a glyph in its 24-unit box, with a halo where it lies on the figure. A map draws forty of them: the plain ones,
 * which are most, are a template without inner parts.
 */
export function glyphParts(
  { kind, numeral, marks }: Shown,
  halo = false,
  transform: string | typeof nothing = nothing,
): SVGTemplateResult {
  const [shape, second] = GLYPHS[kind];
  const marked = marks.map((mark) => MARKS[mark]).join('');
  const around = halo ? shape.d : '';
  const digit = numeral === null ? '' : (NUMERALS[numeral] ?? '');
  const shift = NUMERAL_SHIFT[kind] ? `translate(0 ${NUMERAL_SHIFT[kind]})` : nothing;
  if (second || marked) {
    return svg`<g class="glyph g-${kind}" transform=${transform}>
      <path class="halo" d=${around}></path><path class="mark-halo" d=${halo ? marked : ''}></path>
      <path class=${shape.paint} d=${shape.d}></path><path class=${second?.paint ?? nothing} d=${second?.d ?? ''}></path>
      <path class="numeral" d=${digit} transform=${shift}></path><path class="mark" d=${marked}></path>
    </g>`;
  }
  return digit
    ? svg`<g class="glyph g-${kind}" transform=${transform}><path class="halo" d=${around}></path><path class=${shape.paint} d=${shape.d}></path><path class="numeral" d=${digit} transform=${shift}></path></g>`
    : svg`<g class="glyph g-${kind}" transform=${transform}><path class="halo" d=${around}></path><path class=${shape.paint} d=${shape.d}></path></g>`;
}

/** A glyph as a picture of its own; words stand beside it, so it is hidden from assistive technology. */
export function glyphIcon(shown: Shown, size: number): SVGTemplateResult {
  const box = shown.marks.length ? '-7 -7 38 39' : '0 0 24 24';
  return svg`<svg width=${size} height=${size} viewBox=${box} aria-hidden="true">${glyphParts(shown)}</svg>`;
}

/** A mark alone, for the toggles. */
export function markIcon(mark: MarkKind, size: number): SVGTemplateResult {
  return svg`<svg width=${size} height=${size} viewBox=${MARK_BOXES[mark].join(' ')} aria-hidden="true"><path class="mark" d=${MARKS[mark]}></path></svg>`;
}

export const glyphStyles = unsafeCSS(styleSheetOf(GLYPH_PAINT));
