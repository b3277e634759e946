import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import * as fc from 'fast-check';
import {
  BEAT_SECONDS,
  beatAt,
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
  toggle,
} from '../../../src/bedside/index.js';

describe('stopwatch on a faked clock', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    vi.setSystemTime(new Date('2026-03-01T09:00:00Z'));
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('keeps true time over two minutes of sleep in which no timer fires', () => {
    let ticks = 0;
    const ticking = setInterval(() => (ticks += 1), 100);
    const watch = start(newStopwatch(), Date.now());
    vi.advanceTimersByTime(3000);
    const ticksAwake = ticks;
    // The page sleeps: the wall clock goes on, timers do not.
    vi.setSystemTime(Date.now() + 120_000);
    expect(ticks).toBe(ticksAwake);
    expect(elapsedAt(watch, Date.now())).toBe(123_000);
    expect(elapsedAt(stop(watch, Date.now()), Date.now() + 5000)).toBe(123_000);
    clearInterval(ticking);
  });

  it('runs on over a reload, from its own text', () => {
    const text = JSON.stringify(lap(start(newStopwatch(), Date.now()), Date.now() + 1000, 'left'));
    vi.setSystemTime(Date.now() + 60_000);
    const restored = parseStopwatch(text);
    expect(restored.ok && elapsedAt(restored.value, Date.now())).toBe(60_000);
    expect(restored.ok && restored.value.laps).toEqual([{ at: 1000, label: 'left' }]);
  });

  it('a countdown that ran out in sleep stands at nothing and says that it is over', () => {
    const watch = start(newStopwatch(180_000), Date.now());
    vi.setSystemTime(Date.now() + 120_000);
    expect([remainingAt(watch, Date.now()), isOver(watch, Date.now())]).toEqual([60_000, false]);
    vi.setSystemTime(Date.now() + 120_000);
    expect([remainingAt(watch, Date.now()), isOver(watch, Date.now())]).toEqual([0, true]);
    expect(elapsedAt(watch, Date.now())).toBe(180_000);
  });
});

describe('stopwatch', () => {
  it('starts, stops and goes on with one key', () => {
    const once = toggle(newStopwatch(), 1000);
    const stopped = toggle(once, 4000);
    const again = toggle(stopped, 10_000);
    expect(isRunning(once)).toBe(true);
    expect(elapsedAt(stopped, 9000)).toBe(3000);
    expect(elapsedAt(again, 12_000)).toBe(5000);
  });

  it('starting twice or stopping twice changes nothing', () => {
    const running = start(newStopwatch(), 1000);
    expect(start(running, 2000)).toBe(running);
    const stopped = stop(running, 3000);
    expect(stop(stopped, 4000)).toBe(stopped);
  });

  it('takes laps while it runs on', () => {
    const watch = lap(lap(start(newStopwatch(), 0), 2000), 5000, 'pale');
    expect(watch.laps).toEqual([{ at: 2000 }, { at: 5000, label: 'pale' }]);
    expect(elapsedAt(watch, 6000)).toBe(6000);
  });

  it('is corrected by hand, running or not', () => {
    const running = correct(start(newStopwatch(), 0), 10_000, 4000);
    expect(elapsedAt(running, 6000)).toBe(12_000);
    expect(elapsedAt(correct(stop(running, 6000), 7000, 6000), 99_000)).toBe(7000);
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])(
    'refuses to be corrected to %d, and names it',
    (time) => {
      expect(() => correct(newStopwatch(), time, 0)).toThrow(`not ${time}`);
    },
  );

  it('never runs backward when the wall clock is set back', () => {
    const watch = start(newStopwatch(), 10_000);
    expect(elapsedAt(watch, 4000)).toBe(0);
  });

  it('a countdown cannot be started again once it is over, but can after a reset', () => {
    const over = stop(start(newStopwatch(1000), 0), 5000);
    expect(start(over, 6000)).toBe(over);
    expect(isRunning(start(reset(over), 6000))).toBe(true);
  });

  it.each(['', '{', '{"elapsed":-1,"laps":[]}', '{"elapsed":0}', '[]', 'null'])(
    'refuses the text %j',
    (text) => {
      expect(parseStopwatch(text).ok).toBe(false);
    },
  );

  it('counts exactly the time between starts and stops', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(100_000), { minLength: 1, maxLength: 20 }), (gaps) => {
        let now = 0;
        let watch = newStopwatch();
        let expected = 0;
        gaps.forEach((gap, i) => {
          if (i % 2 === 1) expected += gap;
          now += gap;
          watch = toggle(watch, now);
        });
        expect(elapsedAt(stop(watch, now), now)).toBe(expected);
      }),
    );
  });

  it('beats open and close within each cycle of two seconds', () => {
    const beats = [0, 999, 1000, 1999, 2000].map((ms) => beatAt(ms, BEAT_SECONDS.value));
    expect(beats).toEqual(['close', 'close', 'open', 'open', 'close']);
  });
});
