/* global document, requestAnimationFrame, scrollTo */
// Every view and plate of the map, empty, normal and with findings, at four widths, light and dark, as sheets of small pictures for the
// documentation: stories/figure-light.webp and stories/figure-dark.webp.
// node .tools/sheet.mjs [--out FOLDER] [--view NAME]
//   --out    writes every picture in full size there, too
//   --view   only this view, and no sheet
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'esbuild';
import { launch } from 'puppeteer-core';
import { BROWSER_FLAGS } from './find-browser.mjs';
import { browserOrInstall } from './install-browser.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const { values: options } = parseArgs({
  options: {
    out: { type: 'string' },
    view: { type: 'string' },
  },
});

/** Windows in px: a phone, a tablet, a laptop and a projector. */
const WINDOWS = [
  [390, 844],
  [820, 1100],
  [1440, 900],
  [1920, 1080],
];
const SCHEMES = ['light', 'dark'];
/** Height of a picture on the sheet, and its share of the window's size when it is taken. */
const ROW = 132;
const SHARE = 0.25;

/** A module of this project as one file. */
async function bundled(entry) {
  const { outputFiles } = await build({
    entryPoints: [join(root, entry)],
    bundle: true,
    format: 'esm',
    target: 'es2022',
    write: false,
    minify: true,
  });
  return outputFiles[0].text;
}

const elements = await bundled('src/index.ts');
const records = await bundled('.tools/sheet-records.mjs');
const { STATES, VIEWS } = await import(`data:text/javascript,${encodeURIComponent(records)}`);

/** Shows a view of a record and waits until it is painted. */
async function show(page, view, examination) {
  await page.evaluate(
    async (shown, record) => {
      const map = document.querySelector('pulse-map');
      map.examination = record;
      map.view = shown;
      // A plate is fetched, and the reading follows the figure: wait until neither changes anything any more.
      const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
      for (let quiet = 0, before = ''; quiet < 4;) {
        await map.updateComplete;
        await frame();
        const now =
          map.shadowRoot.innerHTML.length + (map.shadowRoot.querySelector('.figure')?.dataset.view ?? '');
        quiet =
          now === before && map.shadowRoot.querySelector('.figure')?.dataset.view === shown ? quiet + 1 : 0;
        before = now;
      }
    },
    view,
    examination,
  );
}

async function pictures(browser, scheme) {
  const page = await browser.newPage();
  await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
  await page.setContent(
    '<!doctype html><html lang="en"><style>:root{color-scheme:light dark}body{margin:8px}</style><pulse-map></pulse-map></html>',
  );
  await page.addScriptTag({ content: elements, type: 'module' });
  const taken = [];
  for (const [width, height] of WINDOWS) {
    await page.setViewport({ width, height, deviceScaleFactor: options.out ? 1 : SHARE });
    for (const view of options.view ? [options.view] : VIEWS)
      for (const [state, examination] of Object.entries(STATES)) {
        await show(page, view, examination);
        await page.evaluate(() => scrollTo(0, 0));
        const name = `${view}-${state}-${width}-${scheme}`;
        const png = await page.screenshot({ encoding: 'base64' });
        taken.push({ view, state, width, png });
        if (options.out) writeFileSync(join(options.out, `${name}.png`), png, 'base64');
      }
  }
  await page.close();
  return taken;
}

function sheetOf(taken, scheme) {
  const states = Object.keys(STATES);
  const columns = states.flatMap((state) => WINDOWS.map(([width]) => ({ state, width })));
  const cell = (view, { state, width }) => {
    const found = taken.find((one) => one.view === view && one.state === state && one.width === width);
    return `<td><img src="data:image/png;base64,${found.png}" height="${ROW}" alt=""></td>`;
  };
  const head = columns.map(({ state, width }) => `<th>${state}, ${width} px</th>`).join('');
  const rows = VIEWS.map(
    (view) => `<tr><th>${view}</th>${columns.map((column) => cell(view, column)).join('')}</tr>`,
  );
  return `<!doctype html><style>:root{color-scheme:${scheme}}body{margin:8px;width:max-content;background:Canvas;color:CanvasText;font:11px system-ui}
    th{font-weight:600;text-align:start;padding:2px 6px}td{padding:1px 2px}img{display:block;outline:1px solid #8886}</style>
    <table cellspacing="0"><tr><th></th>${head}</tr>${rows.join('')}</table>`;
}

if (options.out) mkdirSync(options.out, { recursive: true });
const browser = await launch({ executablePath: await browserOrInstall(), args: BROWSER_FLAGS });
try {
  for (const scheme of SCHEMES) {
    const taken = await pictures(browser, scheme);
    if (options.view) continue;
    const page = await browser.newPage();
    await page.setContent(sheetOf(taken, scheme));
    const table = await page.$('table');
    const file = join(root, `stories/figure-${scheme}.webp`);
    const image = await table.screenshot({ type: 'webp', quality: 45 });
    writeFileSync(file, image);
    console.log(`${file}: ${taken.length} pictures, ${Math.round(image.length / 1000)} kB`);
    await page.close();
  }
} finally {
  await browser.close();
}
