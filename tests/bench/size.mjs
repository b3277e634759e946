// Size of the package for its users: the map, parts of it and everything, minified and gzipped, compared with a slider of a
// known component library and a world map drawn with d3, bundled the same way.
// node tests/bench/size.mjs [--json] [--built] [--check] [--readme]
//   --built  measures dist/ as it is, without building it first
//   --readme writes the table of the README
//   --check  fails when the table of the README is not that of now, and when a figure is over its ceiling in size-ceilings.json, or so far below it that the ceiling should move
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { gzipSync } from 'node:zlib';
import { bundleInChunks, root } from './bundle.mjs';

const { values: options } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    built: { type: 'boolean', default: false },
    check: { type: 'boolean', default: false },
    readme: { type: 'boolean', default: false },
  },
});

/** How far below its ceiling a figure may be. */
const SLACK = 0.06;

const MAP = `import 'pulse-map/elements/pulse-map/define';`;
const LIT = /node_modules[\\/](lit|lit-html|lit-element|@lit)[\\/]/;
const ENGINE = /dist[\\/]localisation[\\/]/;
/** The module with which the map fetches the engine. */
const READING = 'dist/elements/pulse-reading/limbs.js';

if (!options.built) {
  const { status, stderr } = spawnSync(process.execPath, ['.tools/build.mjs'], {
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

/** The plates of the map, a module each, what they share, and what a map has fetched by the time one is opened. */
const PLATES = ['hand', 'foot', 'sole', 'knee', 'legs-behind'].map(
  (name) => `dist/drawing/plates/${name}.js`,
);
const PLATE_KIT = 'dist/elements/pulse-map/plate/kit.js';
const LATER = 'dist/elements/pulse-map/later.js';

/** The code of a bundle in three parts: what its first paint waits for, what a reading needs beside it, and the rest. */
async function parts(code, { reading, ...options } = {}) {
  const { files, needed } = await bundleInChunks(code, options);
  const first = needed();
  const withReading = reading ? needed(reading) : first;
  const texts = (wanted) => [...files].filter(([name]) => wanted(name)).map(([, text]) => text);
  return {
    first: texts((name) => first.has(name)),
    reading: texts((name) => !first.has(name) && withReading.has(name)),
    rest: texts((name) => !first.has(name) && !withReading.has(name)),
  };
}

/** What all plates share, and each plate by itself. */
async function plates() {
  const { files, needed } = await bundleInChunks(MAP);
  const textsOf = (module, ...had) =>
    [...needed(module)].filter((name) => !had.some((set) => set.has(name))).map((name) => files.get(name));
  const before = [needed(), needed(LATER)];
  const kit = needed(PLATE_KIT);
  return {
    kit: textsOf(PLATE_KIT, ...before),
    each: PLATES.map((plate) => textsOf(plate, ...before, kit)),
  };
}

const map = await parts(MAP, { reading: READING });
const bare = await parts(MAP, { reading: READING, leftOut: new RegExp(`${LIT.source}|${ENGINE.source}`) });
const all = [readFileSync(join(root, 'dist/pulse-map.bundle.js'), 'utf8')];
const edits = await parts(
  `import { emptyExamination, setPulse } from 'pulse-map/core'; globalThis.use = [emptyExamination, setPulse];`,
);
const read = await parts(
  `import { parseExamination, readExamination } from 'pulse-map/core'; globalThis.use = [parseExamination, readExamination];`,
);
const engine = await parts(
  `import { readExamination } from 'pulse-map/core'; globalThis.use = readExamination;`,
);
const picture = await parts(`import { figureSVG } from 'pulse-map/picture'; globalThis.use = figureSVG;`);
const { kit, each } = await plates();
const [largest] = each.toSorted((a, b) => gzip(b) - gzip(a));
const stopwatch = await parts(`import 'pulse-map/elements/limb-stopwatch/define';`);
const slider = await parts(readFileSync(join(root, 'tests/bench/pages/slider.js'), 'utf8'));
const worldMap = await parts(readFileSync(join(root, 'tests/bench/pages/world-map.js'), 'utf8'));

/** Key of the result, title of its row, and the code. Map and engine are one thing, whenever the engine is fetched. */
const MEASURED = [
  ['map', 'the map alone', [...map.first, ...map.reading]],
  ['mapFirstPaint', '  of it fetched before the first paint', map.first],
  ['mapWithoutLitAndEngine', '  of it without Lit and the engine', [...bare.first, ...bare.reading]],
  ['mapLater', 'chooser, table, skin, flags: after the paint', map.rest],
  ['plateKit', '  of it what the plates share', kit],
  ['plate', '  the largest plate', largest],
  ['picture', 'still pictures alone', picture.first],
  ['all', 'everything, as a single file', all],
  ['edits', 'no page: two edits of a record', edits.first],
  ['read', 'no page: parse a record and read it', read.first],
  ['engine', '  of it the engine: rule, network, anatomy', engine.first],
  ['stopwatch', 'the stopwatch alone', stopwatch.first],
  ['slider', 'slider of a component library', slider.first],
  ['worldMap', 'world map by d3, with its data', worldMap.first],
];

const result = {
  ...Object.fromEntries(MEASURED.map(([key, , texts]) => [`${key}Gzip`, gzip(texts)])),
  firstPaintGzip: gzip(map.first),
  bytes: Object.fromEntries(MEASURED.map(([key, , texts]) => [key, bytes(texts)])),
};

/** Rows of the README: what a page may take, and the key of its size. */
const README_ROWS = [
  ['the map, before its first paint', 'mapFirstPaint'],
  ['the map with its reading', 'map'],
  ['chooser, table, skin, flags, pictures, after the paint', 'mapLater'],
  ['still pictures alone (`pulse-map/picture`)', 'picture'],
  ['every element, as a single file', 'all'],
];
const README = join(root, 'README.md');
const TABLE = /(<!-- sizes -->\n)[^]*?(\n<!-- \/sizes -->)/;

function table() {
  const rows = README_ROWS.map(([title, key]) => [title, Math.round(result[`${key}Gzip`] / 1000)]);
  const wide = Math.max(...rows.map(([title]) => title.length));
  const line = (title, size) => `| ${title.padEnd(wide)} | ${size.padStart(10)} |`;
  return [
    line('what', 'kB gzipped'),
    `| ${'-'.repeat(wide)} | ${'-'.repeat(9)}: |`,
    ...rows.map(([title, size]) => line(title, String(size))),
  ].join('\n');
}

/** The sizes in a table, in its order. */
const sizesIn = (text) => [...text.matchAll(/\| +(\d+) \|/g)].map(([, size]) => Number(size));

if (options.readme) {
  writeFileSync(
    README,
    readFileSync(README, 'utf8').replace(TABLE, (_, before, after) => `${before}\n${table()}\n${after}`),
  );
}

if (options.json) {
  console.log(JSON.stringify(result));
} else {
  console.log(`${'kB'.padEnd(46)}${'gzipped'.padStart(9)}${'minified'.padStart(10)}`);
  const kB = (number) => (number / 1000).toFixed(1);
  for (const [key, title] of MEASURED)
    console.log(title.padEnd(46) + kB(result[`${key}Gzip`]).padStart(9) + kB(result.bytes[key]).padStart(10));
}

if (options.check) {
  const told = sizesIn(TABLE.exec(readFileSync(README, 'utf8'))?.[0] ?? '');
  const now = sizesIn(table());
  const stale = told.length !== now.length || told.some((size, i) => Math.abs(size / now[i] - 1) > SLACK);
  if (stale) {
    console.error(
      `README.md: found the sizes ${told.join(', ')} kB, expected ${now.join(', ')}; run "npm run size -- --readme"`,
    );
    process.exitCode = 1;
  }
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
