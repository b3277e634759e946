import type { LitElement, ReactiveController } from 'lit';

function isSticky(element: Element): boolean {
  return getComputedStyle(element).position === 'sticky';
}

/** The first element after another, in its tree or around it, that scrolls with the page. */
function contentAfter(element: Element): Element | undefined {
  for (let from: Element | null = element; from; from = from.parentElement) {
    for (let next = from.nextElementSibling; next; next = next.nextElementSibling)
      if (next.getBoundingClientRect().height > 0 && !isSticky(next)) return next;
  }
  return undefined;
}

/** What scrolls an element: its closest scroll container, through shadow trees, else the page. */
function scrollerOf(element: Element): Element | null {
  for (
    let node: Node | null = element;
    node;
    node = node instanceof ShadowRoot ? node.host : ((node as Element).assignedSlot ?? node.parentNode)
  ) {
    if (!(node instanceof HTMLElement) || node === document.body || node === document.documentElement)
      continue;
    if (/auto|scroll/.test(getComputedStyle(node).overflowY) && node.scrollHeight > node.clientHeight)
      return node;
  }
  return document.scrollingElement;
}

/** Where what lies below a bar stands on the screen. */
interface Spot {
  readonly content: Element;
  readonly top: number;
}

/**
 * Keeps everything below a bar where it is on the screen while the bar comes, goes or grows: a site that moved under the hand
 * would be missed by the next tap. It scrolls the page by as much.
 */
export class HoldStill implements ReactiveController {
  #before: Spot | undefined;

  /** @param wanted whether the update in progress may move nothing */
  constructor(
    private readonly host: LitElement,
    private readonly wanted: () => boolean,
  ) {
    host.addController(this);
  }

  /** Measures ahead of an update that will move something, where the page need not be laid out for it yet. */
  note(): void {
    this.#before ??= this.#spot();
  }

  hostUpdate(): void {
    if (!this.host.hasUpdated || !this.wanted()) this.#before = undefined;
    else this.#before ??= this.#spot();
  }

  hostUpdated(): void {
    const { content, top } = this.#before ?? {};
    this.#before = undefined;
    if (!content || top === undefined) return;
    const by = content.getBoundingClientRect().top - top;
    if (Math.abs(by) >= 0.5) scrollerOf(this.host)?.scrollBy({ top: by, behavior: 'instant' });
  }

  #spot(): Spot | undefined {
    const content = contentAfter(this.host);
    const box = content?.getBoundingClientRect();
    return content && box && box.top < innerHeight && box.bottom > 0 ? { content, top: box.top } : undefined;
  }
}
