import { css } from 'lit';

export const practiceStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    border: 1px solid var(--_edge);
    border-radius: 12px;
    background: var(--_paper);
  }
  :host([hidden]) {
    display: none;
  }
  .top {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 20px;
    align-items: baseline;
    padding: 12px 20px;
    border-block-end: 1px solid var(--_line);
  }
  h2 {
    font-size: calc(19 * var(--_text));
    line-height: calc(24 * var(--_text));
    font-weight: 600;
  }
  h3 {
    font-size: calc(17 * var(--_text));
    line-height: calc(24 * var(--_text));
    font-weight: 600;
    margin-block-start: 8px;
  }
  :is(h2, h3):focus {
    outline: none;
  }
  h4,
  legend,
  summary {
    font-weight: 600;
    color: var(--_ink);
  }
  h4 {
    margin-block: 12px 4px;
  }
  .clock {
    margin-inline-start: auto;
  }
  .clock b {
    font-size: calc(21 * var(--_text));
    margin-inline-start: 6px;
  }
  .story {
    padding: 12px 20px 0;
    font-size: calc(17 * var(--_text));
    line-height: calc(25 * var(--_text));
    max-inline-size: 70ch;
  }
  .story + .hint {
    padding: 4px 20px 0;
  }
  .room {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
  }
  .map {
    padding: 12px 12px 16px;
    min-inline-size: 0;
  }
  .map .figure {
    margin-inline: auto;
    max-inline-size: 100%;
  }
  .side {
    display: grid;
    gap: 8px;
    align-content: start;
    padding: 12px 20px 24px;
    min-inline-size: 0;
    border-block-start: 1px solid var(--_line);
  }
  @container (min-width: 760px) {
    .room {
      grid-template-columns: minmax(0, 1fr) minmax(320px, 0.9fr);
    }
    .side {
      border-block-start: 0;
      border-inline-start: 1px solid var(--_line);
    }
    .map {
      position: sticky;
      inset-block-start: 0;
      align-self: start;
    }
  }
  .row,
  .chips,
  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: center;
  }
  .tools {
    padding-block-end: 8px;
    gap: 8px 16px;
  }
  .tools > div {
    display: flex;
    gap: 4px;
  }
  .row.end {
    padding-block-start: 12px;
  }
  .solid {
    border-color: var(--_ink);
    background: var(--_ink);
    color: var(--_paper);
    font-weight: 600;
  }
  .card {
    display: grid;
    gap: 8px;
    padding: 12px;
    border: 1.5px solid var(--_focus);
    border-radius: 12px;
  }
  .card .head {
    display: flex;
    justify-content: space-between;
    gap: 12px;
  }
  .card .finding {
    font-size: calc(17 * var(--_text));
    line-height: calc(25 * var(--_text));
  }
  summary {
    min-block-size: 44px;
    padding-block: 11px;
    cursor: pointer;
  }
  details {
    border-block-start: 1px solid var(--_line);
  }
  .acts {
    display: grid;
    gap: 6px;
    padding-block-end: 12px;
  }
  .acts .button {
    inline-size: 100%;
    justify-content: space-between;
    text-align: start;
    white-space: normal;
    padding-block: 6px;
  }
  .log li {
    display: grid;
    gap: 0 12px;
    padding-block: 7px;
    border-block-start: 1px solid var(--_line);
  }
  .log .did {
    color: var(--_ink-2);
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
  }
  .abnormal > :last-child {
    font-weight: 600;
  }
  .answer {
    display: grid;
    gap: 16px;
  }
  .limbs {
    display: grid;
    gap: 12px;
    margin-block: 4px 8px;
  }
  @container (min-width: 560px) {
    .limbs {
      grid-template-columns: 1fr 1fr;
    }
  }
  .limb {
    display: grid;
    gap: 4px;
    align-content: start;
  }
  .chips {
    margin-block-start: 4px;
  }
  .chip {
    display: inline-flex;
    align-items: center;
    gap: 8px;
    min-block-size: 44px;
    padding: 4px 12px;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
    cursor: pointer;
  }
  .chip:has(:checked) {
    border-color: var(--_ink);
    box-shadow: inset 0 0 0 1px var(--_ink);
    font-weight: 600;
  }
  .chip input {
    flex: none;
    accent-color: var(--_ink);
    inline-size: 18px;
    block-size: 18px;
  }
  /* What to choose in one row where it fits. */
  .setup {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 250px), max-content));
    gap: 12px 20px;
    padding: 20px;
    justify-items: start;
    align-items: end;
  }
  .setup > :not(label) {
    grid-column: 1 / -1;
  }
  .setup label,
  .vote label {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 4px;
    max-inline-size: 100%;
  }
  .field {
    max-inline-size: 100%;
  }
  textarea.field {
    inline-size: 100%;
  }
  .total {
    font-size: calc(21 * var(--_text));
    line-height: calc(44 * var(--_text));
    color: var(--_ink-2);
  }
  .total b {
    font-size: calc(44 * var(--_text));
    color: var(--_ink);
    font-weight: 600;
  }
  .marks {
    inline-size: 100%;
    border-collapse: collapse;
    margin-block: 8px;
  }
  .marks th,
  .marks td {
    padding: 7px 10px 7px 0;
    border-block-start: 1px solid var(--_line);
    vertical-align: top;
    text-align: start;
    font-weight: 400;
    overflow-wrap: anywhere;
  }
  .marks thead th,
  .marks tbody th {
    color: var(--_ink-2);
    hyphens: auto;
  }
  .marks tbody th {
    min-inline-size: 6.5em;
  }
  .marks thead th:last-child {
    white-space: nowrap;
  }
  .marks .n,
  .told .n {
    text-align: end;
    white-space: nowrap;
    font-weight: 600;
  }
  .marks .less td:nth-child(3),
  .examiner .less td {
    font-weight: 600;
  }
  .marks .open .n {
    font-weight: 400;
    color: var(--_ink-2);
  }
  .marks input {
    inline-size: 20px;
    block-size: 20px;
  }
  .flags li {
    padding: 8px 12px;
    margin-block: 4px;
    border-inline-start: 4px solid var(--_edge);
  }
  .flags .missed {
    border-inline-start-color: var(--_danger);
    background: var(--_danger-soft);
  }
  .author {
    border-inline-start: 4px double var(--_ink);
    padding-inline-start: 12px;
  }
  .told li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 92px auto;
    gap: 4px 12px;
    align-items: center;
    padding-block: 7px;
    border-block-start: 1px solid var(--_line);
  }
  .told .true {
    font-weight: 600;
  }
  .bar {
    block-size: 10px;
    border: 1px solid var(--_edge);
    border-radius: 2px;
    overflow: hidden;
  }
  .bar i {
    display: block;
    block-size: 100%;
    background: var(--_gone);
  }
  .presented li {
    display: grid;
    padding-block: 7px;
    border-block-start: 1px solid var(--_line);
  }
  .extra {
    margin-block-start: 8px;
  }
  .vote form {
    display: grid;
    gap: 12px;
    justify-items: start;
    padding-block-end: 12px;
  }
  .examiner {
    padding: 20px;
  }
  .site:focus-visible {
    outline: none;
  }
  @media (forced-colors: active) {
    .bar i {
      background: CanvasText;
      forced-color-adjust: none;
    }
    .chip:has(:checked) {
      outline: 3px solid Highlight;
      outline-offset: -3px;
    }
    .solid {
      forced-color-adjust: none;
    }
  }
  @media print {
    .tools,
    .row,
    .extra,
    .no-print,
    .card-room {
      display: none;
    }
    :host {
      border: 0;
    }
    .room {
      display: block;
    }
    .side {
      border: 0;
      padding-inline: 0;
    }
    .map {
      position: static;
    }
    .map .figure {
      max-block-size: 110mm;
      inline-size: auto;
    }
    .marks tr,
    .flags li {
      break-inside: avoid;
    }
  }
`;
