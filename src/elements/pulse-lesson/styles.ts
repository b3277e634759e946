import { css } from 'lit';

/** What stands around the slides: buttons below, the presenter’s window, and how a slide flows where it would be too small to read. */
export const lessonStyles = css`
  .controls {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: center;
    padding-block: 12px;
  }
  .controls .solid {
    border-color: var(--_ink);
    background: var(--_ink);
    color: var(--_paper);
    font-weight: 600;
  }
  .controls .hint {
    flex: 1 1 100%;
  }
  .wait {
    padding: 16px;
  }
  .desk {
    display: grid;
    gap: 16px;
    padding: 16px;
  }
  .desk .clocks {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 32px;
    align-items: end;
  }
  .desk .clocks span {
    display: block;
    color: var(--_ink-2);
  }
  .desk .clocks b {
    font-size: calc(60 * var(--_text));
    line-height: calc(66 * var(--_text));
    font-weight: 600;
  }
  .desk .way {
    flex: 1 1 240px;
  }
  .track {
    block-size: 10px;
    margin-block: 8px;
    border: 1px solid var(--_edge);
    border-radius: 5px;
    overflow: hidden;
  }
  .track i {
    display: block;
    block-size: 100%;
    background: var(--_ink);
  }
  .desk section > h2,
  .notes h2 {
    letter-spacing: normal;
  }
  .desk section > h2 {
    font-weight: 600;
    font-size: 1.17em;
    line-height: inherit;
    color: var(--_ink-2);
    margin-block-end: 4px;
  }
  .desk .now .frame {
    border: 2px solid var(--_ink);
  }
  .notes {
    margin-block-start: 16px;
    padding: 16px 20px;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
    font-size: calc(21 * var(--_text));
    line-height: calc(31 * var(--_text));
  }
  .notes h2 {
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  @media (min-width: 900px) {
    .desk {
      grid-template-columns: minmax(0, 1.5fr) minmax(0, 1fr);
      padding: 24px;
    }
    .desk .clocks,
    .desk .controls {
      grid-column: 1 / -1;
    }
  }
  /* Where a slide would be too small to read, it flows as a page. */
  @container (max-width: 899px) {
    .slide:not(.desk *) {
      --u: 0.52px;
      block-size: auto;
      min-block-size: 400px;
      padding: 16px;
    }
    .slide:not(.desk *) .step,
    .slide:not(.desk *) .opening {
      display: block;
    }
    .slide:not(.desk *) .told {
      margin-block-start: 16px;
    }
    .slide:not(.desk *) .sequence ol {
      columns: 2;
    }
    .slide:not(.desk *) :is(.sequence, .wave-set, .arrivals) :is(button, label) {
      min-block-size: 44px;
    }
  }
  @media print {
    .controls {
      display: none;
    }
  }
`;
