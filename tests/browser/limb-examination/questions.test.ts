import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { LimbFlags } from 'pulse-map/elements/limb-flags';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { press, setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { allByRole, readableText } from '../tools/perceive.js';
import { until } from '../tools/until.js';

before(() => setViewport({ width: 1000, height: 900 }));

/** A cold, pale leg of which nobody asked anything. */
const cold: Examination = {
  ...emptyExamination(),
  inspection: { leg: { left: { colour: 'pale', temperature: 'cold' } } },
};

async function open(): Promise<{ control: LimbExamination; flags: LimbFlags }> {
  const control = await fixture<LimbExamination>(
    html`<limb-examination lang="en" .value=${cold}></limb-examination>`,
  );
  await drawn(control);
  const flags = control.renderRoot.querySelector('limb-flags') as LimbFlags;
  flags.open = true;
  await drawn(control);
  return { control, flags };
}

describe('a question of a flag', () => {
  it('leads by key to the section where it is answered, and folds the flag', async () => {
    const { control, flags } = await open();
    const links = flags.renderRoot.querySelectorAll<HTMLElement>('.goto');
    const asked = [...links].map((one) => one.textContent?.trim());
    expect(asked.length, 'the questions of the flag').to.be.greaterThan(3);
    const [feeling] = [...links].filter((one) => /light touch/.test(one.textContent ?? ''));
    (feeling as HTMLElement).focus();
    await press('Enter');
    await drawn(control);
    expect(flags.open).to.equal(false);
    const part = control.renderRoot.querySelector('#part-inspection') as HTMLElement;
    expect(part.querySelector('button')?.getAttribute('aria-expanded')).to.equal('true');
    await until(() => part.contains(control.shadowRoot?.activeElement ?? null), 'the focus is in it');
    expect(allByRole(control, 'radiogroup', 'Sensation, left leg')).to.have.length(1);
  });

  it('is text in the report where nothing can be entered', async () => {
    const control = await fixture<LimbExamination>(
      html`<limb-examination lang="en" .value=${cold} readonly></limb-examination>`,
    );
    const report = control.shadowRoot!.querySelector('limb-report')!;
    await drawn(report);
    expect(readableText(report)).to.contain('To ask and examine next');
    expect(allByRole(control, 'button')).to.have.length(0);
  });
});
