import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { onLanguage, type Register } from '../../locale/index.js';

/** Options of the `lang` property of every element; empty, it is not written to the page, where it would mean "unknown". */
export const LANG = { reflect: true, useDefault: true } as const;

/** The language of an element: its own, else the closest `lang` (through shadow trees), else the browser's. */
export function languageAt(element: HTMLElement): string {
  if (element.lang) return element.lang;
  for (
    let node: Node | null = element;
    node;
    node = node instanceof ShadowRoot ? node.host : node.parentNode
  ) {
    const found = node instanceof Element && node.getAttribute('lang');
    if (found) return found;
  }
  return globalThis.navigator?.language || 'en';
}

/** The register of an element: its own, else that of the closest ancestor with one (through shadow trees), else the trade's. */
export function registerAt(element: HTMLElement): Register {
  for (
    let node: Node | null = element;
    node;
    node = node instanceof ShadowRoot ? node.host : node.parentNode
  ) {
    const found = node instanceof Element && node.getAttribute('register');
    if (found) return found === 'plain' ? 'plain' : 'trade';
  }
  return 'trade';
}

/** Provides an element's language and re-renders it when a language is registered later. */
export class LanguageController implements ReactiveController {
  #ended: (() => void) | undefined;

  constructor(private readonly host: ReactiveControllerHost & HTMLElement) {
    host.addController(this);
  }

  get tag(): string {
    return languageAt(this.host);
  }

  get register(): Register {
    const { register } = this.host as { register?: string };
    return register ? (register === 'plain' ? 'plain' : 'trade') : registerAt(this.host);
  }

  hostConnected(): void {
    this.#ended = onLanguage(() => this.host.requestUpdate());
  }

  hostDisconnected(): void {
    this.#ended?.();
  }
}
