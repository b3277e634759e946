// Keys and the size of the page, where the browser is driven by puppeteer.

/** No reports of what a page fetches and of what could be better: nobody reads them, and a page fetches a hundred files. */
export const QUIET = { networkEnabled: false, issuesEnabled: false };

const page = (session) => session.browser.getPage(session.id);

export const puppeteerCommands = {
  async 'real-keys'(session, keys) {
    // One of `type`, `press`, `down`, `up`, each the name of a method.
    for (const [act, what] of Object.entries(keys)) await page(session).keyboard[act](what);
    return true;
  },
  // Shown at its own size as it is.
  'real-size': () => true,
  async 'real-viewport'(session, size) {
    await page(session).setViewport(size);
    return true;
  },
};
