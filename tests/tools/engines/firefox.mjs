// Firefox by WebDriver BiDi, and by scripts in its own window where that has no command.
import { existsSync } from 'node:fs';
import { chromeLauncher } from '@web/test-runner-chrome';
import { beyond, pointerActions } from './beyond.mjs';
import { emulate, INSIDE_FLAG, pen, prepare, showFull, tree } from './firefox-inside.mjs';
import { puppeteerCommands, QUIET } from './puppeteer.mjs';

const PROGRAMS = [
  '/usr/bin/firefox-esr',
  '/usr/bin/firefox',
  '/Applications/Firefox.app/Contents/MacOS/firefox',
  'C:/Program Files/Mozilla Firefox/firefox.exe',
];

export const packages = ['firefox-esr'];
export const find = () => process.env.FIREFOX_PATH ?? PROGRAMS.find(existsSync);

export function launcher() {
  const launched = chromeLauncher({
    launchOptions: { browser: 'firefox', executablePath: find(), args: [INSIDE_FLAG], ...QUIET },
    async createPage({ browser }) {
      const page = await (await browser.createBrowserContext()).newPage();
      await prepare(page);
      return page;
    },
    // One page at a time has the focus.
    concurrency: 1,
  });
  launched.name = 'Firefox';
  return launched;
}

const pageOf = (session) => session.browser.getPage(session.id);

export const commands = {
  ...puppeteerCommands,
  async 'real-pointer'(session, events) {
    const [{ kind }] = events;
    const page = pageOf(session);
    if (kind === 'pen') return pen(page, events);
    await page.browser().connection.send('input.performActions', {
      context: page.mainFrame()._id,
      actions: [
        { type: 'pointer', id: kind, parameters: { pointerType: kind }, actions: pointerActions(events) },
      ],
    });
    return true;
  },
  'real-swipe'() {
    throw beyond('firefox', 'swipe that scrolls');
  },
  async 'real-media'(session, media) {
    await emulate(pageOf(session), media);
    return true;
  },
  'real-size': (session, isFull) => showFull(pageOf(session), isFull),
  'real-tree': (session) => tree(pageOf(session)),
  'real-print'() {
    throw beyond('firefox', 'tagged PDF');
  },
};
