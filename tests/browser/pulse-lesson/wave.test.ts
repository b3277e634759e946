import { expect, fixture, html } from '@open-wc/testing';
import { type PulseLesson } from '../../../src/elements/pulse-lesson/element.js';
import '../../../src/elements/pulse-lesson/define.js';
import '../../../src/locale/de/register.js';
import { type Lesson, shippedLesson } from '../../../src/lesson/index.js';
import { click, emulate, press, setViewport } from '../../tools/real-input.js';
import { until } from '../tools/until.js';

async function screenOf(lesson: Lesson, lang = 'en'): Promise<PulseLesson> {
  const screen = await fixture<PulseLesson>(
    html`<pulse-lesson .lesson=${lesson} channel=${`wave ${performance.now()}`} lang=${lang}></pulse-lesson>`,
  );
  await screen.updateComplete;
  return screen;
}
const canvasOf = (screen: PulseLesson): HTMLCanvasElement => screen.shadowRoot!.querySelector('canvas')!;
const told = (screen: PulseLesson): string =>
  screen.shadowRoot!.querySelector('.slide')!.textContent!.replace(/\s+/g, ' ');
const frame = (): Promise<number> => new Promise((done) => requestAnimationFrame(done));

/** Counts what is painted, and what is heard, while something is done. */
async function counted(during: () => Promise<unknown>): Promise<{ painted: number; contexts: number }> {
  const { prototype } = CanvasRenderingContext2D;
  const { clearRect } = prototype;
  const { AudioContext: Context } = window;
  let painted = 0;
  let contexts = 0;
  prototype.clearRect = function (...box: [number, number, number, number]): void {
    painted++;
    clearRect.apply(this, box);
  };
  window.AudioContext = class extends Context {
    constructor() {
      super();
      contexts++;
    }
  };
  try {
    await during();
  } finally {
    prototype.clearRect = clearRect;
    window.AudioContext = Context;
  }
  return { painted, contexts };
}

describe('the pulse wave of a lesson', () => {
  beforeEach(() => setViewport({ width: 1280, height: 720 }));
  afterEach(() => emulate({}));

  it('moves while it is seen, and paints nothing once it is held, left or blackened', async () => {
    const screen = await screenOf(await shippedLesson('superficial-femoral'));
    const moving = await counted(async () => {
      await press('p');
      await until(() => canvasOf(screen), 'the wave is shown');
      for (let i = 0; i < 8; i++) await frame();
    });
    expect(moving.painted).to.be.greaterThan(3);
    const hold = [...screen.shadowRoot!.querySelectorAll('button')].find(
      (one) => one.textContent?.trim() === 'Hold',
    )!;
    await click(hold);
    await screen.updateComplete;
    const held = await counted(async () => {
      for (let i = 0; i < 8; i++) await frame();
    });
    expect(held.painted).to.equal(0);
    await click(hold);
    await press('b');
    await screen.updateComplete;
    const black = await counted(async () => {
      for (let i = 0; i < 8; i++) await frame();
    });
    expect(black.painted).to.equal(0);
    await press('b');
    await press('PageDown');
    await screen.updateComplete;
    expect(canvasOf(screen)).to.equal(null);
    const left = await counted(async () => {
      for (let i = 0; i < 8; i++) await frame();
    });
    expect(left.painted).to.equal(0);
  });

  it('stands where the person asks for less motion, and says so', async () => {
    await emulate({ reducedMotion: 'reduce' });
    const screen = await screenOf(await shippedLesson('superficial-femoral'));
    await press('p');
    await until(() => canvasOf(screen)?.dataset.lines, 'the wave is painted');
    expect(told(screen)).to.include('It stands still');
    const { painted } = await counted(async () => {
      for (let i = 0; i < 8; i++) await frame();
    });
    expect(painted).to.equal(0);
    const pixels = canvasOf(screen)
      .getContext('2d')!
      .getImageData(0, 0, canvasOf(screen).width, canvasOf(screen).height).data;
    expect(pixels.some((value) => value > 0)).to.equal(true);
  });

  it('is a sound one until the conclusion is revealed, and is said in words', async () => {
    const screen = await screenOf(await shippedLesson('superficial-femoral'));
    await press('p');
    await screen.updateComplete;
    expect(told(screen)).to.include('a sound person of this age');
    expect(told(screen)).not.to.include('no pulse');
    const times = [...screen.shadowRoot!.querySelectorAll('.arrivals button')].map((one) =>
      parseInt(one.textContent!),
    );
    expect(times.length).to.be.above(3);
    for (const ms of times) expect(ms).to.be.within(21, 399);
    screen.goTo('conclusion');
    await press('r');
    await press('p');
    await screen.updateComplete;
    expect(told(screen)).to.include('This patient’s pulse');
    expect(told(screen)).to.include('no pulse');
  });

  it('lets a site be heard at a press, never by itself, and says what sounds', async () => {
    const screen = await screenOf(await shippedLesson('several-levels'));
    const shown = await counted(async () => {
      await press('p');
      await screen.updateComplete;
      await frame();
    });
    expect(shown.contexts).to.equal(0);
    const status = (): string =>
      screen.shadowRoot!.querySelector('.sounding')!.textContent!.replace(/\s+/g, ' ').trim();
    expect(status()).to.equal('');
    const spot = screen.shadowRoot!.querySelector('[data-hear="left femoral"] .reach')!;
    const pressed = await counted(() => click(spot));
    await screen.updateComplete;
    expect(pressed.contexts).to.equal(1);
    expect(status()).to.equal('Playing: Doppler: left femoral');
    await click(spot);
    await screen.updateComplete;
    expect(status()).to.equal('');
    // On a step of listening the stethoscope, one side after the other.
    screen.goTo('listen iliac');
    await press('h');
    await screen.updateComplete;
    expect(status()).to.equal('Playing: Stethoscope: right iliac');
    await press('h');
    await screen.updateComplete;
    expect(status()).to.equal('Playing: Stethoscope: left iliac');
    await press('h');
    await screen.updateComplete;
    expect(status()).to.equal('');
    await press('h');
    await press('PageUp');
    await screen.updateComplete;
    expect(status()).to.equal('');
  });

  it('lets the stethoscope be held to every artery, and tells no bruit before the conclusion', async () => {
    const screen = await screenOf(await shippedLesson('several-levels'));
    const button = (name: string): HTMLButtonElement =>
      [...screen.shadowRoot!.querySelectorAll<HTMLButtonElement>('.wave-set button')].find(
        (one) => one.textContent?.trim() === name,
      )!;
    const bruits = (): string[] =>
      [...screen.shadowRoot!.querySelectorAll('.arrivals .bruit')].map((one) =>
        one.getAttribute('aria-label')!.trim(),
      );
    await press('p');
    await screen.updateComplete;
    await click(button('Stethoscope'));
    await screen.updateComplete;
    expect(told(screen)).to.include('no bruit');
    expect(bruits()).to.deep.equal([]);
    screen.goTo('conclusion');
    await press('r');
    await press('p');
    await screen.updateComplete;
    // Its narrowings are heard where the record of the lesson says so.
    expect(bruits()).not.to.deep.equal([]);
    for (const name of bruits()) expect(name).to.match(/^Stethoscope: (right|left) .*, (continuous )?bruit$/);
    const heard = screen.shadowRoot!.querySelector<SVGElement>('[data-hear="left iliac"] .reach')!;
    await click(heard);
    await screen.updateComplete;
    expect(screen.shadowRoot!.querySelector('.sounding')!.textContent).to.include('Stethoscope: left iliac');
  });

  it('fits its slide in each language, and is accessible', async () => {
    await setViewport({ width: 1920, height: 1080 });
    for (const [id, lang] of [
      ['shock', 'en'],
      ['shock', 'de'],
      ['subclavian-steal', 'de'],
    ] as const) {
      const screen = await screenOf(await shippedLesson(id), lang);
      await press('p');
      await screen.updateComplete;
      const slide = screen.shadowRoot!.querySelector('.slide')!;
      const unit = slide.clientWidth / 1920;
      const { bottom } = slide.getBoundingClientRect();
      for (const part of slide.querySelectorAll('.told > *, .wave-figure'))
        expect(part.getBoundingClientRect().bottom, `${id} ${lang} ${part.className}`).to.be.at.most(bottom);
      const small = [...slide.querySelectorAll<HTMLElement>('p, th, td, button, label')].filter(
        (node) => node.textContent?.trim() && parseFloat(getComputedStyle(node).fontSize) < 27.9 * unit,
      );
      expect(small.map((node) => node.textContent).join('|'), `${id} ${lang}`).to.equal('');
      await expect(screen).to.be.accessible();
      const by = [...slide.querySelectorAll<HTMLButtonElement>('.wave-set [aria-pressed="false"]')].at(-1)!;
      await click(by);
      await screen.updateComplete;
      for (const part of slide.querySelectorAll('.told > *'))
        expect(part.getBoundingClientRect().bottom, `${id} ${lang} heard`).to.be.at.most(bottom);
      await expect(screen).to.be.accessible();
      screen.remove();
    }
  }).timeout(120_000);
});
