import { css } from 'lit';

export const cardStyles = css`
  .card > header {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    align-items: start;
    gap: 8px 16px;
  }
  .caution {
    margin: 8px 0 4px;
    padding-inline-start: 10px;
    border-inline-start: 3px solid var(--_ink);
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .eponym {
    font-size: calc(14 * var(--_text));
    font-weight: 400;
    color: var(--_ink-2);
  }
  details.steps {
    border: 0;
  }
  details.steps > summary {
    min-block-size: 44px;
    font-weight: 400;
    font-size: calc(14 * var(--_text));
    color: var(--_ink-2);
  }
  details.steps ol {
    margin: 0 0 6px;
    padding-inline-start: 24px;
    list-style: decimal;
  }
  .big {
    font-size: calc(44 * var(--_text));
    line-height: calc(48 * var(--_text));
    font-weight: 600;
    letter-spacing: -0.02em;
  }
  .middle {
    font-size: calc(28 * var(--_text));
    line-height: calc(34 * var(--_text));
    font-weight: 600;
  }
  .big span,
  .middle span {
    font-size: calc(16 * var(--_text));
    font-weight: 400;
    letter-spacing: 0;
    color: var(--_ink-2);
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 12px;
    align-items: center;
  }
  .tall {
    min-block-size: 52px;
    white-space: normal;
  }
  footer {
    margin-block-start: 12px;
    padding-block-start: 12px;
    border-block-start: 1px solid var(--_line);
  }
  .reading {
    max-inline-size: 62ch;
    font-weight: 600;
  }
  .rates {
    margin-block-start: 6px;
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
    color: var(--_ink-2);
  }
  .rates summary {
    display: flex;
    align-items: center;
    min-block-size: 32px;
    cursor: pointer;
    text-decoration: underline;
    text-underline-offset: 3px;
  }
  .rates li {
    margin-block-start: 4px;
  }
  .foot {
    align-items: end;
    margin-block-start: 10px;
  }
  .foot .text {
    flex: 1 1 180px;
    max-inline-size: 320px;
  }
  .foot .field {
    text-overflow: ellipsis;
  }
`;
