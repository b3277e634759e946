import { css } from 'lit';
import { panelBox } from './panel-box.js';

export const chooserStyles = css`
  .chooser {
    ${panelBox}
    padding: 14px 16px 12px;
  }
  .chooser header {
    display: flex;
    align-items: start;
    gap: 4px;
  }
  .chooser h2 {
    flex: 1;
    padding-block-start: 6px;
    font-size: calc(19 * var(--_text));
    line-height: calc(24 * var(--_text));
    font-weight: 600;
  }
  .chooser header .button {
    margin-block-start: -4px;
  }
  .chooser header .button:last-child {
    margin-inline-end: -8px;
  }
  .how {
    margin-block-end: 12px;
    font-size: calc(14 * var(--_text));
    line-height: calc(19 * var(--_text));
    color: var(--_ink-2);
  }
  .grades,
  .options {
    display: grid;
    grid-template-columns: repeat(var(--columns), minmax(0, 1fr));
    gap: 6px;
  }
  .grades .button {
    display: grid;
    justify-items: center;
    gap: 6px;
    min-block-size: 76px;
    padding: 12px 0 9px;
    font-size: calc(14 * var(--_text));
    line-height: calc(18 * var(--_text));
    white-space: normal;
  }
  .grades.five .button {
    font-size: calc(12.5 * var(--_text));
  }
  .toggles {
    display: grid;
    grid-template-columns: repeat(3, 1fr);
    gap: 4px;
    margin-block-start: 10px;
  }
  .toggles:empty {
    display: none;
  }
  .toggles .button {
    padding-inline: 1px;
    gap: 2px;
    font-size: calc(14 * var(--_text));
  }
  .toggles + .options {
    margin-block-start: 6px;
  }
  .options .button {
    padding-inline: 8px;
    font-size: calc(14 * var(--_text));
  }
  .folds {
    margin-block-start: 10px;
    border-block: 1px solid var(--_line);
  }
  .folds > * + * {
    border-block-start: 1px solid var(--_line);
  }
  .folds .options {
    padding-block: 4px 10px;
    border: 0;
  }
  .fold {
    display: flex;
    align-items: center;
    gap: 10px;
    inline-size: 100%;
    min-block-size: 46px;
    padding: 0;
    border: 0;
    background: transparent;
    text-align: start;
    cursor: pointer;
  }
  .fold span {
    flex: 1;
    min-inline-size: 0;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  .fold b {
    font-weight: 600;
  }
  .note {
    display: block;
    padding-block: 8px 10px;
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  .note textarea {
    display: block;
    inline-size: 100%;
    margin-block-start: 3px;
    resize: vertical;
    color: var(--_ink);
    font-size: calc(16 * var(--_text));
  }
  .chooser footer {
    display: flex;
    justify-content: space-between;
    flex-wrap: wrap;
    margin: 4px -8px -4px;
  }
  .chooser footer .button {
    padding-inline: 8px;
    font-size: calc(14 * var(--_text));
    gap: 6px;
  }
  .chooser.at-foot {
    inset: auto 0 0 0;
    inline-size: auto;
    max-inline-size: 560px;
    max-block-size: 62dvh;
    margin-inline: auto;
    padding-block-end: calc(10px + env(safe-area-inset-bottom));
    border-block-end: 0;
    border-radius: 16px 16px 0 0;
  }

  @media (forced-colors: active) {
    .chooser {
      border: 2px solid CanvasText;
    }
  }
  @media (prefers-reduced-motion: no-preference) {
    .chooser.at-foot {
      animation: rise 180ms ease-out;
    }
    @keyframes rise {
      from {
        translate: 0 40px;
        opacity: 0;
      }
    }
  }
`;
