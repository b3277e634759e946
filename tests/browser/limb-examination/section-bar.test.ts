import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import { setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { painted } from '../tools/perceive.js';
import { until } from '../tools/until.js';
import { threatened } from '../../../stories/limb-records.js';

const PARTS = ['history', 'inspection', 'pulses', 'bedside', 'pressures', 'staging', 'summary'] as const;

for (const [width, dir] of [
  [390, 'ltr'],
  [390, 'rtl'],
  [820, 'ltr'],
] as const)
  describe(`the row of sections, ${width} px, ${dir}`, () => {
    before(() => setViewport({ width, height: 844 }));
    after(async () => {
      window.scrollTo({ top: 0, behavior: 'instant' });
      await setViewport({ width: 1000, height: 900 });
    });

    it('marks the section under the bar and brings its name into sight, without moving the page', async () => {
      const page = await fixture<HTMLElement>(
        html`<main lang="en" dir=${dir}>
          <limb-examination .value=${threatened}></limb-examination>
          <p style="block-size: 1500px"></p>
        </main>`,
      );
      const control = page.querySelector('limb-examination') as LimbExamination;
      await drawn(control);
      const row = control.renderRoot.querySelector('nav') as HTMLElement;
      const tabs = [...row.querySelectorAll('button')];
      const current = (): number => tabs.findIndex((tab) => tab.getAttribute('aria-current') === 'true');
      const fits = (tab: HTMLElement): boolean => {
        const [inner, outer] = [tab.getBoundingClientRect(), row.getBoundingClientRect()];
        return inner.left >= outer.left - 1 && inner.right <= outer.right + 1;
      };
      for (const [at, part] of PARTS.entries()) {
        await control.openPart(part);
        await drawn(control);
        await until(() => current() === at, `${part} is the current one`);
        const top = window.scrollY;
        await until(() => fits(tabs[at] as HTMLElement), `the name of ${part} is in sight`);
        await painted();
        expect(window.scrollY, part).to.equal(top);
        expect(row.querySelectorAll('[aria-current]')).to.have.length(1);
      }
      window.scrollTo({ top: 0, behavior: 'instant' });
      await until(() => current() <= 0, 'the first one again');
    });
  });

describe('the row of sections where the page ends', () => {
  before(() => setViewport({ width: 1440, height: 900 }));
  after(async () => {
    window.scrollTo({ top: 0, behavior: 'instant' });
    await setViewport({ width: 1000, height: 900 });
  });

  it('marks the last section that the keys are in, though it never comes under the bar', async () => {
    const page = await fixture<HTMLElement>(
      html`<main lang="en"><limb-examination .value=${threatened}></limb-examination></main>`,
    );
    const control = page.querySelector('limb-examination') as LimbExamination;
    await drawn(control);
    const current = (): string | undefined =>
      control.renderRoot.querySelector('nav [aria-current]')?.textContent?.trim();
    for (const part of ['staging', 'summary'] as const) {
      await control.openPart(part);
      await drawn(control);
    }
    await until(() => /^Summary/.test(current() ?? ''), `the summary is the current one, not ${current()}`);
  });
});
