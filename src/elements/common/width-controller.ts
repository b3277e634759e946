import type { LitElement, ReactiveController } from 'lit';

/**
 * Tracks the width of an element in px, measured before its first paint to avoid layout shift.
 *
 * Observes a zero-height ruler inside the element: the element's height depends on its width, so observing it directly
 * triggers the browser's ResizeObserver loop error.
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
