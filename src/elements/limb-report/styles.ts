import { css } from 'lit';
import { intrinsicSize } from '../common/intrinsic-size.js';
import { printStyles } from './print-styles.js';

export const reportStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    ${intrinsicSize(720)}
    border: 1px solid var(--_line);
    border-radius: 12px;
    background: var(--_paper);
    overflow: clip;
  }
  :host([hidden]) {
    display: none;
  }
  .report {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 16px;
    padding: 20px 16px;
    overflow-wrap: anywhere;
  }
  .second {
    color: var(--_ink-2);
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  b {
    font-weight: 600;
  }
  .top {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 4px 24px;
  }
  h2 {
    font-size: calc(19 * var(--_text));
    line-height: calc(24 * var(--_text));
    font-weight: 600;
  }
  h3 {
    margin-block-end: 6px;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    font-weight: 600;
    color: var(--_ink-2);
  }
  h4 {
    font-size: calc(15 * var(--_text));
    line-height: calc(21 * var(--_text));
    font-weight: 600;
  }
  .banner,
  .flags {
    margin-inline: -16px;
    padding: 12px 16px 14px;
    border-inline-start: 8px solid var(--_danger);
    background: var(--_danger-soft);
  }
  .banner h3 {
    font-size: calc(21 * var(--_text));
    line-height: calc(27 * var(--_text));
    color: var(--_danger);
  }
  .in-error .lead,
  .in-error .flag h4,
  .in-error .found {
    text-decoration: line-through;
  }
  .flags h3 {
    display: flex;
    align-items: center;
    gap: 8px;
    color: var(--_danger);
  }
  .flags .mark svg {
    display: block;
    inline-size: 20px;
    block-size: 20px;
  }
  .flag {
    display: grid;
    gap: 2px;
  }
  .flag + .flag {
    margin-block-start: 10px;
    padding-block-start: 8px;
    border-block-start: 1px solid var(--_danger);
  }
  .flag h4 {
    color: var(--_danger);
  }
  .flag:first-of-type h4 {
    font-size: calc(21 * var(--_text));
    line-height: calc(27 * var(--_text));
  }
  .flags.soon {
    border-inline-start-width: 4px;
  }
  .calls {
    font-weight: 600;
  }
  .conclusion {
    display: grid;
    gap: 8px;
  }
  .conclusion h3 {
    margin: 0;
  }
  .limb {
    display: grid;
    gap: 4px;
  }
  .limb > *,
  .conclusion > p {
    max-inline-size: 56em;
  }
  .lead {
    font-size: calc(19 * var(--_text));
    line-height: calc(25 * var(--_text));
    font-weight: 600;
    text-wrap: pretty;
  }
  .body,
  .main,
  .aside {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 16px;
    align-content: start;
  }
  .main > section,
  .aside > section {
    padding-block-start: 10px;
    border-block-start: 1px solid var(--_line);
  }
  .picture {
    min-inline-size: 0;
  }
  .picture svg {
    display: block;
    inline-size: 100%;
    max-inline-size: 400px;
    block-size: auto;
    margin-inline: auto;
  }
  /* Its room is reckoned for common fonts: in a wider one a word reaches into the margin. Other views have no words, and more body. */
  .picture.one svg {
    overflow: visible;
  }
  figcaption {
    color: var(--_ink-2);
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
  }
  .line svg {
    max-inline-size: 420px;
  }
  .part + .part {
    margin-block-start: 10px;
  }
  details summary {
    min-block-size: 24px;
    color: var(--_ink-2);
    cursor: pointer;
  }
  details summary:focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  details ul {
    padding-inline-start: 16px;
    color: var(--_ink-2);
  }
  table {
    inline-size: 100%;
    border-collapse: collapse;
    margin-block-end: 6px;
  }
  th,
  td {
    padding: 4px 8px 4px 0;
    border-block-end: 1px solid var(--_line);
    text-align: start;
    vertical-align: top;
    font-weight: 400;
  }
  td {
    overflow-wrap: break-word;
  }
  thead th {
    color: var(--_ink-2);
    font-size: calc(13 * var(--_text));
  }
  td.used {
    text-decoration: underline;
    text-underline-offset: 3px;
  }
  .index th,
  .index td {
    font-weight: 600;
  }
  dt {
    color: var(--_ink-2);
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .stage + .stage {
    margin-block-start: 6px;
  }
  dd .second {
    display: block;
  }
  footer {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 8px 32px;
    padding-block-start: 12px;
    border-block-start: 1px solid var(--_line);
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  footer h3 {
    margin-block: 6px 2px;
  }
  footer .caution {
    max-inline-size: 30em;
    color: var(--_ink-2);
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
  }
  @container (min-width: 640px) {
    .report {
      padding: 24px 28px;
    }
    .banner,
    .flags {
      margin-inline: -28px;
      padding-inline: 20px 28px;
    }
    .when {
      text-align: end;
    }
    .body {
      grid-template-columns: 260px minmax(0, 1fr);
      gap: 20px 28px;
    }
    .aside {
      order: -1;
    }
  }
  @container (min-width: 1000px) {
    .body {
      grid-template-columns: 300px minmax(0, 1fr);
    }
    .main {
      grid-template-columns: minmax(0, 3fr) minmax(0, 2fr);
      column-gap: 28px;
    }
    .line,
    .main > [aria-labelledby='findings'],
    .main > [aria-labelledby='tests'] {
      grid-column: 1 / -1;
    }
  }
  @media (forced-colors: active) {
    .banner,
    .flags {
      border: 2px solid CanvasText;
      border-inline-start-width: 8px;
    }
    details summary:focus-visible {
      outline-color: Highlight;
    }
  }
  ${printStyles}
`;
