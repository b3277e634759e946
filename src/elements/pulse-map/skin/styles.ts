import { css, unsafeCSS } from 'lit';
import { SKIN_PAINT, styleSheetOf } from '../../../drawing/index.js';

export const skinStyles = css`
  ${unsafeCSS(styleSheetOf(SKIN_PAINT, 'fixed'))}
  svg.skin .halo {
    stroke: none;
  }
  .skin.selected .halo,
  .skin:focus-visible .halo {
    stroke: var(--_focus);
    stroke-width: 9;
  }
  .skin:focus-visible {
    outline: none;
  }
  .skin.behind {
    opacity: 0.6;
  }
  .skin.erasing {
    opacity: 0.3;
  }
  .ink {
    fill: none;
    stroke: var(--_focus);
    stroke-width: 2.4;
    stroke-linejoin: round;
    stroke-linecap: round;
    pointer-events: none;
  }
  .ink.area {
    fill: var(--_focus);
    fill-opacity: 0.12;
  }
  .surface.skinning .figure {
    touch-action: pinch-zoom;
    cursor: crosshair;
  }
  .surface.skinning:focus {
    outline: none;
  }
  .skinning .site,
  .skinning .leaders,
  .skinning .label,
  .skinning .lesions {
    opacity: 0.4;
    pointer-events: none;
  }
  .palette {
    padding: 8px 12px;
    border-block-end: 1px solid var(--_line);
  }
  .kinds {
    display: grid;
    grid-template-columns: repeat(8, minmax(0, 1fr));
    gap: 6px;
    max-inline-size: 860px;
  }
  .kinds .button {
    flex-direction: column;
    gap: 2px;
    padding: 6px 2px;
    min-inline-size: 0;
    font-size: calc(13 * var(--_text));
    line-height: calc(17 * var(--_text));
    white-space: normal;
    overflow-wrap: anywhere;
  }
  .act {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 6px 8px;
    margin-block-start: 6px;
  }
  .act .hint,
  .act b {
    flex: 1 1 200px;
  }
  .act label {
    display: flex;
    flex: 1 1 220px;
    min-inline-size: 0;
    align-items: center;
    gap: 8px;
    font-size: calc(13 * var(--_text));
    color: var(--_ink-2);
  }
  .act .field {
    flex: 1;
    min-inline-size: 0;
    color: var(--_ink);
    font-size: calc(16 * var(--_text));
  }
  .marks li {
    display: flex;
    align-items: center;
    gap: 8px;
    padding-block: 4px;
    border-block-end: 1px solid var(--_line);
  }
  .marks li.selected {
    box-shadow: inset calc(var(--_way) * 4px) 0 var(--_focus);
    padding-inline-start: 10px;
  }
  .marks li span {
    flex: 1;
    min-inline-size: 0;
    overflow-wrap: anywhere;
  }
  .marks li b {
    font-weight: 600;
  }
  .marks small {
    display: block;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  .marks .hint {
    margin-block: 10px 4px;
  }
  .marks .fields {
    align-items: end;
  }
  .marks .fields .button {
    justify-self: start;
  }

  @container (max-width: 639.98px) {
    .palette {
      padding: 6px;
    }
    .kinds {
      grid-template-columns: repeat(4, minmax(0, 1fr));
      gap: 4px;
    }
    .kinds .button {
      padding-inline: 0;
      font-size: calc(12 * var(--_text));
    }
    .act .hint,
    .act b {
      flex-basis: 100%;
    }
    .act .button {
      flex: 1;
    }
    .marks li {
      gap: 6px;
    }
    .marks li .button {
      padding-inline: 8px;
    }
  }
  @container (max-width: 319.98px) {
    .kinds {
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }
  }
  @media print {
    .palette,
    .marks button,
    .marks .fields,
    .marks .hint {
      display: none;
    }
  }
`;
