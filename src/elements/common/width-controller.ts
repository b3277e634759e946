import type { LitElement, ReactiveController } from 'lit';

/**
 * Tracks the width of an element in px, measured before its first paint to avoid layout shift.
 *
 * Observes a zero-height ruler inside the element: the element's height depends on its width, so observing it directly
 * triggers the browser's ResizeObserver loop error.
 */
export class WidthController implements ReactiveController {
  /** Those whose host was put into a page and not measured yet. */
  static readonly #unmeasured = new Set<WidthController>();

  #width: number;
  #observer: ResizeObserver | undefined;
  #ruler: HTMLElement | undefined;

  /**
   * @param unmeasured width assumed until there is one, in px
   * @param measured called whenever it was measured, to ask the page for more while it need not be laid out again
   */
  constructor(
    private readonly host: LitElement,
    unmeasured: number,
    private readonly measured?: () => void,
  ) {
    this.#width = unmeasured;
    host.addController(this);
  }

  /**
   * Measured when it is first asked for, and with it that of every other element put into the page since: as each of them changes the
   * page, measured one by one they would have it laid out as often.
   */
  get width(): number {
    if (WidthController.#unmeasured.has(this)) {
      for (const one of WidthController.#unmeasured) {
        one.#width = one.host.clientWidth || one.#width;
        one.measured?.();
      }
      WidthController.#unmeasured.clear();
    }
    return this.#width;
  }

  hostConnected(): void {
    WidthController.#unmeasured.add(this);
    this.#observer ??= new ResizeObserver(([entry]) => {
      WidthController.#unmeasured.delete(this);
      const width = Math.round(entry?.contentRect.width ?? 0);
      if (width === 0 || width === this.#width) return;
      this.#width = width;
      this.measured?.();
      this.host.requestUpdate();
    });
    this.#ruler ??= this.#newRuler();
    this.#observer.observe(this.#ruler);
  }

  hostDisconnected(): void {
    WidthController.#unmeasured.delete(this);
    this.#observer?.disconnect();
  }

  #newRuler(): HTMLElement {
    const ruler = document.createElement('div');
    ruler.style.blockSize = '0';
    this.host.renderRoot.append(ruler);
    return ruler;
  }
}
