import { css, unsafeCSS } from 'lit';
import { intrinsicSize } from '../common/intrinsic-size.js';
import { flagsInOneRow } from '../common/low-window.js';

export const flagStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    ${intrinsicSize(640)}
  }
  :host([hidden]) {
    display: none;
  }
  .banner {
    border-inline-start: 6px solid var(--_danger);
    border-radius: var(--_radius);
    background: var(--_danger-soft);
  }
  .banner.asks {
    border-inline-start-color: var(--_edge);
    background: var(--_well, var(--_ground));
  }
  .line {
    display: flex;
    align-items: stretch;
  }
  .opener {
    flex: 1;
    display: flex;
    align-items: center;
    gap: 10px;
    min-inline-size: 0;
    min-block-size: 52px;
    padding: 6px 10px;
    border: 0;
    background: none;
    font: inherit;
    color: inherit;
    text-align: start;
    cursor: pointer;
  }
  .opener > svg {
    flex: none;
  }
  .mark {
    color: var(--_danger);
  }
  .asks .mark {
    color: var(--_ink-2);
  }
  .title {
    flex: 1;
    min-inline-size: 0;
  }
  .title b {
    display: block;
    font-size: calc(15 * var(--_text));
    line-height: calc(19 * var(--_text));
    font-weight: 700;
    color: var(--_danger);
  }
  .asks .title b {
    color: var(--_ink);
  }
  .why {
    display: block;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    white-space: nowrap;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  .title .short,
  .on-narrow {
    display: none;
  }
  .time {
    flex: none;
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
    font-weight: 600;
    white-space: nowrap;
  }
  .call {
    flex: none;
    display: grid;
    place-items: center;
    padding-inline: 14px;
    background: transparent;
    box-shadow: inset calc(var(--_way) * 1.5px) 0 0 var(--_danger);
    font-size: calc(15 * var(--_text));
    line-height: calc(19 * var(--_text));
    font-weight: 700;
    color: var(--_danger);
    text-decoration: none;
  }
  .now > .line .call,
  .now .big {
    background: var(--_danger);
    color: var(--_paper);
  }
  .big {
    justify-self: start;
    min-block-size: 52px;
    padding-inline: 20px;
    border-radius: var(--_radius);
    box-shadow: inset 0 0 0 1.5px var(--_danger);
    font-size: calc(17 * var(--_text));
  }
  .all {
    display: none;
    max-block-size: calc(100dvh - 160px);
    overflow-y: auto;
    padding: 0 16px 12px;
  }
  :host([open]) .all,
  :host([flat]) .all {
    display: block;
  }
  :host([flat]) .all {
    max-block-size: none;
    padding-block-start: 12px;
  }
  :host([flat]) .line {
    display: none;
  }
  .flag {
    display: grid;
    gap: 6px;
  }
  .flag + .flag,
  .flag + .others {
    margin-block-start: 12px;
    padding-block-start: 12px;
    border-block-start: 1px solid var(--_danger);
  }
  .heading {
    display: block;
    font-size: calc(16 * var(--_text));
    line-height: calc(22 * var(--_text));
    font-weight: 700;
    color: var(--_danger);
    text-wrap: balance;
  }
  /* Stands in the line already. */
  .flag:first-child .heading {
    display: none;
  }
  :host([flat]) .flag:first-child .heading {
    display: block;
    font-size: calc(18 * var(--_text));
    line-height: calc(24 * var(--_text));
  }
  .calls {
    margin: 0;
    padding: 0;
    list-style: none;
    font-weight: 600;
  }
  .calls li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px;
  }
  .note-call {
    justify-self: start;
  }
  .act {
    font-weight: 600;
  }
  .when {
    margin-inline-end: 6px;
    padding-inline: 6px;
    border: 1px solid var(--_danger);
    border-radius: 4px;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    font-weight: 600;
    color: var(--_danger);
    white-space: nowrap;
  }
  .goto {
    min-block-size: 32px;
    padding: 4px 0;
    border: 0;
    background: transparent;
    text-align: start;
    text-decoration: underline;
    text-underline-offset: 3px;
    cursor: pointer;
  }
  .questions {
    margin: 2px 0 0;
    padding: 0;
    list-style: none;
  }
  .questions li {
    display: flex;
    align-items: baseline;
  }
  .questions li::before {
    content: '•' / '';
    flex: none;
    inline-size: 16px;
  }
  @media (pointer: coarse) {
    .goto {
      min-block-size: 44px;
    }
  }
  .small {
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    font-weight: 600;
  }
  .caution {
    margin-block-start: 10px;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  @container (max-width: 639px) {
    .title .long,
    .title + .time:not(.place) {
      display: none;
    }
    .title .short {
      display: block;
    }
    .on-narrow {
      display: inline;
    }
    .opener {
      padding-inline: 8px;
      gap: 8px;
    }
    .call {
      padding-inline: 12px;
    }
    .big {
      justify-self: stretch;
    }
  }
  /* The height of a low window belongs to the figure below. */
  ${unsafeCSS(
    flagsInOneRow(
      0,
      '.opener{min-block-size:36px;padding-block:4px}.title{display:flex;align-items:baseline;gap:12px}.title b{flex:0 0 auto;max-inline-size:70%}.why{flex:1;min-inline-size:0}',
    ),
  )}
  @media print {
    .line {
      display: none;
    }
    .all,
    .flag:first-child .heading {
      display: block;
    }
    .all {
      max-block-size: none;
      padding-block-start: 12px;
      columns: 2 280px;
      column-gap: 24px;
    }
    .flag {
      break-inside: avoid;
    }
  }
  @media (forced-colors: active) {
    .banner {
      border: 2px solid CanvasText;
      border-inline-start-width: 8px;
    }
    .call {
      border-inline-start: 2px solid LinkText;
    }
  }
`;
