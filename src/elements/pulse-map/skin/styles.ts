import { css } from 'lit';

export const skinStyles = css`
  .skin path {
    fill: none;
    stroke: none;
    stroke-linejoin: round;
  }
  .skin .halo {
    stroke: var(--_body);
    stroke-width: 5;
  }
  .skin .edge {
    stroke: var(--_c, var(--_ink));
    stroke-width: 2;
  }
  .s-ulcer .fill {
    fill: var(--_paper);
  }
  .s-ulcer .texture {
    stroke: var(--_ink);
    stroke-width: 9;
    stroke-dasharray: 1.6 3.4;
  }
  .s-gangrene .fill {
    fill: var(--_ink);
  }
  .s-pallor {
    --_c: var(--_mute);
  }
  .s-pallor .fill {
    fill: var(--_paper);
    fill-opacity: 0.8;
  }
  .s-pallor .edge {
    stroke-dasharray: 5 3.5;
  }
  .s-redness {
    --_c: var(--_weak-edge);
  }
  .s-redness .texture {
    stroke: var(--_c);
    stroke-width: 2.6;
    stroke-dasharray: 0 6;
    stroke-linecap: round;
  }
  .s-redness .edge {
    stroke-width: 1.6;
    stroke-dasharray: 0 3.4;
    stroke-linecap: round;
  }
  .s-cyanosis,
  .s-cold {
    --_c: var(--_gone);
  }
  .s-cyanosis .texture {
    stroke: var(--_c);
    stroke-width: 1.5;
  }
  .s-cyanosis .edge {
    stroke-width: 1.5;
  }
  .s-redness .fill,
  .s-cyanosis .fill {
    fill: var(--_body);
    fill-opacity: 0.5;
  }
  .s-cold .edge {
    stroke-width: 2.6;
  }
  .s-cold .teeth {
    stroke: var(--_c);
    stroke-width: 7;
    stroke-dasharray: 2.2 5;
  }
  .s-scar {
    --_c: var(--_ink-2);
  }
  .s-scar .halo {
    stroke-width: 12;
  }
  .s-scar .teeth {
    stroke: var(--_c);
    stroke-width: 9;
    stroke-dasharray: 1.6 5;
    stroke-dashoffset: -3;
  }
  .s-amputation .edge {
    stroke-width: 5;
    stroke-dasharray: 11 4 3 4;
  }
  .s-amputation .halo {
    stroke-width: 10;
  }
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
    font-size: 13px;
    line-height: 17px;
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
    font-size: 13px;
    color: var(--_ink-2);
  }
  .act .field {
    flex: 1;
    min-inline-size: 0;
    color: var(--_ink);
    font-size: 16px;
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
    font-size: 13px;
    line-height: 18px;
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
      font-size: 12px;
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
