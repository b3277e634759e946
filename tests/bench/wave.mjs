// Frames of the pulse wave at 1080p, painted in software: how long the page's own work in a frame takes, and how many frames a second.
// Run after `vite build --config demo/vite.config.ts`: node tests/bench/wave.mjs [--json]
import { join } from 'node:path';
import { launch } from 'puppeteer-core';
import { preview } from 'vite';
import { browserOrInstall } from '../../.tools/install-browser.mjs';
import { root } from '../../.tools/install.mjs';

/* global document, requestAnimationFrame */

const SECONDS = 8;
const server = await preview({
  configFile: false,
  root: join(root, 'demo'),
  logLevel: 'silent',
  preview: { host: 'localhost', port: 0 },
});
const browser = await launch({
  executablePath: browserOrInstall(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
});
try {
  const page = await browser.newPage();
  await page.setViewport({ width: 1920, height: 1080 });
  // Times every callback of a frame from outside, so that nothing of the page has to measure itself.
  await page.evaluateOnNewDocument(() => {
    globalThis.took = [];
    const real = requestAnimationFrame;
    globalThis.requestAnimationFrame = (callback) =>
      real((now) => {
        const began = performance.now();
        callback(now);
        globalThis.took.push(performance.now() - began);
      });
  });
  await page.goto(`http://localhost:${server.httpServer.address().port}/#/lecture/subclavian-steal`);
  await page.waitForFunction(() =>
    document.querySelector('pulse-lesson')?.shadowRoot?.querySelector('.opening'),
  );
  await page.keyboard.press('f');
  await page.keyboard.press('p');
  await page.waitForFunction(() => document.querySelector('pulse-lesson').shadowRoot.querySelector('canvas'));
  const { took, pixels } = await page.evaluate(
    (seconds) =>
      new Promise((done) => {
        globalThis.took.length = 0;
        const canvas = document.querySelector('pulse-lesson').shadowRoot.querySelector('canvas');
        setTimeout(
          () => done({ took: globalThis.took, pixels: `${canvas.width} x ${canvas.height}` }),
          seconds * 1000,
        );
      }),
    SECONDS,
  );
  const sorted = [...took].sort((a, b) => a - b);
  const at = (share) => Number(sorted[Math.floor(share * (sorted.length - 1))].toFixed(2));
  const result = {
    framesASecond: Number((took.length / SECONDS).toFixed(1)),
    medianMs: at(0.5),
    p95Ms: at(0.95),
    pixels,
  };
  console.log(
    process.argv.includes('--json')
      ? JSON.stringify(result)
      : `${result.framesASecond} frames a second; the page's own work in a frame: median ${result.medianMs} ms, p95 ${result.p95Ms} ms (canvas ${pixels})`,
  );
} finally {
  await browser.close();
  server.httpServer.closeAllConnections();
  await new Promise((done) => server.httpServer.close(done));
}
