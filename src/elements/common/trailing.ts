import type { LitElement, ReactiveController } from 'lit';

/** Resolves after the current frame has been painted, or soon if the page is hidden. */
export function afterPaint(): Promise<void> {
  return new Promise((resolve) => {
    if (document.visibilityState === 'hidden') setTimeout(resolve);
    else requestAnimationFrame(() => setTimeout(resolve));
  });
}

/** A value that follows another one frame later, so that expensive work does not delay the paint. */
export class TrailingController<T> implements ReactiveController {
  value: T;
  /** Set while the value is behind; done once the host is about to show it. */
  settled: Promise<void> | undefined;

  /** @param current what is followed; the very same value is no change */
  constructor(
    private readonly host: LitElement,
    private readonly current: () => T,
  ) {
    this.value = current();
    host.addController(this);
  }

  hostUpdate(): void {
    // What is painted first is whole.
    if (!this.host.hasUpdated) this.value = this.current();
    else if (this.value !== this.current()) this.settled ??= this.#follow();
  }

  async #follow(): Promise<void> {
    await afterPaint();
    this.settled = undefined;
    this.value = this.current();
    this.host.requestUpdate();
  }
}
