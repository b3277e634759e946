import type { LitElement, ReactiveController } from 'lit';

/**
 * Keeps the width of an element in px, measured before its first paint so that nothing moves afterwards.
 *
 * What is observed is a ruler without height inside it: the element itself changes its height with its width, and an observer
 * of both at once makes the browser report a loop.
 */
export class WidthController implements ReactiveController {
  width: number;
  #observer: ResizeObserver | undefined;
  #ruler: HTMLElement | undefined;

  /** @param unmeasured width assumed until there is one, in px */
  constructor(
    private readonly host: LitElement,
    unmeasured: number,
  ) {
    this.width = unmeasured;
    host.addController(this);
  }

  hostConnected(): void {
    this.width = this.host.clientWidth || this.width;
    this.#observer ??= new ResizeObserver(([entry]) => {
      const width = Math.round(entry?.contentRect.width ?? 0);
      if (width === 0 || width === this.width) return;
      this.width = width;
      this.host.requestUpdate();
    });
    this.#ruler ??= this.#newRuler();
    this.#observer.observe(this.#ruler);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  #newRuler(): HTMLElement {
    const ruler = document.createElement('div');
    ruler.style.blockSize = '0';
    this.host.renderRoot.append(ruler);
    return ruler;
  }
}
