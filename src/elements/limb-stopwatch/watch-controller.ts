import type { ReactiveController, ReactiveControllerHost } from 'lit';
import {
  correct,
  elapsedAt,
  isOver,
  isRunning,
  lap,
  newStopwatch,
  parseStopwatch,
  remainingAt,
  reset,
  start,
  stop,
  type Stopwatch,
  toggle,
} from '../../bedside/index.js';
import { clock } from '../common/clock.js';

/** Update interval while a watch runs, in ms. */
const TICK = 100;

/**
 * A stopwatch as a controller: updates its host while running, stores the watch under a key across reloads, and
 * reports the end of a countdown.
 */
export class WatchController implements ReactiveController {
  #watch: Stopwatch;
  #timer: ReturnType<typeof setInterval> | undefined;
  #key: string | undefined;

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly acts: { readonly over?: () => void; readonly tick?: (elapsed: number) => void } = {},
    countdown?: number,
  ) {
    this.#watch = newStopwatch(countdown);
    host.addController(this);
  }

  get watch(): Stopwatch {
    return this.#watch;
  }
  get running(): boolean {
    return isRunning(this.#watch);
  }
  get over(): boolean {
    return isOver(this.#watch, clock.steady());
  }
  /** Time run, in ms. */
  get elapsed(): number {
    return elapsedAt(this.#watch, clock.steady());
  }
  /** Time left of a countdown, in ms. */
  get remaining(): number | undefined {
    return remainingAt(this.#watch, clock.steady());
  }
  /** Time run, in seconds to one decimal, as it is recorded. */
  get seconds(): number {
    return Math.round(this.elapsed / 100) / 10;
  }

  /**
   * Where the watch is kept over a reload. Taking up a key takes up what was kept there; under another key than before nothing of
   * the watch before goes on, since the key stands for a patient's encounter.
   */
  set key(key: string | undefined) {
    if (key === this.#key) return;
    const before = this.#key;
    this.#key = key;
    const kept = key === undefined ? null : this.#kept(key);
    const parsed = kept ? parseStopwatch(kept) : undefined;
    if (parsed?.ok) this.#set(parsed.value);
    else if (before !== undefined) this.reset();
  }

  hostConnected(): void {
    this.#retick();
  }

  hostDisconnected(): void {
    clearInterval(this.#timer);
    this.#timer = undefined;
  }

  /** Has no part in its host any more. What is kept over a reload stays kept. */
  leave(): void {
    this.host.removeController(this);
    this.hostDisconnected();
  }

  start(): void {
    this.#set(start(this.#watch, clock.steady()));
  }
  stop(): void {
    this.#set(stop(this.#watch, clock.steady()));
  }
  toggle(): void {
    this.#set(toggle(this.#watch, clock.steady()));
  }
  lap(label?: string): void {
    this.#set(lap(this.#watch, clock.steady(), label));
  }
  reset(countdown: number | undefined = this.#watch.countdown): void {
    this.#set(countdown === undefined ? reset(newStopwatch()) : newStopwatch(countdown));
  }
  correct(seconds: number): void {
    this.#set(correct(this.#watch, seconds * 1000, clock.steady()));
  }

  #kept(key: string): string | null {
    try {
      return sessionStorage.getItem(key);
    } catch {
      return null;
    }
  }

  #keep(key: string, text: string | undefined): void {
    try {
      if (text === undefined) sessionStorage.removeItem(key);
      else sessionStorage.setItem(key, text);
    } catch {
      // Storage may be barred or full: the watch then does not survive a reload; everything else works.
    }
  }

  #set(watch: Stopwatch): void {
    if (watch === this.#watch) return;
    this.#watch = watch;
    const untouched = !isRunning(watch) && watch.elapsed === 0 && watch.laps.length === 0;
    if (this.#key !== undefined) this.#keep(this.#key, untouched ? undefined : JSON.stringify(watch));
    this.#retick();
    this.host.requestUpdate();
  }

  #retick(): void {
    clearInterval(this.#timer);
    this.#timer = this.running ? setInterval(() => this.#tick(), TICK) : undefined;
    if (this.running) this.#tick();
  }

  #tick(): void {
    this.acts.tick?.(this.elapsed);
    this.host.requestUpdate();
    if (!this.running || !this.over) return;
    this.stop();
    this.acts.over?.();
  }
}

/** Milliseconds as minutes, seconds and, if asked, tenths: `0:23.4`. */
export function clockText(ms: number, tenths = false): string {
  const all = tenths ? Math.floor(ms / 100) / 10 : Math.floor(ms / 1000);
  const minutes = Math.floor(all / 60);
  const seconds = all - minutes * 60;
  return `${minutes}:${tenths ? seconds.toFixed(1).padStart(4, '0') : String(seconds).padStart(2, '0')}`;
}
