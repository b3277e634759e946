import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { PartId } from '../../locale/whole.js';

interface Host extends ReactiveControllerHost, HTMLElement {
  readonly renderRoot: HTMLElement | DocumentFragment;
}

/** A part counts as the current one once its heading is this close under the sticky bar, in px. */
const NEAR = 48;

/** Whether the page goes no further, so that the last parts never come to stand under the bar. */
function atEnd(): boolean {
  const { scrollTop = 0, clientHeight = 0, scrollHeight = 0 } = document.scrollingElement ?? {};
  return scrollTop > 0 && scrollTop + clientHeight >= scrollHeight - 1;
}

/** Which part stands under the sticky bar; its button in the row is marked and scrolled into sight, without moving the page. */
export class CurrentPart implements ReactiveController {
  part: PartId | undefined;
  #frame = 0;

  constructor(private readonly host: Host) {
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener('scroll', this.#later, { capture: true, passive: true });
    this.host.addEventListener('focusin', this.#later);
  }

  hostDisconnected(): void {
    removeEventListener('scroll', this.#later, { capture: true });
    this.host.removeEventListener('focusin', this.#later);
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
  }

  hostUpdated(): void {
    this.#later();
  }

  readonly #later = (): void => {
    this.#frame ||= requestAnimationFrame(() => {
      this.#frame = 0;
      this.#find();
    });
  };

  #find(): void {
    const { renderRoot } = this.host;
    const head = renderRoot.querySelector('.head')?.getBoundingClientRect();
    if (!head) return;
    const passed = [...renderRoot.querySelectorAll('.part')].filter(
      (part) => part.getBoundingClientRect().top <= head.bottom + NEAR,
    );
    const part = (atEnd() && this.#focused()) || passed.at(-1);
    const now = part?.id.replace('part-', '') as PartId | undefined;
    if (now === this.part) return;
    this.part = now;
    this.host.requestUpdate();
    void this.host.updateComplete.then(() => this.#show());
  }

  /** The part that the keys are in. */
  #focused(): Element | undefined {
    const root = this.host.shadowRoot;
    return root?.activeElement?.closest('.part') ?? undefined;
  }

  /** Scrolls the row of buttons alone: `scrollIntoView` would move the page under the hand. */
  #show(): void {
    const row = this.host.renderRoot.querySelector<HTMLElement>('nav');
    const tab = row?.querySelector<HTMLElement>('[aria-current]');
    if (!row || !tab) return;
    const [outer, inner] = [row.getBoundingClientRect(), tab.getBoundingClientRect()];
    row.scrollLeft += (inner.left + inner.right - outer.left - outer.right) / 2;
  }
}
