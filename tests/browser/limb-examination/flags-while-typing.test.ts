import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { LimbFlags } from 'pulse-map/elements/limb-flags';
import { press, setViewport, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { byRole, readableText } from '../tools/perceive.js';
import { until } from '../tools/until.js';

before(() => setViewport({ width: 1000, height: 900 }));

const ANKLE = 'Dorsalis pedis, right';

interface Heard {
  readonly control: LimbExamination;
  readonly flags: LimbFlags;
  /** All that was spoken so far. */
  readonly spoken: string[];
  /** Everything that the bar has shown since. */
  readonly shown: string[];
}

/** An examination open at its pressures, every word of its red flags kept. */
async function open(): Promise<Heard> {
  const control = await fixture<LimbExamination>(html`<limb-examination lang="en"></limb-examination>`);
  await control.openPart('pressures');
  await drawn(control);
  const flags = control.renderRoot.querySelector('limb-flags') as LimbFlags;
  const [spoken, shown]: [string[], string[]] = [[], []];
  new MutationObserver(() => {
    const [said, line] = [readableText(byRole(flags, 'alert')), readableText(flags)];
    if (said !== '' && said !== spoken.at(-1)) spoken.push(said);
    if (line !== (shown.at(-1) ?? '')) shown.push(line);
  }).observe(flags.renderRoot, { subtree: true, childList: true, characterData: true });
  return { control, flags, spoken, shown };
}

describe('red flags while a pressure is typed in', () => {
  it('take a normal pressure for what it is, not for its first keys', async () => {
    const { control, spoken, shown } = await open();
    field(control, ANKLE).focus();
    await type('140');
    // What is no number counts at once, and the pressure with it.
    await press('Tab');
    control.value = { ...control.examination, examiner: 'Somebody' };
    await drawn(control);
    expect(control.examination.pressures?.['dorsalis-pedis']?.right).to.equal(140);
    expect(spoken).to.deep.equal([]);
    expect(shown).to.deep.equal([]);
  });

  it('are raised once by a pressure that is low when it stands, and by the next field at the latest', async () => {
    const { control, flags, spoken } = await open();
    field(control, ANKLE).focus();
    await type('14');
    expect(control.examination.pressures?.['dorsalis-pedis']?.right).to.equal(14);
    await until(() => spoken.length > 0, 'a flag that is spoken');
    expect(spoken).to.have.length(1);
    expect(spoken[0]).to.match(/^Red flag: .*right leg/);
    await press('Backspace', 'Backspace');
    await type('120');
    field(control, 'Dorsalis pedis, left').focus();
    await type('1');
    await drawn(control);
    expect(spoken).to.have.length(2);
    expect(spoken[1]).to.match(/^Red flag withdrawn: .*right leg/);
    expect(readableText(flags)).not.to.include('left leg');
  });
});
