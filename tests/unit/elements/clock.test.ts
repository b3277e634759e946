import { afterEach, describe, expect, it, vi } from 'vitest';
import { clock } from '../../../src/elements/common/clock.js';

afterEach(() => {
  vi.restoreAllMocks();
});

describe('the clock of the watches', () => {
  it.each([
    { what: 'a page at work', wall: 5000, ticks: 5000, passed: 5000 },
    { what: 'a computer that slept, whose ticks stood still', wall: 65_000, ticks: 5000, passed: 65_000 },
    { what: 'a wall clock set back by an hour', wall: -3_595_000, ticks: 5000, passed: 5000 },
  ])('counts the time passed in $what', ({ wall, ticks, passed }) => {
    const [thenWall, thenTicks] = [Date.now(), performance.now()];
    vi.spyOn(Date, 'now').mockReturnValue(thenWall);
    vi.spyOn(performance, 'now').mockReturnValue(thenTicks);
    const before = clock.steady();
    vi.spyOn(Date, 'now').mockReturnValue(thenWall + wall);
    vi.spyOn(performance, 'now').mockReturnValue(thenTicks + ticks);
    expect(clock.steady() - before).toBeCloseTo(passed, 3);
  });
});
