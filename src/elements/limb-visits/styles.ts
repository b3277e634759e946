import { css, unsafeCSS } from 'lit';
import { intrinsicSize } from '../common/intrinsic-size.js';
import { GAP } from './strip.js';

export const visitsStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    ${intrinsicSize(720)}
  }
  :host([hidden]) {
    display: none;
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 8px 16px;
    margin-block-end: 8px;
  }
  .title {
    font-weight: 600;
    color: var(--_ink-2);
  }
  .ways {
    display: flex;
    gap: 8px;
  }
  .empty {
    color: var(--_ink-2);
  }
  .scroller {
    /* What only screen readers see must not widen the page. */
    position: relative;
    overflow: auto;
    overscroll-behavior-inline: contain;
  }
  .scroller:focus-visible {
    outline-offset: -3px;
  }
  .strip {
    scroll-snap-type: inline mandatory;
    overflow-y: hidden;
    padding-block: 4px 12px;
  }
  .track {
    display: grid;
    /* Date, map, numbers, changes, choice: each begins at one height in all cards, however long a flag is. */
    grid-template-rows: repeat(5, auto);
    grid-auto-flow: column;
    grid-auto-columns: var(--_step);
    justify-content: start;
  }
  .card {
    display: grid;
    grid-row: 1 / -1;
    grid-template-rows: subgrid;
    align-content: start;
    margin-inline-end: ${unsafeCSS(GAP)}px;
    scroll-snap-align: start;
    padding: 0 10px 10px;
    min-inline-size: 0;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
  }
  .card.on {
    border-color: var(--_ink);
    box-shadow: inset 0 0 0 1px var(--_ink);
  }
  .open {
    border: 0;
    background: none;
    align-self: start;
    padding: 6px 0;
    min-block-size: 56px;
    text-align: start;
    font-size: calc(14 * var(--_text));
    line-height: calc(18 * var(--_text));
    cursor: pointer;
    overflow: hidden;
  }
  .open b {
    text-decoration: underline var(--_edge);
    text-underline-offset: 3px;
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: 4px;
  }
  .open b svg {
    flex: none;
  }
  .open:hover b {
    text-decoration-color: currentColor;
  }
  .note {
    display: block;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .note {
    min-block-size: calc(18 * var(--_text));
    font-size: calc(13 * var(--_text));
    color: var(--_ink-2);
  }
  .flag {
    display: block;
    font-size: calc(13 * var(--_text));
    font-weight: 600;
    color: var(--_danger);
  }
  .flag svg {
    float: inline-start;
    margin-block-start: 1px;
    margin-inline-end: 4px;
    inline-size: 16px;
    block-size: 16px;
  }
  .flag span {
    display: block;
    overflow-wrap: anywhere;
    hyphens: auto;
  }
  .picture {
    position: relative;
    justify-self: center;
    cursor: pointer;
    inline-size: 148px;
    min-block-size: 190px;
    direction: ltr;
  }
  .struck .picture {
    opacity: 0.45;
  }
  .struck dd,
  .struck td {
    text-decoration: line-through;
  }
  .struck td:nth-last-child(-n + 2) {
    text-decoration: none;
  }
  .rings {
    position: absolute;
    inset: 0;
    overflow: visible;
  }
  .rings circle {
    fill: none;
    stroke: var(--_focus);
    stroke-width: 2.4;
  }
  .rings .minor,
  .rings .chance {
    stroke-width: 1.6;
    stroke-dasharray: 3 2.5;
  }
  dl {
    margin-block-start: 8px;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
  }
  dt {
    color: var(--_ink-2);
  }
  dd {
    text-wrap: balance;
    overflow-wrap: anywhere;
  }
  .told {
    margin-block: 8px;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  .told b {
    color: var(--_ink);
  }
  .letter {
    display: inline-grid;
    place-items: center;
    inline-size: 22px;
    block-size: 22px;
    border-radius: 11px;
    background: var(--_ink);
    color: var(--_paper);
    font-style: normal;
    font-weight: 600;
    font-size: 13px;
    line-height: 1;
    forced-color-adjust: none;
  }
  .below {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 20px;
    padding-block-start: 12px;
    border-block-start: 1px solid var(--_line);
  }
  .alone {
    padding-block: 4px 8px;
  }
  .below:empty {
    display: none;
  }
  .reader {
    display: inline-block;
    min-block-size: 44px;
    padding: 11px 12px;
    border-inline-start: 3px solid var(--_focus);
    font-weight: 600;
    cursor: ew-resize;
    margin-block-end: 8px;
  }
  figure + figure {
    margin-block-start: 16px;
  }
  figcaption .said {
    color: var(--_ink-2);
  }
  figure svg {
    overflow: visible;
    max-inline-size: 100%;
    touch-action: pan-y;
  }
  .level {
    stroke: var(--_line);
  }
  .stop,
  .cursor {
    stroke: var(--_edge);
  }
  .cursor {
    stroke: var(--_focus);
    stroke-width: 1.5;
  }
  .tick {
    font-size: 12px;
    fill: var(--_ink-2);
  }
  .line {
    fill: none;
    stroke-width: 2.2;
    stroke-linejoin: round;
  }
  .right .line,
  .right .read {
    stroke: var(--_pulse);
  }
  .left .line {
    stroke: var(--_gone);
    stroke-dasharray: 6 4;
  }
  .right .mark,
  .right .read {
    fill: var(--_paper);
    stroke: var(--_pulse);
    stroke-width: 2.2;
  }
  .left .mark,
  .left .read {
    fill: var(--_gone);
  }
  .read {
    stroke-width: 2.6;
  }
  .left .read {
    stroke: var(--_paper);
    stroke-width: 1.5;
  }
  figure .letter {
    all: unset;
    font-size: 14px;
    font-weight: 700;
  }
  figure .right .letter {
    fill: var(--_pulse);
  }
  figure .left .letter {
    fill: var(--_gone);
  }
  .band rect {
    fill: var(--_mute);
    fill-opacity: 0.13;
  }
  .band path {
    stroke: var(--_mute);
    stroke-dasharray: 2 3;
  }
  .band.left path {
    stroke-dasharray: 6 4;
  }
  .band-told {
    display: grid;
    grid-template-columns: minmax(0, max-content) auto;
    align-items: center;
    justify-content: start;
    column-gap: 12px;
  }
  .band-told .sources {
    display: contents;
  }
  .band-told .sources ul {
    grid-column: 1 / -1;
  }
  .band-told .sources-mark {
    margin-block: -6px;
  }
  table {
    inline-size: 100%;
    border-collapse: collapse;
    font-size: calc(14 * var(--_text));
    line-height: calc(18 * var(--_text));
  }
  th,
  td {
    padding: 0 12px 0 0;
    text-align: start;
    font-weight: 400;
    white-space: nowrap;
  }
  thead th {
    position: sticky;
    inset-block-start: 0;
    z-index: 1;
    block-size: calc(44 * var(--_text));
    background: var(--_paper);
    font-weight: 600;
    color: var(--_ink-2);
  }
  tbody tr:not(.spacer) {
    border-block-start: 1px solid var(--_line);
  }
  tbody td,
  tbody th {
    max-inline-size: 360px;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  td .pick,
  th .open {
    min-block-size: 44px;
    text-decoration: underline;
  }
  td .pick {
    text-decoration: none;
  }
  .spacer td {
    padding: 0;
  }
  tr.on th {
    box-shadow: inset 3px 0 0 var(--_ink);
  }
  tr.on .open {
    padding-inline-start: 10px;
    font-weight: 600;
  }
  @container (min-width: 900px) {
    .below {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      gap: 32px;
    }
  }
  @media (forced-colors: active) {
    .band rect {
      fill: none;
    }
    .card.on {
      outline: 2px solid Highlight;
      outline-offset: -2px;
    }
  }
`;
