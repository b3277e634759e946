import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { type Done, Work } from '../../../src/elements/limb-visits/work.js';

let frames: (() => void)[] = [];
beforeEach(() => {
  frames = [];
  vi.stubGlobal('document', { visibilityState: 'visible' });
  vi.stubGlobal('requestAnimationFrame', (act: () => void) => frames.push(act));
  vi.useFakeTimers({ toFake: ['setTimeout', 'performance'] });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** Lets the frames pass that were asked for. */
async function frame(): Promise<void> {
  for (const act of frames.splice(0)) act();
  await vi.runAllTimersAsync();
}

it('stopped and begun anew within one frame, it goes on once', async () => {
  let left = 3;
  const step = vi.fn((): Done => (--left > 0 ? 'seen' : 'done'));
  const show = vi.fn();
  const work = new Work(step, show);
  const first = work.run();
  work.stop();
  const second = work.run();
  expect(frames).toHaveLength(2);
  while (frames.length) await frame();
  await Promise.all([first, second]);
  expect(step).toHaveBeenCalledTimes(3);
  expect(show).toHaveBeenCalledTimes(1);
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
