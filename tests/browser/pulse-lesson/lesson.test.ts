import { expect, fixture, html } from '@open-wc/testing';
import { type PulseLesson } from '../../../src/elements/pulse-lesson/element.js';
import '../../../src/elements/pulse-lesson/define.js';
import { clock } from '../../../src/elements/common/clock.js';
import '../../../src/locale/de/register.js';
import { type Lesson, SHIPPED_LESSON_IDS, shippedLesson, stepsOf } from '../../../src/lesson/index.js';
import { press, setViewport, type } from '../../tools/real-input.js';
import { until } from '../tools/until.js';

/** Everything readable on the slide. */
const text = (element: PulseLesson): string =>
  (element.shadowRoot!.querySelector('.slide')?.textContent ?? '').replace(/\s+/g, ' ');
const found = (element: PulseLesson): string =>
  (element.shadowRoot!.querySelector('.band')?.textContent ?? '').replace(/\s+/g, ' ');

async function room(lesson: Lesson, lang = 'en'): Promise<{ screen: PulseLesson; desk: PulseLesson }> {
  const channel = `test ${Math.floor(performance.now() * 1000)}`;
  const page = await fixture<HTMLElement>(
    html`<main style="inline-size: 960px">
      <pulse-lesson .lesson=${lesson} channel=${channel} lang=${lang}></pulse-lesson>
      <pulse-lesson .lesson=${lesson} channel=${channel} lang=${lang} presenter></pulse-lesson>
    </main>`,
  );
  const [screen, desk] = [...page.querySelectorAll('pulse-lesson')] as [PulseLesson, PulseLesson];
  await screen.updateComplete;
  await desk.updateComplete;
  return { screen, desk };
}

const WHOLE: readonly string[] = ['superficial-femoral', 'subclavian-steal'];
const OWN = ['history', 'inspection', 'test arm-stress', 'test hyperabduction', 'pressures', 'conclusion'];

const together = (screen: PulseLesson, desk: PulseLesson): Promise<unknown> =>
  until(
    () => desk.step === screen.step && desk.revealed.length === screen.revealed.length,
    'both windows in step',
  );

describe('a lesson', () => {
  const { now } = clock;
  afterEach(() => {
    clock.now = now;
    sessionStorage.clear();
  });

  it('is led from title to end by a remote, with both windows in step', async () => {
    const lesson = await shippedLesson('embolus-groin');
    const { screen, desk } = await room(lesson);
    const steps = stepsOf(lesson);
    expect(text(screen)).to.include(lesson.title.en!);
    for (const [i, step] of steps.entries()) {
      await press('PageDown');
      await screen.updateComplete;
      expect(screen.step).to.equal(step.id);
      expect(screen.revealed).to.have.length(i);
      await together(screen, desk);
      expect(text(desk)).to.include(`Step ${i + 1} of ${steps.length}`);
      if (step.act.kind !== 'conclusion') expect(found(screen)).to.include('Not revealed yet');
      await press('PageDown');
      await screen.updateComplete;
      expect(screen.step).to.equal(step.id);
      expect(screen.revealed).to.have.length(i + 1);
      await together(screen, desk);
    }
    expect(text(screen)).to.include(lesson.answer.text.en!);
    // The rest of the remote: back, black by its key and by a period, the whole screen, and out of it.
    await press('PageUp');
    await together(screen, desk);
    expect(screen.step).to.equal(steps.at(-2)!.id);
    for (const key of ['b', '.']) {
      await press(key);
      await until(() => screen.shadowRoot!.querySelector('.black'), 'the screen is black');
      await until(() => desk.shadowRoot!.textContent?.includes('The screen is black'), 'the desk says so');
      await press('PageDown');
      await until(() => !screen.shadowRoot!.querySelector('.black'), 'the slide again');
      expect(screen.step).to.equal(steps.at(-2)!.id);
    }
    await press('o');
    await until(() => screen.shadowRoot!.querySelector('.sequence'), 'the sequence of steps');
    await press('Escape');
    await until(() => !screen.shadowRoot!.querySelector('.sequence'), 'the slide without it');
    await press('Home');
    await together(screen, desk);
    expect(screen.step).to.equal(undefined);
  }).timeout(120_000);

  it('shows nothing of a finding before it is revealed, in either window', async () => {
    const lesson = await shippedLesson('superficial-femoral');
    const { screen, desk } = await room(lesson);
    screen.goTo('pulse left popliteal');
    await together(screen, desk);
    const names = (element: PulseLesson): number =>
      element.shadowRoot!.querySelectorAll('.picture .g-absent').length;
    expect(found(screen)).not.to.match(/absent/i);
    expect(names(screen) + names(desk)).to.equal(0);
    await press('r');
    await screen.updateComplete;
    expect(found(screen)).to.include('Left popliteal: 0, absent.');
    expect(found(screen)).to.match(/Occlusion .*left popliteal/);
    await together(screen, desk);
    expect(names(desk)).to.be.greaterThan(0);
    await press('r');
    await screen.updateComplete;
    expect(found(screen)).not.to.match(/absent/i);
  });

  it('tells the presenter notes, clock and what comes next, its finding hidden', async () => {
    let time = Date.UTC(2026, 9, 28, 13);
    clock.now = () => time;
    const { screen, desk } = await room(await shippedLesson('superficial-femoral'));
    screen.goTo('pulse left femoral');
    await together(screen, desk);
    const told = desk.shadowRoot!.textContent!.replace(/\s+/g, ' ');
    expect(told).to.include('Let the room say it first');
    expect(told).to.include('Next: Feel the right popliteal');
    expect(told).to.include('20 min left');
    expect(told).to.include(`${String(new Date(time).getHours()).padStart(2, '0')}:00`);
    const running = () => desk.shadowRoot!.querySelector('.running')!.textContent;
    expect(running()).to.equal('00:00');
    time += 65_000;
    desk.requestUpdate();
    await desk.updateComplete;
    expect(running()).to.equal('01:05');
    expect(desk.shadowRoot!.querySelector('.soon .band')!.textContent).to.include('Not revealed yet');
    expect(screen.shadowRoot!.textContent).not.to.include('Let the room say it first');
  });

  it('shows another shipped lesson when asked for it, also after one that does not exist', async () => {
    const element = await fixture<PulseLesson>(html`<pulse-lesson shipped="embolus-groin"></pulse-lesson>`);
    const shows = (id: string | undefined) => until(() => element.lesson?.id === id, `the lesson ${id}`);
    await shows('embolus-groin');
    element.shipped = 'subclavian-steal';
    await shows('subclavian-steal');
    element.shipped = 'no-such-lesson';
    await shows(undefined);
    const refused = () => element.shadowRoot!.textContent!.includes('could not be fetched');
    await until(refused, 'the refusal');
    element.shipped = 'embolus-groin';
    await shows('embolus-groin');
    await element.updateComplete;
    expect(refused()).to.equal(false);
  });

  it('jumps to a step by its name', async () => {
    const { screen } = await room(await shippedLesson('superficial-femoral'));
    await press('o');
    await screen.updateComplete;
    const field = screen.shadowRoot!.querySelector<HTMLInputElement>('input[type=search]')!;
    field.focus();
    await type('venous');
    await press('Enter');
    await screen.updateComplete;
    expect(screen.step).to.equal('test venous-filling');
  });

  it('goes on where it was after a reload, only where the page says so', async () => {
    const lesson = await shippedLesson('aortoiliac');
    const one = await fixture<PulseLesson>(
      html`<pulse-lesson .lesson=${lesson} keep="test" channel="k1"></pulse-lesson>`,
    );
    one.goTo('delays');
    one.remove();
    const again = await fixture<PulseLesson>(
      html`<pulse-lesson .lesson=${lesson} keep="test" channel="k2"></pulse-lesson>`,
    );
    expect(again.step).to.equal('delays');
    again.remove();
    const other = await fixture<PulseLesson>(
      html`<pulse-lesson .lesson=${lesson} channel="k3"></pulse-lesson>`,
    );
    expect(other.step).to.equal(undefined);
  });

  it('sets nothing smaller than 28 of 1080 lines, and every slide fits, in each language', async () => {
    await setViewport({ width: 1920, height: 1080 });
    const outside: string[] = [];
    for (const id of SHIPPED_LESSON_IDS) {
      const lesson = await shippedLesson(id);
      // Two lessons whole; of the others the slides that carry words of their own.
      const own = WHOLE.includes(id)
        ? stepsOf(lesson)
        : stepsOf(lesson).filter((step) => step.question ?? OWN.includes(step.id));
      for (const lang of ['en', 'de']) {
        const screen = await fixture<PulseLesson>(
          html`<pulse-lesson
            .lesson=${lesson}
            lang=${lang}
            channel="fit"
            style="inline-size: 960px"
          ></pulse-lesson>`,
        );
        const slide = screen.shadowRoot!.querySelector<HTMLElement>('.slide')!;
        const unit = slide.clientWidth / 1920;
        for (const { id: step } of own) {
          screen.goTo(step);
          await screen.updateComplete;
          if (!screen.revealed.includes(step)) await press('r');
          await screen.updateComplete;
          const bottom = slide.getBoundingClientRect().bottom;
          for (const part of slide.querySelectorAll('.told > *, .band > *')) {
            const over = part.getBoundingClientRect().bottom - bottom;
            if (over > 0) outside.push(`${id} ${lang} ${step} ${part.className} ${over.toFixed(0)}`);
          }
          const small = [...slide.querySelectorAll<HTMLElement>('p, li, h2, h3, b, span')].filter(
            (node) => node.textContent?.trim() && parseFloat(getComputedStyle(node).fontSize) < 27.9 * unit,
          );
          expect(small.map((node) => node.textContent).join('|'), `${id} ${lang} ${step}`).to.equal('');
        }
        expect(screen.revealed).to.have.length(own.length);
        screen.remove();
      }
    }
    expect(outside.join('\n')).to.equal('');
  }).timeout(120_000);

  it('is accessible, as slide, sequence and presenter’s window', async () => {
    const { screen, desk } = await room(await shippedLesson('superficial-femoral'), 'de');
    screen.goTo('pulse left femoral');
    await together(screen, desk);
    await expect(screen).to.be.accessible();
    await expect(desk).to.be.accessible();
    await press('o');
    await screen.updateComplete;
    await expect(screen).to.be.accessible();
  }).timeout(120_000);
});
