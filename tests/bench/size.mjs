// How large the package is for who uses it: the map alone and everything, minified and gzipped, beside a slider of a known
// component library and a world map drawn with d3, bundled the same way.
// node tests/bench/size.mjs [--json] [--built] [--check]
//   --built  measures dist/ as it is, without building it first
//   --check  fails when a figure is over its ceiling in size-ceilings.json, or so far below it that the ceiling should move
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { gzipSync } from 'node:zlib';
import { bundleInChunks, root } from './bundle.mjs';

const { values: options } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    built: { type: 'boolean', default: false },
    check: { type: 'boolean', default: false },
  },
});

/** How far below its ceiling a figure may be. */
const SLACK = 0.06;

const MAP = `import 'pulse-map/elements/pulse-map/define';`;
const LIT = /node_modules[\\/](lit|lit-html|lit-element|@lit)[\\/]/;
const ENGINE = /dist[\\/]localisation[\\/]/;

if (!options.built) {
  const { status, stderr } = spawnSync(process.execPath, ['tests/tools/build.mjs'], {
    cwd: root,
    encoding: 'utf8',
  });
  if (status !== 0) {
    console.error(stderr);
    process.exit(1);
  }
}

const bytes = (texts) => texts.reduce((sum, text) => sum + Buffer.byteLength(text), 0);
const gzip = (texts) => texts.reduce((sum, text) => sum + gzipSync(text, { level: 9 }).length, 0);

const map = await bundleInChunks(MAP);
const bare = await bundleInChunks(MAP, { leftOut: new RegExp(`${LIT.source}|${ENGINE.source}`) });
const all = [readFileSync(join(root, 'dist/pulse-map.bundle.js'), 'utf8')];
const slider = await bundleInChunks(readFileSync(join(root, 'tests/bench/pages/slider.js'), 'utf8'));
const worldMap = await bundleInChunks(readFileSync(join(root, 'tests/bench/pages/world-map.js'), 'utf8'));

const result = {
  mapGzip: gzip(map.first),
  mapLaterGzip: gzip(map.later),
  mapWithoutLitAndEngineGzip: gzip(bare.first),
  allGzip: gzip(all),
  sliderGzip: gzip(slider.first),
  worldMapGzip: gzip(worldMap.first),
  bytes: {
    map: bytes(map.first),
    mapLater: bytes(map.later),
    mapWithoutLitAndEngine: bytes(bare.first),
    all: bytes(all),
    slider: bytes(slider.first),
    worldMap: bytes(worldMap.first),
  },
};

const ROWS = [
  ['the map alone', result.mapGzip, result.bytes.map],
  ['  fetched after its first paint', result.mapLaterGzip, result.bytes.mapLater],
  ['  without Lit and the engine', result.mapWithoutLitAndEngineGzip, result.bytes.mapWithoutLitAndEngine],
  ['everything', result.allGzip, result.bytes.all],
  ['slider of a component library', result.sliderGzip, result.bytes.slider],
  ['world map by d3, with its data', result.worldMapGzip, result.bytes.worldMap],
];

if (options.json) {
  console.log(JSON.stringify(result));
} else {
  console.log(`${'kB'.padEnd(36)}${'gzipped'.padStart(9)}${'minified'.padStart(10)}`);
  const kB = (number) => (number / 1000).toFixed(1);
  for (const [title, gzipped, minified] of ROWS)
    console.log(title.padEnd(36) + kB(gzipped).padStart(9) + kB(minified).padStart(10));
}

if (options.check) {
  const ceilings = JSON.parse(readFileSync(join(root, 'tests/bench/size-ceilings.json'), 'utf8'));
  for (const [key, ceiling] of Object.entries(ceilings)) {
    const size = result[key];
    const fault =
      size > ceiling
        ? `expected at most ${ceiling}. If it is worth it, raise the ceiling in this very commit.`
        : size < ceiling * (1 - SLACK)
          ? `which is far below its ceiling of ${ceiling}: lower that in this very commit.`
          : '';
    if (fault) {
      console.error(`size-ceilings.json, ${key}: found ${size} bytes, ${fault}`);
      process.exitCode = 1;
    }
  }
}
