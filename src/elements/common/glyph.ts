import { css, nothing, svg, type SVGTemplateResult } from 'lit';
import {
  type BruitFinding,
  type PulseFinding,
  type ScaleId,
  type ScaleStep,
  stepOf,
} from '../../examination/index.js';
import {
  type GlyphKind,
  GLYPHS,
  type MarkKind,
  MARKS,
  NUMERAL_SHIFT,
  NUMERALS,
} from '../../drawing/glyphs.js';

/** What a place shows: its glyph, numeral and additional marks. */
export interface Shown {
  readonly kind: GlyphKind;
  readonly numeral: number | null;
  readonly marks: readonly MarkKind[];
}

/** The glyph, numeral and marks for the findings at a place. */
export function shownFor(
  pulse: PulseFinding | undefined,
  bruit: BruitFinding | undefined,
  scale: ScaleId,
  listenOnly = false,
): Shown {
  const step = stepOf(pulse, scale);
  const could = listenOnly ? bruit?.couldNotExamine : pulse?.couldNotExamine;
  const kind: GlyphKind = step?.grade ?? (could ? 'could-not' : listenOnly ? 'listen' : 'not-examined');
  const marks: MarkKind[] = [];
  if (bruit?.bruit && bruit.bruit !== 'none') marks.push(bruit.bruit);
  if (pulse?.thrill) marks.push('thrill');
  if (pulse?.expansile) marks.push('expansile');
  return { kind, numeral: step?.numeral ?? null, marks };
}

export function shownForStep({ grade, numeral }: ScaleStep): Shown {
  return { kind: grade, numeral, marks: [] };
}

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
  const boxes: Record<MarkKind, string> = {
    systolic: '17 -8 14 14',
    continuous: '17 -8 14 14',
    thrill: '1 20 22 16',
    expansile: '-7 0 38 24',
  };
  return svg`<svg width=${size} height=${size} viewBox=${boxes[mark]} aria-hidden="true"><path class="mark" d=${MARKS[mark]}></path></svg>`;
}

export const glyphStyles = css`
  .glyph path,
  .mark {
    fill: none;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .glyph .halo {
    fill: var(--_halo, var(--_body));
    stroke: var(--_halo, var(--_body));
    stroke-width: calc(var(--_stroke) * 7.5px);
  }
  .glyph .mark-halo {
    stroke: var(--_halo, var(--_body));
    stroke-width: calc(var(--_stroke) * 5px);
  }
  .glyph .numeral {
    stroke-width: calc(var(--_stroke) * 2px);
  }
  .mark,
  .glyph .mark {
    stroke: var(--_ink);
    stroke-width: calc(var(--_stroke) * 2px);
  }
  .g-not-examined .dash,
  .g-unknown .dash {
    fill: var(--_paper);
    stroke: var(--_mute);
    stroke-width: calc(var(--_stroke) * 1.7px);
    stroke-dasharray: 2.35 2.05;
    stroke-linecap: butt;
  }
  .g-normal .line {
    fill: var(--_paper);
    stroke: var(--_pulse);
    stroke-width: calc(var(--_stroke) * 2px);
  }
  .g-normal .numeral {
    stroke: var(--_pulse);
  }
  .g-bounding .line {
    fill: var(--_paper);
    stroke: var(--_pulse);
    stroke-width: calc(var(--_stroke) * 1.6px);
  }
  .g-bounding .fill {
    fill: var(--_pulse);
  }
  .g-bounding .numeral {
    stroke: var(--_paper);
  }
  .g-reduced .fill {
    fill: var(--_weak);
    stroke: var(--_weak-edge);
    stroke-width: calc(var(--_stroke) * 1.8px);
  }
  .g-reduced .numeral {
    stroke: var(--_weak-ink);
  }
  .g-absent .fill {
    fill: var(--_gone);
  }
  .g-absent .numeral {
    stroke: var(--_gone-ink);
  }
  .g-could-not .line {
    fill: var(--_paper);
    stroke: var(--_mute);
    stroke-width: calc(var(--_stroke) * 1.8px);
  }
  .g-could-not .bar {
    stroke: var(--_mute);
    stroke-width: calc(var(--_stroke) * 2.2px);
  }
  .g-unknown .bar,
  .g-listen .bar {
    stroke: var(--_mute);
    stroke-width: calc(var(--_stroke) * 1.6px);
  }
`;
