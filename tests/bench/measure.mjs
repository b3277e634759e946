/* global bench */
// Measurements of one variant in one browser page. Each checks that the work was done.

export const SLOWDOWN = 4;
const ACTS = 45;
const MOVES_BETWEEN = 12;

export function must(truth, what) {
  if (!truth) throw new Error(`the work did not happen: ${what}`);
}

export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (sorted.length - 1) * share;
  const low = Math.floor(at);
  return sorted[low] + (sorted[Math.ceil(at)] - sorted[low]) * (at - low);
}

export const median = (values) => quantile(values, 0.5);
export const rounded = (number, digits = 1) => Number(number.toFixed(digits));

/** A fresh page of a variant, painted. */
export async function open(browser, origin, name, slow) {
  const context = await browser.createBrowserContext();
  const tab = await context.newPage();
  await tab.setViewport({ width: 1280, height: 1000 });
  const cdp = await tab.createCDPSession();
  // The main thread's own time, whatever else the machine is busy with.
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: true });
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: slow ? SLOWDOWN : 1 });
  const faults = [];
  tab.on('pageerror', (error) => faults.push(error.message));
  await tab.goto(`${origin}/${name}`);
  await tab
    .waitForFunction(() => globalThis.begin)
    .catch((error) => {
      throw new Error(`${name}: ${faults.join('; ') || error.message}`);
    });
  const before = await metrics(cdp);
  await tab.evaluate(() => globalThis.begin());
  const paintCpuMs = ((await metrics(cdp)).TaskDuration - before.TaskDuration) * 1000;
  must(await tab.evaluate(() => bench.visible()), `${name} shows nothing`);
  return { tab, cdp, faults, paintCpuMs, close: () => context.close() };
}

export async function metrics(cdp) {
  const { metrics: all } = await cdp.send('Performance.getMetrics');
  return Object.fromEntries(all.map(({ name, value }) => [name, value]));
}

/** Keys and taps one after another, each waited for until painted. */
export async function taps({ tab }, name) {
  const samples = [];
  const keys = [];
  let before = await tab.evaluate(() => bench.state());
  for (let i = 0; i < ACTS; i++) {
    const { kind, key, point, event } = await tab.evaluate((at) => bench.act(at), i);
    await tab.evaluate((type) => bench.arm(type), event);
    if (key) keys.push(key);
    if (key) await tab.keyboard.press(key);
    else await tab.mouse.click(...point);
    const ms = await tab.evaluate((was) => bench.latency(() => bench.state() === was), before);
    const after = await tab.evaluate(() => bench.state());
    must(after !== before, `${name}, ${kind} ${i}`);
    before = after;
    samples.push({ kind, ms });
  }
  // The same key every time would measure a single effect.
  must(keys.length === 0 || new Set(keys).size > 1, `${name} was given the key ${keys[0]} alone`);
  return samples;
}

/** Main thread time per move along a way. */
async function moves({ tab, cdp }, way) {
  let count = 0;
  const before = await metrics(cdp);
  for (const [i, [x, y]] of way.entries()) {
    const [fromX, fromY] = way[(i || way.length) - 1];
    for (let step = 1; step <= MOVES_BETWEEN; step++) {
      const share = step / MOVES_BETWEEN;
      await tab.mouse.move(fromX + (x - fromX) * share, fromY + (y - fromY) * share);
      count++;
    }
  }
  await tab.evaluate(() => bench.painted());
  return (((await metrics(cdp)).TaskDuration - before.TaskDuration) * 1000) / count;
}

export async function hover(opened, name) {
  const { tab } = opened;
  const way = await tab.evaluate(() => {
    bench.changes = bench.watchHover();
    return bench.way();
  });
  await moves(opened, way.slice(0, 2));
  const perMove = await moves(opened, way);
  must((await tab.evaluate(() => bench.changes())) > 0, `${name}, hovering`);
  return perMove;
}

export async function draw(opened, name) {
  const { tab } = opened;
  const pick = await tab.evaluate(() => bench.toDraw());
  if (pick) await tab.mouse.click(...pick);
  const [way, before] = await tab.evaluate(() => [bench.way(), bench.state()]);
  await tab.mouse.move(...way[0]);
  await tab.mouse.down();
  const perMove = await moves(opened, [...way.slice(1), ...way.slice(1, 3)]);
  await tab.mouse.up();
  await tab.evaluate(() => bench.painted());
  must((await tab.evaluate(() => bench.state())) !== before, `${name}, drawing`);
  return perMove;
}

/** What is in use after the garbage is collected. */
export async function usedHeap(cdp) {
  await cdp.send('HeapProfiler.collectGarbage');
  await cdp.send('HeapProfiler.collectGarbage');
  const { JSHeapUsedSize, Nodes, JSEventListeners } = await metrics(cdp);
  return { kB: JSHeapUsedSize / 1024, nodes: Nodes, listeners: JSEventListeners };
}

/** What is in use after the garbage is collected, before and after many edits by key. */
export async function memory(browser, origin, name, edits) {
  const opened = await open(browser, origin, name, false);
  const { tab, cdp } = opened;
  const keys = await tab.evaluate(() => (bench.focusForKeys(), bench.editKeys));
  const type = async (times) => {
    for (let i = 0; i < times; i++) await tab.keyboard.press(keys[i % keys.length]);
    await tab.evaluate(() => bench.painted());
  };
  // The first edits compile code and fill caches; what matters is whether memory keeps growing.
  await type(100);
  const before = await usedHeap(cdp);
  const state = await tab.evaluate(() => bench.state());
  await type(edits - 1);
  must((await tab.evaluate(() => bench.state())) !== state, `${name}, many edits`);
  const after = await usedHeap(cdp);
  await opened.close();
  return {
    heapBeforeKb: Math.round(before.kB),
    heapAfterKb: Math.round(after.kB),
    heapGrowthKb: Math.round(after.kB - before.kB),
    nodeGrowth: after.nodes - before.nodes,
    listenerGrowth: after.listeners - before.listeners,
  };
}

const KEYS = 40;

/** How much more main thread time a key takes with as many marks on the skin as a record holds than with none. */
export async function markedKeys(browser, origin) {
  const opened = await open(browser, origin, 'map', false);
  const { tab, cdp } = opened;
  const perKey = async () => {
    const keys = await tab.evaluate(() => (bench.focusForKeys(), bench.editKeys));
    const type = async (count) => {
      for (let i = 0; i < count; i++) {
        await tab.keyboard.press(keys[i % keys.length]);
        await tab.evaluate(() => bench.painted());
      }
    };
    await type(10);
    const before = await metrics(cdp);
    await type(KEYS);
    return (((await metrics(cdp)).TaskDuration - before.TaskDuration) * 1000) / KEYS;
  };
  const none = await perKey();
  must((await tab.evaluate(() => bench.drawMarks())) > 50, 'marks on the skin');
  const marked = await perKey();
  await opened.close();
  const to = (value) => Number(value.toFixed(2));
  return { cpuPerKeyMs: to(none), cpuPerMarkedKeyMs: to(marked), marksKeyRatio: to(marked / none) };
}
