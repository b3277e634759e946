// Chromium, driven by its own protocol, which alone has a pen, the settings of a reader, the accessibility tree and PDF with tags.
import { chromeLauncher } from '@web/test-runner-chrome';
import { BROWSER_FLAGS, findBrowser } from '../../../.tools/find-browser.mjs';
import { readPdf } from '../read-pdf.mjs';
import { puppeteerCommands, QUIET } from './puppeteer.mjs';

/**
 * No memory for tiles: a page is laid out and its painting recorded as ever, but not filled with pixels, which no test reads from the
 * screen and which took a quarter of the time without a graphics card.
 */
const NO_PIXELS = '--force-gpu-mem-available-mb=0';

/**
 * A page that is left is not kept whole for a way back: each file of tests would leave its document and its process behind, and the next
 * start a process and compile the same code anew.
 */
const NO_WAY_BACK = '--disable-features=BackForwardCache';

export function launcher() {
  const executablePath = findBrowser();
  if (!executablePath)
    throw new Error('No browser: install Chrome or Chromium, or set CHROME_PATH to its program.');
  return chromeLauncher({
    launchOptions: { executablePath, args: [...BROWSER_FLAGS, NO_PIXELS, NO_WAY_BACK], ...QUIET },
    // A context each: two files running at once share no storage and neither loses the focus to the other.
    async createPage({ browser }) {
      const context = await browser.createBrowserContext();
      const page = await context.newPage();
      const cdp = await page.createCDPSession();
      await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: true });
      return page;
    },
  });
}

const sessions = new WeakMap();

async function devtools(session) {
  const page = session.browser.getPage(session.id);
  if (!sessions.has(page)) sessions.set(page, await page.createCDPSession());
  return sessions.get(page);
}

const POINTER_EVENTS = { move: 'mouseMoved', down: 'mousePressed', up: 'mouseReleased' };
const TOUCH_EVENTS = { move: 'touchMove', down: 'touchStart', up: 'touchEnd' };

async function pointer(
  cdp,
  { kind, type, x, y, button = 'left', pressed = false, clickCount = 1, force = 0.5 },
) {
  if (kind === 'touch') {
    const touchPoints = type === 'up' ? [] : [{ x, y, force }];
    await cdp.send('Input.dispatchTouchEvent', { type: TOUCH_EVENTS[type], touchPoints });
    return;
  }
  const held = type === 'down' || pressed;
  await cdp.send('Input.dispatchMouseEvent', {
    type: POINTER_EVENTS[type],
    x,
    y,
    button: type === 'move' && !pressed ? 'none' : button,
    buttons: held && type !== 'up' ? (button === 'right' ? 2 : 1) : 0,
    clickCount: type === 'move' ? 0 : clickCount,
    pointerType: kind === 'pen' ? 'pen' : 'mouse',
    force: kind === 'pen' && held ? force : 0,
  });
}

async function act(session, events) {
  const cdp = await devtools(session);
  for (const event of events) await pointer(cdp, event);
  return true;
}

/** What the runner's own commands do not do; see real-input.ts. */
export const commands = {
  ...puppeteerCommands,
  'real-pointer': act,
  'real-swipe': act,
  async 'real-media'(session, media) {
    const cdp = await devtools(session);
    await cdp.send('Emulation.setEmulatedMedia', media);
    return true;
  },
  async 'real-tree'(session) {
    const cdp = await devtools(session);
    const { nodes } = await cdp.send('Accessibility.getFullAXTree');
    return nodes
      .filter((node) => !node.ignored)
      .map(({ role, name }) => ({ role: role?.value ?? '', name: name?.value ?? '' }));
  },
  async 'real-print'(session, options) {
    const cdp = await devtools(session);
    const { data } = await cdp.send('Page.printToPDF', {
      preferCSSPageSize: true,
      generateTaggedPDF: true,
      ...options,
    });
    return readPdf(new Uint8Array(Buffer.from(data, 'base64')));
  },
};
