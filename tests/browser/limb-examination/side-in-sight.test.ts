import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { LimbFlags } from 'pulse-map/elements/limb-flags';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { click, setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { allByRole, byRole, everything } from '../tools/perceive.js';

const of = (side: 'right' | 'left'): Examination => ({
  ...emptyExamination(),
  inspection: { leg: { [side]: { colour: 'pale', temperature: 'cold', movement: 'weak' } } },
});

async function open(examination: Examination): Promise<LimbExamination> {
  const control = await fixture<LimbExamination>(
    html`<limb-examination lang="en" .value=${examination}></limb-examination>`,
  );
  await drawn(control);
  return control;
}
const seen = (control: LimbExamination, group: RegExp): string[] =>
  allByRole(control, 'radiogroup', group).map((one) => one.getAttribute('aria-label') ?? '');

describe('a part that is opened on a phone', () => {
  before(() => setViewport({ width: 390, height: 844 }));
  after(() => setViewport({ width: 1000, height: 900 }));

  for (const side of ['right', 'left'] as const)
    it(`shows the side of the worst red flag: ${side}`, async () => {
      const control = await open(of(side));
      await control.openPart('history');
      await drawn(control);
      expect(seen(control, /^Symptom/)).to.deep.equal([`Symptom, ${side} leg`]);
      await click(byRole(control, 'button', /^Inspection and touch( |$)/));
      await drawn(control);
      expect(seen(control, /^Colour/)).to.deep.equal([`Colour, ${side} leg`]);
    });

  it('shows the side that a question is about', async () => {
    const control = await open(of('left'));
    const flags = everything(control).find((one) => one.localName === 'limb-flags') as LimbFlags;
    flags.open = true;
    await drawn(control);
    await click(byRole(flags, 'button', /light touch/));
    await drawn(control);
    expect(seen(control, /^Sensation/)).to.deep.equal(['Sensation, left leg']);
  });

  it('keeps the side that a person chose while findings change', async () => {
    const control = await open(of('left'));
    await control.openPart('inspection', 'right');
    await drawn(control);
    control.examination = { ...of('left'), examiner: 'Somebody' };
    await drawn(control);
    expect(seen(control, /^Colour/)).to.deep.equal(['Colour, right leg']);
  });
});
