import type { LitElement } from 'lit';

/**
 * Empties a shadow tree that a server has rendered, so that the element's own rendering does not stand beside it.
 * @returns the same root
 */
export function ownRoot(
  host: LitElement,
  root: HTMLElement | DocumentFragment,
): HTMLElement | DocumentFragment {
  root.replaceChildren();
  host.renderOptions.renderBefore = null;
  return root;
}
