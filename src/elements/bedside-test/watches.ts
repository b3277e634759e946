import type { ReactiveControllerHost } from 'lit';
import { WatchController } from '../limb-stopwatch/watch-controller.js';

/** What a watch of a test is for. */
export interface WatchOptions {
  /** Length of a countdown, in ms; without it the watch counts up. */
  readonly countdown?: number;
  readonly over?: () => void;
  readonly bothSides?: boolean;
}

/** The watches of a test: one for each side and purpose, made when it is first asked for. */
export class Watches {
  readonly #all = new Map<string, WatchController>();
  readonly #overs = new Map<string, () => void>();

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly tick: (elapsed: number) => void,
  ) {}

  /**
   * @param id of the watch within the record
   * @param encounter under which it is kept over a reload; nothing is kept without one
   */
  at(id: string, encounter: string | undefined, { countdown, over }: WatchOptions): WatchController {
    let watch = this.#all.get(id);
    if (!watch) {
      watch = new WatchController(
        this.host,
        { over: () => this.#overs.get(id)?.(), tick: this.tick },
        countdown,
      );
      this.#all.set(id, watch);
    }
    watch.key = encounter && `bedside-test:${encounter}:${id}`;
    // The final action must come from the latest render, which has the latest record.
    if (over) this.#overs.set(id, over);
    return watch;
  }

  /** Sets all to zero and keeps none of them: what ran belongs to another encounter. */
  reset(): void {
    for (const watch of this.#all.values()) watch.reset();
  }

  /** Forgets all: another test has watches of its own. None goes on, or its end would be written into that test. */
  forget(): void {
    for (const watch of this.#all.values()) watch.leave();
    this.#all.clear();
    this.#overs.clear();
  }
}
