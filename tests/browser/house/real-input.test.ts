import { expect, fixture, html } from '@open-wc/testing';
import { click, consoleOf, drag, emulate, focused, press, type } from '../../tools/real-input.js';

function pointerLog(element: Element): string[] {
  const log: string[] = [];
  for (const name of ['pointerdown', 'pointermove', 'pointerup', 'click']) {
    element.addEventListener(name, (event) => {
      log.push(`${name} ${(event as PointerEvent).pointerType} ${event.isTrusted}`);
    });
  }
  return log;
}

describe('the hands of the browser tests', () => {
  afterEach(() => emulate({}));

  for (const kind of ['mouse', 'pen', 'touch'] as const) {
    it(`clicks with a ${kind} as a person would`, async () => {
      const button = await fixture<HTMLButtonElement>(html`<button>Press</button>`);
      const log = pointerLog(button);
      await click(button, { kind });
      expect(log).to.include(`pointerdown ${kind} true`);
      expect(log.filter((entry) => entry === `click ${kind} true`)).to.have.length(1);
    });
  }

  it('drags a pen with the button held', async () => {
    const area = await fixture<HTMLDivElement>(
      html`<div style="width: 200px; height: 100px; touch-action: none"></div>`,
    );
    const pressure: number[] = [];
    area.addEventListener('pointermove', (event) => {
      if (event.buttons === 1 && event.pointerType === 'pen') pressure.push(event.pressure);
    });
    const box = area.getBoundingClientRect();
    await drag(
      [
        [box.x + 10, box.y + 10],
        [box.x + 150, box.y + 60],
      ],
      { kind: 'pen' },
    );
    expect(pressure.length).to.be.greaterThan(2);
    expect(Math.min(...pressure)).to.be.greaterThan(0);
  });

  it('moves the focus and types with real keys', async () => {
    const form = await fixture(
      html`<form><button type="button">First</button><input aria-label="Note" /></form>`,
    );
    form.querySelector('button')?.focus();
    await press('Tab');
    const input = form.querySelector('input');
    expect(focused()).to.equal(input);
    await type('dressing');
    await press('Control+a', 'x');
    expect(input?.value).to.equal('x');
    await press('Shift+Tab');
    expect(focused()).to.equal(form.querySelector('button'));
  });

  it("shows the page under a person's settings", async () => {
    // Apart, since forced colours decide by their ground whether a page is light or dark.
    // Source: https://www.w3.org/TR/css-color-adjust-1/#forced, as Firefox does it.
    for (const [media, query] of [
      [{ forcedColors: 'active' }, '(forced-colors: active)'],
      [{ colorScheme: 'dark' }, '(prefers-color-scheme: dark)'],
      [{ reducedMotion: 'reduce' }, '(prefers-reduced-motion: reduce)'],
      [{ media: 'print' }, 'print'],
    ] as const) {
      await emulate(media);
      expect(matchMedia(query).matches, query).to.equal(true);
    }
    await emulate({ forcedColors: 'active', media: 'print' });
    await emulate({});
    expect(matchMedia('(forced-colors: active)').matches).to.equal(false);
    expect(matchMedia('print').matches).to.equal(false);
  });

  it('shows it to the style sheets of what is open, too', async () => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('p { color: red } @media (prefers-reduced-motion: reduce) { p { color: green } }');
    const box = await fixture<HTMLElement>(html`<div></div>`);
    const root = box.attachShadow({ mode: 'open' });
    root.adoptedStyleSheets = [sheet];
    const text = root.appendChild(document.createElement('p'));
    for (const [reducedMotion, color] of [
      ['no-preference', 'rgb(255, 0, 0)'],
      ['reduce', 'rgb(0, 128, 0)'],
      ['no-preference', 'rgb(255, 0, 0)'],
    ] as const) {
      await emulate({ reducedMotion });
      expect(getComputedStyle(text).color, reducedMotion).to.equal(color);
    }
  });

  it('hears what is written to the console on purpose', async () => {
    expect(await consoleOf(() => console.warn('expected'))).to.deep.equal(['expected']);
  });
});
