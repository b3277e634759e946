import { css } from 'lit';
import { intrinsicSize } from '../common/intrinsic-size.js';

export const readingStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    ${intrinsicSize(560)}
  }
  section {
    padding-block: 14px;
    border-block-start: 1px solid var(--_line);
  }
  section:first-child {
    padding-block-start: 0;
    border-block-start: 0;
  }
  h3 {
    font-size: calc(21 * var(--_text));
    line-height: calc(27 * var(--_text));
    font-weight: 600;
    letter-spacing: -0.006em;
    text-wrap: balance;
  }
  h3 + h3 {
    margin-block-start: 6px;
  }
  h4 {
    margin-block: 0 6px;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    font-weight: 600;
    color: var(--_ink-2);
  }
  h5 {
    margin-block: 10px 4px;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    font-weight: 400;
    color: var(--_ink-2);
  }
  figure {
    margin-block-start: 8px;
  }
  .part {
    margin-block-start: 16px;
  }
  .why {
    margin-block-start: 6px;
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
    color: var(--_ink-2);
  }
  .why b {
    color: var(--_ink);
  }
  .bars,
  .evidence {
    display: grid;
    gap: 6px;
  }
  .bar {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 76px 3.2em;
    column-gap: 12px;
    align-items: center;
  }
  .bar.first,
  .bar.first .figure {
    font-weight: 600;
  }
  .bar.rest {
    color: var(--_ink-2);
  }
  .bar .figure {
    text-align: end;
  }
  .track {
    block-size: 10px;
    border-radius: 2px;
    background: var(--_bar);
    overflow: clip;
  }
  .track i {
    display: block;
    block-size: 100%;
    background: var(--_gone);
  }
  .fine .track i {
    background: var(--_pulse);
  }
  .rest .track i {
    background: var(--_mute);
  }
  .axis {
    display: grid;
    grid-template-columns: 96px 1fr;
    font-size: calc(12 * var(--_text));
    line-height: calc(16 * var(--_text));
    color: var(--_ink-2);
  }
  .axis > span {
    display: flex;
    justify-content: space-between;
  }
  .evidence li {
    display: grid;
    grid-template-columns: 96px 1fr;
    gap: 12px;
    align-items: center;
  }
  .tick {
    position: relative;
    block-size: 10px;
  }
  .tick::before {
    content: '';
    position: absolute;
    inset-inline-start: 50%;
    inset-block: -4px;
    border-inline-start: 1px solid var(--_edge);
  }
  .tick i {
    position: absolute;
    inset-block: 1px;
    border-radius: 1px;
  }
  .tick.pro i {
    inset-inline-start: calc(50% + 1px);
    background: var(--_gone);
  }
  .tick.contra i {
    inset-inline-end: 50%;
    min-inline-size: 7px;
    border: 1.6px solid var(--_mute);
    background: var(--_paper);
  }
  .weight {
    display: block;
  }
  .check {
    padding-inline-start: 12px;
    border-inline-start: 4px double var(--_ink);
  }
  .check .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin-block-start: 8px;
  }
  .firm {
    display: flex;
    align-items: baseline;
    gap: 12px;
  }
  .firm > span {
    unicode-bidi: plaintext;
  }
  .firm svg {
    overflow: visible;
  }
  .firm rect {
    stroke: var(--_ink);
    stroke-width: 1.4;
    fill: var(--_paper);
  }
  .firm .full {
    fill: var(--_ink);
  }
  .ask {
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: 12px;
  }
  .ask b {
    display: block;
    font-weight: 600;
  }
  .ask .button {
    flex: none;
  }
  .others li + li {
    margin-block-start: 6px;
  }
  .numbers {
    inline-size: 100%;
    margin-block-start: 10px;
    border-collapse: collapse;
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .numbers caption {
    text-align: start;
    font-weight: 600;
  }
  .numbers th {
    font-weight: 400;
    text-align: start;
  }
  .numbers td {
    text-align: end;
  }
  .caution {
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  @container (min-width: 640px) {
    .all {
      display: grid;
      grid-template-columns: 1fr 1fr;
      column-gap: 44px;
      align-items: start;
    }
    section:first-child {
      padding-block-start: 14px;
      border-block-start: 1px solid var(--_line);
    }
    .wide,
    .caution {
      grid-column: 1 / -1;
    }
  }
  @media (forced-colors: active) {
    .track,
    .track i,
    .tick i {
      forced-color-adjust: none;
    }
    .track {
      border: 1px solid CanvasText;
    }
  }
  :host([brief]) .all {
    display: block;
    columns: 3 236px;
    column-gap: 32px;
  }
  :host([brief]) .track {
    display: none;
  }
  :host([brief]) .bar {
    grid-template-columns: minmax(0, 1fr) 3.2em;
  }
  :host([brief]) section {
    padding-block: 10px;
  }
  :host([brief]) h3 {
    font-size: calc(17 * var(--_text));
    line-height: calc(22 * var(--_text));
  }
  :host([brief]) :is(h3, h4) {
    break-after: avoid;
  }
  :host([brief]) :is(p, li, .firm) {
    break-inside: avoid;
  }
  @media print {
    .toggle,
    .ask .button,
    .check .row {
      display: none;
    }
  }
`;
