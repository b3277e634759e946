import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Keeps the width of an element in px, measured before its first paint so that nothing moves afterwards. */
export class WidthController implements ReactiveController {
  width: number;
  #observer: ResizeObserver | undefined;

  /** @param unmeasured width assumed until there is one, in px */
  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
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
    this.#observer.observe(this.host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }
}
