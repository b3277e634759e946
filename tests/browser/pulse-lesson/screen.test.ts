import { expect, fixture, html } from '@open-wc/testing';
import { SHIPPED_LESSON_IDS, shippedLesson, stepsOf } from '../../../src/lesson/index.js';
import type { PulseLesson } from '../../../src/elements/pulse-lesson/element.js';
import '../../../src/elements/pulse-lesson/define.js';
import '../../../src/locale/de/register.js';
import { consoleOf, emulate, press, setViewport } from '../../tools/real-input.js';
import { contrast } from '../tools/contrast.js';
import { until } from '../tools/until.js';

let rooms = 0;

async function screenOf(id: (typeof SHIPPED_LESSON_IDS)[number]): Promise<PulseLesson> {
  const lesson = await shippedLesson(id);
  const page = await fixture<HTMLElement>(
    html`<main>
      <p>Above</p>
      <pulse-lesson .lesson=${lesson} channel=${`screen ${rooms++}`} style="inline-size:960px"></pulse-lesson>
      <p>Below</p>
    </main>`,
  );
  const screen = page.querySelector('pulse-lesson')!;
  await screen.updateComplete;
  return screen;
}
const button = (screen: PulseLesson): HTMLButtonElement =>
  screen.shadowRoot!.querySelector<HTMLButtonElement>('[data-act="full"]')!;
const refusal = (screen: PulseLesson): string =>
  screen.shadowRoot!.querySelector('.controls [role=status]')?.textContent?.trim() ?? '';

/** A lock of the screen that a test can watch. */
class Lock extends EventTarget {
  released = false;
  release(): Promise<void> {
    this.released = true;
    return Promise.resolve();
  }
}

/** Puts something in the place of the browser's own lock while a test runs. */
async function withWakeLock(request: (kind: string) => Promise<unknown>, during: () => Promise<void>) {
  Object.defineProperty(navigator, 'wakeLock', { configurable: true, value: { request } });
  try {
    await during();
  } finally {
    Reflect.deleteProperty(navigator, 'wakeLock');
    if (document.fullscreenElement) await document.exitFullscreen();
  }
}

const WINDOW = { width: 1280, height: 720 };

describe('a lesson in full screen', () => {
  beforeEach(() => setViewport(WINDOW));
  afterEach(async () => {
    if (document.fullscreenElement) await document.exitFullscreen();
  });

  for (const key of ['f', 'F5'])
    it(`fills the screen at the key ${key} with nothing but the lesson, and leaves it again`, async () => {
      const screen = await screenOf('superficial-femoral');
      screen.goTo('pulse left femoral');
      await press(key);
      await until(() => screen.matches(':fullscreen'), 'the screen is filled');
      await until(
        () => getComputedStyle(screen.shadowRoot!.querySelector('.controls')!).display === 'none',
        'the controls are gone',
      );
      const others = new Set<string>();
      for (let x = 0.02; x < 1; x += 0.06)
        for (let y = 0.02; y < 1; y += 0.06) {
          const hit = document.elementFromPoint(x * innerWidth, y * innerHeight);
          if (hit !== screen) others.add(hit?.localName ?? 'nothing');
        }
      expect([...others].join(' ')).to.equal('');
      const slide = screen.shadowRoot!.querySelector('.slide')!.getBoundingClientRect();
      expect(slide.width / slide.height).to.be.closeTo(16 / 9, 0.02);
      expect(Math.max(slide.width / innerWidth, slide.height / innerHeight)).to.be.closeTo(1, 0.01);
      await press(key);
      await until(() => !document.fullscreenElement, 'the screen is left');
      expect(screen.step).to.equal('pulse left femoral');
    });

  it('fills it by the button, which says whether it does', async () => {
    const screen = await screenOf('superficial-femoral');
    expect(button(screen).getAttribute('aria-pressed')).to.equal('false');
    button(screen).focus();
    await press('Enter');
    await until(() => screen.matches(':fullscreen'), 'the screen is filled');
    await until(() => button(screen).getAttribute('aria-pressed') === 'true', 'the button says so');
  });

  it('goes on as it was where it is refused, and says so until it is granted', async () => {
    const screen = await screenOf('superficial-femoral');
    screen.requestFullscreen = () => Promise.reject(new TypeError('not allowed'));
    screen.goTo('inspection');
    const said = await consoleOf(async () => {
      await press('f');
      await until(() => refusal(screen), 'it is said');
    });
    expect(said).to.deep.equal([]);
    expect(refusal(screen)).to.include('did not fill the screen');
    expect(document.fullscreenElement === null).to.equal(true);
    expect(screen.step).to.equal('inspection');
    Reflect.deleteProperty(screen, 'requestFullscreen');
    await press('f');
    await until(() => screen.matches(':fullscreen'), 'the screen is filled');
    await until(() => !refusal(screen), 'nothing is said any more');
  });

  it('keeps the screen on from its start to its end, and again once it was hidden', async () => {
    const locks: Lock[] = [];
    const kinds: string[] = [];
    await withWakeLock(
      (kind) => {
        kinds.push(kind);
        locks.push(new Lock());
        return Promise.resolve(locks.at(-1));
      },
      async () => {
        const screen = await screenOf('superficial-femoral');
        document.dispatchEvent(new Event('visibilitychange'));
        expect(kinds).to.deep.equal([]);
        await press('f');
        await until(() => kinds.length === 1, 'the lock is asked for');
        document.dispatchEvent(new Event('visibilitychange'));
        await screen.updateComplete;
        expect(kinds).to.deep.equal(['screen']);
        // The browser takes the lock away while the page is hidden.
        locks[0]!.released = true;
        document.dispatchEvent(new Event('visibilitychange'));
        await until(() => kinds.length === 2, 'it is asked for again');
        await press('f');
        await until(() => locks[1]!.released, 'it is given back');
      },
    );
    expect(kinds).to.deep.equal(['screen', 'screen']);
  });

  it('goes on without noise where the lock is refused, or there is none', async () => {
    let asked = 0;
    const refuse = (): Promise<never> => {
      asked++;
      return Promise.reject(new DOMException('low battery', 'NotAllowedError'));
    };
    const refused = await consoleOf(() =>
      withWakeLock(refuse, async () => {
        const screen = await screenOf('superficial-femoral');
        await press('f');
        await until(() => asked === 1, 'the lock is asked for');
        await press('PageDown');
        await until(() => screen.step !== undefined, 'the lesson goes on');
        screen.parentElement!.remove();
        // A browser that is still leaving the screen does not fill it again.
        await until(() => innerHeight === WINDOW.height, 'the screen is left');
      }),
    );
    expect(refused).to.deep.equal([]);
    Object.defineProperty(navigator, 'wakeLock', { configurable: true, value: undefined });
    try {
      const missing = await consoleOf(async () => {
        const screen = await screenOf('superficial-femoral');
        await press('f');
        await until(() => screen.matches(':fullscreen'), 'the screen is filled');
      });
      expect(missing).to.deep.equal([]);
    } finally {
      Reflect.deleteProperty(navigator, 'wakeLock');
    }
  });
});

type Colour = readonly [r: number, g: number, b: number, alpha: number];

function colourOf(css: string): Colour {
  const [r = 0, g = 0, b = 0, alpha = 1] = [...css.matchAll(/[\d.]+/g)].map(([n]) => Number(n));
  return [r, g, b, css === 'none' ? 0 : alpha];
}
/** What a text of the figure stands on: its halo, the shape of its glyph, else the paper. */
function groundOf(node: Element): Colour {
  if (node instanceof SVGElement) {
    const { stroke, strokeWidth } = getComputedStyle(node);
    if (stroke !== 'none' && parseFloat(strokeWidth) > 0) return colourOf(stroke);
    const shape = node.previousElementSibling && getComputedStyle(node.previousElementSibling).fill;
    if (shape && shape !== 'none' && node.closest('[class*="g-"]')) return colourOf(shape);
  }
  for (let at: Element | null = node; at; at = at.parentElement) {
    const ground = colourOf(getComputedStyle(at).backgroundColor);
    if (ground[3] === 1) return ground;
  }
  return [255, 255, 255, 1];
}

describe('every text of every slide', () => {
  afterEach(() => emulate({}));

  for (const colorScheme of ['light', 'dark'] as const)
    it(`stands out 7 to 1 and is at least 28 of 1080 lines high, on a page that is ${colorScheme}`, async () => {
      await setViewport({ width: 1920, height: 1080 });
      await emulate({ colorScheme });
      const faint = new Set<string>();
      const small = new Set<string>();
      let texts = 0;
      for (const id of SHIPPED_LESSON_IDS) {
        const screen = await screenOf(id);
        const slide = screen.shadowRoot!.querySelector<HTMLElement>('.slide')!;
        const unit = slide.clientWidth / 1920;
        const look = (where: string): void => {
          const walker = document.createTreeWalker(slide, NodeFilter.SHOW_TEXT);
          for (let text = walker.nextNode(); text; text = walker.nextNode()) {
            const node = text.parentElement!;
            if (!text.nodeValue?.trim() || node.closest('.hidden-visually, style')) continue;
            const style = getComputedStyle(node);
            const drawn = node instanceof SVGGraphicsElement;
            const scale = drawn ? node.getScreenCTM()!.a : 1;
            texts++;
            if (parseFloat(style.fontSize) * scale < 27.9 * unit)
              small.add(`${where}: ${text.nodeValue.trim()} ${(parseFloat(style.fontSize) * scale) / unit}`);
            const found = contrast(
              colourOf(drawn ? style.fill : style.color).slice(0, 3),
              groundOf(node).slice(0, 3),
            );
            if (found < 7) faint.add(`${where}: ${text.nodeValue.trim()} ${found.toFixed(1)}`);
          }
        };
        look(`${id} title`);
        for (const step of stepsOf(screen.lesson!)) {
          screen.goTo(step.id);
          await screen.updateComplete;
          look(`${id} ${step.id}`);
          screen.shadowRoot!.querySelector<HTMLButtonElement>('[data-act="reveal"]')!.click();
          await screen.updateComplete;
          look(`${id} ${step.id} revealed`);
        }
        screen.parentElement!.remove();
      }
      expect([...faint].slice(0, 20).join('\n')).to.equal('');
      expect([...small].slice(0, 20).join('\n')).to.equal('');
      expect(texts).to.be.greaterThan(10_000);
    }).timeout(120_000);
});

describe('the first slide', () => {
  before(() => setViewport({ width: 1440, height: 900 }));

  it('gives its figure the height of the slide, and the figure most of its frame', async () => {
    const screen = await screenOf('superficial-femoral');
    const [slide, picture] = ['.slide', '.opening .picture'].map((part) =>
      screen.shadowRoot!.querySelector(part)!.getBoundingClientRect(),
    );
    expect(picture!.height / slide!.height).to.be.within(0.8, 0.92);
    const body = screen.shadowRoot!.querySelector('.opening .picture .body')!.getBoundingClientRect();
    expect(body.width / picture!.width).to.be.at.least(0.6);
  });
});
