/* global document, indexedDB */
// What a machine does to a page in the middle of an entry, with the built demo in a real browser: killed, disk full, storage refused, a
// later version of the database, the clock set back, the connection gone, a part that cannot be fetched. Nothing that the page called
// kept may be lost, and each fault is told in a sentence. Run after `vite build --config demo/vite.config.ts`.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { launch } from 'puppeteer-core';
import { BROWSER_FLAGS } from '../../.tools/find-browser.mjs';
import { browserOrInstall } from '../../.tools/install-browser.mjs';
import { ServedDemo } from './serve-demo.mjs';

const WAIT = { timeout: 60_000 };
const FOLLOWS = 'The reading follows once the rest of the map has been fetched';
const FORM = '#/patients/okafor/visits/new';
const executablePath = browserOrInstall();

const browsers = [];
const profiles = [];

/** A folder for a profile, on a disk of `megabytes` of its own where given; nothing where this machine lets us mount none. */
function profile(megabytes) {
  const folder = mkdtempSync(join(tmpdir(), 'pulse-map-profile-'));
  profiles.push({ folder, mounted: megabytes !== undefined });
  if (megabytes === undefined) return folder;
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder], { stdio: 'ignore' });
    return folder;
  } catch {
    profiles.at(-1).mounted = false;
    return undefined;
  }
}

async function open(userDataDir, before) {
  const browser = await launch({ executablePath, userDataDir, args: BROWSER_FLAGS });
  browsers.push(browser);
  const page = await browser.newPage();
  page.setDefaultTimeout(WAIT.timeout);
  const uncaught = [];
  page.on('pageerror', (error) => uncaught.push(error.stack ?? String(error)));
  await before?.(page);
  return { browser, page, uncaught };
}

/** Everything that is read on the page, with what stands in shadow trees. */
const text = (page) =>
  page.evaluate(() => {
    const inside = (root) =>
      [...root.querySelectorAll('*')].flatMap(({ shadowRoot }) =>
        shadowRoot ? [shadowRoot.textContent, ...inside(shadowRoot)] : [],
      );
    return [document.body.innerText, ...inside(document)].join('\n');
  });
async function shows(page, words) {
  const end = Date.now() + WAIT.timeout;
  while (!(await text(page)).includes(words))
    if (Date.now() > end) assert.fail(`shows "${words}"; it shows:\n${await text(page)}`);
}

const press = (page, name) =>
  page.evaluate((wanted) => {
    const button = [...document.querySelectorAll('button')].find((one) => one.innerText.trim() === wanted);
    if (!button) throw new Error(`no button "${wanted}"`);
    button.click();
  }, name);

/** The form of a new visit, ready for entry. */
async function form(page, address) {
  await page.goto(`${address}${FORM}`);
  await page.waitForFunction(
    () => document.querySelector('pulse-map')?.shadowRoot?.querySelector('[role=button], button'),
    WAIT,
  );
}

/** Types at the end of a field as a person does. */
async function type(page, field, words) {
  await page.focus(`#field-${field}`);
  await page.keyboard.press('End');
  await page.keyboard.type(words);
}

/** Records by the keyboard that no pulse is felt at the first site of the map. */
async function grade(page) {
  await page.evaluate(() => {
    const map = document.querySelector('pulse-map');
    const site = [...map.shadowRoot.querySelectorAll('[role=button], button')].find((one) =>
      one.getAttribute('aria-label')?.startsWith('Left femoral: '),
    );
    site.focus();
  });
  await page.keyboard.press('0');
  assert.match(await recorded(page), /"femoral":\{"left":\{"grade":"absent"/);
}

const recorded = (page) => page.evaluate(() => document.querySelector('pulse-map').value);
const field = (page, name) => page.$eval(`#field-${name}`, ({ value }) => value);

/** Fills in what the form asks for, and saves. */
async function save(page) {
  await page.type('#field-examiner', 'A. Tester');
  await page.select('#field-reason', await page.$eval('#field-reason', (reason) => reason.options[1].value));
  await press(page, 'Save visit');
}

/** What the database itself keeps as the draft of the form. */
const draft = (page) =>
  page.evaluate(
    () =>
      new Promise((done, fail) => {
        const request = indexedDB.open('alder-row-clinic');
        request.onerror = () => fail(request.error);
        request.onsuccess = () => {
          const all = request.result.transaction('drafts').objectStore('drafts').getAll();
          all.onsuccess = () => {
            request.result.close();
            done(all.result[0]);
          };
        };
      }),
  );

/** Waits until the page's draft holds a text in a field. */
async function kept(page, name, words) {
  for (let end = Date.now() + WAIT.timeout; Date.now() < end;) {
    if ((await draft(page))?.fields[name] === words) return;
  }
  assert.fail(`the draft holds "${words}"; it is ${JSON.stringify(await draft(page))}`);
}

const FAULTS = {
  async 'killed in the middle of an entry'(address) {
    const userDataDir = profile();
    const first = await open(userDataDir);
    await form(first.page, address);
    await grade(first.page);
    await type(first.page, 'plan', 'Duplex to-morr');
    await kept(first.page, 'plan', 'Duplex to-morr');
    first.browser.process().kill('SIGKILL');
    await new Promise((gone) => first.browser.process().once('exit', gone));
    const { page, uncaught } = await open(userDataDir);
    await form(page, address);
    await shows(page, 'Everything entered is here again.');
    assert.equal(await field(page, 'plan'), 'Duplex to-morr');
    assert.match(await recorded(page), /"femoral":\{"left":\{"grade":"absent"/);
    assert.deepEqual(uncaught, []);
  },

  async 'a disk that is full, then freed'(address) {
    const userDataDir = profile(64);
    if (!userDataDir) return 'not tried: this machine lets a test mount no disk of its own';
    const { page, uncaught } = await open(userDataDir);
    await form(page, address);
    await grade(page);
    await type(page, 'plan', 'Duplex');
    await kept(page, 'plan', 'Duplex');
    const ballast = join(userDataDir, 'ballast');
    const file = openSync(ballast, 'w');
    for (let size = 1 << 20; size >= 1;) {
      try {
        writeSync(file, Buffer.alloc(size));
      } catch {
        size = Math.floor(size / 2);
      }
    }
    closeSync(file);
    // The database writes into room it has already, until that is used up.
    const end = Date.now() + WAIT.timeout;
    for (let told = false, more = 0; !told && Date.now() < end; more += 1) {
      await page.$eval(
        '#field-story',
        (story, text) => {
          story.value = text;
          story.dispatchEvent(new Event('input', { bubbles: true }));
        },
        `${more} ${'x'.repeat(50_000)}`,
      );
      told = (await text(page)).includes('The draft cannot be kept');
    }
    await shows(page, 'The draft cannot be kept');
    const plan = await field(page, 'plan');
    await save(page);
    await shows(page, 'Nothing you entered is lost; it still stands in this form.');
    assert.equal(await field(page, 'plan'), plan);
    assert.match(await recorded(page), /"femoral":\{"left":\{"grade":"absent"/);
    rmSync(ballast);
    await press(page, 'Save visit');
    await shows(page, 'saved.');
    assert.deepEqual(uncaught, []);
  },

  async 'a browser that refuses all storage'(address) {
    const userDataDir = profile();
    const { page, uncaught } = await open(userDataDir, (one) =>
      one.evaluateOnNewDocument(() => {
        const refuse = () => {
          throw new DOMException('The operation is insecure.', 'SecurityError');
        };
        for (const name of ['indexedDB', 'localStorage', 'sessionStorage'])
          Object.defineProperty(globalThis, name, { configurable: true, get: refuse });
      }),
    );
    await page.goto(`${address}${FORM}`);
    await shows(page, 'The records cannot be reached');
    await shows(page, 'it may keep nothing for this page.');
    assert.deepEqual(uncaught, []);
  },

  async 'a browser that refuses the small stores alone'(address) {
    const userDataDir = profile();
    const { page, uncaught } = await open(userDataDir, (one) =>
      one.evaluateOnNewDocument(() => {
        for (const method of ['getItem', 'setItem', 'removeItem'])
          Storage.prototype[method] = () => {
            throw new DOMException('no room', 'QuotaExceededError');
          };
      }),
    );
    await form(page, address);
    await grade(page);
    await type(page, 'plan', 'Duplex');
    await kept(page, 'plan', 'Duplex');
    assert.deepEqual(uncaught, []);
  },

  async 'a database that a later version of the page has kept'(address) {
    const userDataDir = profile();
    const { page, uncaught } = await open(userDataDir);
    await page.goto(`${address}#/about`);
    await page.evaluate(
      () =>
        new Promise((done) => {
          const request = indexedDB.open('alder-row-clinic', 99);
          request.onsuccess = () => done(request.result.close());
        }),
    );
    await page.goto('about:blank');
    await page.goto(`${address}${FORM}`);
    await shows(
      page,
      'a later version of this page has kept records here. Load the page again to get that version.',
    );
    assert.deepEqual(uncaught, []);
  },

  async 'a clock that is set back'(address) {
    const userDataDir = profile();
    const { page, uncaught } = await open(userDataDir, (one) =>
      one.evaluateOnNewDocument(() => {
        const Real = Date;
        globalThis.setBack = 0;
        globalThis.Date = class extends Real {
          constructor(...given) {
            super(...(given.length ? given : [Real.now() - globalThis.setBack]));
          }
          static now() {
            return Real.now() - globalThis.setBack;
          }
        };
      }),
    );
    await form(page, address);
    await grade(page);
    await type(page, 'plan', 'Duplex');
    await kept(page, 'plan', 'Duplex');
    await page.evaluate(() => (globalThis.setBack = 5 * 365 * 86_400_000));
    await type(page, 'plan', ' on Monday');
    await kept(page, 'plan', 'Duplex on Monday');
    await page.reload();
    await shows(page, 'Everything entered is here again.');
    assert.equal(await field(page, 'plan'), 'Duplex on Monday');
    assert.match(await recorded(page), /"femoral":\{"left":\{"grade":"absent"/);
    await save(page);
    await shows(page, 'saved.');
    assert.deepEqual(uncaught, []);
  },

  async 'a connection that is gone in the middle of an entry'(address, demo) {
    const userDataDir = profile();
    const { page, uncaught } = await open(userDataDir);
    await page.goto(address);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    await form(page, address);
    await page.reload();
    await page.waitForFunction(() => Boolean(navigator.serviceWorker.controller), WAIT);
    await form(page, address);
    await type(page, 'plan', 'Duplex');
    await demo.stop();
    await grade(page);
    await type(page, 'plan', ' offline');
    await kept(page, 'plan', 'Duplex offline');
    await page.reload();
    await shows(page, 'Everything entered is here again.');
    assert.equal(await field(page, 'plan'), 'Duplex offline');
    await save(page);
    await shows(page, 'saved.');
    await demo.start();
    assert.deepEqual(uncaught, []);
  },

  async 'a part of the map that cannot be fetched'(address) {
    const userDataDir = profile();
    const { page, uncaught } = await open(userDataDir);
    const first = new Set();
    let blocked = false;
    const refused = [];
    await page.setBypassServiceWorker(true);
    await page.setRequestInterception(true);
    page.on('request', (request) => {
      const { pathname } = new URL(request.url());
      if (blocked && pathname.endsWith('.js') && !first.has(pathname)) {
        refused.push(pathname);
        void request.abort();
      } else {
        first.add(pathname);
        void request.continue();
      }
    });
    await page.goto(`${address}#/about`);
    await shows(page, 'About this demonstration');
    blocked = true;
    await form(page, address);
    await grade(page);
    await shows(page, FOLLOWS);
    assert.ok(refused.length > 0, 'something was refused');
    await type(page, 'plan', 'Duplex');
    await kept(page, 'plan', 'Duplex');
    blocked = false;
    await page.keyboard.press('Tab');
    await grade(page);
    for (const end = Date.now() + WAIT.timeout; (await text(page)).includes(FOLLOWS);)
      assert.ok(Date.now() < end, 'the reading comes once it can be fetched');
    assert.deepEqual(uncaught, []);
  },
};

/** Ends what a fault has opened. */
async function tidy() {
  for (const browser of browsers.splice(0)) await browser.close().catch(() => undefined);
  for (const { folder, mounted } of profiles.splice(0)) {
    if (mounted) execFileSync('umount', ['-l', folder]);
    rmSync(folder, { recursive: true, force: true });
  }
}

const demo = new ServedDemo();
await demo.start();
const only = process.argv[2] ?? '';
try {
  for (const [name, fault] of Object.entries(FAULTS).filter(([name]) => name.includes(only))) {
    const start = performance.now();
    const left = await fault(demo.address, demo).catch((error) => {
      error.message = `${name}: ${error.message}`;
      throw error;
    });
    await tidy();
    console.log(
      `${name}: ${left ?? `nothing lost, and told (${Math.round((performance.now() - start) / 1000)} s)`}`,
    );
  }
} finally {
  await tidy();
  await demo.end();
}
