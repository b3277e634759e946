import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { type Done, Work } from '../../../src/elements/limb-visits/work.js';

let frames: (() => void)[] = [];
beforeEach(() => {
  frames = [];
  vi.stubGlobal('document', { visibilityState: 'visible' });
  vi.stubGlobal('requestAnimationFrame', (act: () => void) => frames.push(act));
  vi.useFakeTimers({ toFake: ['setTimeout'] });
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

/** Lets the frames pass that were asked for. */
async function frame(): Promise<void> {
  for (const act of frames.splice(0)) act();
  await vi.runAllTimersAsync();
}

it('stopped and begun anew within one frame, it goes on in one loop', async () => {
  let now = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => now);
  const step = vi.fn((): Done => {
    // Longer than the slice of a frame.
    now += 50;
    return step.mock.calls.length < 3 ? 'seen' : 'done';
  });
  const show = vi.fn();
  const work = new Work(step, show);
  const first = work.run();
  work.stop();
  const second = work.run();
  for (const steps of [1, 2, 3]) {
    await frame();
    expect(step).toHaveBeenCalledTimes(steps);
    expect(show).toHaveBeenCalledTimes(steps);
  }
  await Promise.all([first, second]);
  expect(frames).toEqual([]);
});

it('stopped, it does nothing more, and can be begun again', async () => {
  const step = vi.fn((): Done => 'done');
  const work = new Work(step, () => undefined);
  const run = work.run();
  work.stop();
  await frame();
  await run;
  expect(step).not.toHaveBeenCalled();
  const again = work.run();
  await frame();
  await again;
  expect(step).toHaveBeenCalledOnce();
});
