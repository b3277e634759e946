import { css } from 'lit';
import { PAGE } from './sheet.js';

/** The sheet replaces everything else in print. On the screen it exists only while it is measured. */
export const sheetStyles = css`
  .sheet {
    display: grid;
    grid-template-columns: minmax(0, 2fr) minmax(0, 1fr);
    gap: 10px 16px;
    font-size: 10.5px;
    line-height: 14px;
    break-inside: avoid;
  }
  .sheet > * {
    grid-column: 1 / -1;
    min-inline-size: 0;
  }
  .sheet h2 {
    font-size: 15px;
    line-height: 20px;
    font-weight: 600;
  }
  .sheet h2 span {
    margin-inline-start: 10px;
    font-size: 12px;
    font-weight: 400;
  }
  .sheet .picture {
    grid-column: 1;
  }
  .sheet .found {
    grid-column: 2;
  }
  .sheet .picture svg {
    inline-size: 100%;
    block-size: auto;
  }
  .sheet table {
    inline-size: 100%;
    border-collapse: collapse;
  }
  .sheet th,
  .sheet td {
    padding: 1px 4px 2px;
    border-block-end: 1px solid #999;
    vertical-align: top;
    text-align: start;
    font-weight: 400;
    overflow-wrap: anywhere;
  }
  .sheet th {
    white-space: nowrap;
  }
  .sheet thead th,
  .sheet .wrong {
    font-weight: 700;
  }
  .sheet .facts {
    margin-block-start: 8px;
  }
  .sheet pulse-reading,
  .sheet limb-flags {
    zoom: 0.74;
  }
  .close,
  .tight {
    row-gap: 4px;
  }
  .close pulse-reading,
  .tight limb-flags {
    zoom: 0.62;
  }
  .tight pulse-reading {
    zoom: 0.56;
  }
  @media not print {
    .sheet {
      position: absolute;
      inline-size: ${PAGE.width}px;
      visibility: hidden;
      pointer-events: none;
    }
  }
  @media print {
    :host {
      border: 0;
    }
    .sheet ~ * {
      display: none;
    }
    /* Animations would be printed at their first frame. */
    .sheet * {
      animation: none;
      transition: none;
    }
  }
`;
