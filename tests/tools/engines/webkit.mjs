// WebKit (WebKitGTK) by its own WebDriver, on a screen of its own with a window manager: without an active window nothing has the focus.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort } from '../free-port.mjs';
import { beyond, pointerActions } from './beyond.mjs';

const DRIVER = '/usr/bin/WebKitWebDriver';
const LIBRARIES = '/usr/lib';

/** The browser lies in a folder of the machine's kind: `x86_64-linux-gnu/webkit2gtk-4.1`. */
function browser() {
  const within = (folder, name) =>
    (existsSync(folder) ? readdirSync(folder) : []).filter((one) => name.test(one));
  return within(LIBRARIES, /-linux-gnu$/)
    .flatMap((kind) =>
      within(`${LIBRARIES}/${kind}`, /^webkit2gtk-4/).map((one) => `${LIBRARIES}/${kind}/${one}/MiniBrowser`),
    )
    .find(existsSync);
}

export const packages = ['webkit2gtk-driver', 'xvfb', 'openbox', 'xsettingsd'];
export const find = () =>
  [DRIVER, '/usr/bin/Xvfb', '/usr/bin/openbox', '/usr/bin/xsettingsd'].every(existsSync)
    ? browser()
    : undefined;

/** Takes the room from the bar above the page, whose buttons would keep the window, and so the page, wider than a phone. */
const NARROW_BAR = `
  * { min-width: 0; min-height: 0; padding: 0; margin: 0; border-width: 0; font-size: 1px; }
  image { margin: 0 -8px; }
  button { margin: 0 -6px; }
`;

/** A guard against hanging, never a limit of speed: a busy machine may leave the browser without a turn for seconds. */
const PATIENCE_MS = 30_000;
const pause = () => new Promise((done) => setTimeout(done, 20));

/** No page that was left is kept for a way back. */
const BROWSER_ARGS = ['--automation', '--enable-page-cache=false'];

/** So many files of tests a browser runs one after another. It never gives all of their memory back: some 25 MB a file stay. */
const FILES_A_BROWSER = 6;

/** One screen, one driver, one browser: the driver knows no more than one at a time. */
class Driver {
  #programs = [];
  #url = '';
  #folder = mkdtempSync(join(tmpdir(), 'pulse-map-webkit-'));
  #settings;

  async start() {
    // A descriptor on which the server writes the display that it found free.
    const screen = this.#run('Xvfb', ['-displayfd', '3', '-screen', '0', '2600x2300x24'], {}, [
      'ignore',
      'ignore',
      'ignore',
      'pipe',
    ]);
    const [number] = await once(screen.stdio[3], 'data');
    const env = {
      DISPLAY: `:${String(number).trim()}`,
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1',
      // Layers put together by a graphics card that is not there took as long as all else.
      WEBKIT_DISABLE_COMPOSITING_MODE: '1',
      XDG_CONFIG_HOME: this.#folder,
    };
    mkdirSync(join(this.#folder, 'gtk-3.0'));
    writeFileSync(join(this.#folder, 'gtk-3.0', 'gtk.css'), NARROW_BAR);
    this.#run('openbox', [], env);
    this.#write({});
    this.#settings = this.#run('xsettingsd', ['-c', this.#file], env);
    const port = await freePort();
    this.#url = `http://127.0.0.1:${port}`;
    this.#run(DRIVER, [`--port=${port}`], env);
    await this.#up();
  }

  #run(program, args, env, stdio = 'ignore') {
    const child = spawn(program, args, { stdio, env: { ...process.env, ...env } });
    this.#programs.push(child);
    return child;
  }

  get #file() {
    return join(this.#folder, 'settings');
  }

  #write({ dark = false, still = false }) {
    writeFileSync(
      this.#file,
      `Net/ThemeName "${dark ? 'Adwaita-dark' : 'Adwaita'}"\nGtk/EnableAnimations ${still ? 0 : 1}\n`,
    );
  }

  /** What a person sets for the whole screen. */
  set(settings) {
    this.#write(settings);
    // Reads its file anew.
    this.#settings.kill('SIGHUP');
  }

  async #up() {
    for (const end = Date.now() + PATIENCE_MS; ;) {
      try {
        await fetch(`${this.#url}/status`);
        return;
      } catch {
        if (Date.now() > end) throw new Error('WebKitWebDriver did not start');
        await pause();
      }
    }
  }

  async ask(method, path, body) {
    const response = await fetch(`${this.#url}${path}`, {
      method,
      ...(body && { body: JSON.stringify(body) }),
    });
    const { value } = await response.json();
    if (!response.ok) throw new Error(`WebKitWebDriver: ${value?.error}: ${value?.message}`);
    return value;
  }

  stop() {
    for (const child of this.#programs.reverse()) child.kill();
    rmSync(this.#folder, { recursive: true, force: true });
  }
}

class WebKitLauncher {
  name = 'WebKit';
  type = 'webkit';
  concurrency = 1;
  #driver;
  #sessions = new Map();
  /** A browser whose tests are over, for the next file: it is up, and has most of the code. */
  #spare;
  /** How many files the browser has run that is up. */
  #files = 0;
  /** Whether less motion was asked for last. */
  #still = false;

  async initialize() {
    this.#driver = new Driver();
    await this.#driver.start();
  }

  async stop() {
    if (this.#spare) await this.#driver.ask('DELETE', `/session/${this.#spare}`).catch(() => undefined);
    this.#driver?.stop();
  }

  async startSession(id, url) {
    this.#sessions.set(id, this.#spare ?? (await this.#newSession()));
    this.#spare = undefined;
    await this.viewport(id, { width: 800, height: 600 });
    await this.ask(id, 'POST', '/url', { url });
  }

  async #newSession() {
    this.#files = 0;
    const { sessionId } = await this.#driver.ask('POST', '/session', {
      capabilities: {
        alwaysMatch: {
          browserName: 'MiniBrowser',
          pageLoadStrategy: 'none',
          'webkitgtk:browserOptions': { binary: browser(), args: BROWSER_ARGS },
        },
      },
    });
    return sessionId;
  }

  /** Hands the browser on to no other file. */
  keep() {
    this.#files = FILES_A_BROWSER;
  }

  isActive(id) {
    return this.#sessions.has(id);
  }

  getBrowserUrl(id) {
    return this.ask(id, 'GET', '/url');
  }

  async stopSession(id) {
    const session = this.#sessions.get(id);
    if (++this.#files < FILES_A_BROWSER && (await this.#emptied(id))) this.#spare = session;
    else await this.#driver.ask('DELETE', `/session/${session}`);
    this.#sessions.delete(id);
    return {};
  }

  /** Ends whatever still runs and lets go of every key and button; gives whether the browser did it. */
  async #emptied(id) {
    try {
      await this.ask(id, 'DELETE', '/actions');
      await this.ask(id, 'POST', '/url', { url: 'about:blank' });
      const script = 'return location.href';
      const now = await this.#until(
        () => this.ask(id, 'POST', '/execute/sync', { script, args: [] }),
        (url) => url === 'about:blank',
      );
      return now === 'about:blank';
    } catch {
      return false;
    }
  }

  ask(id, method, path, body) {
    return this.#driver.ask(method, `/session/${this.#sessions.get(id)}${path}`, body);
  }

  /** The size of the page; the window is larger by its frame. */
  async viewport(id, { width, height }) {
    const inner = () =>
      this.ask(id, 'POST', '/execute/sync', { script: 'return [innerWidth, innerHeight]', args: [] });
    const rect = await this.ask(id, 'GET', '/window/rect');
    const [nowWidth, nowHeight] = await inner();
    await this.ask(id, 'POST', '/window/rect', {
      x: 0,
      y: 0,
      width: rect.width + width - nowWidth,
      height: rect.height + height - nowHeight,
    });
    const [w, h] = await this.#until(inner, ([w, h]) => w === width && h === height);
    if (w !== width || h !== height)
      throw new Error(`WebKit: found a page of ${w},${h}, expected ${width},${height}`);
  }

  /** Asks until the answer is as it should be, or patience is over; gives the last answer. */
  async #until(ask, right) {
    for (const end = Date.now() + PATIENCE_MS; ; await pause()) {
      const answer = await ask();
      if (right(answer) || Date.now() > end) return answer;
    }
  }

  /** The settings of a reader, by what the desktop tells every program. */
  async settings(id, { dark, still }) {
    // An open page takes up less motion where it is asked, but in its style sheets only with a change of colours.
    if (still !== this.#still) await this.#settle(id, { dark: !dark, still });
    await this.#settle(id, { dark, still });
    this.#still = still;
  }

  async #settle(id, { dark, still }) {
    this.#driver.set({ dark, still });
    const script = `return [matchMedia('(prefers-color-scheme: dark)').matches, matchMedia('(prefers-reduced-motion: reduce)').matches]`;
    const [darkNow, stillNow] = await this.#until(
      () => this.ask(id, 'POST', '/execute/sync', { script, args: [] }),
      (now) => now[0] === dark && now[1] === still,
    );
    if (darkNow !== dark || stillNow !== still)
      throw new Error(`WebKit: found dark ${darkNow}, still ${stillNow}, expected ${dark}, ${still}`);
  }
}

export const launcher = () => new WebKitLauncher();

/** Keys by their code points in WebDriver, https://www.w3.org/TR/webdriver2/#keyboard-actions. */
const KEYS = {
  Backspace: '\uE003',
  Tab: '\uE004',
  Enter: '\uE007',
  Shift: '\uE008',
  Control: '\uE009',
  Alt: '\uE00A',
  Escape: '\uE00C',
  PageUp: '\uE00E',
  PageDown: '\uE00F',
  End: '\uE010',
  Home: '\uE011',
  ArrowLeft: '\uE012',
  ArrowUp: '\uE013',
  ArrowRight: '\uE014',
  ArrowDown: '\uE015',
  Delete: '\uE017',
  F1: '\uE031',
  F2: '\uE032',
  F5: '\uE035',
  Meta: '\uE03D',
};

function keyActions({ type, press, down, up }) {
  const code = (key) => {
    const value = KEYS[key] ?? key;
    if ([...value].length !== 1) throw new Error(`WebKit: found the key "${key}", which has no code here`);
    return value;
  };
  const stroke = (key) => [
    { type: 'keyDown', value: key },
    { type: 'keyUp', value: key },
  ];
  if (type !== undefined) return [...type].flatMap(stroke);
  if (press !== undefined) return stroke(code(press));
  return down === undefined ? [{ type: 'keyUp', value: code(up) }] : [{ type: 'keyDown', value: code(down) }];
}

async function perform(session, source) {
  await begun(session, source);
  // It answers before all of an act is done, and takes no other until then.
  await begun(session, NOTHING);
  return true;
}

const NOTHING = { type: 'none', id: 'rest', actions: [{ type: 'pause', duration: 0 }] };

async function begun({ browser, id }, source) {
  for (const end = Date.now() + PATIENCE_MS; ; await pause()) {
    try {
      await browser.ask(id, 'POST', '/actions', { actions: [source] });
      return;
    } catch (error) {
      if (Date.now() > end || !/previous interaction/.test(error.message)) throw error;
    }
  }
}

export const commands = {
  'real-pointer'(session, events) {
    const [{ kind }] = events;
    if (kind !== 'mouse') throw beyond('webkit', 'finger or pen');
    // No site was opened by a click any more in the file after one with a right click.
    if (events.some(({ button }) => button === 'right')) session.browser.keep();
    return perform(session, {
      type: 'pointer',
      id: kind,
      parameters: { pointerType: kind },
      actions: pointerActions(events, Math.round),
    });
  },
  'real-swipe'() {
    throw beyond('webkit', 'finger or pen');
  },
  'real-keys': (session, keys) => perform(session, { type: 'key', id: 'keys', actions: keyActions(keys) }),
  // Shown at its own size as it is.
  'real-size': () => true,
  'real-viewport': (session, size) => session.browser.viewport(session.id, size).then(() => true),
  async 'real-media'(session, { media, features }) {
    const asked = Object.fromEntries(features.map(({ name, value }) => [name, value]));
    if (media === 'print') throw beyond('webkit', 'page as it prints');
    if (asked['forced-colors'] === 'active') throw beyond('webkit', 'forced colours');
    await session.browser.settings(session.id, {
      dark: asked['prefers-color-scheme'] === 'dark',
      still: asked['prefers-reduced-motion'] === 'reduce',
    });
    return true;
  },
  'real-tree'() {
    throw beyond('webkit', 'accessibility tree');
  },
  'real-print'() {
    throw beyond('webkit', 'tagged PDF');
  },
};
