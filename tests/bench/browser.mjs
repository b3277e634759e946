/* global bench */
// How quick the map is in a browser, beside a slider of a known component library, a world map drawn with d3 and a bare drawing
// by Lit, measured in the same run: time from its module evaluated to painted, from key or tap to painted, main thread time per pointer move,
// memory after many edits; as the machine is and slowed down four times.
// node tests/bench/browser.mjs [--json] [--built] [--rounds 5] [--edits 1000] [--visits]
//   --built   measures dist/ as it is, without building it first
//   --visits  measures a patient's visits alone
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { availableParallelism, loadavg } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { launch } from 'puppeteer-core';
import { BROWSER_FLAGS } from '../../.tools/find-browser.mjs';
import { browserOrInstall } from '../../.tools/install-browser.mjs';
import { bundleInChunks, root } from './bundle.mjs';
import {
  draw,
  hover,
  markedKeys,
  median,
  memory,
  must,
  open,
  quantile,
  rounded,
  SLOWDOWN,
  taps,
} from './measure.mjs';
import { printVisits, visits } from './visits.mjs';

const VARIANTS = {
  map: 'tests/bench/pages/map.js',
  slider: 'tests/bench/pages/slider.js',
  worldMap: 'tests/bench/pages/world-map.js',
  bare: 'tests/bench/pages/bare.js',
};
/** Pages that stand beside no control. */
const PAGES = {
  tenMaps: 'tests/bench/pages/ten-maps.js',
  figures: 'tests/bench/pages/figures.js',
  visits: 'tests/bench/pages/visits.js',
};

const { values: options } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    built: { type: 'boolean', default: false },
    rounds: { type: 'string', default: '5' },
    edits: { type: 'string', default: '1000' },
    visits: { type: 'boolean', default: false },
  },
});

function count(name) {
  const number = Number(options[name]);
  if (Number.isInteger(number) && number > 0) return number;
  throw new Error(`--${name}: found "${options[name]}", expected a whole number above 0`);
}

const rounds = count('rounds');
const edits = count('edits');

const page = (name) => `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${name}</title>
<style>body { margin: 16px; background: #fff; }</style></head><body><main></main>
<script type="module">
  import * as clock from '/clock.js';
  const start = performance.now();
  const variant = await import('/${name}.js');
  const evaluateMs = performance.now() - start;
  globalThis.begin = async () => {
    const begun = performance.now();
    variant.mount(document.querySelector('main'));
    const paintMs = (await clock.painted()) - begun;
    globalThis.bench = { ...clock, ...variant, paintMs, evaluateMs };
  };
</script></body></html>`;

function build() {
  const { status, stderr } = spawnSync(process.execPath, ['.tools/build.mjs'], {
    cwd: root,
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`the build failed:\n${stderr}`);
}

async function serve() {
  const pages = join(root, 'tests/bench/pages');
  const files = new Map([['/clock.js', readFileSync(join(pages, 'clock.js'), 'utf8')]]);
  for (const [name, entry] of Object.entries({ ...VARIANTS, ...PAGES })) {
    const bundle = await bundleInChunks(readFileSync(join(root, entry), 'utf8'), { name });
    for (const [file, text] of bundle.files) files.set(`/${file}`, text);
    files.set(`/${name}`, page(name));
  }
  const server = createServer(({ url }, response) => {
    // What follows the question mark is the page's own.
    const body = files.get(url.split('?')[0]);
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
        runs.push({
          name,
          slow,
          paintMs,
          evaluateMs,
          paintCpuMs: opened.paintCpuMs,
          samples,
          hoverMs,
          drawMs,
        });
        if (!options.json) process.stderr.write('.');
      }
    }
  }
  return runs;
}

/** First paint of ten maps, and of fifty still pictures with what one costs. */
async function pages(browser, origin) {
  const runs = [];
  for (let round = 0; round < rounds; round++) {
    const ten = await open(browser, origin, 'tenMaps', false);
    const tenMapsMs = await ten.tab.evaluate(() => bench.paintMs);
    await ten.close();
    const figures = await open(browser, origin, 'figures', false);
    const { paintMs, cost } = await figures.tab.evaluate(() => ({
      paintMs: bench.paintMs,
      cost: bench.pictureCost(),
    }));
    must(
      figures.faults.length === 0 && ten.faults.length === 0,
      [...figures.faults, ...ten.faults].join('; '),
    );
    await figures.close();
    runs.push({ tenMapsMs, figurePageMs: paintMs, figureSvgMs: cost.ms, figureSvgBytes: cost.bytes });
  }
  const of = (key, digits) => rounded(median(runs.map((run) => run[key])), digits);
  return {
    tenMapsMs: of('tenMapsMs', 1),
    figurePageMs: of('figurePageMs', 1),
    figureSvgMs: of('figureSvgMs', 2),
    figureSvgBytes: of('figureSvgBytes', 0),
  };
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
      [`paintCpuMs${suffix}`]: rounded(median(own.map((run) => run.paintCpuMs))),
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

/** Figures that are also given as ratios to the controls. */
const COMPARED = ['paintMs', 'tapP95Ms', 'cpuPerMoveMs'].flatMap((key) => [key, `${key}Slow`]);

const ROWS = [
  ['module evaluated to painted, ms', 'paintMs'],
  ['  main thread time of that, ms', 'paintCpuMs'],
  ['key or tap to painted, p50, ms', 'tapP50Ms'],
  ['key or tap to painted, p95, ms', 'tapP95Ms'],
  ['main thread a move, hovering, ms', 'cpuPerHoverMoveMs'],
  ['main thread a move, drawing, ms', 'cpuPerDrawMoveMs'],
];

function print(results, load) {
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
  if (load > availableParallelism())
    console.log(`The machine was busy with other things (load ${load}): these figures are too high.`);
}

async function main(browser, origin) {
  const runs = await measure(browser, origin);
  const load = rounded(loadavg()[0]);
  const results = {};
  for (const name of Object.keys(VARIANTS)) {
    results[name] = { ...summary(runs, name), memory: await memory(browser, origin, name, edits) };
  }
  const { map, ...controls } = results;
  const ratios = Object.fromEntries(
    Object.entries(controls).map(([name, control]) => [
      name,
      Object.fromEntries(COMPARED.map((key) => [key, rounded(map[key] / control[key], 2)])),
    ]),
  );
  const { bare } = controls;
  const ratio = (key) => rounded(map[key] / bare[key], 2);
  const besideBare = {
    bareMs: bare.paintMs,
    bareMsSlow: bare.paintMsSlow,
    paintRatio: ratio('paintMs'),
    paintRatioSlow: ratio('paintMsSlow'),
    cpuRatio: ratio('paintCpuMs'),
    cpuRatioSlow: ratio('paintCpuMsSlow'),
  };
  const marks = await markedKeys(browser, origin);
  const series = await visits(browser, origin, rounds);
  const more = { ...besideBare, ...(await pages(browser, origin)), ...marks };
  if (options.json)
    console.log(JSON.stringify({ rounds, load, ...map, ...more, visits: series, ...controls, ratios }));
  else {
    print(results, load);
    for (const [key, value] of Object.entries(more)) console.log(key.padEnd(44) + String(value).padStart(11));
    printVisits(series);
  }
}

if (!options.built) build();
const { origin, close } = await serve();
const browser = await launch({ executablePath: browserOrInstall(), args: BROWSER_FLAGS });
try {
  if (options.visits) {
    const results = await visits(browser, origin, rounds);
    if (options.json) console.log(JSON.stringify({ rounds, load: rounded(loadavg()[0]), visits: results }));
    else printVisits(results);
  } else await main(browser, origin);
} finally {
  await browser.close();
  close();
}
