// Firefox by WebDriver BiDi, which has neither a pen, nor a reader's settings, nor the accessibility tree.
import { existsSync } from 'node:fs';
import { chromeLauncher } from '@web/test-runner-chrome';
import { asksNothing, beyond, pointerActions } from './beyond.mjs';
import { puppeteerCommands } from './puppeteer.mjs';

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
    launchOptions: { browser: 'firefox', executablePath: find() },
    createPage: async ({ browser }) => (await browser.createBrowserContext()).newPage(),
  });
  launched.name = 'Firefox';
  return launched;
}

const no = (what) => () => {
  throw beyond('Firefox', what);
};

export const commands = {
  ...puppeteerCommands,
  async 'real-pointer'(session, events) {
    const [{ kind }] = events;
    if (kind === 'pen') throw beyond('Firefox', 'pen');
    const page = session.browser.getPage(session.id);
    await page.browser().connection.send('input.performActions', {
      context: page.mainFrame()._id,
      actions: [
        { type: 'pointer', id: kind, parameters: { pointerType: kind }, actions: pointerActions(events) },
      ],
    });
    return true;
  },
  async 'real-media'(_session, media) {
    if (!asksNothing(media)) throw beyond('Firefox', 'command for the settings of a reader');
    return true;
  },
  'real-tree': no('command for the accessibility tree'),
  'real-print': no('PDF with tags'),
};
