import { css, unsafeCSS } from 'lit';
import { intrinsicSize } from '../common/intrinsic-size.js';
import { flagsInOneRow, LOW } from '../common/low-window.js';
import { COLUMNS, NARROW, READING_WIDTH } from './crops.js';

/** What may stand below red flags; by class, since a browser tries a selector without one for every element. */
const AFTER_FLAGS = 'limb-flags~.toolbar,limb-flags~.normals,limb-flags~.palette,limb-flags~.main';

const columns = COLUMNS.map(
  ({ from, high, grow }) =>
    `@media (min-height:${high}px){@container (min-width:${from}px){.main.beside{grid-template-columns:minmax(0,1fr) ${READING_WIDTH * grow}px}limb-flags,.toolbar,.brush-row,.beside .reading,.beside .status,.beside .also,.beside .legend,.beside .plates-row,.chooser{zoom:${grow}}${AFTER_FLAGS}{--_flag:${60 * grow}px}}}`,
).join('');

export const mapStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    ${intrinsicSize(820)}
    position: relative;
    border: 1px solid var(--_edge);
    border-radius: 12px;
    background: var(--_paper);
  }
  :host([hidden]) {
    display: none;
  }
  /* A flag stays in view while the map is scrolled, under nothing but the chooser. */
  limb-flags[raised] {
    position: sticky;
    z-index: 3;
    inset-block-start: 0;
  }
  limb-flags::part(banner) {
    border-radius: 11px 11px 0 0;
  }
  /*
   * What is scrolled to, such as the focus, does not end up under what sticks. A flag is told to these alone: by a property of all that
   * follows it, every element of the map would be styled again whenever one comes or goes.
   */
  .toolbar *,
  .normals *,
  .palette *,
  .site,
  .table * {
    scroll-margin-block-start: var(--_sticky, 0px);
  }
  limb-flags[raised] ~ .toolbar,
  limb-flags[raised] ~ .normals,
  limb-flags[raised] ~ .palette,
  limb-flags[raised] ~ .main .table {
    --_sticky: var(--_flag, 60px);
  }
  limb-flags[raised] ~ .main .site {
    scroll-margin-block-start: var(--_flag, 60px);
  }
  limb-flags[raised][unchecked] ~ .toolbar,
  limb-flags[raised][unchecked] ~ .normals,
  limb-flags[raised][unchecked] ~ .palette,
  limb-flags[raised][unchecked] ~ .main .table {
    --_sticky: calc(2 * var(--_flag, 60px));
  }
  limb-flags[raised][unchecked] ~ .main .site {
    scroll-margin-block-start: calc(2 * var(--_flag, 60px));
  }
  /* Separate layers, so that changes over or beside the figure do not repaint it. */
  .toolbar,
  .figure,
  .reading {
    isolation: isolate;
  }
  .toolbar,
  .brush-row {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px;
    padding: 8px 12px;
    border-block-end: 1px solid var(--_line);
  }
  /* No zoom by double tap, gaps between buttons included; pinch zoom stays. */
  .toolbar,
  .brush-row,
  .chooser {
    touch-action: manipulation;
  }
  .toolbar .space {
    flex: 1;
  }
  .group {
    display: inline-flex;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
  }
  .group .button {
    min-block-size: 42px;
    padding-inline: 12px;
  }
  .group .button.icon {
    padding: 0;
  }
  .scale {
    display: inline-flex;
    align-items: center;
    gap: 8px;
  }
  .brush-row span {
    flex: 1;
  }
  .plates-row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    padding: 8px 12px;
  }
  .stage {
    position: relative;
  }
  .doors .button {
    position: absolute;
    min-block-size: calc(44px * var(--_large));
    padding-inline: calc(10px * var(--_large));
    transform: translate(-50%, -50%);
    font-size: calc(14px * var(--_large));
    white-space: nowrap;
  }
  .doors b,
  .plates-row b {
    margin-inline-end: 0.4em;
  }
  .main {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
  }
  .surface {
    position: relative;
    min-inline-size: 0;
    overflow: clip;
  }
  .status {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    align-items: center;
    gap: 2px 16px;
    min-block-size: 44px;
    padding: 8px 16px;
    border-block-start: 1px solid var(--_line);
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
    color: var(--_ink-2);
  }
  .status > span {
    unicode-bidi: plaintext;
  }
  .status b {
    font-weight: 600;
    color: var(--_ink);
  }
  .legend {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 14px;
    padding: 0 16px 10px;
    font-size: calc(13 * var(--_text));
    line-height: calc(20 * var(--_text));
    color: var(--_ink-2);
  }
  .legend b {
    font-weight: 600;
    color: var(--_ink);
  }
  .also {
    padding: 4px 16px 12px;
    border-block-start: 1px solid var(--_line);
  }
  .also summary {
    min-block-size: 44px;
    display: flex;
    align-items: center;
    cursor: pointer;
  }
  .also summary::before {
    content: '';
    inline-size: 8px;
    block-size: 8px;
    margin-inline: 2px 12px;
    border-inline-end: 2px solid;
    border-block-end: 2px solid;
    rotate: calc(var(--_way) * -45deg);
  }
  .also[open] summary::before {
    rotate: calc(var(--_way) * 45deg);
  }
  .view-choice {
    min-inline-size: 0;
    text-overflow: ellipsis;
  }
  .also .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(190px, 1fr));
    gap: 12px 16px;
  }
  .also label {
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  .also select {
    display: block;
    inline-size: 100%;
    margin-block-start: 3px;
    color: var(--_ink);
    font-size: calc(15 * var(--_text));
  }
  .also .limbs {
    display: grid;
    grid-template-columns: minmax(0, max-content) minmax(0, max-content);
    gap: 6px;
  }
  .also .limbs .button {
    white-space: normal;
    justify-content: start;
    text-align: start;
    line-height: calc(18 * var(--_text));
    font-size: calc(14 * var(--_text));
  }
  .reading {
    padding: 20px;
    border-block-start: 1px solid var(--_line);
  }
  /* The room that an empty reading takes, measured in both languages, so that what follows the map does not move. */
  .waits {
    min-block-size: max(225px, 420px - 21cqi, 720px - 100cqi);
  }
  .help {
    padding: 12px 16px 16px;
    border-block-end: 1px solid var(--_line);
    background: var(--_well);
  }
  .help dl {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(280px, 1fr));
    gap: 4px 24px;
    margin-block-start: 8px;
  }
  .help dl > div {
    display: grid;
    grid-template-columns: 128px 1fr;
    gap: 8px;
  }
  .help dt {
    font-weight: 600;
  }

  /* Where every word beside the buttons would cost a second row. */
  @container (max-width: 1419.98px) {
    .caption {
      display: none;
    }
  }
  @container (max-width: 1259.98px) {
    .toolbar {
      gap: 6px;
      padding-inline: 10px;
    }
    .toolbar .button:not(.icon) {
      padding-inline: 10px;
    }
    .toolbar .scale:not(.button) {
      gap: 4px;
    }
  }
  @container (max-width: 639.98px) {
    .toolbar {
      gap: 4px;
      padding: 6px;
    }
    .toolbar > .button {
      padding-inline: 10px;
    }
    .toolbar > .button.icon {
      padding: 0;
    }
    .group .button {
      padding-inline: 9px;
    }
    .reading {
      padding: 16px;
    }
  }
  /* Three names in the longest language must fit in one row. */
  @container (max-width: 319.98px) {
    .group .button:not(.icon) {
      padding-inline: 6px;
    }
  }
  /* The height of a low window belongs to the figure. */
  @media (max-height: ${unsafeCSS(LOW - 0.02)}px) {
    @container (min-width: ${unsafeCSS(NARROW)}px) {
      .toolbar {
        padding-block: 4px;
      }
      .status {
        min-block-size: 29px;
        padding-block: 4px;
      }
    }
  }
  ${unsafeCSS(flagsInOneRow(2, `${AFTER_FLAGS}{--_flag:40px}`))}
  ${unsafeCSS(columns)}
  @container (min-width: ${unsafeCSS(COLUMNS[0].from)}px) {
    .beside > div:first-child {
      position: sticky;
      inset-block-start: var(--_sticky, 0);
      align-self: start;
    }
    limb-flags[raised] ~ .beside > div:first-child {
      inset-block-start: var(--_flag, 60px);
    }
    limb-flags[raised][unchecked] ~ .beside > div:first-child {
      inset-block-start: calc(2 * var(--_flag, 60px));
    }
    .beside .reading {
      border-block-start: 0;
      border-inline-start: 1px solid var(--_line);
    }
  }
  @media print {
    .toolbar,
    .brush-row,
    .help,
    .chooser {
      display: none;
    }
    :host {
      border-color: #000;
    }
  }
`;
