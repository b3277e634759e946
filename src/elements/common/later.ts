import type { LitElement, ReactiveController } from 'lit';
import { afterPaint } from './trailing.js';

/** A module that comes in a chunk of its own, fetched once for all elements of a page. */
export class Later<T> {
  /** What the module exports, once it is there. */
  part: T | undefined;
  #loading: Promise<void> | undefined;

  /** @param fetch imports it */
  constructor(private readonly fetch: () => Promise<T>) {}

  /** What is there already. */
  static ready<T>(part: T): Later<T> {
    const later = new Later<T>(() => Promise.resolve(part) as Promise<T>);
    later.part = part;
    return later;
  }

  /** Settles when it is there, and when it cannot be had: then the next call tries again. */
  load(): Promise<void> {
    this.#loading ??= this.fetch().then(
      (part) => void (this.part = part as T),
      () => (this.#loading = undefined),
    );
    return this.#loading;
  }
}

/**
 * Fetches what an element needs later right after its first paint, or before it where it shows something, so that nothing
 * moves. What could not be had is tried again when it is next to be shown.
 */
export class LaterController implements ReactiveController {
  #begun = false;
  #awaited = false;

  /**
   * @param shown whether it shows something now
   * @param failed called when it is to be shown and cannot be had
   */
  constructor(
    private readonly host: LitElement,
    private readonly later: Later<unknown>,
    private readonly shown: () => boolean,
    private readonly failed?: () => void,
  ) {
    host.addController(this);
  }

  /** Set while it is to be shown and not there yet. */
  get missing(): Promise<void> | undefined {
    return this.later.part === undefined && this.shown() ? this.later.load() : undefined;
  }

  hostUpdated(): void {
    if (this.later.part !== undefined) return;
    if (this.shown()) void this.#await();
    else if (!this.#begun) void afterPaint().then(() => this.#await());
    this.#begun = true;
  }

  async #await(): Promise<void> {
    if (this.#awaited) return;
    this.#awaited = true;
    await this.later.load();
    this.#awaited = false;
    if (this.later.part !== undefined) this.host.requestUpdate();
    else if (this.shown()) this.failed?.();
  }
}
