import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/bedside-test/define';
import 'pulse-map/elements/limb-flags/define';
import 'pulse-map/elements/limb-pressures/define';
import 'pulse-map/elements/limb-staging/define';
import 'pulse-map/locale/de';
import type { BedsideTest } from 'pulse-map/elements/bedside-test';
import type { LimbFlags } from 'pulse-map/elements/limb-flags';
import type { LimbPressures } from 'pulse-map/elements/limb-pressures';
import type { LimbStaging } from 'pulse-map/elements/limb-staging';
import { redFlags } from '../../../src/triage/index.js';
import { threatened } from '../../../stories/limb-records.js';
import { click, press, setViewport } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { allByRole, byRole, everything } from '../tools/perceive.js';

before(() => setViewport({ width: 1000, height: 900 }));

/** The sources that can be seen. */
const listed = (control: Element): string[] =>
  everything(control)
    .filter((e) => e.localName === 'li' && e.closest('[part=sources]') && e.checkVisibility())
    .map((e) => e.textContent);

describe('the sources of a verdict', () => {
  it('of a test stand behind one mark, not in the chooser of limits', async () => {
    const control = await fixture<BedsideTest>(
      html`<bedside-test test="hand-arch" lang="en"></bedside-test>`,
    );
    control.value = { right: { ulnar: { seconds: 8 }, limit: 10 } };
    control.side = 'right';
    await drawn(control);
    const limits = [...(field(control, 'Cut-off used') as HTMLSelectElement).options].map((o) =>
      o.text.trim(),
    );
    expect(limits).to.deep.equal(['9 s', '5 s', '6 s', '10 s', '15 s']);
    expect(listed(control)).to.deep.equal([]);
    const mark = byRole(control, 'button', 'Sources');
    expect(mark.getAttribute('aria-expanded')).to.equal('false');
    mark.focus();
    await press('Enter');
    expect(mark.getAttribute('aria-expanded')).to.equal('true');
    expect(listed(control).join()).to.include('anaesthesia texts');
    control.value = { right: { ulnar: { seconds: 8 }, limit: 9 } };
    await drawn(control);
    expect(listed(control).join(), 'follows the limit and stays open').to.match(/^Barbeau/);
    await press('Enter');
    expect(listed(control)).to.deep.equal([]);
  });

  it('of a flag stand behind one mark each, in the language of the page', async () => {
    const control = await fixture<LimbFlags>(html`<limb-flags lang="de"></limb-flags>`);
    control.examination = threatened;
    control.open = true;
    await drawn(control);
    const marks = allByRole(control, 'button', 'Quellen');
    expect(marks).to.have.length(redFlags(threatened).length);
    await click(marks[0] as HTMLElement);
    expect(listed(control).join()).to.include('Rutherford RB').and.to.include('Sicherheitsregel');
  });

  it('of a stage stand behind one mark a scheme, and what cannot be staged has none', async () => {
    const control = await fixture<LimbStaging>(html`<limb-staging lang="en"></limb-staging>`);
    await drawn(control);
    expect(allByRole(control, 'button', 'Sources')).to.have.length(0);
    control.examination = threatened;
    await drawn(control);
    const acute = byRole(control, 'group', /^Acute limb ischaemia class .*left leg$/i);
    await click(byRole(acute, 'button', 'Sources'));
    expect(listed(control).join()).to.include('Rutherford RB').and.not.to.include('Mills');
  });

  it('of pressures stand behind one mark, those of what was measured', async () => {
    const control = await fixture<LimbPressures>(html`<limb-pressures lang="en"></limb-pressures>`);
    await drawn(control);
    expect(allByRole(control, 'button', 'Sources')).to.have.length(0);
    control.value = { brachial: { right: 140, left: 138 }, 'posterior-tibial': { left: 60 } };
    await drawn(control);
    await click(byRole(control, 'button', 'Sources'));
    expect(listed(control).join()).to.include('Gornik HL').and.not.to.include('forearm');
  });
});
