import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { RecordStore } from './record-store.js';

type Host = ReactiveControllerHost & HTMLElement & { store: RecordStore };

/** Edits the record of the element that an id names, also when another element takes its place. */
export class JoinedRecord implements ReactiveController {
  #joined: Element | undefined;
  #observer: MutationObserver | undefined;

  /** @param id of the element; empty where the host has a record of its own or is handed one */
  constructor(
    private readonly host: Host,
    private readonly id: () => string,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    if (typeof MutationObserver === 'undefined') return;
    this.#observer = new MutationObserver(() => {
      if (this.id() && this.#found !== this.#joined) this.host.requestUpdate();
    });
    this.#observer.observe(this.host.getRootNode(), {
      childList: true,
      subtree: true,
      attributes: true,
      attributeFilter: ['id'],
    });
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  hostUpdate(): void {
    const found = this.id() ? this.#found : undefined;
    if (!found) return;
    const { store } = found as { store?: unknown };
    if (store instanceof RecordStore) {
      this.#joined = found;
      this.host.store = store;
    } else void customElements.whenDefined(found.localName).then(() => this.host.requestUpdate());
  }

  get #found(): Element | undefined {
    const root = this.host.getRootNode() as ParentNode;
    return root.querySelector?.(`#${CSS.escape(this.id())}`) ?? undefined;
  }
}
