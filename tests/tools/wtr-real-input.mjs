// The runner's half of real-input.ts: pen, touch, mouse and media emulation spoken straight to Chromium,
// because the stock commands know neither a pen nor forced colours.
import { readPdf } from './read-pdf.mjs';

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

export function realInputPlugin() {
  return {
    name: 'real-input',
    async executeCommand({ command, payload, session }) {
      if (command === 'real-pointer') {
        const cdp = await devtools(session);
        for (const event of payload) await pointer(cdp, event);
        return true;
      }
      if (command === 'real-media') {
        const cdp = await devtools(session);
        await cdp.send('Emulation.setEmulatedMedia', payload);
        return true;
      }
      if (command === 'real-tree') {
        const cdp = await devtools(session);
        const { nodes } = await cdp.send('Accessibility.getFullAXTree');
        return nodes
          .filter((node) => !node.ignored)
          .map(({ role, name }) => ({ role: role?.value ?? '', name: name?.value ?? '' }));
      }
      if (command === 'real-print') {
        const cdp = await devtools(session);
        const { data } = await cdp.send('Page.printToPDF', {
          preferCSSPageSize: true,
          generateTaggedPDF: true,
          ...payload,
        });
        return readPdf(new Uint8Array(Buffer.from(data, 'base64')));
      }
      return undefined;
    },
  };
}
