import { css } from 'lit';

export const elevationStyles = css`
  .leg-raise {
    display: grid;
    gap: 12px 24px;
    align-items: center;
  }
  .leg-figure {
    inline-size: 100%;
    max-block-size: 340px;
    overflow: visible;
    user-select: none;
    -webkit-user-select: none;
  }
  .couch,
  .tick {
    stroke: var(--_edge);
    fill: none;
  }
  .couch {
    stroke-width: 2;
  }
  .arc {
    fill: none;
    stroke: var(--_line);
    stroke-width: 1.5;
  }
  .range {
    fill: none;
    stroke: var(--_edge);
    stroke-width: 5;
  }
  .tick-text {
    font-size: 15px;
    fill: var(--_ink-2);
  }
  .ghost path {
    fill: none;
    stroke: var(--_edge);
    stroke-dasharray: 3 4;
    opacity: 0.6;
  }
  .leg,
  .trunk {
    fill: var(--_body);
    stroke: var(--_ink-2);
    stroke-width: 1.4;
  }
  .trunk {
    stroke: none;
  }
  .foot {
    fill: var(--_paper);
    stroke: var(--_ink-2);
    stroke-width: 1.4;
  }
  .axis {
    stroke: var(--_focus);
    stroke-width: 1.4;
    stroke-dasharray: 2 4;
  }
  .pale path {
    stroke: var(--_gone);
    stroke-width: 4;
    stroke-linecap: round;
  }
  .pale text {
    font-size: 15px;
    font-weight: 600;
    fill: var(--_ink);
  }
  .handle,
  .handle * {
    cursor: grab;
    touch-action: none;
    outline: none;
  }
  .handle .target {
    fill: transparent;
  }
  .handle .ring {
    fill: var(--_paper);
    fill-opacity: 0.92;
    stroke: var(--_focus);
    stroke-width: 3;
  }
  .handle:focus-visible .ring {
    stroke-width: 6;
  }
  .handle .arrows {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 2;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .hip {
    fill: var(--_ink-2);
  }
  .controls {
    display: grid;
    gap: 8px;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  .by-hand {
    display: flex;
    flex-wrap: wrap;
    gap: 12px 20px;
  }
  @container (min-width: 600px) {
    .leg-raise {
      grid-template-columns: minmax(0, 1fr) 200px;
    }
    .by-hand {
      grid-column: 1 / -1;
    }
  }
  @container (max-width: 599px) {
    .controls {
      grid-template-columns: 1fr auto;
      align-items: center;
    }
    .controls > :not(.big, .row) {
      grid-column: 1 / -1;
    }
    .tick-text,
    .pale text {
      font-size: 20px;
    }
  }
`;
