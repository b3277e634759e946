/* global bench */
// How a patient's visits keep up from two to ten thousand: first paint, maps in sight, every number read, keys, memory while all of
// them are scrolled through. Beside each time stands the main thread's own, which no other work on the machine makes longer.
import { median, metrics, must, open, quantile, rounded, usedHeap } from './measure.mjs';

const COUNTS = [2, 100, 1000, 10_000];
const KEYS = ['ArrowLeft', 'ArrowLeft', 'PageUp', 'ArrowRight', 'Home', 'ArrowRight', 'PageDown', 'End'];
const ROUNDS_OF_KEYS = 2;
/** Places of the strip that are scrolled to, one after the other. */
const PLACES = 40;
/** From so many on, what they hold in memory is worth a look. */
const MANY = 1000;

const cpuMs = async ({ cdp }) => (await metrics(cdp)).TaskDuration * 1000;

/** Keys one after another in the strip, each waited for until painted; what one takes of the main thread. */
async function keys(opened) {
  const { tab } = opened;
  const samples = [];
  await tab.evaluate(() => bench.focusForKeys());
  const before = await cpuMs(opened);
  for (let round = 0; round < ROUNDS_OF_KEYS; round++)
    for (const key of KEYS) {
      const was = await tab.evaluate(() => bench.state());
      await tab.evaluate(() => bench.arm('keydown'));
      await tab.keyboard.press(key);
      samples.push(await tab.evaluate(() => bench.latency()));
      must((await tab.evaluate((at) => bench.moved(at), was)) !== was, `visits, ${key}`);
    }
  return { samples, keyCpuMs: ((await cpuMs(opened)) - before) / samples.length };
}

/** What is in use once all is read and a part was seen, and after the whole strip was scrolled through to and fro. */
async function memory({ tab, cdp }) {
  const through = (from, to) => tab.evaluate((...way) => bench.scrollThrough(...way), from, to, PLACES);
  await through(0, 0.1);
  const before = await usedHeap(cdp);
  await through(0, 1);
  await through(1, 0);
  const after = await usedHeap(cdp);
  return {
    heapBeforeKb: Math.round(before.kB),
    heapAfterKb: Math.round(after.kB),
    elements: await tab.evaluate(() => bench.elements()),
    listenerGrowth: after.listeners - before.listeners,
  };
}

async function once(browser, origin, count, withMemory) {
  const opened = await open(browser, origin, `visits?count=${count}`, false);
  const { tab, faults, paintCpuMs } = opened;
  const painted = await cpuMs(opened);
  const paintMs = await tab.evaluate(() => bench.paintMs);
  await tab.waitForFunction(() => bench.isWhole(), { polling: 100, timeout: 0 });
  const wholeCpuMs = paintCpuMs + (await cpuMs(opened)) - painted;
  const pressed = count > 2 ? await keys(opened) : { samples: [] };
  const held = withMemory ? await memory(opened) : {};
  must(faults.length === 0, `visits: ${faults.join('; ')}`);
  await opened.close();
  return { paintMs, paintCpuMs, wholeCpuMs, ...pressed, held };
}

/** The figures of every count; times are medians of the rounds. */
export async function visits(browser, origin, rounds) {
  const results = [];
  for (const count of COUNTS) {
    const runs = [];
    for (let round = 0; round < rounds; round++)
      runs.push(await once(browser, origin, count, round === 0 && count >= MANY));
    const of = (key) => rounded(median(runs.map((run) => run[key])));
    const samples = runs.flatMap((run) => run.samples);
    results.push({
      count,
      paintMs: of('paintMs'),
      paintCpuMs: of('paintCpuMs'),
      wholeCpuMs: of('wholeCpuMs'),
      ...(samples.length && {
        keyP50Ms: rounded(quantile(samples, 0.5)),
        keyP95Ms: rounded(quantile(samples, 0.95)),
        keyCpuMs: of('keyCpuMs'),
      }),
      ...runs[0].held,
    });
  }
  return results;
}

const ROWS = [
  ['nothing to painted, ms', 'paintMs'],
  ['  main thread time of that, ms', 'paintCpuMs'],
  ['  until all is drawn and read, ms', 'wholeCpuMs'],
  ['key to painted, p50, ms', 'keyP50Ms'],
  ['  p95', 'keyP95Ms'],
  ['  main thread a key, ms', 'keyCpuMs'],
  ['heap once all is read, kB', 'heapBeforeKb'],
  ['  after scrolling to and fro', 'heapAfterKb'],
  ['  listeners more', 'listenerGrowth'],
  ['elements in it', 'elements'],
];

export function printVisits(results) {
  const line = (title, cells) =>
    console.log(title.padEnd(44) + cells.map((cell) => String(cell ?? '').padStart(11)).join(''));
  line(
    'visits of a patient',
    results.map(({ count }) => count),
  );
  for (const [title, key] of ROWS)
    line(
      title,
      results.map((one) => one[key]),
    );
}
