import { css } from 'lit';

/** The report on A4: one page for an ordinary case, told apart without colour. */
export const printStyles = css`
  @media print {
    :host {
      --_text: 0.6pt;
      container-type: normal;
      contain: none;
      border: 0;
      border-radius: 0;
      overflow: visible;
      color: #000;
    }
    .report {
      gap: 3pt;
      padding: 0;
    }
    /* As close as lines are set in print. */
    .report * {
      line-height: 1.2;
    }
    .stage > dt,
    .stage > dd {
      display: inline;
    }
    .stage > dt::after {
      content: ': ';
    }
    .stage + .stage {
      margin-block-start: 1pt;
    }
    .second,
    dt,
    figcaption,
    footer .caution {
      color: #333;
    }
    h3 {
      margin-block-end: 1pt;
      color: #000;
      font-weight: 700;
    }
    h2,
    h3,
    h4 {
      break-after: avoid;
    }
    .top {
      padding-block-end: 4pt;
      border-block-end: 1pt solid #000;
    }
    .when {
      text-align: end;
    }
    .banner,
    .flags {
      margin-inline: 0;
      padding: 4pt 8pt 5pt;
      border: 1.5pt solid #000;
      border-inline-start-width: 8pt;
      background: none;
      break-inside: avoid;
    }
    .flags.soon {
      border-inline-start-width: 4pt;
    }
    .banner h3,
    .flags h3,
    .flag h4 {
      color: #000;
    }
    .flag:first-of-type h4 {
      font-size: calc(19 * var(--_text));
    }
    .flag + .flag {
      margin-block-start: 4pt;
      padding-block-start: 3pt;
      border-block-start: 0.5pt solid #000;
    }
    .conclusion {
      gap: 4pt;
      break-inside: avoid;
    }
    .limb {
      gap: 1pt;
    }
    .body {
      display: grid;
      grid-template-columns: 47mm minmax(0, 1fr);
      gap: 4pt 4mm;
    }
    .aside {
      order: -1;
    }
    .limb > *,
    .conclusion > p {
      max-inline-size: none;
    }
    .line svg {
      margin-block: -3mm -2mm;
    }
    .picture {
      break-inside: avoid;
    }
    .picture svg {
      max-inline-size: 47mm;
      margin: 0;
    }
    .line svg {
      max-inline-size: 70mm;
    }
    .main,
    .aside {
      grid-template-columns: minmax(0, 1fr);
      gap: 4pt;
    }
    .main > section,
    .aside > section {
      padding-block-start: 3pt;
      border-block-start: 0.5pt solid #777;
    }
    .main > * {
      grid-column: auto !important;
    }
    .part {
      break-inside: avoid;
    }
    .part + .part {
      margin-block-start: 3pt;
    }
    /* What is known of the patient runs on in one paragraph. */
    [aria-labelledby='background'] li {
      display: inline;
    }
    [aria-labelledby='background'] li + li::before {
      content: '; ';
    }
    li,
    tr,
    .stage {
      break-inside: avoid;
    }
    th,
    td {
      padding-block: 0.7pt;
      border-block-end-color: #999;
    }
    .normals {
      color: #333;
    }
    .normals span {
      font-weight: 600;
    }
    footer {
      flex-wrap: nowrap;
      padding-block-start: 4pt;
      break-inside: avoid;
    }
    footer .caution {
      max-inline-size: none;
    }
  }
`;
