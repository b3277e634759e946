import type { LitElement, ReactiveController } from 'lit';
import { afterPaint } from './trailing.js';

/** A lazily loaded module, fetched once per page. */
export class Later<T> {
  /** The module's exports once loaded. */
  part: T | undefined;
  #loading: Promise<void> | undefined;

  /** @param fetch imports it */
  constructor(private readonly fetch: () => Promise<T>) {}

  /** Wraps a module that is already loaded. */
  static ready<T>(part: T): Later<T> {
    const later = new Later<T>(() => Promise.resolve(part) as Promise<T>);
    later.part = part;
    return later;
  }

  /** Resolves when loaded, or when loading failed; the next call then retries. */
  load(): Promise<void> {
    this.#loading ??= this.fetch().then(
      (part) => void (this.part = part as T),
      () => (this.#loading = undefined),
    );
    return this.#loading;
  }
}

/** Puts a first update off until what it would show is there, so that nothing moves afterwards; every other one follows at once. */
export function updateAfter(
  { hasUpdated }: LitElement,
  missing: Promise<unknown> | undefined,
  update: () => void | Promise<unknown>,
): void | Promise<unknown> {
  return missing && !hasUpdated ? missing.then(update) : update();
}

/**
 * Loads an element's deferred module right after its first paint, or before it if the module has something to show, to avoid
 * layout shift. A failed load is retried when the module is next needed.
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
