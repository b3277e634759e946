// What WebDriver BiDi has no command for, done by scripts in Firefox's own window, which may do what the browser itself may.
// Each of the functions up to `asked` runs there: it sees nothing of this file, and takes and gives what JSON can hold. It gets `page`,
// the page's context, and `there`, which runs a function in the process of the page.

/* global Cc, ChromeUtils, Ci, content */

/**
 * Takes away the bars around the page: Tab would lead into them, and the page be without the focus for the next test. Shows the page at a
 * tenth of its size: to itself it is as large as ever, but pixels, which no test reads from the screen, took a fifth of the time.
 */
function preparePage({ page }) {
  page.topChromeWindow.document.getElementById('navigator-toolbox').hidden = true;
  Object.assign(page.embedderElement.style, { transform: 'scale(0.1)', transformOrigin: '0 0' });
}

/** Shows the page at its own size, so that it scrolls by pixels of its own, or small again. */
async function setSize({ page, there }, isFull) {
  page.embedderElement.style.transform = isFull ? 'none' : 'scale(0.1)';
  // Told to the page with what is painted next.
  await new Promise((done) => {
    page.topChromeWindow.requestAnimationFrame(() => page.topChromeWindow.requestAnimationFrame(done));
  });
  await there(() => undefined);
}

/** The settings of a reader. */
async function setMedia({ page, there }, { media, features }) {
  const asked = Object.fromEntries(features.map(({ name, value }) => [name, value]));
  page.mediumOverride = media;
  page.prefersColorSchemeOverride = asked['prefers-color-scheme'] || 'none';
  page.prefersReducedMotionOverride = asked['prefers-reduced-motion'] || 'none';
  page.forcedColorsOverride = asked['forced-colors'] || 'none';
  // Told to the page in order, so that by the answer it has them.
  await there(() => undefined);
}

/** Moves, presses and lifts a pen. */
function movePen({ there }, events) {
  return there((list) => {
    const MOZ_SOURCE_PEN = 2;
    const IDENTIFIER = 1;
    for (const [type, x, y, pen] of list)
      content.synthesizeMouseEvent(
        type,
        x,
        y,
        { identifier: IDENTIFIER, inputSource: MOZ_SOURCE_PEN, ...pen },
        { isDOMEventSynthesized: false, isWidgetEventSynthesized: false },
      );
  }, events);
}

/** Role and name of everything, as assistive technology is told. */
async function readTree({ page, there }) {
  const service = Cc['@mozilla.org/accessibilityService;1'].getService(Ci.nsIAccessibilityService);
  const read = () => {
    const nodes = [];
    const walk = (node) => {
      nodes.push({ role: node.computedARIARole, name: node.name ?? '' });
      for (let i = 0; i < node.childCount; i++) walk(node.getChildAt(i));
    };
    const document = service.getAccessibleFor(page.embedderElement)?.firstChild;
    if (!document) return { busy: true, nodes };
    const state = {};
    document.getState(state, {});
    walk(document);
    return { busy: (state.value & Ci.nsIAccessibleStates.STATE_BUSY) !== 0, nodes };
  };
  // The first question starts the service, which then reads the whole page; it follows the page at its frames.
  for (let last = ''; ;) {
    await there(
      () =>
        new Promise((done) => {
          content.requestAnimationFrame(() => content.requestAnimationFrame(done));
        }),
    );
    const { busy, nodes } = read();
    const now = JSON.stringify(nodes);
    if (!busy && now === last) return nodes;
    last = now;
  }
}

/** Runs in the window: finds the page and how to reach its process. */
async function asked(run, id, args) {
  const { NavigableManager } = ChromeUtils.importESModule(
    'chrome://remote/content/shared/NavigableManager.sys.mjs',
  );
  const page = NavigableManager.getBrowsingContextById(id);
  const there = (fn, ...given) => {
    const { messageManager } = page.embedderElement;
    const answer = `pulse-map-${Math.random()}`;
    const script = `(async () => (${fn})(...${JSON.stringify(given)}))().then(
      () => sendAsyncMessage('${answer}', ''),
      (error) => sendAsyncMessage('${answer}', String(error)),
    )`;
    return new Promise((done, fail) => {
      messageManager.addMessageListener(answer, function heard({ data }) {
        messageManager.removeMessageListener(answer, heard);
        if (data) fail(new Error(data));
        else done();
      });
      messageManager.loadFrameScript(`data:application/javascript,${encodeURIComponent(script)}`, false);
    });
  };
  return JSON.stringify((await run({ page, there }, ...args)) ?? true);
}

async function inside(page, run, ...args) {
  const { connection } = page.browser();
  const { result: tree } = await connection.send('browsingContext.getTree', { 'moz:scope': 'chrome' });
  const { result } = await connection.send('script.callFunction', {
    functionDeclaration: `(id, args) => (${asked})(${run}, id, JSON.parse(args))`,
    arguments: [page.mainFrame()._id, JSON.stringify(args)].map((value) => ({ type: 'string', value })),
    target: { context: tree.contexts[0].context },
    awaitPromise: true,
  });
  if (result.type === 'exception') throw new Error(`Firefox: ${result.exceptionDetails.text}`);
  return JSON.parse(result.result.value);
}

/** Without this flag the window is out of reach. */
export const INSIDE_FLAG = '--remote-allow-system-access';

export const prepare = (page) => inside(page, preparePage);
export const emulate = (page, media) => inside(page, setMedia, media);
export const showFull = (page, isFull) => inside(page, setSize, isFull);
export const tree = (page) => inside(page, readTree);

const TYPES = { move: 'mousemove', down: 'mousedown', up: 'mouseup' };

export function pen(page, events) {
  return inside(
    page,
    movePen,
    events.map(({ type, x, y, button = 'left', pressed = false, clickCount = 1, force = 0.5 }) => {
      const held = type === 'down' || pressed;
      const number = button === 'right' ? 2 : 0;
      return [
        TYPES[type],
        x,
        y,
        {
          button: number,
          buttons: held ? (number === 2 ? 2 : 1) : 0,
          clickCount: type === 'move' ? 0 : clickCount,
          pressure: held ? force : 0,
        },
      ];
    }),
  );
}
