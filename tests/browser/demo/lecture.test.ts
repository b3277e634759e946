import { expect, fixture, html } from '@open-wc/testing';
import type { LectureRoom } from '../../../demo/clinic/lecture-page.js';
import '../../../demo/clinic/app.js';
import '../../../demo/clinic/lecture-page.js';
import { shippedLessonInput } from '../../../src/lesson/index.js';
import { openClinic } from '../tools/clinic.js';
import { until } from '../tools/until.js';

describe('the lecture page of the demo', () => {
  it('lists the lessons that ship, each a link to its room', async () => {
    const page = await fixture<LectureRoom>(html`<lecture-room></lecture-room>`);
    await until(() => page.querySelectorAll('a.row').length > 4, 'the lessons are listed');
    const [first] = page.querySelectorAll<HTMLAnchorElement>('a.row');
    expect(first!.getAttribute('href')).to.equal('#/lecture/superficial-femoral');
    expect(first!.textContent).to.include('The calf that stops at the corner');
  });

  it('shows a lesson, and its presenter’s window where the address says so', async () => {
    const page = await fixture<LectureRoom>(html`<lecture-room .lessonId=${'embolus-groin'}></lecture-room>`);
    await until(
      () => page.querySelector('pulse-lesson')?.shadowRoot?.querySelector('.slide'),
      'the slide is there',
    );
    expect(page.querySelector('pulse-lesson')!.presenter).to.equal(false);
    expect(page.querySelector('a[target=_blank]')!.getAttribute('href')).to.equal(
      '#/lecture/embolus-groin/presenter',
    );
    page.presenter = true;
    await page.updateComplete;
    expect(page.querySelector('pulse-lesson')!.presenter).to.equal(true);
  });

  it('has a place to write a lesson, which is then shown like any other', async () => {
    localStorage.removeItem('pulse-lesson-editor:alder-row');
    const app = await openClinic('#/lecture/write', 'lecture-test');
    try {
      await until(
        () => app.querySelector('pulse-lesson-editor')?.shadowRoot?.querySelector('textarea'),
        'the editor is there',
      );
      const text = JSON.stringify(await shippedLessonInput('buerger'));
      app.querySelector('pulse-lesson-editor')!.value = text.replace(/"en":"[^"]*"/, '"en":"My own"');
      await until(() => app.querySelector('a[href="#/lecture/written"]'), 'the lesson can be shown');
      location.hash = '#/lecture/written';
      await until(
        () =>
          app.querySelector('pulse-lesson')?.shadowRoot?.querySelector('.slide h2')?.textContent === 'My own',
        'the slide is there',
      );
      expect(app.querySelector('a[target=_blank]')!.getAttribute('href')).to.equal(
        '#/lecture/written/presenter',
      );
    } finally {
      app.remove();
      localStorage.removeItem('pulse-lesson-editor:alder-row');
      localStorage.removeItem('alder-row-clinic-lesson-written');
    }
  });

  it('shows a record of a patient as a lesson, without name and dates, and says what was left out', async () => {
    const app = await openClinic('#/patients/lindqvist/visits/lindqvist-2', 'lecture-record-test');
    try {
      const button = (): HTMLButtonElement | undefined =>
        [...app.querySelectorAll('button')].find((one) => one.textContent?.includes('Show in a lesson'));
      await until(button, 'the visit is there');
      button()!.click();
      await until(
        () => app.querySelector('pulse-lesson')?.shadowRoot?.querySelector('.slide'),
        'the record is on the screen',
      );
      expect(location.hash).to.equal('#/lecture/record');
      const slide = app.querySelector('pulse-lesson')!;
      expect(slide.shadowRoot!.textContent).to.include('A record without name, dates and notes');
      expect(slide.shadowRoot!.textContent).not.to.include('The patient is invented');
      expect(app.querySelector('lecture-room')!.textContent).to.match(/Left out: \w/);
      expect(JSON.stringify(slide.lesson)).not.to.match(/"(examiner|examinedAt|note|by|why)":/);
    } finally {
      app.remove();
      localStorage.removeItem('alder-row-clinic-lesson-record');
      localStorage.removeItem('alder-row-clinic-lesson-left-out');
    }
  });
});
