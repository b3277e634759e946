import type { LitElement, ReactiveController } from 'lit';

/** When the frame that is due now has been painted; in a page that is not shown, soon. */
export function afterPaint(): Promise<void> {
  return new Promise((resolve) => {
    if (document.visibilityState === 'hidden') setTimeout(resolve);
    else requestAnimationFrame(() => setTimeout(resolve));
  });
}

/** Holds a value that follows another one painted frame behind, so that what is slow to make does not hold up what is quick. */
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
