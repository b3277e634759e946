import { css } from 'lit';

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
  .body {
    fill: var(--_body);
    stroke: var(--_body-edge);
    stroke-width: calc(var(--_px) * var(--_stroke) * 2px);
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .hints,
  .knees {
    fill: none;
    stroke: var(--_body-edge);
    stroke-width: calc(var(--_px) * var(--_stroke) * 1.25px);
    stroke-linecap: round;
  }
  .knees {
    fill: var(--_body);
    fill-opacity: 0.6;
  }
  .heart {
    fill: var(--_body);
    fill-opacity: 0.75;
    stroke: var(--_body-edge);
    stroke-width: calc(var(--_px) * var(--_stroke) * 1.25px);
  }
  .artery {
    fill: var(--_vessel);
  }
  .artery.deep,
  .artery.behind {
    fill: var(--_deep);
  }
  .hollow {
    fill: var(--_body);
    stroke: var(--_mute);
    stroke-width: calc(var(--_px) * var(--_stroke) * 1.5px);
    paint-order: stroke;
  }
  .hollow.sign {
    paint-order: normal;
    stroke-width: calc(var(--_stroke) * 1.5px);
  }
  .leaders path {
    fill: none;
    stroke: var(--_edge);
    stroke-width: calc(var(--_stroke) * 1px);
    stroke-opacity: 0.7;
    stroke-linejoin: round;
  }
  .leaders .open {
    stroke: var(--_focus);
    stroke-width: calc(var(--_stroke) * 2px);
    stroke-opacity: 1;
  }
  .letters {
    font: 600 22px var(--_font);
    fill: var(--_ink-2);
  }
  .labels {
    font: 400 14px var(--_font);
    fill: var(--_ink);
    paint-order: stroke;
    stroke: var(--_paper);
    stroke-width: 3px;
    stroke-linejoin: round;
  }
  .label {
    cursor: pointer;
  }
  .label.quiet {
    fill: var(--_ink-2);
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
  .collateral {
    fill: none;
    stroke: var(--_vessel);
    stroke-width: calc(var(--_stroke) * 2px);
    stroke-dasharray: 1 5;
    stroke-linecap: round;
  }
  .lesions .ridge {
    fill: var(--_gone);
    stroke: var(--_gone);
    stroke-width: calc(var(--_stroke) * 0.75px);
    stroke-linejoin: round;
  }
  .lesions .narrowing .ridge {
    fill: var(--_paper);
    stroke-width: calc(var(--_stroke) * 1.75px);
  }
  .lesions .feet {
    fill: none;
    stroke: var(--_gone);
    stroke-width: calc(var(--_stroke) * 2px);
    stroke-linecap: round;
  }
  .numbers {
    pointer-events: none;
  }
  .percent {
    font: 600 14px var(--_font);
    fill: var(--_ink);
    paint-order: stroke;
    stroke: var(--_paper);
    stroke-width: 4px;
  }
  @media (forced-colors: active) {
    .figure {
      forced-color-adjust: none;
    }
  }
  @media (prefers-reduced-motion: no-preference) {
    .glyph path {
      transition:
        fill 120ms,
        stroke 120ms;
    }
    .ridge {
      animation: appear 200ms ease-out;
    }
    @keyframes appear {
      from {
        opacity: 0;
      }
    }
  }
`;
