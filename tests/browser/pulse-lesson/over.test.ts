import { expect, fixture, html } from '@open-wc/testing';
import { shippedLesson } from '../../../src/lesson/index.js';
import type { PulseLesson } from '../../../src/elements/pulse-lesson/element.js';
import '../../../src/elements/pulse-lesson/define.js';
import { drag, hover, press, setViewport } from '../../tools/real-input.js';
import { until } from '../tools/until.js';

let rooms = 0;

const slideOf = (window: PulseLesson): HTMLElement =>
  window.shadowRoot!.querySelector<HTMLElement>('.slide, .desk .now .slide')!;
const inkOf = (window: PulseLesson): string[] =>
  [...slideOf(window).querySelectorAll('.over .stroke')].map((one) => one.getAttribute('d')!);
const holeOf = (window: PulseLesson): string | null =>
  slideOf(window).querySelector('.over .dark')?.getAttribute('d') ?? null;
/** A place on a slide, by shares of its width and height. */
const at = (window: PulseLesson, x: number, y: number): readonly [number, number] => {
  const { left, top, width, height } = slideOf(window).getBoundingClientRect();
  return [left + x * width, top + y * height];
};
/** Numbers of a path. */
const numbers = (d: string): number[] => [...d.matchAll(/-?\d+(\.\d+)?/g)].map(([n]) => Number(n));

describe('spotlight and ink over a slide', () => {
  let screen: PulseLesson;
  let desk: PulseLesson;

  beforeEach(async () => {
    await setViewport({ width: 1600, height: 1000 });
    const lesson = await shippedLesson('superficial-femoral');
    const channel = `over ${performance.now()} ${rooms++}`;
    // Beside each other, as on two screens; each of its own size.
    const page = await fixture<HTMLElement>(
      html`<main style="display:grid;grid-template-columns:920px 660px">
        <pulse-lesson .lesson=${lesson} channel=${channel}></pulse-lesson>
        <pulse-lesson .lesson=${lesson} channel=${channel} presenter></pulse-lesson>
      </main>`,
    );
    [screen, desk] = [...page.querySelectorAll('pulse-lesson')] as [PulseLesson, PulseLesson];
    screen.goTo('pulse left femoral');
    await until(() => desk.step === screen.step, 'both windows in step');
    // The plates are there, so that nothing moves any more.
    await screen.updateComplete;
    await desk.updateComplete;
  });

  const same = async (what: (window: PulseLesson) => unknown): Promise<void> => {
    await until(
      () => JSON.stringify(what(screen)) === JSON.stringify(what(desk)),
      'both windows show the same',
    );
  };

  it('are at the same place of the slide in the other window, whichever draws', async () => {
    await press('i');
    await until(() => slideOf(screen).classList.contains('inking'), 'the pen is in hand');
    await drag([at(screen, 0.5, 0.6), at(screen, 0.75, 0.6)]);
    await until(() => inkOf(desk).length === 1, 'the desk shows the line');
    await same(inkOf);
    const [fromX, fromY, ...rest] = numbers(inkOf(desk)[0]!);
    expect(fromX).to.be.closeTo(960, 4);
    expect(fromY).to.be.closeTo(648, 4);
    expect(rest.at(-2)).to.be.closeTo(1440, 4);
    // The pen is in the hand of this window alone; the desk takes up its own.
    expect(slideOf(desk).classList.contains('inking')).to.equal(false);
    desk.shadowRoot!.querySelector<HTMLButtonElement>('[data-act="ink"]')!.click();
    await until(() => slideOf(desk).classList.contains('inking'), 'the pen is in hand');
    await drag([at(desk, 0.25, 0.25), at(desk, 0.5, 0.25)]);
    await until(() => inkOf(screen).length === 2, 'the screen shows the line');
    await same(inkOf);
    expect(numbers(inkOf(screen)[1]!)[0]).to.be.closeTo(480, 6);
    expect(screen.step).to.equal('pulse left femoral');
  });

  it('are wiped in both windows, by the key, by the next step, and by Escape', async () => {
    const draw = async (): Promise<void> => {
      if (!slideOf(screen).classList.contains('inking'))
        screen.shadowRoot!.querySelector<HTMLButtonElement>('[data-act="ink"]')!.click();
      await until(() => slideOf(screen).classList.contains('inking'), 'the pen is in hand');
      await drag([at(screen, 0.5, 0.6), at(screen, 0.6, 0.7)]);
      await until(() => inkOf(screen).length === 1 && inkOf(desk).length === 1, 'both have ink');
    };
    const bare = (): Promise<void> =>
      until(() => !inkOf(screen).length && !inkOf(desk).length, 'neither has ink');
    await draw();
    await press('w');
    await bare();
    await draw();
    await press('PageUp');
    await bare();
    expect(screen.step).to.equal('pulse right femoral');
    await draw();
    slideOf(screen).focus();
    await press('Escape');
    await bare();
  });

  it('a spotlight follows the pointer in both, and goes out in both', async () => {
    await press('s');
    await until(() => holeOf(screen) && holeOf(desk), 'both have a spotlight');
    await hover(at(screen, 0.25, 0.5));
    await until(
      () => Math.abs((numbers(holeOf(desk) ?? '')[5] ?? 0) - (480 - 0.11 * 1920)) < 4,
      'it follows',
    );
    await same(holeOf);
    await press('s');
    await until(() => !holeOf(screen) && !holeOf(desk), 'neither has one');
  });

  it('are there in a window that comes later', async () => {
    await press('i');
    await until(() => slideOf(screen).classList.contains('inking'), 'the pen is in hand');
    await drag([at(screen, 0.5, 0.6), at(screen, 0.75, 0.6)]);
    await until(() => inkOf(screen).length === 1, 'the line is drawn');
    const { channel, lesson } = screen;
    desk.remove();
    const late = await fixture<PulseLesson>(
      html`<pulse-lesson .lesson=${lesson} channel=${channel} presenter></pulse-lesson>`,
    );
    await until(() => inkOf(late).length === 1, 'it has heard');
    expect(inkOf(late)).to.deep.equal(inkOf(screen));
  });
});
