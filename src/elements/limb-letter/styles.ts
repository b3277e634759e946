import { css } from 'lit';
import { intrinsicSize } from '../common/intrinsic-size.js';

export const letterStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    ${intrinsicSize(420)}
  }
  :host([hidden]) {
    display: none;
  }
  .bar {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: end;
    margin-block-end: 8px;
  }
  fieldset {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin: 0;
    padding: 0;
    border: 0;
    min-inline-size: 0;
  }
  legend {
    padding: 0;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  label .hint {
    display: block;
    margin-block-end: 8px;
  }
  textarea {
    display: block;
    max-inline-size: 46em;
    inline-size: 100%;
    box-sizing: border-box;
    min-block-size: 12em;
    field-sizing: content;
    padding: 12px;
    border: 1px solid var(--_edge);
    border-radius: 8px;
    background: var(--_paper);
    color: var(--_ink);
    font: inherit;
    font-size: calc(16 * var(--_text));
    line-height: 1.5;
    resize: vertical;
  }
  .changed {
    display: grid;
    gap: 8px;
    max-inline-size: 46em;
    box-sizing: border-box;
    margin-block: 8px;
    padding: 12px;
    border: 1px solid var(--_ink);
    border-radius: 8px;
  }
  .changed p,
  .changed ul {
    margin: 0;
    padding: 0;
  }
  .what {
    font-size: calc(13 * var(--_text));
    color: var(--_ink-2);
  }
  .changed li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 4px 12px;
    align-items: center;
    list-style: none;
    padding-block: 4px;
    border-block-start: 1px solid var(--_line);
  }
  .acts {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  .from {
    min-block-size: calc(42 * var(--_text));
    margin-block-start: 8px;
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
    color: var(--_ink-2);
  }
  .from ul {
    margin: 0;
    padding-inline-start: 1.2em;
  }
  .from p,
  p[role='status'] {
    margin: 0 0 8px;
  }
  @media print {
    .bar,
    .changed,
    .from {
      display: none;
    }
    textarea {
      border: 0;
      padding: 0;
    }
  }
`;
