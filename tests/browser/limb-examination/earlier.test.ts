import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import { examined } from '../../tools/examinations.js';
import { drawn } from '../tools/limbs.js';
import { until } from '../tools/until.js';

const LEG = ['femoral', 'popliteal', 'posterior-tibial', 'dorsalis-pedis'] as const;
const before = examined(Object.fromEntries(LEG.map((site) => [`right ${site}`, 'normal'])));
const now = examined({
  'right femoral': 'normal',
  'right popliteal': 'absent',
  'right posterior-tibial': 'absent',
  'right dorsalis-pedis': 'absent',
});

describe('an examination after an earlier one', () => {
  it('shows the earlier grades on its map, and reading and summary tell the same probability', async () => {
    const whole = await fixture<LimbExamination>(
      html`<limb-examination .examination=${now} .earlier=${before}></limb-examination>`,
    );
    for (const part of ['pulses', 'summary'] as const) await whole.openPart(part);
    await drawn(whole);
    const map = whole.shadowRoot!.querySelector('pulse-map')!;
    const headline = (): string =>
      map.shadowRoot?.querySelector('pulse-reading')?.shadowRoot?.textContent?.match(/\d+%/)?.[0] ?? '';
    const letter = (): string =>
      whole.shadowRoot!.querySelector('limb-letter')?.shadowRoot?.querySelector('textarea')?.value ?? '';
    await until(() => headline() && letter(), 'reading and summary');
    expect(letter()).to.include(`probability ${headline()}`);
    expect(map.shadowRoot!.querySelectorAll('.earlier').length).to.be.above(0);
  });
});
