import { css, unsafeCSS } from 'lit';
import { FORCED, PALETTE, PRINTED, type Token } from '../../drawing/palette.js';
import { formNotesStyles } from './form-notes.js';

const tokens = Object.keys(PALETTE) as Token[];

function declarations(value: (token: Token) => string): string {
  return tokens.map((token) => `--_${token}:${value(token)};`).join('');
}

/**
 * The palette as private custom properties on the host; each can be set from outside by its public name, `--pulse-map-*`.
 * Colours follow the page's `color-scheme`.
 */
export const tokenStyles = css`
  :host {
    ${unsafeCSS(
      declarations((t) => `var(--pulse-map-${t},light-dark(${PALETTE[t].light},${PALETTE[t].dark}))`),
    )}
    /* Which way a line of words runs: 1 to the right, -1 to the left. */
    --_way: 1;
    --_radius: var(--pulse-map-radius, 8px);
    --_stroke: var(--pulse-map-stroke, 1);
    --_font: var(
      --pulse-map-font,
      -apple-system,
      'Segoe UI',
      Roboto,
      'Noto Sans',
      'Helvetica Neue',
      Arial,
      sans-serif
    );
    /* A pixel of text: grows with the size that the reader has set, and never shrinks with the page's own. */
    --_text: max(0.0625rem, 1px);
    color: var(--_ink);
    font-family: var(--_font);
    font-size: calc(15 * var(--_text));
    line-height: calc(21 * var(--_text));
    font-variant-numeric: tabular-nums;
    -webkit-text-size-adjust: 100%;
  }
  :host(:dir(rtl)) {
    --_way: -1;
  }
  @media (forced-colors: active) {
    :host {
      ${unsafeCSS(declarations((t) => FORCED[t]))}
    }
  }
  @media print {
    :host {
      ${unsafeCSS(declarations((t) => PRINTED[t]))}
    }
  }
`;

/** Buttons, fields and text that every element of the library shares. */
export const controlStyles = css`
  ${formNotesStyles}
  *,
  ::before,
  ::after {
    box-sizing: border-box;
  }
  h2,
  h3,
  h4,
  p,
  ul,
  ol,
  dl,
  dd,
  figure,
  fieldset {
    margin: 0;
    padding: 0;
    border: 0;
  }
  ul,
  ol {
    list-style: none;
  }
  /* WebKit lets what is chosen, unseen, stand out to the side where it is longer, and the page with it. */
  select {
    contain: paint;
  }
  /* Words run as their own letters do, also where the page runs the other way; they stand on the page's side. */
  h2,
  h3,
  h4,
  p,
  li,
  dt,
  dd,
  label,
  legend,
  summary,
  caption,
  .caution,
  .hint {
    unicode-bidi: plaintext;
    text-align: -webkit-match-parent;
    text-align: match-parent;
  }
  select {
    unicode-bidi: plaintext;
    text-align: -webkit-match-parent;
    text-align: match-parent;
  }
  button,
  option {
    unicode-bidi: plaintext;
  }
  button,
  input,
  select,
  textarea {
    font: inherit;
    color: inherit;
    letter-spacing: inherit;
  }
  svg {
    display: block;
    flex: none;
    direction: ltr;
  }
  :focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  .button {
    display: inline-flex;
    align-items: center;
    justify-content: center;
    gap: 8px;
    min-block-size: 44px;
    min-inline-size: 44px;
    padding: 0 14px;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
    white-space: nowrap;
    cursor: pointer;
    touch-action: manipulation;
  }
  .button:hover:not(:disabled) {
    border-color: var(--_edge);
  }
  .button:disabled {
    color: var(--_mute);
    opacity: 0.55;
    cursor: default;
  }
  .button.icon {
    padding: 0;
  }
  /* What points onward or back points along the words. */
  .onward {
    scale: var(--_way) 1;
  }
  .button.bare {
    border-color: transparent;
    background: transparent;
  }
  .button[aria-pressed='true'],
  .button[aria-checked='true'] {
    border-color: var(--_ink);
    box-shadow: inset 0 0 0 1px var(--_ink);
    font-weight: 600;
  }
  .field {
    min-block-size: 44px;
    padding: 8px 10px;
    border: 1px solid var(--_edge);
    border-radius: 5px;
    background: var(--_paper);
  }
  .hint {
    font-size: calc(13 * var(--_text));
    line-height: calc(18 * var(--_text));
    color: var(--_ink-2);
  }
  .hidden-visually {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  @media (forced-colors: active) {
    [aria-pressed='true'],
    [aria-checked='true'] {
      outline: 3px solid Highlight;
      outline-offset: -3px;
    }
    .button:disabled {
      color: GrayText;
      opacity: 1;
    }
  }
  @media (prefers-reduced-motion: no-preference) {
    .button {
      transition:
        border-color 120ms,
        background-color 120ms;
    }
  }
`;
