import { expect } from '@open-wc/testing';
import '../../../demo/clinic/app.js';
import { openClinic } from '../tools/clinic.js';
import { until } from '../tools/until.js';

describe('the practice page of the demo', () => {
  let app: HTMLElementTagNameMap['clinic-app'];
  afterEach(() => app.remove());

  it('stands in the menu, meets the patient of its address, and has an examiner’s sheet', async () => {
    app = await openClinic('#/practice/clear-7', 'practice-test');
    await until(
      () => app.querySelector('pulse-practice')?.shadowRoot?.querySelector('.site'),
      'the patient is there',
    );
    const current = app.querySelector('nav [aria-current="page"]')!;
    expect(current.textContent).to.equal('Practice');
    expect(app.querySelector('pulse-practice')!.code).to.equal('clear-7');
    const sheet = app.querySelector<HTMLAnchorElement>('a[target=_blank]')!;
    expect(sheet.getAttribute('href')).to.equal('#/practice/clear-7/examiner');
  });

  it('lists the patients of the lessons by their stories, not by the titles that tell', async () => {
    app = await openClinic('#/practice', 'practice-test');
    await until(() => app.querySelectorAll('practice-room a.row').length > 4, 'the patients are listed');
    expect(app.querySelector('practice-room')!.textContent).not.to.include(
      'The calf that stops at the corner',
    );
    app.remove();
    app = await openClinic('#/practice/lesson-2', 'practice-test');
    await until(
      () => app.querySelector('pulse-practice')?.shadowRoot?.querySelector('.story'),
      'the patient of the lesson is there',
    );
    expect(app.querySelector('pulse-practice')!.shadowRoot!.querySelector('h2')!.textContent).to.equal(
      'Patient lesson-2',
    );
  });
});
