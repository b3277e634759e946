import { expect, fixture, html } from '@open-wc/testing';
import type { PulseLesson } from '../../../src/elements/pulse-lesson/element.js';
import '../../../src/elements/pulse-lesson/define.js';
import '../../../src/locale/de/register.js';
import {
  type Lesson,
  lessonOf,
  SHIPPED_LESSON_IDS,
  shippedLesson,
  shippedLessonInput,
  stepsOf,
} from '../../../src/lesson/index.js';
import { messagesFor } from '../../../src/locale/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import { press, type PrintedPage, printedPages, setViewport } from '../../tools/real-input.js';
import { PAPER } from '../tools/paper.js';
import { until } from '../tools/until.js';

/** Lines break anywhere, and the first letter of a name is set large. */
const solid = (text: string): string => text.replace(/\s+/g, '').toLowerCase();

async function printed(lesson: Lesson, lang: string): Promise<readonly PrintedPage[]> {
  const page = await fixture(
    html`<div>${PAPER}<pulse-lesson .lesson=${lesson} lang=${lang} hand-out></pulse-lesson></div>`,
  );
  const element = page.querySelector<PulseLesson>('pulse-lesson')!;
  await element.updateComplete;
  const pictures = () => [...element.shadowRoot!.querySelectorAll('.card .picture')];
  await until(
    () => pictures().length && pictures().every((one) => one.querySelector('.ground path')),
    'the pictures are drawn',
  );
  const { pages } = await printedPages();
  page.remove();
  return pages;
}

/** Whatever a lesson of every limb can have: no step left out, every question, the longest story. */
async function everything(): Promise<Lesson> {
  const { without: _, limbs: __, ...rest } = await shippedLessonInput('thoracic-outlet');
  return lessonOf(rest);
}

describe('the hand-out of a lesson', () => {
  it('is two pages of A4 for each lesson that ships and for one with every step, in each language', async () => {
    const lessons = [...(await Promise.all(SHIPPED_LESSON_IDS.map(shippedLesson))), await everything()];
    const wrong: string[] = [];
    // Lessons with the same steps have the same hand-out but for title and story.
    const tried = new Set<string>();
    for (const lesson of lessons) {
      const steps = stepsOf(lesson);
      const kind = steps.map(({ id }) => id).join();
      if (tried.has(kind)) continue;
      tried.add(kind);
      for (const lang of ['en', 'de']) {
        const pages = await printed(lesson, lang);
        if (pages.length !== 2) wrong.push(`${lesson.id} ${lang}: ${pages.length} pages`);
        for (const { width, height } of pages) {
          expect(width).to.be.closeTo(210, 1);
          expect(height).to.be.closeTo(297, 1);
        }
        const words = partMessagesFor(lang).lesson;
        const { technique } = messagesFor(lang).anatomy;
        const all = solid(pages.map(({ text }) => text).join(' '));
        const said = (text: string | undefined, what: string): void => {
          if (text !== undefined && !all.includes(solid(text))) wrong.push(`${lesson.id} ${lang}: ${what}`);
        };
        said(words.handOut.notice, 'that it is invented');
        for (const { id, act } of steps) {
          said(act.kind === 'listen' ? technique[act.site] : words.how(act), `how ${id} is done`);
          for (const { name, says } of words.meanings(act)) said(`${name}:${says}`, `what ${id} means`);
          if (act.kind === 'test') said(words.cautions[act.test], `caution of ${id}`);
          if (act.kind === 'pulse') said(words.cautions[act.place.site], `caution of ${id}`);
        }
        const first = solid(pages[0]!.text);
        const flags = first.indexOf(solid(words.cautions.inspection!));
        const history = first.indexOf(solid(words.how({ kind: 'history' })));
        if (flags < 0 || (history >= 0 && flags > history))
          wrong.push(`${lesson.id} ${lang}: red flags first`);
        if (all.includes(solid(lesson.answer.text[lang as 'en']!)))
          wrong.push(`${lesson.id} ${lang}: the answer`);
      }
    }
    expect(wrong.join('\n')).to.equal('');
    expect(tried.size).to.be.greaterThan(4);
  }).timeout(300_000);

  it('is accessible on the screen, and leaves the keys alone', async () => {
    const element = await fixture<PulseLesson>(
      html`<pulse-lesson shipped="superficial-femoral" lang="de" hand-out></pulse-lesson>`,
    );
    await until(() => element.shadowRoot!.querySelector('.hand-out .card'), 'the hand-out is there');
    const key = new KeyboardEvent('keydown', { key: 'PageDown', cancelable: true, bubbles: true });
    document.body.dispatchEvent(key);
    expect(key.defaultPrevented).to.equal(false);
    expect(element.step).to.equal(undefined);
    await expect(element).to.be.accessible();
  }).timeout(120_000);

  it('scrolls by itself on a narrow screen: the page around it stays as wide as the screen', async () => {
    await setViewport({ width: 390, height: 800 });
    const lesson = await shippedLesson('superficial-femoral');
    const page = await fixture(
      html`<main style="display: grid"><pulse-lesson .lesson=${lesson} hand-out></pulse-lesson></main>`,
    );
    const element = page.querySelector<PulseLesson>('pulse-lesson')!;
    await element.updateComplete;
    expect(document.documentElement.scrollWidth).to.be.at.most(390);
    const sheets = element.shadowRoot!.querySelector('.hand-out')!;
    expect(sheets.scrollWidth).to.be.above(sheets.clientWidth);
    // Keys alone reach what lies beyond the edge, in browsers that give no scroller the focus by themselves, too.
    await expect(element).to.be.accessible();
    (sheets as HTMLElement).focus();
    await press('ArrowRight');
    await until(() => sheets.scrollLeft > 0, 'it scrolls by a key');
  });
});
