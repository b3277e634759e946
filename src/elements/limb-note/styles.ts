import { css } from 'lit';
import { intrinsicSize } from '../common/intrinsic-size.js';

/* The marks lie under a field without a ground of its own, letter under letter: both take the very same type and edges. */
export const noteStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    ${intrinsicSize(180)}
  }
  :host([hidden]) {
    display: none;
  }
  .line {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 4px 16px;
    margin-block-end: 4px;
  }
  .line label {
    font-weight: 600;
  }
  .dictate {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 4px 10px;
  }
  .paper {
    display: grid;
    background: var(--_paper);
    border: 1px solid var(--_edge);
    border-radius: 5px;
  }
  .paper:focus-within {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  .marks,
  textarea {
    grid-area: 1 / 1;
    inline-size: 100%;
    min-block-size: calc(64 * var(--_text));
    margin: 0;
    padding: 12px 12px 8px;
    border: 0;
    font: inherit;
    font-size: calc(17 * var(--_text));
    line-height: calc(30 * var(--_text));
    letter-spacing: normal;
    white-space: pre-wrap;
    overflow-wrap: anywhere;
    text-align: start;
    unicode-bidi: plaintext;
  }
  .marks {
    color: transparent;
    forced-color-adjust: none;
    pointer-events: none;
    user-select: none;
    -webkit-user-select: none;
  }
  textarea {
    z-index: 1;
    background: transparent;
    color: inherit;
    outline: none;
    resize: none;
    overflow: hidden;
  }
  .marks span {
    position: relative;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 5px;
    text-decoration-skip-ink: none;
  }
  .marks .is-read {
    text-decoration-color: var(--_pulse);
  }
  .marks .is-unread {
    text-decoration-color: var(--_ink-2);
    text-decoration-style: dotted;
  }
  .marks .is-open {
    background: var(--_well);
    text-decoration-color: var(--_focus);
    text-decoration-style: dashed;
  }
  .marks [data-question]::before {
    content: attr(data-question);
    position: absolute;
    inset-block-start: -0.75em;
    inset-inline-start: 0;
    font-size: calc(12 * var(--_text));
    line-height: 1;
    font-weight: 700;
    color: var(--_ink);
  }
  .hint {
    margin-block-start: 4px;
  }
  .said:empty {
    display: none;
  }
  .said {
    margin-block-start: 8px;
    font-weight: 600;
  }
  .back,
  .questions {
    display: grid;
    gap: 12px;
  }
  .back {
    align-items: start;
    margin-block-start: 8px;
  }
  .back section + section {
    margin-block-start: 12px;
  }
  @container (min-width: 720px) {
    .back:has(.questions) {
      grid-template-columns: repeat(2, minmax(0, 1fr));
      column-gap: 24px;
    }
  }
  h3 {
    font-size: calc(15 * var(--_text));
    line-height: calc(21 * var(--_text));
  }
  li {
    display: flex;
    flex-wrap: wrap;
    gap: 0 10px;
    padding-block: 6px;
    border-block-end: 1px solid var(--_line);
    overflow-wrap: anywhere;
  }
  li .hint {
    margin: 0;
  }
  .finding {
    inline-size: 100%;
  }
  .recorded .finding,
  .locked .finding {
    color: var(--_ink-2);
  }
  .passages li {
    text-decoration: underline dotted;
    text-underline-offset: 4px;
  }
  fieldset {
    min-inline-size: 0;
    padding: 10px 12px;
    border: 1px solid var(--_line);
    border-inline-start: 4px solid var(--_line);
    border-radius: 5px;
  }
  fieldset.open {
    border-inline-start-color: var(--_focus);
  }
  legend {
    float: inline-start;
    inline-size: 100%;
    padding: 0;
    font-weight: 600;
  }
  legend + * {
    clear: both;
  }
  .tick {
    display: flex;
    align-items: center;
    gap: 10px;
    min-block-size: 44px;
    cursor: pointer;
  }
  .tick input {
    flex: none;
    inline-size: 20px;
    block-size: 20px;
    margin: 0;
    accent-color: var(--_ink);
  }
  .instead {
    inline-size: 100%;
    padding-inline-start: 10px;
    border-inline-start: 3px solid var(--_edge);
  }
  .acts {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px;
    margin-block-start: 8px;
  }
  .acts p {
    inline-size: 100%;
    margin: 0;
  }
  .solid:not(:disabled) {
    background: var(--_ink);
    border-color: var(--_ink);
    color: var(--_paper);
    font-weight: 600;
  }
  .refusal {
    padding-inline-start: 10px;
    border-inline-start: 4px solid var(--_ink);
  }
  @media print {
    :host {
      display: none;
    }
  }
`;
