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

/** The least of an idle moment in which work is begun, in ms: what is left of a shorter one belongs to the next frame. */
const ENOUGH = 8;

/**
 * Resolves when the browser has nothing better to do for a while; soon where it does not tell.
 * @param within at most so long after, in ms; however long where not given
 */
function idle(within = Infinity): Promise<void> {
  const latest = performance.now() + within;
  return new Promise((resolve) => {
    const ask = (): void => {
      const left = Math.max(0, latest - performance.now());
      requestIdleCallback(
        (moment) => {
          if (moment.didTimeout || moment.timeRemaining() >= ENOUGH || performance.now() >= latest) resolve();
          else setTimeout(ask, ENOUGH);
        },
        left === Infinity ? {} : { timeout: left },
      );
    };
    if (typeof requestIdleCallback === 'function') ask();
    else setTimeout(resolve);
  });
}

/**
 * Does work part by part, each when the browser has nothing better to do: a hand waits for the end of one part at most.
 * @param wanted asked before each part
 * @param within how long each part may be put off, in ms; what nobody waits for is put off as long as acts follow each other
 * @returns whether all was done
 */
export async function inParts(
  work: Iterable<unknown>,
  wanted: () => boolean = () => true,
  within?: number,
): Promise<boolean> {
  const parts = work[Symbol.iterator]();
  do {
    await idle(within);
    if (!wanted()) return false;
  } while (!parts.next().done);
  return true;
}

/**
 * A value that follows another once that has been painted and rests, so that expensive work delays neither a paint nor the next act.
 * It comes in two steps, a frame apart, since drawing and telling it at once would take longer than a frame.
 */
export class TrailingController<T> implements ReactiveController {
  /** What is drawn. */
  drawn: T;
  /** What is told in words; that of `drawn`, or the one before. */
  told: T;
  /** Set while the value is behind; done once the host is about to show it. */
  settled: Promise<void> | undefined;
  /** Another one each time that the value has caught up meanwhile. */
  #turn = 0;

  /**
   * @param current what is followed; the very same value is no change
   * @param prepare works out in parts what showing a value will need
   */
  constructor(
    private readonly host: LitElement,
    private readonly current: () => T,
    private readonly prepare: (value: T) => Iterable<unknown> = () => [],
  ) {
    this.drawn = this.told = current();
    host.addController(this);
  }

  /** Follows at once, where the value before must not stand a frame longer. */
  catchUp(): void {
    this.#turn++;
    this.drawn = this.told = this.current();
  }

  hostUpdate(): void {
    // What is painted first is whole.
    if (!this.host.hasUpdated) this.catchUp();
    else if (this.drawn !== this.current()) this.settled ??= this.#follow();
  }

  async #follow(): Promise<void> {
    let seen: T;
    let turn: number;
    let waited = 0;
    const standing = (): boolean => turn === this.#turn;
    const wanted = (): boolean => standing() && (seen === this.current() || waited >= LONGEST);
    do {
      seen = this.current();
      turn = this.#turn;
      await afterPaint();
      await new Promise((resolve) => setTimeout(resolve, PAUSE));
      waited += PAUSE;
    } while (!wanted() || !(await inParts(this.prepare(seen), wanted, PAUSE)));
    this.drawn = seen;
    this.host.requestUpdate();
    await afterPaint();
    await idle(PAUSE);
    if (standing()) this.told = seen;
    this.settled = undefined;
    this.host.requestUpdate();
  }
}
