import type { LitElement, ReactiveController } from 'lit';

/** Resolves after the current frame has been painted, or soon if the page is hidden. */
export function afterPaint(): Promise<void> {
  return new Promise((resolve) => {
    if (document.visibilityState === 'hidden') setTimeout(resolve);
    else requestAnimationFrame(() => setTimeout(resolve));
  });
}

/** So long nothing may change before a value follows, in ms; a hand that records several sites needs more for each. */
const PAUSE = 100;
/** The longest a value stays behind while changes keep coming, in ms. */
const LONGEST = 1000;

/** Calls back when the browser has nothing better to do. */
export function whenIdle(act: () => void): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(act);
  else setTimeout(act, PAUSE);
}

/**
 * A value that follows another once that has been painted and rests, so that expensive work delays neither a paint nor the next act.
 */
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
    let seen: T;
    let waited = 0;
    do {
      seen = this.current();
      await afterPaint();
      await new Promise((resolve) => setTimeout(resolve, PAUSE));
      waited += PAUSE;
    } while (seen !== this.current() && waited < LONGEST);
    this.settled = undefined;
    this.value = this.current();
    this.host.requestUpdate();
  }
}
