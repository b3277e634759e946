import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { onLanguage } from '../../locale/languages.js';
import type { Register } from '../../locale/terms.js';

/** Options of the `lang` property of every element; empty, it is not written to the page, where it would mean "unknown". */
export const LANG = { reflect: true, useDefault: true } as const;

/** An attribute of a node that has any; a page being rendered by a server has no class of elements to ask. */
const attributeOf = (node: Node, name: string): string | null =>
  'getAttribute' in node ? (node as Element).getAttribute(name) : null;

/** The language of an element: its own, else the closest `lang` (through shadow trees), else the browser's. */
function languageAt(element: HTMLElement): string {
  if (element.lang) return element.lang;
  for (
    let node: Node | null = element;
    node;
    node = 'host' in node ? (node as ShadowRoot).host : node.parentNode
  ) {
    const found = attributeOf(node, 'lang');
    if (found) return found;
  }
  return globalThis.navigator?.language || 'en';
}

/** The register of an element: its own, else that of the closest ancestor with one (through shadow trees), else the trade's. */
function registerAt(element: HTMLElement): Register {
  for (
    let node: Node | null = element;
    node;
    node = 'host' in node ? (node as ShadowRoot).host : node.parentNode
  ) {
    const found = attributeOf(node, 'register');
    if (found) return found === 'plain' ? 'plain' : 'trade';
  }
  return 'trade';
}

const hosts = new Set<ReactiveControllerHost>();
let page: MutationObserver | undefined;

/** Re-renders a host whenever the page takes another language or direction; one observer serves them all. */
function follow(host: ReactiveControllerHost): void {
  hosts.add(host);
  page ??= new MutationObserver(() => hosts.forEach((one) => one.requestUpdate()));
  if (hosts.size > 1) return;
  page.observe(document.documentElement, { attributes: true, attributeFilter: ['lang', 'dir', 'register'] });
}

function unfollow(host: ReactiveControllerHost): void {
  hosts.delete(host);
  if (!hosts.size) page?.disconnect();
}

/**
 * Provides an element's language, and re-renders it when a language is registered later or the page changes `lang`, `dir` or
 * `register` of its `<html>`.
 */
export class LanguageController implements ReactiveController {
  #ended: (() => void) | undefined;
  /** In what the host was rendered last. */
  #rendered: string | undefined;
  /** What holds for the update in progress: one asks for words many times, and each answer would search all of the page around. */
  #held: { readonly tag: string; readonly register: Register } | undefined;

  constructor(private readonly host: ReactiveControllerHost & HTMLElement) {
    host.addController(this);
  }

  get tag(): string {
    return this.#held?.tag ?? languageAt(this.host);
  }

  get register(): Register {
    if (this.#held) return this.#held.register;
    const { register } = this.host as { register?: string };
    return register ? (register === 'plain' ? 'plain' : 'trade') : registerAt(this.host);
  }

  hostConnected(): void {
    this.#held = undefined;
    this.#ended = onLanguage(() => this.host.requestUpdate());
    follow(this.host);
    // The page may have changed its language while the host was out of it, or the host its page.
    if (this.#rendered !== undefined && this.#rendered !== this.#spoken) this.host.requestUpdate();
  }

  hostDisconnected(): void {
    this.#ended?.();
    unfollow(this.host);
  }

  hostUpdate(): void {
    // An update that failed leaves what it held.
    this.#held = undefined;
    const { tag, register } = this;
    this.#held = { tag, register };
  }

  hostUpdated(): void {
    this.#held = undefined;
    this.#rendered = this.#spoken;
  }

  get #spoken(): string {
    return `${this.tag} ${this.register}`;
  }
}
