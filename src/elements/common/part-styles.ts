import { css } from 'lit';
import { intrinsicSize } from './intrinsic-size.js';

/** Cards, chips and fields shared by the parts of the examination. */
export const partStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    ${intrinsicSize(640)}
  }
  :host([hidden]) {
    display: none;
  }
  /* What takes the focus must not lie under a bar that sticks to the top. */
  button,
  input,
  select,
  summary {
    scroll-margin-block: calc(var(--_sticky, 0px) + 8px) 8px;
  }
  h3 {
    font-size: calc(19 * var(--_text));
    line-height: calc(24 * var(--_text));
    font-weight: 600;
  }
  h4 {
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    font-weight: 600;
    color: var(--_ink-2);
  }
  .chips {
    display: flex;
    flex-wrap: wrap;
    gap: 4px;
  }
  .chip {
    padding-inline: 11px;
    font-size: calc(14 * var(--_text));
    line-height: calc(18 * var(--_text));
    white-space: normal;
    text-align: start;
  }
  /* In place of a control whose value is kept and locked. */
  .unknown {
    display: inline-block;
    box-sizing: border-box;
    min-block-size: 44px;
    padding: 11px 12px;
    border: 1px dashed var(--_edge);
    border-radius: 6px;
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .solid {
    background: var(--_ink);
    border-color: var(--_ink);
    color: var(--_paper);
    font-weight: 600;
  }
  .number {
    display: inline-block;
  }
  .number label,
  .text {
    display: block;
  }
  .number .hint,
  .text .hint {
    display: block;
  }
  .text .field {
    inline-size: 100%;
  }
  .entry {
    display: inline-flex;
    align-items: center;
    gap: 8px;
  }
  .entry .field {
    inline-size: 92px;
    text-align: center;
    font-size: calc(17 * var(--_text));
  }
  .unit {
    color: var(--_ink-2);
  }
  .field[aria-invalid='true'] {
    border: 2px dashed var(--_ink);
  }
  .refusal {
    display: block;
    max-inline-size: 44ch;
    margin-block-start: 4px;
    padding-inline-start: 10px;
    border-inline-start: 4px solid var(--_ink);
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
    overflow-wrap: anywhere;
  }
  .loose {
    display: grid;
    gap: 16px;
    padding-block: 12px;
  }
  .loose > div > .hint {
    display: block;
    margin-block-end: 6px;
  }
  details.fold {
    border-block-start: 1px solid var(--_line);
  }
  details.fold > summary {
    display: flex;
    align-items: center;
    gap: 10px;
    min-block-size: 48px;
    font-weight: 600;
    cursor: pointer;
    list-style: none;
  }
  details.fold > summary::-webkit-details-marker {
    display: none;
  }
  details.fold > summary::before {
    content: '';
    inline-size: 8px;
    block-size: 8px;
    margin-inline: 2px 2px;
    border-inline-end: 2px solid;
    border-block-end: 2px solid;
    rotate: calc(var(--_way) * -45deg);
  }
  details.fold[open] > summary::before {
    rotate: calc(var(--_way) * 45deg);
  }
  details.fold > summary .hint {
    margin-inline-start: auto;
    font-weight: 400;
  }
  @media (forced-colors: active) {
    .field[aria-invalid='true'] {
      border-color: Highlight;
    }
  }
  @media print {
    .chip:not([aria-checked='true']) {
      display: none;
    }
  }
`;
