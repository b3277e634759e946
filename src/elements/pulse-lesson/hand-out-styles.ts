import { css } from 'lit';

/** The hand-out: two sheets of A4 with 12 mm around them, on the screen as on paper. */
export const handOutStyles = css`
  /* A page of fixed width: on a narrow screen it scrolls by itself, and the page around it does not. */
  :host([hand-out]) {
    min-inline-size: 0;
  }
  .hand-out {
    display: grid;
    gap: 24px;
    justify-content: safe center;
    padding: 16px;
    overflow-x: auto;
  }
  .hand-out:focus-visible {
    outline-offset: -3px;
  }
  .sheet {
    inline-size: 186mm;
    min-block-size: 273mm;
    box-sizing: content-box;
    padding: 12mm;
    border: 1px solid var(--_line);
    background: var(--_paper);
    color: var(--_ink);
    line-height: 1.28;
  }
  .hand-out :is(h2, h3, h4) {
    letter-spacing: 0;
    line-height: 1.2;
  }
  .hand-out h2 {
    font-size: 1.6em;
  }
  .hand-out h3 {
    margin-block-end: 0.6mm;
    font-size: 1.2em;
    font-weight: 700;
  }
  .hand-out h4 {
    font-size: inherit;
    font-weight: 700;
  }
  .hand-out :is(h4, .sites b)::first-letter {
    text-transform: uppercase;
  }
  .hand-out .sites b {
    display: inline-block;
  }
  .hand-out .name {
    display: none;
  }
  .hand-out ul {
    list-style: none;
  }
  .hand-out .care {
    font-weight: 600;
  }
  .hand-out .first {
    margin-block: 2.5mm;
    padding: 1.6mm 2.5mm;
    border: 0.6mm solid var(--_danger);
    font-weight: 600;
  }
  .hand-out .part {
    margin-block-end: 2.4mm;
    break-inside: avoid;
  }
  .hand-out .two {
    columns: 2;
    column-gap: 5mm;
  }
  .hand-out .mean {
    display: flex;
    flex-wrap: wrap;
    gap: 0 3mm;
  }
  .hand-out .cards {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 2mm 5mm;
    margin-block-start: 1.5mm;
  }
  .hand-out .card {
    display: grid;
    grid-template-columns: 26mm 1fr;
    gap: 2mm;
    align-items: start;
    break-inside: avoid;
  }
  .few .card {
    grid-template-columns: 40mm 1fr;
  }
  .few .cards {
    row-gap: 6mm;
  }
  .hand-out .picture {
    border-width: 0.2mm;
    border-radius: 1mm;
  }
  .hand-out .own {
    display: flex;
    gap: 3mm;
    margin-block-start: 0.8mm;
  }
  .hand-out .own span {
    flex: 0 0 22mm;
    border-block-end: 0.2mm solid var(--_edge);
    min-block-size: 5mm;
    font-weight: 600;
  }
  .hand-out .sites {
    columns: 2;
    column-gap: 5mm;
    margin-block-start: 1mm;
  }
  .hand-out .sites li {
    break-inside: avoid;
    margin-block-end: 1.2mm;
  }
  .hand-out .line {
    border-block-end: 0.2mm solid var(--_edge);
    block-size: 8mm;
  }
  @media print {
    .hand-out {
      display: block;
      padding: 0;
      overflow: visible;
    }
    .sheet {
      inline-size: auto;
      min-block-size: 0;
      padding: 0;
      border: 0;
    }
    .sheet + .sheet {
      break-before: page;
    }
  }
`;
