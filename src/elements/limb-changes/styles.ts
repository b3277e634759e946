import { css } from 'lit';
import { intrinsicSize } from '../common/intrinsic-size.js';

export const changesStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    ${intrinsicSize(480)}
  }
  :host([hidden]) {
    display: none;
  }
  .title {
    margin: 0 0 8px;
    font-size: calc(17 * var(--_text));
    line-height: calc(23 * var(--_text));
    font-weight: 700;
  }
  section {
    margin-block-end: 12px;
    padding-inline-start: 12px;
    border-inline-start: 4px solid var(--_line);
  }
  .urgent {
    border-inline-start-color: var(--_danger);
  }
  .matters {
    border-inline-start-color: var(--_ink);
  }
  .chance {
    border-inline-start-style: dotted;
  }
  .weight {
    margin: 0;
    font-size: calc(15 * var(--_text));
    line-height: calc(21 * var(--_text));
    font-weight: 700;
  }
  .urgent .weight {
    color: var(--_danger);
  }
  ul {
    margin: 2px 0 0;
    padding: 0;
    list-style: none;
  }
  li {
    padding-block: 2px;
    overflow-wrap: anywhere;
  }
  p {
    margin: 0 0 4px;
    color: var(--_ink-2);
  }
`;
