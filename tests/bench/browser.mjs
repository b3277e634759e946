/* global bench */
// How quick the map is in a browser, beside a slider of a known component library and a world map drawn with d3, measured in
// the same run: time from its module evaluated to painted, from key or tap to painted, main thread time per pointer move,
// memory after many edits; as the machine is and slowed down four times.
// node tests/bench/browser.mjs [--json] [--rounds 5] [--edits 1000]
import { createServer } from 'node:http';
import { parseArgs } from 'node:util';
import { launch } from 'puppeteer-core';
import { BROWSER_FLAGS } from '../tools/find-browser.mjs';
import { browserOrInstall } from '../tools/install-browser.mjs';
import { bundleFromSources } from './bundle.mjs';

const VARIANTS = {
  map: 'tests/bench/pages/map.js',
  slider: 'tests/bench/pages/slider.js',
  worldMap: 'tests/bench/pages/world-map.js',
};
const SLOWDOWN = 4;
const ACTS = 45;
const MOVES_BETWEEN = 12;

const { values: options } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    rounds: { type: 'string', default: '5' },
    edits: { type: 'string', default: '1000' },
  },
});

function count(name) {
  const number = Number(options[name]);
  if (Number.isInteger(number) && number > 0) return number;
  throw new Error(`--${name}: found "${options[name]}", expected a whole number above 0`);
}

const rounds = count('rounds');
const edits = count('edits');

function must(truth, what) {
  if (!truth) throw new Error(`the work did not happen: ${what}`);
}

function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (sorted.length - 1) * share;
  const low = Math.floor(at);
  return sorted[low] + (sorted[Math.ceil(at)] - sorted[low]) * (at - low);
}

const median = (values) => quantile(values, 0.5);
const rounded = (number, digits = 1) => Number(number.toFixed(digits));

const page = (name) => `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${name}</title>
<style>body { margin: 16px; background: #fff; }</style></head><body><main></main>
<script type="module">
  import * as clock from '/clock.js';
  const start = performance.now();
  const variant = await import('/${name}.js');
  const evaluated = performance.now();
  variant.mount(document.querySelector('main'));
  const paintMs = (await clock.painted()) - evaluated;
  globalThis.bench = { ...clock, ...variant, paintMs, evaluateMs: evaluated - start };
</script></body></html>`;

async function serve() {
  const files = new Map([['/clock.js', await bundleFromSources('tests/bench/pages/clock.js')]]);
  for (const [name, entry] of Object.entries(VARIANTS)) {
    files.set(`/${name}.js`, await bundleFromSources(entry));
    files.set(`/${name}`, page(name));
  }
  const server = createServer(({ url }, response) => {
    const body = files.get(url);
    response.writeHead(body === undefined ? 404 : 200, {
      'content-type': url.endsWith('.js') ? 'text/javascript' : 'text/html',
      // Isolated, so that the page's clock is not coarsened.
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-embedder-policy': 'require-corp',
    });
    response.end(body ?? '');
  });
  await new Promise((done) => server.listen(0, '127.0.0.1', done));
  return { origin: `http://127.0.0.1:${server.address().port}`, close: () => server.close() };
}

/** A fresh page of a variant, painted. */
async function open(browser, origin, name, slow) {
  const context = await browser.createBrowserContext();
  const tab = await context.newPage();
  await tab.setViewport({ width: 1280, height: 1000 });
  const cdp = await tab.createCDPSession();
  await cdp.send('Performance.enable');
  await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: true });
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: slow ? SLOWDOWN : 1 });
  const faults = [];
  tab.on('pageerror', (error) => faults.push(error.message));
  await tab.goto(`${origin}/${name}`);
  await tab
    .waitForFunction(() => globalThis.bench)
    .catch((error) => {
      throw new Error(`${name}: ${faults.join('; ') || error.message}`);
    });
  must(await tab.evaluate(() => bench.visible()), `${name} shows nothing`);
  return { tab, cdp, faults, close: () => context.close() };
}

async function metrics(cdp) {
  const { metrics: all } = await cdp.send('Performance.getMetrics');
  return Object.fromEntries(all.map(({ name, value }) => [name, value]));
}

/** Keys and taps one after another, each waited for until painted. */
async function taps({ tab }, name) {
  const samples = [];
  let before = await tab.evaluate(() => bench.state());
  for (let i = 0; i < ACTS; i++) {
    const { kind, key, point, event } = await tab.evaluate((at) => bench.act(at), i);
    await tab.evaluate((type) => bench.arm(type), event);
    if (key) await tab.keyboard.press(key);
    else await tab.mouse.click(...point);
    const ms = await tab.evaluate(() => bench.latency());
    const after = await tab.evaluate(() => bench.state());
    must(after !== before, `${name}, ${kind} ${i}`);
    before = after;
    samples.push({ kind, ms });
  }
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

async function hover(opened, name) {
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

async function draw(opened, name) {
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

async function heap(cdp) {
  await cdp.send('HeapProfiler.collectGarbage');
  await cdp.send('HeapProfiler.collectGarbage');
  const { JSHeapUsedSize, Nodes, JSEventListeners } = await metrics(cdp);
  return { kB: JSHeapUsedSize / 1024, nodes: Nodes, listeners: JSEventListeners };
}

/** What is in use after the garbage is collected, before and after many edits by key. */
async function memory(browser, origin, name) {
  const opened = await open(browser, origin, name, false);
  const { tab, cdp } = opened;
  const keys = await tab.evaluate(() => (bench.focusForKeys(), bench.editKeys));
  const type = async (times) => {
    for (let i = 0; i < times; i++) await tab.keyboard.press(keys[i % keys.length]);
    await tab.evaluate(() => bench.painted());
  };
  // The first edits compile and fill caches; what counts is whether it goes on growing.
  await type(100);
  const before = await heap(cdp);
  const state = await tab.evaluate(() => bench.state());
  await type(edits - 1);
  must((await tab.evaluate(() => bench.state())) !== state, `${name}, many edits`);
  const after = await heap(cdp);
  await opened.close();
  return {
    heapBeforeKb: rounded(before.kB, 0),
    heapAfterKb: rounded(after.kB, 0),
    heapGrowthKb: rounded(after.kB - before.kB, 0),
    nodeGrowth: after.nodes - before.nodes,
    listenerGrowth: after.listeners - before.listeners,
  };
}

async function measure(browser, origin) {
  const runs = [];
  const names = Object.keys(VARIANTS);
  for (let round = 0; round < rounds; round++) {
    for (const slow of [false, true]) {
      for (let i = 0; i < names.length; i++) {
        const name = names[(i + round) % names.length];
        const opened = await open(browser, origin, name, slow);
        const { paintMs, evaluateMs } = await opened.tab.evaluate(() => ({
          paintMs: bench.paintMs,
          evaluateMs: bench.evaluateMs,
        }));
        const samples = await taps(opened, name);
        const hoverMs = await hover(opened, name);
        const drawMs = await draw(opened, name);
        must(opened.faults.length === 0, `${name}: ${opened.faults.join('; ')}`);
        await opened.close();
        runs.push({ name, slow, paintMs, evaluateMs, samples, hoverMs, drawMs });
        if (!options.json) process.stderr.write('.');
      }
    }
  }
  return runs;
}

function summary(runs, name) {
  const result = {};
  for (const [slow, suffix] of [
    [false, ''],
    [true, 'Slow'],
  ]) {
    const own = runs.filter((run) => run.name === name && run.slow === slow);
    const samples = own.flatMap((run) => run.samples);
    const all = samples.map(({ ms }) => ms);
    const hoverMs = median(own.map((run) => run.hoverMs));
    const drawMs = median(own.map((run) => run.drawMs));
    const kinds = [...new Set(samples.map(({ kind }) => kind))];
    const p95 = (kind) =>
      quantile(
        samples.filter((sample) => sample.kind === kind).map(({ ms }) => ms),
        0.95,
      );
    Object.assign(result, {
      [`paintMs${suffix}`]: rounded(median(own.map((run) => run.paintMs))),
      [`evaluateMs${suffix}`]: rounded(median(own.map((run) => run.evaluateMs))),
      [`tapP50Ms${suffix}`]: rounded(quantile(all, 0.5)),
      [`tapP95Ms${suffix}`]: rounded(quantile(all, 0.95)),
      [`tapP95MsByKind${suffix}`]: Object.fromEntries(kinds.map((kind) => [kind, rounded(p95(kind))])),
      [`cpuPerHoverMoveMs${suffix}`]: rounded(hoverMs, 2),
      [`cpuPerDrawMoveMs${suffix}`]: rounded(drawMs, 2),
      [`cpuPerMoveMs${suffix}`]: rounded(Math.max(hoverMs, drawMs), 2),
    });
  }
  return result;
}

const ROWS = [
  ['module evaluated to painted, ms', 'paintMs'],
  ['key or tap to painted, p50, ms', 'tapP50Ms'],
  ['key or tap to painted, p95, ms', 'tapP95Ms'],
  ['main thread a move, hovering, ms', 'cpuPerHoverMoveMs'],
  ['main thread a move, drawing, ms', 'cpuPerDrawMoveMs'],
];

function print(results) {
  const names = Object.keys(results);
  const line = (title, cells) =>
    console.log(title.padEnd(44) + cells.map((cell) => String(cell).padStart(11)).join(''));
  line('', names);
  for (const [title, key] of ROWS) {
    line(
      title,
      names.map((name) => results[name][key]),
    );
    line(
      `  slowed ${SLOWDOWN} times`,
      names.map((name) => results[name][`${key}Slow`]),
    );
  }
  line(
    `heap before ${edits} edits, kB`,
    names.map((name) => results[name].memory.heapBeforeKb),
  );
  line(
    '  after',
    names.map((name) => results[name].memory.heapAfterKb),
  );
  line(
    '  nodes more',
    names.map((name) => results[name].memory.nodeGrowth),
  );
}

const { origin, close } = await serve();
const browser = await launch({ executablePath: browserOrInstall(), args: BROWSER_FLAGS });
try {
  const runs = await measure(browser, origin);
  const results = {};
  for (const name of Object.keys(VARIANTS)) {
    results[name] = { ...summary(runs, name), memory: await memory(browser, origin, name) };
  }
  const { map, ...controls } = results;
  if (options.json) console.log(JSON.stringify({ rounds, ...map, ...controls }));
  else print(results);
} finally {
  await browser.close();
  close();
}
