import { css } from 'lit';

/** The slide of the pulse wave, and what is said of a sound. */
export const waveStyles = css`
  .slide .wave-step {
    grid-template-columns: calc(748 * var(--u)) 1fr;
    --_vessel: #dcc3bf;
    --_deep: #e6d4d1;
  }
  .wave-figure {
    position: relative;
    inline-size: 100%;
    block-size: min-content;
  }
  .wave-figure > :is(canvas, .spots) {
    position: absolute;
    inset: 0;
    inline-size: 100%;
    block-size: 100%;
  }
  canvas {
    color: var(--_pulse);
    pointer-events: none;
  }
  .reach {
    fill: transparent;
  }
  .spot {
    fill: var(--_paper);
    stroke: var(--_ink);
    stroke-width: 3;
  }
  .spot.gone {
    fill: var(--_gone);
  }
  [data-hear] {
    cursor: pointer;
  }
  .wave-set {
    display: flex;
    flex-wrap: wrap;
    gap: calc(12 * var(--u)) calc(16 * var(--u));
    align-items: center;
    margin-block-end: calc(16 * var(--u));
    font-size: calc(28 * var(--u));
    line-height: calc(36 * var(--u));
  }
  .wave-set button {
    padding: calc(8 * var(--u)) calc(22 * var(--u));
    border: calc(2 * var(--u)) solid var(--_edge);
    border-radius: calc(12 * var(--u));
    background: var(--_paper);
    font-size: inherit;
    line-height: inherit;
    cursor: pointer;
  }
  .wave-set [aria-pressed='true'] {
    border-color: var(--_ink);
    background: var(--_ink);
    color: var(--_paper);
  }
  .wave-set label {
    display: flex;
    gap: calc(14 * var(--u));
    align-items: center;
  }
  .wave-set input {
    inline-size: calc(220 * var(--u));
  }
  .arrivals {
    inline-size: 100%;
    border-collapse: collapse;
    font-size: calc(28 * var(--u));
    line-height: calc(34 * var(--u));
  }
  .arrivals + .wave-set {
    margin-block: calc(14 * var(--u)) 0;
  }
  .arrivals :is(th, td) {
    padding: 0;
    border-block-end: calc(2 * var(--u)) solid var(--_line);
    text-align: start;
    font-weight: 400;
  }
  .arrivals thead th {
    font-weight: 600;
  }
  .arrivals button {
    inline-size: 100%;
    padding: calc(5 * var(--u)) calc(8 * var(--u));
    border: 0;
    background: none;
    font-size: inherit;
    line-height: inherit;
    text-align: start;
    font-variant-numeric: tabular-nums;
    cursor: pointer;
  }
  .arrivals :is(.absent, .bruit) {
    font-weight: 700;
  }
  .arrivals [aria-pressed='true'] {
    outline: calc(3 * var(--u)) solid var(--_focus);
    outline-offset: calc(-3 * var(--u));
  }
  .wave-step .second {
    font-size: calc(28 * var(--u));
    line-height: calc(36 * var(--u));
  }
  .sounding {
    position: absolute;
    inset-block-end: calc(12 * var(--u));
    inset-inline-end: calc(64 * var(--u));
    font-size: calc(28 * var(--u));
    line-height: calc(36 * var(--u));
  }
  .sounding span {
    padding: calc(4 * var(--u)) calc(18 * var(--u));
    border-radius: calc(12 * var(--u));
    background: var(--_ink);
    color: var(--_paper);
  }
`;
