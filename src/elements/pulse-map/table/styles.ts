import { css } from 'lit';

export const tableStyles = css`
  .table-room {
    container: table / inline-size;
    /* With large text the columns need more room than a screen has. */
    overflow-x: auto;
  }
  .table {
    inline-size: 100%;
    border-collapse: collapse;
    font-size: calc(15 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .table th {
    font-weight: 400;
    text-align: start;
  }
  .table thead th {
    padding: 12px 8px 4px;
    font-size: calc(13 * var(--_text));
    color: var(--_ink-2);
    vertical-align: bottom;
  }
  .table thead b {
    font-size: calc(17 * var(--_text));
    color: var(--_ink);
  }
  .table .part th {
    padding: 14px 16px 6px;
    font-size: calc(13 * var(--_text));
    font-weight: 600;
    color: var(--_ink-2);
    border-block-end: 1px solid var(--_edge);
  }
  .table tbody tr:not(.part) > * {
    padding: 0 8px;
    block-size: 45px;
    border-block-end: 1px solid var(--_line);
  }
  .table tr > :first-child {
    padding-inline-start: 16px !important;
  }
  .table .differ > th {
    box-shadow: inset calc(var(--_way) * 4px) 0 var(--_gone);
  }
  .table small {
    display: block;
    font-size: calc(12 * var(--_text));
    line-height: calc(16 * var(--_text));
    color: var(--_ink-2);
  }
  .table td {
    white-space: nowrap;
  }
  .table .notes {
    white-space: normal;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    overflow-wrap: anywhere;
  }
  .table .letter {
    display: none;
  }
  .entry {
    display: flex;
    align-items: start;
  }
  .cell {
    /* The sign, and beside it, one under the other, the field and what else was found: so nothing runs into the next column. */
    flex: 1;
    display: grid;
    grid-template-columns: 24px minmax(var(--_field), 1fr);
    align-items: center;
    column-gap: 4px;
    color: var(--_ink-2);
    --_field: 9.7em;
    --_halo: var(--_paper);
  }
  .cell > select,
  .cell > .extra {
    grid-column: 2;
  }
  .cell.loud,
  .cell.loud select {
    color: var(--_ink);
    font-weight: 600;
  }
  .cell select {
    min-block-size: 44px;
    inline-size: 100%;
    max-inline-size: 13em;
    padding: 0 2px;
    border: 1px solid transparent;
    border-radius: 5px;
    background: var(--_paper);
    color: inherit;
    cursor: pointer;
    text-overflow: ellipsis;
  }
  .cell select:hover:not(:disabled) {
    border-color: var(--_edge);
  }
  .cell select:disabled {
    opacity: 1;
    appearance: none;
  }
  .extra {
    display: flex;
    align-items: center;
    gap: 4px;
    padding: 0 4px 4px;
    font-size: calc(13 * var(--_text));
    white-space: normal;
    hyphens: auto;
    overflow-wrap: anywhere;
    color: var(--_ink);
  }
  .was {
    color: var(--_ink-2);
    font-weight: 400;
  }
  .table .more {
    flex: none;
    min-inline-size: 32px;
    color: var(--_ink-2);
  }
  @container table (max-width: 1059.98px) {
    .table,
    .table tbody {
      display: block;
    }
    .table thead {
      display: none;
    }
    .table tr {
      display: grid;
      grid-template-columns: minmax(0, 1.28fr) minmax(0, 1fr);
      column-gap: 4px;
      padding: 6px 12px;
      border-block-end: 1px solid var(--_line);
    }
    .table .differ {
      box-shadow: inset calc(var(--_way) * 4px) 0 var(--_gone);
    }
    .table tbody tr:not(.part) > *,
    .table .part th {
      display: block;
      block-size: auto;
      padding: 0 !important;
      border: 0;
    }
    .table .differ > th {
      box-shadow: none;
    }
    .table tbody tr > th,
    .table .notes {
      grid-column: 1 / -1;
      padding-block-start: 4px !important;
    }
    .table tbody tr > th {
      font-weight: 600;
    }
    .table td:nth-child(2),
    .table td:nth-child(4) {
      grid-column: 1;
    }
    .table td:nth-child(3),
    .table td:nth-child(5) {
      grid-column: 2;
    }
    .table td:nth-child(2),
    .table td:nth-child(3) {
      grid-row: 2;
    }
    .table td:nth-child(4),
    .table td:nth-child(5) {
      grid-row: 3;
    }
    /* Where no pulse is felt, the bruit has the whole line, and the letter of the side stands before it. */
    .table td:has(.alone) {
      grid-column: 1 / -1;
    }
    .table td:nth-child(odd) .letter:not(.alone) {
      display: none;
    }
    .table td.midline,
    .table td:empty {
      display: none !important;
    }
    .table .letter {
      display: block;
      min-inline-size: 14px;
      font-size: calc(13 * var(--_text));
      line-height: 44px;
    }
    .cell {
      min-inline-size: 0;
      --_field: 0;
    }
    .cell select {
      appearance: none;
      padding: 0 2px;
      font-size: calc(14 * var(--_text));
      text-decoration: underline;
      text-decoration-color: var(--_edge);
      text-decoration-thickness: 1px;
      text-underline-offset: 4px;
    }
    .cell select:disabled {
      text-decoration: none;
    }
    .table td:nth-child(odd):not(:has(.alone)) .extra {
      grid-column: 1 / -1;
    }
    .table .more {
      min-inline-size: 30px;
    }
  }
  @container table (max-width: 399.98px) {
    /* The letters of some browsers are wider: a long reason would be cut off. */
    .cell select {
      font-size: calc(13 * var(--_text));
    }
  }
  @container table (max-width: 359.98px) {
    /* Pulse and bruit of a side beside each other would cut their words off. */
    .table tr {
      grid-template-columns: minmax(0, 1fr);
    }
    .table tbody tr:not(.part) > td {
      grid-area: auto !important;
    }
    .table td:nth-child(odd) .entry:not(:has(.alone)) {
      padding-inline-start: 14px;
    }
  }
`;
