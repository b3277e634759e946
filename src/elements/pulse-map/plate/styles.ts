import { css, unsafeCSS } from 'lit';
import { CAPTION_PAINT, PLATE_PAINT, SHADE } from '../../../drawing/plates/paint.js';
import { styleSheetOf } from '../../../drawing/index.js';

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
`;
