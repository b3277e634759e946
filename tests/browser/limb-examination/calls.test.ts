import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { LimbFlags } from 'pulse-map/elements/limb-flags';
import { type Examination, triage } from 'pulse-map/core';
import { clock } from '../../../src/elements/common/clock.js';
import { withOffset } from '../../../src/elements/common/fields.js';
import { threatened } from '../../../stories/limb-records.js';
import { press, setViewport } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { allByRole, readableText } from '../tools/perceive.js';

const { now: wall } = clock;

async function opened(control: LimbExamination): Promise<LimbFlags> {
  const flags = control.renderRoot.querySelector('limb-flags') as LimbFlags;
  flags.open = true;
  await drawn(control);
  return flags;
}

describe('limb-examination notes that a team was called', () => {
  before(async () => {
    await setViewport({ width: 1000, height: 900 });
    clock.now = () => Date.parse(withOffset('2026-11-26T14:05'));
  });
  after(() => {
    clock.now = wall;
  });

  it('by one press, in the line of the flag, to be corrected, undone and removed; the urgency stays', async () => {
    const control = await fixture<LimbExamination>(
      html`<limb-examination lang="en" .value=${threatened}></limb-examination>`,
    );
    await drawn(control);
    const record = (): Examination => control.examination;
    const { urgency } = triage(record());
    const flags = await opened(control);
    const opener = flags.renderRoot.querySelector('.opener') as HTMLElement;
    const note = allByRole(flags, 'button').find((one) => /^Team called/.test(readableText(one)))!;
    expect(note.getBoundingClientRect().height).to.be.at.least(44);
    note.focus();
    await press('Enter');
    await drawn(control);
    expect(record().calls?.map(({ team, at }) => [team, at])).to.deep.equal([
      ['vascular', withOffset('2026-11-26T14:05')],
    ]);
    expect(readableText(opener))
      .to.match(/vascular team called 14:05/i)
      .and.to.match(/ischaemi/i);
    expect(triage(record()).urgency).to.equal(urgency);

    control.undo();
    await drawn(control);
    expect(record().calls).to.equal(undefined);
    control.redo();
    await drawn(control);
    const time = field(flags, /^Time of the call/);
    expect(time.value).to.equal('2026-11-26T14:05');
    time.value = '2026-11-26T13:50';
    time.dispatchEvent(new Event('change', { bubbles: true }));
    await drawn(control);
    expect(record().calls?.[0]?.at).to.equal(withOffset('2026-11-26T13:50'));
    allByRole(flags, 'button')
      .find((one) => one.getAttribute('aria-label')?.startsWith('Remove: vascular team called'))!
      .click();
    await drawn(control);
    expect(record().calls).to.equal(undefined);
    expect(triage(record()).urgency).to.equal(urgency);
  });

  it('shows calls and takes none in a record that is only read', async () => {
    const value = {
      ...threatened,
      calls: [{ team: 'vascular' as const, at: withOffset('2026-11-26T14:05'), limb: 'left leg' as const }],
    };
    const control = await fixture<LimbExamination>(
      html`<limb-examination lang="en" readonly .value=${value as Examination}></limb-examination>`,
    );
    await drawn(control);
    const report = control.shadowRoot!.querySelector('limb-report')!;
    await drawn(report);
    expect(readableText(report)).to.match(/vascular team called 26 Nov 2026, 14:05/i);
    expect(allByRole(control, 'button')).to.have.length(0);
  });
});
