/* global document */
// The built demo without a connection: loads it once, asks whether it can be installed, stops the server, and goes on; then a newer build, which must be told and come in
// when asked for. Run after `vite build --config demo/vite.config.ts`.
import assert from 'node:assert/strict';
import { appendFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { launch } from 'puppeteer-core';
import { browserOrInstall } from '../../.tools/install-browser.mjs';
import { ServedDemo } from './serve-demo.mjs';

const demo = new ServedDemo();
const { folder } = demo;
const manifest = JSON.parse(readFileSync(join(folder, 'manifest.webmanifest'), 'utf8'));
for (const field of ['name', 'start_url', 'display', 'icons'])
  assert.ok(manifest[field], `manifest: ${field}`);
assert.ok(readFileSync(join(folder, manifest.icons[0].src), 'utf8').startsWith('<svg'), 'the icon is there');

await demo.start();
const { address } = demo;
const browser = await launch({
  executablePath: browserOrInstall(),
  args: ['--no-sandbox', '--disable-background-networking', '--no-first-run'],
});
const WAIT = { timeout: 60_000 };
try {
  const page = await browser.newPage();
  page.setDefaultTimeout(WAIT.timeout);
  await page.goto(address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.reload();
  await page.waitForFunction(() => Boolean(navigator.serviceWorker.controller), WAIT);
  const devtools = await page.createCDPSession();
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  assert.deepEqual(installabilityErrors, [], 'what keeps the demo from being installed');

  await demo.stop();
  await assert.rejects(fetch(address), 'the server is gone');
  await page.goto(`${address}#/lecture`);
  await page.reload();
  await page.waitForFunction(() => document.querySelectorAll('lecture-room a.row').length >= 15, WAIT);
  await page.goto(`${address}#/lecture/embolus-groin`);
  await page.waitForFunction(
    () => document.querySelector('pulse-lesson')?.shadowRoot?.querySelector('.slide .opening'),
    WAIT,
  );

  // A newer build on the same address: told, and not taken before the person says so.
  appendFileSync(join(folder, 'sw.js'), '\n// newer\n');
  await demo.start();
  await page.reload();
  await page.waitForSelector('.update[role=status]', WAIT);
  const loaded = page.waitForNavigation(WAIT);
  await page.evaluate(() => document.querySelector('.update button').click());
  await loaded;
  await page.waitForFunction(() => !document.querySelector('.update'), WAIT);
  console.log('The demo can be installed, works without a connection, and tells of a newer version.');
} finally {
  await browser.close();
  await demo.end();
}
