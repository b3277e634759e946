import { css } from 'lit';

export const stagingStyles = css`
  .limbs {
    display: grid;
    gap: 24px 44px;
    margin-block-end: 12px;
  }
  .group {
    margin-block-start: 14px;
  }
  .scheme {
    padding-block: 10px;
    border-block-start: 1px solid var(--_line);
  }
  h3 {
    margin-block-end: 8px;
  }
  .stage {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 2px 10px;
  }
  .stage b {
    min-inline-size: 1.6em;
    font-size: calc(26 * var(--_text));
    line-height: calc(32 * var(--_text));
    font-weight: 600;
  }
  .grades {
    padding-inline-start: 12px;
    border-inline-start: 2px solid var(--_line);
  }
  .grades .stage b {
    font-size: calc(19 * var(--_text));
    line-height: calc(24 * var(--_text));
  }
  .own summary {
    display: inline-flex;
    align-items: center;
    min-block-size: 32px;
    font-size: calc(14 * var(--_text));
    color: var(--_ink-2);
    text-decoration: underline;
    text-underline-offset: 3px;
    cursor: pointer;
  }
  .own .row {
    display: grid;
    gap: 8px;
    max-inline-size: 420px;
  }
  .own .text {
    min-inline-size: 0;
  }
  @container (min-width: 700px) {
    .limbs {
      grid-template-columns: 1fr 1fr;
    }
  }
`;
