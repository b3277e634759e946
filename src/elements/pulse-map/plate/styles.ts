import { css, unsafeCSS } from 'lit';
import { DIGIT_PAINT } from '../../../drawing/plates/digits.js';
import { CAPTION_PAINT, PLATE_PAINT, SHADE } from '../../../drawing/plates/paint.js';
import { styleSheetOf } from '../../../drawing/index.js';
import { panelBox } from '../chooser/panel-box.js';

const [right, down] = SHADE;

/** Paint of the parts of a plate; --_px is how many tenths of a unit of the plate are one px. */
export const plateStyles = css`
  ${unsafeCSS(styleSheetOf(PLATE_PAINT, 'ground'))}
  .p-shade {
    transform: translate(
      calc(var(--_px) * var(--_stroke) * ${right}px),
      calc(var(--_px) * var(--_stroke) * ${down}px)
    );
  }
  ${unsafeCSS(styleSheetOf(CAPTION_PAINT))}
  .captions {
    pointer-events: none;
  }
  ${unsafeCSS(styleSheetOf(DIGIT_PAINT))}
  .digit {
    cursor: pointer;
    outline: none;
  }
  .digit > :not(.target),
  .skinning .digit {
    pointer-events: none;
  }
  .target.row,
  .ring.row {
    fill: none;
    stroke-width: 44px;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .target.row {
    stroke: transparent;
    pointer-events: stroke;
  }
  .digit.open .ring,
  .digit:focus-visible .ring {
    stroke: var(--_focus);
    stroke-width: calc(var(--_stroke) * 3px);
  }
  .digit.open .ring.row,
  .digit:focus-visible .ring.row {
    stroke-width: 44px;
    stroke-opacity: 0.35;
  }
  .digits-said {
    min-block-size: calc(20 * var(--_text));
  }
  .digit-panel {
    ${panelBox}
    padding: 12px 16px;
  }
  .digit-panel.at-foot {
    inset: auto 0 0 0;
    inline-size: auto;
    max-inline-size: 560px;
    max-block-size: 62dvh;
    margin-inline: auto;
    border-block-end: 0;
    border-radius: 16px 16px 0 0;
  }
  .digit-panel h2 {
    margin-block-end: 8px;
    font-size: calc(19 * var(--_text));
    line-height: calc(24 * var(--_text));
    font-weight: 600;
  }
  .digit-row {
    margin-block-end: 8px;
  }
  .digit-row .chips {
    display: flex;
    flex-wrap: wrap;
    gap: 4px;
  }
  @media (forced-colors: active) {
    .digit-panel {
      border: 2px solid CanvasText;
    }
  }
`;
