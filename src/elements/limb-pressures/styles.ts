import { css } from 'lit';

export const pressureStyles = css`
  .top {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    align-items: center;
    gap: 8px 16px;
    margin-block-end: 8px;
  }
  .cautions {
    margin-block-end: 12px;
    padding-inline-start: 10px;
    border-inline-start: 3px solid var(--_ink);
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .cautions p {
    margin: 0 0 4px;
  }
  .grid {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 20px;
    align-items: center;
  }
  .indices {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    gap: 16px;
  }
  .indices dt {
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    font-weight: 600;
    color: var(--_ink-2);
  }
  .indices dd {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 10px;
  }
  .indices b {
    min-inline-size: 2.2em;
    font-size: calc(28 * var(--_text));
    line-height: calc(36 * var(--_text));
    font-weight: 600;
  }
  .indices .none {
    min-inline-size: 1.2em;
    color: var(--_mute);
    font-weight: 400;
  }
  .indices .odd {
    font-weight: 600;
  }
  .plot {
    max-inline-size: 440px;
  }
  .findings {
    display: grid;
    gap: 6px;
    margin-block: 12px;
  }
  .narrow {
    max-inline-size: 440px;
    padding-block-end: 12px;
  }
  .walk,
  .curves,
  .methods {
    display: grid;
    gap: 12px 20px;
    max-inline-size: 720px;
    padding-block-end: 16px;
  }
  @container (min-width: 560px) {
    .grid {
      grid-template-columns: minmax(0, 400px) minmax(0, 1fr);
    }
    .indices {
      grid-template-columns: minmax(0, 1fr);
    }
    .plot {
      grid-column: 1 / -1;
    }
    .walk,
    .curves,
    .methods {
      grid-template-columns: 1fr 1fr;
      align-items: end;
    }
    .methods .hint {
      grid-column: 1 / -1;
    }
  }
  @container (min-width: 860px) {
    .grid {
      grid-template-columns: minmax(0, 380px) 216px minmax(0, 1fr);
      column-gap: 28px;
    }
    .plot {
      grid-column: auto;
      inline-size: 100%;
      justify-self: end;
    }
  }
  @container (max-width: 479px) {
    th {
      padding-inline-end: 6px;
      font-size: calc(14 * var(--_text));
      line-height: calc(18 * var(--_text));
    }
  }
`;
