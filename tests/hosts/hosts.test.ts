// The package in small applications of its hosts, each built from the packed tarball by its framework's own tools (build.mjs): types,
// and what a person does in a real browser.
import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { bin, buildHosts, home } from './build.mjs';
import { type Host, serve } from './serve.js';

let host: Host;
let dist = '';
beforeAll(async () => {
  dist = await buildHosts();
  host = await serve(dist);
});
afterAll(() => host?.close());

/** Runs a program in an application; resolves to what it wrote where it failed, else to nothing. */
const complaintsOf = (...args: string[]): Promise<string> =>
  new Promise((done) => {
    execFile(process.execPath, args, { cwd: home }, (error, stdout, stderr) =>
      done(error ? stdout + stderr : ''),
    );
  });
const complaints = (script: string, ...args: string[]): Promise<string> => complaintsOf(bin(script), ...args);

const settings = (app: string): string => join(home, app, 'tsconfig.json');

// Angular's compiler checks its templates while it builds; the build above fails otherwise.
describe('the types', () => {
  it('hold in React', async () => {
    expect(await complaints('typescript/bin/tsc', '-p', settings('react'))).toBe('');
  });
  it('hold in Vue, templates included', async () => {
    expect(await complaints('vue-tsc/bin/vue-tsc.js', '-p', settings('vue'))).toBe('');
  });
  it('hold in Svelte, markup included', async () => {
    const args = ['--workspace', join(home, 'svelte'), '--tsconfig', settings('svelte')];
    expect(await complaints('svelte-check/bin/svelte-check', ...args, '--fail-on-warnings')).toBe('');
  });
  it('hold in a page of modules', async () => {
    expect(await complaints('typescript/bin/tsc', '-p', settings('ssr'))).toBe('');
  });
});

it('exchanges records and writes letters in plain Node', async () => {
  expect(await complaintsOf(join(home, 'node/exchange.mjs'))).toBe('');
});

interface Opened {
  readonly page: Page;
  /** Every warning and error on its console. */
  readonly said: string[];
}

const pages: Page[] = [];
afterEach(async () => {
  await Promise.all(pages.splice(0).map((page) => page.close()));
});

/** Opens a page and waits until the map on it is drawn. */
async function open(path: string): Promise<Opened> {
  const page = await host.browser.newPage();
  pages.push(page);
  // A guard against hanging, never a limit of speed: other browsers share the machine.
  page.setDefaultTimeout(60_000);
  await page.setViewport({ width: 1280, height: 1000 });
  const said: string[] = [];
  page.on('console', (message) => {
    if (['warn', 'error'].includes(message.type())) said.push(`${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => said.push(String(error)));
  // Lit's notice that it runs in development mode is expected; its other warnings are not.
  await page.evaluateOnNewDocument('globalThis.litIssuedWarnings = new Set(["dev-mode"])');
  await page.goto(`${host.address}/${path}`);
  await page.waitForSelector('pulse-map >>> .figure [data-place]');
  return { page, said };
}

/** What the page holds of the map, as the application, the element and the form have it. */
const held = (page: Page): Promise<{ state: string; value: string; form: string }> =>
  page.evaluate(() => ({
    state: document.querySelector('#state')?.textContent ?? '',
    value: (document.querySelector('pulse-map') as HTMLElement & { value: string }).value,
    form: String(new FormData(document.querySelector('form') as HTMLFormElement).get('pulses') ?? ''),
  }));

const pulsesIn = (text: string): unknown => (text ? (JSON.parse(text) as { pulses?: unknown }).pulses : null);

/** Waits until application, element and form agree on the pulses. */
async function agreeOn(page: Page, pulses: unknown): Promise<void> {
  await expect
    .poll(async () => {
      const { state, value, form } = await held(page);
      return [state, value, form].map(pulsesIn);
    })
    .toEqual([pulses, pulses, pulses]);
}

/** Records a grade as a person does: a click on the site, a click in the panel beside it, each once it stands still. */
async function record(page: Page, site: string, grade: string): Promise<void> {
  await page.locator(`pulse-map >>> .site[aria-label^="${site}: "]`).click();
  await page.locator(`pulse-map >>> [role=dialog] [role=radio][aria-label*="${grade}"]`).click();
}

/** Presses a button of the application by key: it moves while the reading comes in. */
async function press(page: Page, button: string): Promise<void> {
  await page.focus(button);
  await page.keyboard.press('Enter');
}

const LAST_VISIT = { femoral: { right: { grade: 'reduced' } } };
const ENTERED = { popliteal: { left: { grade: 'absent' } } };

/** Attributes that each application wrote on the map; there are no others. */
const HOSTS: readonly { name: string; path: string; attributes: readonly string[] }[] = [
  { name: 'React, rendered by the client', path: 'react/client.html', attributes: ['id', 'name'] },
  { name: 'React, hydrated', path: 'react/hydrated.html', attributes: ['id', 'name', 'value'] },
  { name: 'Vue', path: 'vue/index.html', attributes: ['id', 'name'] },
  { name: 'Svelte', path: 'svelte/index.html', attributes: ['id', 'name'] },
  { name: 'Angular', path: 'angular/index.html', attributes: ['id', 'name'] },
  { name: 'a static host', path: 'static/index.html', attributes: ['id', 'name'] },
  { name: 'a static host under a strict policy', path: 'static/strict.html', attributes: ['id', 'name'] },
  { name: 'a server that renders', path: 'ssr/index.html', attributes: ['id', 'lang', 'name', 'value'] },
];

describe.each(HOSTS)('in $name', ({ path, attributes }) => {
  it('what is entered reaches the application, and what it sets reaches the map; reset empties both', async () => {
    const { page, said } = await open(path);
    await agreeOn(page, null);
    await record(page, 'Left popliteal', 'absent');
    await agreeOn(page, ENTERED);
    await page.keyboard.press('Escape');
    await press(page, '#load');
    await agreeOn(page, LAST_VISIT);
    await page.waitForSelector('pulse-map >>> .site[aria-label^="Right femoral: "][aria-label*="educed"]');
    await record(page, 'Left popliteal', 'absent');
    await agreeOn(page, { ...LAST_VISIT, ...ENTERED });
    await page.keyboard.press('Escape');
    await press(page, 'button[type=reset]');
    await agreeOn(page, null);
    expect(said).toEqual([]);
  });

  it('the form submits the record; nothing sprouts on the element', async () => {
    const { page, said } = await open(path);
    await record(page, 'Left popliteal', 'absent');
    await agreeOn(page, ENTERED);
    const found = await page.$eval('pulse-map', (map) =>
      map.getAttributeNames().filter((name) => !/^(_ng|ng-|data-v-)/.test(name)),
    );
    expect(found.filter((name) => name !== 'class').sort()).toEqual(attributes);
    const sent = await page.evaluate(
      () =>
        new Promise<string>((done) => {
          const form = document.querySelector('form') as HTMLFormElement;
          form.addEventListener(
            'submit',
            (event) => {
              event.preventDefault();
              done(String(new FormData(form).get('pulses')));
            },
            { once: true },
          );
          form.requestSubmit();
        }),
    );
    expect(pulsesIn(sent)).toEqual(ENTERED);
    expect(said).toEqual([]);
  });
});

describe('a form action of React', () => {
  it('gets the record, keeps it in the map, and gets it again at the second save', async () => {
    const { page, said } = await open('react/action.html');
    await record(page, 'Left popliteal', 'absent');
    await agreeOn(page, ENTERED);
    await page.keyboard.press('Escape');
    const saved = () => page.evaluate(() => (globalThis as never as { saved: string[] }).saved);
    for (const times of [1, 2]) {
      await press(page, 'form button');
      await expect.poll(async () => (await saved()).map(pulsesIn)).toEqual(Array(times).fill(ENTERED));
      await agreeOn(page, ENTERED);
    }
    expect(said).toEqual([]);
  });
});

describe('a strict policy', () => {
  it('is not violated by anything that is shown, German and the picture included', async () => {
    const { page } = await open('static/strict.html');
    await press(page, '#load');
    await page.evaluate(async () => {
      const map = document.querySelector('pulse-map') as HTMLElement & { toPNG(): Promise<Blob> };
      const whole = document.querySelector('limb-examination') as HTMLElement & {
        openPart(part: string): Promise<void>;
      };
      for (const part of ['inspection', 'pulses', 'bedside', 'pressures', 'staging', 'summary'])
        await whole.openPart(part);
      await map.toPNG();
      document.documentElement.lang = 'de';
    });
    await page.waitForSelector('pulse-map >>> .site[aria-label^="Poplitea links: "]');
    const violations = () =>
      page.evaluate(() => (globalThis as never as { violations: string[] }).violations);
    expect(await violations()).toEqual([]);
    // The page's own violation is told, so that one of ours would have been.
    await page.evaluate(() => document.body.setAttribute('style', 'color: red'));
    await expect.poll(async () => (await violations()).length).toBe(1);
  });
});

describe('a page that a server rendered', () => {
  it('shows the map before any script has run', async () => {
    const page = await host.browser.newPage();
    pages.push(page);
    await page.setJavaScriptEnabled(false);
    await page.goto(`${host.address}/ssr/index.html`);
    const served = readFileSync(join(dist, 'ssr/index.html'), 'utf8');
    expect(served).toContain('<template shadowroot');
    const { root } = await (
      await page.createCDPSession()
    ).send('DOM.getDocument', { depth: -1, pierce: true });
    expect(JSON.stringify(root)).toContain('Left popliteal');
  });
});
