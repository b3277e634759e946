import { css, unsafeCSS } from 'lit';
import { FIGURE_PAINT, GROUND_PAINT, styleSheetOf } from '../../../drawing/index.js';

export const figureStyles = css`
  .figure {
    --_halo: var(--_body);
    inline-size: 100%;
    block-size: auto;
    user-select: none;
    -webkit-user-select: none;
    -webkit-touch-callout: none;
    -webkit-tap-highlight-color: transparent;
    touch-action: manipulation;
    outline: none;
  }
  .figure * {
    touch-action: inherit;
  }
  .drawing .figure {
    touch-action: none;
    cursor: crosshair;
  }
  /* What a hand never means is not searched at every move: body and arteries, and a site's glyph within its target. */
  .ground,
  .leaders,
  .letters,
  .site > :not(.target) {
    pointer-events: none;
  }
  /* Body and arteries are drawn in tenths of a figure unit; --_px is how many of these are one px, so that lines are as fine
     in an enlarged view as in the whole. Contours overlap, so the rim is painted before the fill that
     makes them one shape. */
  ${unsafeCSS(styleSheetOf(GROUND_PAINT, 'ground'))}
  ${unsafeCSS(styleSheetOf(FIGURE_PAINT))}
  .hollow.sign {
    paint-order: normal;
    stroke-width: calc(var(--_stroke) * 1.5px);
  }
  .leaders .open {
    stroke: var(--_focus);
    stroke-width: calc(var(--_stroke) * 2px);
    stroke-opacity: 1;
  }
  .label {
    cursor: pointer;
  }
  .label.loud {
    font-weight: 600;
  }
  .label.finding {
    font-size: calc(13em / 14);
  }
  .site {
    cursor: pointer;
    outline: none;
  }
  .target {
    fill: transparent;
    pointer-events: all;
  }
  .ring {
    fill: none;
    stroke: none;
  }
  .site.preview .ring {
    stroke: var(--_edge);
    stroke-width: calc(var(--_stroke) * 1.5px);
  }
  .site.open .ring {
    fill: var(--_paper);
    stroke: var(--_focus);
    stroke-width: calc(var(--_stroke) * 3px);
  }
  .site:focus-visible .ring {
    stroke: var(--_focus);
    stroke-width: calc(var(--_stroke) * 3px);
  }
  .drag {
    fill: none;
    stroke: var(--_focus);
    stroke-width: calc(var(--_stroke) * 2px);
    stroke-dasharray: 6 5;
    pointer-events: none;
  }
  .earlier {
    opacity: 0.75;
    pointer-events: none;
  }
  .earlier.changed {
    opacity: 1;
  }
  .numbers {
    pointer-events: none;
  }
  @media (forced-colors: active) {
    .figure {
      forced-color-adjust: none;
    }
  }
`;
