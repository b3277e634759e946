import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import 'pulse-map/locale/de';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import { setFields, setPulse, type Examination } from 'pulse-map/core';
import type { PulseSiteId } from '../../../src/anatomy/index.js';
import { setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { byRole, everything, painted } from '../tools/perceive.js';

/** The findings of a leg that becomes threatened, in the order of the bedside; the part each is entered in. */
const absent =
  (site: PulseSiteId) =>
  (e: Examination): Examination =>
    setPulse(e, { site, side: 'right' }, { grade: 'absent' });
const found =
  (fields: object) =>
  (e: Examination): Examination =>
    setFields(e, {
      inspection: {
        ...e.inspection,
        leg: { ...e.inspection?.leg, right: { ...e.inspection?.leg?.right, ...fields } },
      },
    });
const FINDINGS = [
  ['inspection', 'white', found({ colour: 'pale' })],
  ['inspection', 'cold', found({ temperature: 'cold' })],
  ['inspection', 'numb', found({ sensation: 'beyond-digits' })],
  ['inspection', 'weak', found({ movement: 'weak' })],
  ['pulses', 'popliteal lost', absent('popliteal')],
  ['pulses', 'tibial lost', absent('posterior-tibial')],
  ['pulses', 'pedal lost', absent('dorsalis-pedis')],
] as const;

const flags = (control: LimbExamination): HTMLElement =>
  everything(control).find((one) => one.localName === 'limb-flags') as HTMLElement;

async function scrollTo(top: number): Promise<void> {
  window.scrollTo({ top, behavior: 'instant' });
  await painted();
}

for (const [width, height] of [
  [390, 844],
  [820, 1180],
  [1440, 900],
] as const) {
  describe(`limb-examination, ${width} by ${height}`, () => {
    before(() => setViewport({ width, height }));
    afterEach(() => scrollTo(0));
    after(() => setViewport({ width: 1000, height: 900 }));

    for (const lang of ['en', 'de'])
      it(`keeps the flag in view from the finding that raises it, however far it is scrolled (${lang})`, async () => {
        const page = await fixture<HTMLElement>(
          html`<main lang=${lang}>
            <h1>Visit</h1>
            <limb-examination></limb-examination>
            <p style="block-size: 1500px"></p>
          </main>`,
        );
        const control = page.querySelector('limb-examination') as LimbExamination;
        await drawn(control);
        await control.openPart('inspection');
        await control.openPart('pulses');
        await drawn(control);
        let raised = 0;
        for (const [part, what, edit] of FINDINGS) {
          await control.openPart(part);
          await drawn(control);
          control.examination = edit(control.examination);
          await drawn(control);
          const bar = flags(control);
          raised += Number(bar.hasAttribute('raised'));
          if (!bar.hasAttribute('raised')) continue;
          const bottom = control.getBoundingClientRect().bottom + window.scrollY - height;
          for (const top of [window.scrollY, 0, bottom / 3, bottom]) {
            await scrollTo(top);
            if (control.getBoundingClientRect().top > height - 60) continue;
            const line = byRole(bar, 'button', lang === 'en' ? /leg/ : /Bein/).getBoundingClientRect();
            expect(line.top, `${what}, scrolled to ${top}`).to.be.at.least(0);
            expect(line.bottom, `${what}, scrolled to ${top}`).to.be.at.most(height);
            const middle = document.elementFromPoint(width / 3, line.top + line.height / 2);
            expect(middle, `${what}: what lies over the flag`).to.equal(control);
            const row = (control.shadowRoot as ShadowRoot).elementFromPoint(
              width / 3,
              line.top + line.height / 2,
            );
            expect(row, `${what}: what lies over the flag`).to.equal(bar);
            expect(bar.getBoundingClientRect().height, what).to.be.below(90);
          }
          expect(document.documentElement.scrollWidth).to.be.at.most(width);
        }
        expect(raised, 'findings with something to say').to.be.at.least(FINDINGS.length - 1);
      });
  });
}
