import type { CSSResult } from 'lit';

/** Adds the style sheets of a deferred chunk to a shadow root, once each. */
export function addStyles(root: HTMLElement | DocumentFragment, styles: readonly CSSResult[]): void {
  const { adoptedStyleSheets } = root as ShadowRoot;
  for (const { styleSheet } of styles) {
    if (styleSheet && !adoptedStyleSheets.includes(styleSheet)) adoptedStyleSheets.push(styleSheet);
  }
}
