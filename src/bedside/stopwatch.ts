import * as z from 'zod/mini';
import { parseWith, type Parsed } from '../examination/index.js';

/*
 * A stopwatch made of moments, not of ticks: what it shows is worked out from the wall clock whenever it is looked at,
 * so that it keeps true time while the page sleeps, and it goes on after a reload from its plain JSON.
 * All times are in milliseconds; `now` is the wall clock as `Date.now()` gives it.
 */

const time = z.number().check(z.minimum(0));
const lapSchema = z.strictObject({ label: z.optional(z.string()), at: time });

export const stopwatchSchema = z.strictObject({
  /** Time run before the present stretch. */
  elapsed: time,
  /** When the present stretch began; missing while it stands still. */
  startedAt: z.optional(time),
  laps: z.array(lapSchema),
  /** From which time it counts down; missing when it counts up. */
  countdown: z.optional(time),
});
export type Stopwatch = z.infer<typeof stopwatchSchema>;
export type Lap = z.infer<typeof lapSchema>;

/** A stopwatch that has not run. */
export function newStopwatch(countdown?: number): Stopwatch {
  return { elapsed: 0, laps: [], ...(countdown !== undefined && { countdown }) };
}

export function isRunning(watch: Stopwatch): boolean {
  return watch.startedAt !== undefined;
}

/** The time run by `now`. A wall clock set back never takes away what had been counted; a countdown ends at its length. */
export function elapsedAt(watch: Stopwatch, now: number): number {
  const running = watch.startedAt === undefined ? 0 : Math.max(0, now - watch.startedAt);
  const total = watch.elapsed + running;
  return watch.countdown === undefined ? total : Math.min(total, watch.countdown);
}

/** What a countdown has left; `undefined` when it counts up. */
export function remainingAt(watch: Stopwatch, now: number): number | undefined {
  return watch.countdown === undefined ? undefined : watch.countdown - elapsedAt(watch, now);
}

/** Whether a countdown has run out by `now`. */
export function isOver(watch: Stopwatch, now: number): boolean {
  return remainingAt(watch, now) === 0;
}

/** Starts or goes on. Already running, or a countdown that has run out, changes nothing. */
export function start(watch: Stopwatch, now: number): Stopwatch {
  return isRunning(watch) || isOver(watch, now) ? watch : { ...watch, startedAt: now };
}

/** Stops and keeps the time. Standing still changes nothing. */
export function stop(watch: Stopwatch, now: number): Stopwatch {
  if (!isRunning(watch)) return watch;
  const { startedAt: _, ...rest } = watch;
  return { ...rest, elapsed: elapsedAt(watch, now) };
}

/** One key for both: starts when standing, stops when running. */
export function toggle(watch: Stopwatch, now: number): Stopwatch {
  return isRunning(watch) ? stop(watch, now) : start(watch, now);
}

/** Keeps the time run so far as a lap; the watch runs on. */
export function lap(watch: Stopwatch, now: number, label?: string): Stopwatch {
  const entry: Lap = { at: elapsedAt(watch, now), ...(label !== undefined && { label }) };
  return { ...watch, laps: [...watch.laps, entry] };
}

/**
 * Puts the time right by hand; a running watch runs on from there.
 * @throws RangeError for a time that is negative or no number
 */
export function correct(watch: Stopwatch, elapsed: number, now: number): Stopwatch {
  if (!Number.isFinite(elapsed) || elapsed < 0) {
    throw new RangeError(`a stopwatch needs a time of 0 ms or more, not ${elapsed}`);
  }
  const capped = watch.countdown === undefined ? elapsed : Math.min(elapsed, watch.countdown);
  return { ...watch, elapsed: capped, ...(isRunning(watch) && { startedAt: now }) };
}

/** Back to nothing, with the countdown kept. */
export function reset(watch: Stopwatch): Stopwatch {
  return newStopwatch(watch.countdown);
}

/** Reads a stopwatch kept as text over a reload. Never throws. */
export function parseStopwatch(text: string): Parsed<Stopwatch> {
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch {
    input = text;
  }
  return parseWith(stopwatchSchema, input);
}

/** Which half of a beat of `seconds` a time falls in, for a paced open-and-close. */
export function beatAt(elapsed: number, seconds: number): 'open' | 'close' {
  const cycle = seconds * 1000;
  return elapsed % cycle < cycle / 2 ? 'close' : 'open';
}
