import { expect, fixture, html } from '@open-wc/testing';
import { examinationOf, type Lesson, shippedLesson } from '../../../src/lesson/index.js';
import { type Place, placeFromKey, type PulseSiteId } from '../../../src/anatomy/index.js';
import { type Examination, pulseAt } from '../../../src/examination/index.js';
import { PulseLesson } from '../../../src/elements/pulse-lesson/element.js';
import '../../../src/elements/pulse-lesson/define.js';
import '../../../src/locale/de/register.js';
import type { PulseMap } from '../../../src/elements/pulse-map/element.js';
import { click, press, setViewport } from '../../tools/real-input.js';
import { until } from '../tools/until.js';

let rooms = 0;

async function windowsOf(lesson: Lesson, keep?: string): Promise<{ screen: PulseLesson; desk: PulseLesson }> {
  const channel = `marks ${performance.now()} ${rooms++}`;
  const page = await fixture<HTMLElement>(
    html`<main>
      <pulse-lesson .lesson=${lesson} channel=${channel} .keep=${keep}></pulse-lesson>
      <pulse-lesson .lesson=${lesson} channel=${channel} presenter></pulse-lesson>
    </main>`,
  );
  const [screen, desk] = [...page.querySelectorAll('pulse-lesson')] as [PulseLesson, PulseLesson];
  await screen.updateComplete;
  await desk.updateComplete;
  return { screen, desk };
}

const mapOf = (window: PulseLesson): PulseMap | null =>
  window.shadowRoot!.querySelector<PulseMap>('.marking pulse-map');
const button = (window: PulseLesson, name: string): HTMLButtonElement =>
  [...window.shadowRoot!.querySelectorAll<HTMLButtonElement>('.controls button')].find(
    (one) => one.textContent?.trim() === name,
  )!;
const gradeOf = (record: Examination | undefined, key: string): string | undefined =>
  record && pulseAt(record, placeFromKey(key) as Place<PulseSiteId>)?.grade;
/** The map of a window once it takes entries, its focus on a site. */
async function opened(window: PulseLesson): Promise<PulseMap> {
  await until(() => mapOf(window)?.shadowRoot?.querySelector('.site[tabindex="0"]'), 'the map is there');
  return mapOf(window)!;
}
const focused = (map: PulseMap): Promise<unknown> =>
  until(() => map.shadowRoot!.activeElement?.closest('.site'), 'a site has the focus');

async function mark(map: PulseMap, key: string): Promise<void> {
  map.openPlace(key as never);
  await until(() => map.shadowRoot!.querySelector('.chooser'), 'the chooser is open');
  await press('Escape');
  await until(() => !map.shadowRoot!.querySelector('.chooser'), 'the chooser is closed');
  await focused(map);
  await press('0');
}

describe('what the room marks during a lesson', () => {
  beforeEach(() => setViewport({ width: 1600, height: 1000 }));

  it('is marked by keys on a real map, undone there, and is no finding of the lesson', async () => {
    const lesson = await shippedLesson('superficial-femoral');
    const truth = JSON.stringify(examinationOf(lesson));
    const { screen, desk } = await windowsOf(lesson);
    screen.goTo('pulse left femoral');
    await press('m');
    const map = await opened(screen);
    await focused(map);
    expect(map.view).to.equal('legs');
    await mark(map, 'left femoral');
    await until(() => gradeOf(map.examination, 'left femoral') === 'absent', 'the grade is recorded');
    await until(() => gradeOf(mapOf(desk)?.examination, 'left femoral') === 'absent', 'the desk follows');
    expect(screen.revealed).to.deep.equal([]);
    await press('Control+z');
    await until(() => gradeOf(map.examination, 'left femoral') === undefined, 'it is taken back');
    await until(() => gradeOf(mapOf(desk)?.examination, 'left femoral') === undefined, 'the desk follows');
    await press('0');
    await until(() => gradeOf(map.examination, 'left femoral') === 'absent', 'it stands again');
    // The two keys of a remote lead out, wherever the focus is; the slide knows nothing of the mark.
    await press('PageDown');
    await until(() => !mapOf(screen) && !mapOf(desk), 'both are back at the slide');
    expect(screen.step).to.equal('pulse left femoral');
    const slide = screen.shadowRoot!.querySelector('.slide')!;
    expect(slide.querySelectorAll('.picture .g-absent').length).to.equal(0);
    expect(slide.textContent).to.include('Not revealed yet');
    expect(slide.textContent).to.include('name no occlusion');
    expect(JSON.stringify(examinationOf(lesson))).to.equal(truth);
  });

  it('can be watched at the desk, and only watched', async () => {
    const { screen, desk } = await windowsOf(await shippedLesson('superficial-femoral'));
    await click(button(desk, 'Mark'));
    const [map, mirror] = [await opened(screen), await opened(desk)];
    expect(map.readOnly).to.equal(false);
    expect(mirror.readOnly).to.equal(true);
    mirror.focus();
    await press('0');
    await press('x');
    expect(mirror.value).to.equal('');
    expect(map.value).to.equal('');
    expect(desk.shadowRoot!.querySelector('.marking .how')!.textContent).to.include('only be watched');
  });

  it('is wiped in one act in either window, and one undo brings all of it back', async () => {
    const { screen, desk } = await windowsOf(await shippedLesson('superficial-femoral'));
    await click(button(screen, 'Mark'));
    const map = await opened(screen);
    await focused(map);
    await mark(map, 'left popliteal');
    await mark(map, 'right radial');
    await until(() => gradeOf(mapOf(desk)?.examination, 'right radial') === 'absent', 'the desk follows');
    for (const window of [screen, desk]) {
      // By key: what comes to stand on the map may still move the buttons below it.
      button(window, 'Wipe all marks').focus();
      await press('Enter');
      await until(() => map.value === '' && mapOf(desk)!.value === '', 'nothing is marked in either');
      map.undo();
      await until(() => gradeOf(mapOf(desk)?.examination, 'left popliteal') === 'absent', 'all is back');
      expect(gradeOf(map.examination, 'right radial')).to.equal('absent');
    }
    map.focus();
    await press('w');
    await until(() => map.value === '' && mapOf(desk)!.value === '', 'the key wipes, too');
  });

  it('is there after a reload and in a window that comes later, and not in another lesson', async () => {
    const lesson = await shippedLesson('superficial-femoral');
    const key = `marks-${rooms++}`;
    const { screen, desk } = await windowsOf(lesson, key);
    try {
      await press('m');
      const map = await opened(screen);
      await focused(map);
      await mark(map, 'right popliteal');
      await until(() => map.value !== '', 'it is recorded');
      const late = await fixture<PulseLesson>(
        html`<pulse-lesson .lesson=${lesson} channel=${screen.channel} presenter></pulse-lesson>`,
      );
      await until(() => gradeOf(mapOf(late)?.examination, 'right popliteal') === 'absent', 'it has heard');
      for (const window of [screen, desk, late]) window.remove();
      const again = await fixture<PulseLesson>(
        html`<pulse-lesson .lesson=${lesson} keep=${key} channel=${key}></pulse-lesson>`,
      );
      const restored = await opened(again);
      expect(gradeOf(restored.examination, 'right popliteal')).to.equal('absent');
      again.lesson = await shippedLesson('buerger');
      await again.updateComplete;
      await press('m');
      expect((await opened(again)).value).to.equal('');
    } finally {
      sessionStorage.removeItem(`pulse-lesson:${key}:superficial-femoral`);
      sessionStorage.removeItem(`pulse-lesson:${key}:buerger`);
    }
  });

  it('says so where the map cannot be had, and asks for it again', async () => {
    const { defineMap } = PulseLesson;
    let asked = 0;
    PulseLesson.defineMap = () => {
      asked++;
      return asked === 1 ? Promise.reject(new Error('offline')) : defineMap();
    };
    try {
      const { screen, desk } = await windowsOf(await shippedLesson('superficial-femoral'));
      desk.remove();
      await press('m');
      await until(
        () => screen.shadowRoot!.querySelector('.marking')?.textContent?.includes('could not be fetched'),
        'it is said',
      );
      await press('PageUp');
      await press('m');
      await opened(screen);
      expect(asked).to.equal(2);
    } finally {
      PulseLesson.defineMap = defineMap;
    }
  });

  it('is accessible, on the screen and at the desk, in each language', async () => {
    const { screen, desk } = await windowsOf(await shippedLesson('superficial-femoral'));
    for (const lang of ['en', 'de']) {
      screen.lang = desk.lang = lang;
      if (!mapOf(screen)) await click(screen.shadowRoot!.querySelector('[data-act="mark"]')!);
      await opened(screen);
      await opened(desk);
      await screen.updateComplete;
      await expect(screen).to.be.accessible();
      await expect(desk).to.be.accessible();
    }
  });
});
