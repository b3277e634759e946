import { expect, fixture, html } from '@open-wc/testing';
import type { LectureRoom } from '../../../demo/clinic/lecture-page.js';
import '../../../demo/clinic/app.js';
import '../../../demo/clinic/lecture-page.js';
import { shippedLessonInput } from '../../../src/lesson/index.js';
import { toBundle } from '../../../src/fhir.js';
import { type Place, placeFromKey, type PulseSiteId } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  formatExamination,
  setPulse,
} from '../../../src/examination/index.js';
import type { PulseLesson } from '../../../src/elements/pulse-lesson/element.js';
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

  describe('takes a file of a record', () => {
    const examination = setPulse(
      { ...emptyExamination(), examiner: 'Dr Amber Quill', note: 'seen with her son' } as Examination,
      placeFromKey('left popliteal') as Place<PulseSiteId>,
      { grade: 'absent' },
    );
    const bundle = (): object => {
      const all = toBundle(examination, { subject: { reference: 'Patient/77', display: 'Hazel Thorn' } });
      const strange = {
        resourceType: 'Observation',
        status: 'final',
        subject: { reference: 'Patient/77', display: 'Hazel Thorn' },
        code: { text: 'Shoe size' },
        valueInteger: 39,
      };
      return { ...all, entry: [...all.entry, { fullUrl: 'urn:uuid:shoe', resource: strange }] };
    };
    let app: HTMLElement;

    const give = async (name: string, text: string): Promise<void> => {
      await until(() => app.querySelector('#record-file'), 'the field is there');
      const input = app.querySelector<HTMLInputElement>('#record-file')!;
      const files = new DataTransfer();
      files.items.add(new File([text], name, { type: 'application/json' }));
      input.files = files.files;
      input.dispatchEvent(new Event('change'));
    };
    const shown = (): PulseLesson | undefined => {
      const slides = app.querySelector('pulse-lesson');
      return slides?.shadowRoot?.querySelector('.slide') ? slides : undefined;
    };

    beforeEach(async () => {
      app = await openClinic('#/lecture', 'lecture-file-test');
    });
    afterEach(() => {
      app.remove();
      for (const name of ['lesson-record', 'lesson-left-out', 'lesson-not-read'])
        localStorage.removeItem(`alder-row-clinic-${name}`);
    });

    for (const [kind, text] of [
      ['JSON', () => formatExamination(examination)],
      ['a FHIR bundle', () => JSON.stringify(bundle())],
    ] as const)
      it(`as ${kind}, and shows its findings without names`, async () => {
        await give('file.json', text());
        await until(shown, 'the record is on the screen');
        const { lesson } = shown()!;
        expect(lesson!.examination!.pulses!.popliteal).to.deep.equal({ left: { grade: 'absent' } });
        expect(JSON.stringify(lesson)).not.to.match(/Quill|her son|Thorn|Patient/);
        expect(app.textContent).not.to.match(/Quill|her son|Thorn/);
        expect(app.textContent).to.match(/Left out: \w/);
        const unread = app.querySelector('.not-read')?.textContent?.replace(/\s+/g, ' ') ?? '';
        if (kind === 'JSON') expect(unread).to.equal('');
        else expect(unread).to.match(/Not read from the file: \d+ .*entry\[\d+\]/);
      });

    const record = JSON.parse(formatExamination(examination)) as object;
    for (const [what, text, told] of [
      ['no JSON', 'pulse: absent', /bad\.json .*found .*expected/],
      ['a wrong field', JSON.stringify({ ...record, pulses: 3 }), /pulses.*found 3; expected/],
      ['no record', '{"shoes": 2}', /format.*expected/],
      ['another resource', '{"resourceType":"Patient","id":"77"}', /resourceType: found "Patient"; expected/],
      [
        'nothing readable',
        '{"resourceType":"Bundle","type":"collection","entry":[]}',
        /resourceType: .*expected/,
      ],
    ] as const)
      it(`and says what is wrong with one of ${what}, naming field and expectation`, async () => {
        await give('bad.json', text);
        const said = (): string | null | undefined => app.querySelector('[role=alert]')?.textContent;
        await until(said, 'it is said');
        expect(said()).to.match(told);
        expect(location.hash).to.equal('#/lecture');
        expect(localStorage.getItem('alder-row-clinic-lesson-record')).to.equal(null);
      });
  });
});
