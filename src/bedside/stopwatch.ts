import * as z from 'zod/mini';
import { parseWith, type Parsed } from '../examination/index.js';

/*
 * A stopwatch that stores points in time instead of counting ticks: the time shown is computed from the wall clock,
 * so it stays correct while the page sleeps and can be restored from its JSON after a reload.
 * All times are in milliseconds; `now` is the wall clock as `Date.now()` gives it.
 */

const time = z.number().check(z.minimum(0));
const lapSchema = z.strictObject({ label: z.optional(z.string()), at: time });

export const stopwatchSchema = z.strictObject({
  /** Time accumulated before the current run. */
  elapsed: time,
  /** Start of the current run; missing while stopped. */
  startedAt: z.optional(time),
  laps: z.array(lapSchema),
  /** Length of the countdown; missing when it counts up. */
  countdown: z.optional(time),
});
export type Stopwatch = z.infer<typeof stopwatchSchema>;
export type Lap = z.infer<typeof lapSchema>;

/** A stopwatch at zero. */
export function newStopwatch(countdown?: number): Stopwatch {
  return { elapsed: 0, laps: [], ...(countdown !== undefined && { countdown }) };
}

export function isRunning(watch: Stopwatch): boolean {
  return watch.startedAt !== undefined;
}

/** Elapsed time at `now`. Setting the wall clock back never reduces it; a countdown stops at its length. */
export function elapsedAt(watch: Stopwatch, now: number): number {
  const running = watch.startedAt === undefined ? 0 : Math.max(0, now - watch.startedAt);
  const total = watch.elapsed + running;
  return watch.countdown === undefined ? total : Math.min(total, watch.countdown);
}

/** Remaining time of a countdown; `undefined` when it counts up. */
export function remainingAt(watch: Stopwatch, now: number): number | undefined {
  return watch.countdown === undefined ? undefined : watch.countdown - elapsedAt(watch, now);
}

/** Whether a countdown has run out by `now`. */
export function isOver(watch: Stopwatch, now: number): boolean {
  return remainingAt(watch, now) === 0;
}

/** Starts or resumes. No effect while running or after a countdown has run out. */
export function start(watch: Stopwatch, now: number): Stopwatch {
  return isRunning(watch) || isOver(watch, now) ? watch : { ...watch, startedAt: now };
}

/** Stops and keeps the time. No effect while stopped. */
export function stop(watch: Stopwatch, now: number): Stopwatch {
  if (!isRunning(watch)) return watch;
  const { startedAt: _, ...rest } = watch;
  return { ...rest, elapsed: elapsedAt(watch, now) };
}

/** Starts when stopped, stops when running. */
export function toggle(watch: Stopwatch, now: number): Stopwatch {
  return isRunning(watch) ? stop(watch, now) : start(watch, now);
}

/** Adds the elapsed time as a lap; the watch keeps running. */
export function lap(watch: Stopwatch, now: number, label?: string): Stopwatch {
  const entry: Lap = { at: elapsedAt(watch, now), ...(label !== undefined && { label }) };
  return { ...watch, laps: [...watch.laps, entry] };
}

/**
 * Sets the elapsed time; a running watch continues from there.
 * @throws RangeError for a time that is negative or no number
 */
export function correct(watch: Stopwatch, elapsed: number, now: number): Stopwatch {
  if (!Number.isFinite(elapsed) || elapsed < 0) {
    throw new RangeError(`a stopwatch needs a time of 0 ms or more, not ${elapsed}`);
  }
  const capped = watch.countdown === undefined ? elapsed : Math.min(elapsed, watch.countdown);
  return { ...watch, elapsed: capped, ...(isRunning(watch) && { startedAt: now }) };
}

/** Resets to zero; keeps the countdown. */
export function reset(watch: Stopwatch): Stopwatch {
  return newStopwatch(watch.countdown);
}

/** Parses a stopwatch stored as text. Never throws. */
export function parseStopwatch(text: string): Parsed<Stopwatch> {
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch {
    input = text;
  }
  return parseWith(stopwatchSchema, input);
}

/** Half of a cycle of `seconds` that a time falls into, for paced opening and closing. */
export function beatAt(elapsed: number, seconds: number): 'open' | 'close' {
  const cycle = seconds * 1000;
  return elapsed % cycle < cycle / 2 ? 'close' : 'open';
}
