import { css, unsafeCSS } from 'lit';
import { flagsInOneRow } from '../common/low-window.js';

export const examinationStyles = css`
  :host {
    position: relative;
    border: 1px solid var(--_edge);
    border-radius: 12px;
    background: var(--_paper);
  }
  limb-report {
    border: 0;
    border-radius: 11px;
  }
  @media print {
    :host {
      border: 0;
    }
    .unprinted {
      display: none;
    }
  }
  .unread {
    border-radius: 11px;
  }
  .head {
    position: sticky;
    z-index: 3;
    inset-block-start: 0;
    border-radius: 11px 11px 0 0;
    background: var(--_paper);
  }
  limb-flags::part(banner) {
    border-radius: 11px 11px 0 0;
  }
  .tools {
    display: flex;
    justify-content: space-between;
    gap: 8px;
    padding: 8px 12px;
    border-block-end: 1px solid var(--_line);
  }
  nav {
    display: flex;
    gap: 4px;
    min-inline-size: 0;
    overflow-x: auto;
    scrollbar-width: none;
    padding: 3px;
    margin: -3px;
  }
  .tab {
    flex: none;
    padding-inline: 12px;
    font-size: calc(14 * var(--_text));
  }
  .tab[aria-current] {
    border-color: var(--_ink);
    box-shadow: inset 0 -3px 0 var(--_ink);
  }
  .tab.has {
    font-weight: 600;
  }
  .count {
    min-inline-size: 20px;
    padding-inline: 5px;
    border-radius: 10px;
    background: var(--_ink);
    color: var(--_paper);
    font-size: calc(12 * var(--_text));
    line-height: calc(20 * var(--_text));
    text-align: center;
  }
  .undo {
    flex: none;
    display: flex;
    gap: 4px;
  }
  .part {
    scroll-margin-block-start: 64px;
    border-block-start: 1px solid var(--_line);
  }
  .part:first-of-type {
    border-block-start: 0;
  }
  h2 {
    margin: 0;
  }
  .heading {
    display: flex;
    align-items: center;
    gap: 12px;
    inline-size: 100%;
    min-block-size: 56px;
    padding: 0 20px;
    border: 0;
    background: transparent;
    font-size: calc(19 * var(--_text));
    line-height: calc(24 * var(--_text));
    font-weight: 600;
    text-align: start;
    cursor: pointer;
  }
  .heading:focus-visible {
    outline-offset: -3px;
  }
  .heading::before {
    content: '';
    flex: none;
    inline-size: 8px;
    block-size: 8px;
    border-inline-end: 2px solid;
    border-block-end: 2px solid;
    rotate: calc(var(--_way) * -45deg);
  }
  .heading[aria-expanded='true']::before {
    rotate: calc(var(--_way) * 45deg);
  }
  .heading .hint {
    margin-inline-start: auto;
    font-weight: 400;
  }
  .body {
    --_tabs: 61px;
    --_sticky: var(--_tabs);
    padding: 0 20px 20px;
  }
  /* What begins with a line of text keeps clear of the frame of a heading in focus. */
  :is(#part-staging, #part-summary) .body {
    padding-block-start: 8px;
  }
  .head:has(limb-flags[raised]) ~ .part {
    scroll-margin-block-start: 122px;
  }
  .head:has(limb-flags[raised]) ~ .part .body {
    --_sticky: 115px;
  }
  /* What was not checked for flags takes room above the bar as well. */
  .head:has(limb-flags[unchecked]) ~ .part {
    scroll-margin-block-start: 124px;
  }
  .head:has(limb-flags[unchecked]) ~ .part .body {
    --_sticky: 121px;
  }
  .head:has(limb-flags[raised][unchecked]) ~ .part {
    scroll-margin-block-start: 182px;
  }
  .head:has(limb-flags[raised][unchecked]) ~ .part .body {
    --_sticky: 175px;
  }
  ${unsafeCSS(
    flagsInOneRow(
      2,
      '.head:has(limb-flags[raised]:not([unchecked]))~.part{scroll-margin-block-start:106px}.head:has(limb-flags[raised]:not([unchecked]))~.part .body{--_sticky:99px}',
    ),
  )}
  .body[hidden] {
    display: none;
  }
  .body > pulse-map {
    margin-inline: -12px;
  }
  .tests h3 {
    margin-block: 8px 4px;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  .test {
    border-block-start: 1px solid var(--_line);
  }
  .test .heading {
    flex-wrap: wrap;
    gap: 4px 12px;
    min-block-size: 48px;
    padding-inline: 2px;
    font-size: calc(16 * var(--_text));
    line-height: calc(22 * var(--_text));
  }
  .test bedside-test {
    padding-block: 0 20px;
  }
  .summary h3 {
    margin-block: 12px 4px;
    font-size: calc(15 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .summary li {
    padding-block: 3px;
    overflow-wrap: anywhere;
  }
  .keys {
    padding: 8px 20px 12px;
    border-block-start: 1px solid var(--_line);
  }
  @container (max-width: 559px) {
    .heading {
      padding-inline: 12px;
    }
    .body {
      padding: 0 12px 16px;
    }
    .keys {
      display: none;
    }
  }
  @media (forced-colors: active) {
    .tab[aria-current] {
      outline: 2px solid Highlight;
      outline-offset: -3px;
    }
    .count {
      border: 1px solid CanvasText;
    }
  }
  @media print {
    .head {
      position: static;
    }
    .tools,
    .keys {
      display: none;
    }
  }
`;
