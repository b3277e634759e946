import { expect, fixture } from '@open-wc/testing';
import type { LimbContext } from 'pulse-map';
import { click, emulate, press, setViewport } from '../../tools/real-input.js';
import { eventsOf } from '../tools/map.js';
import { drawn, field } from '../tools/limbs.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';
import 'pulse-map/elements/limb-context/define';

before(() => setViewport({ width: 1000, height: 900 }));
afterEach(() => emulate({}));

async function open(attributes = '', value?: LimbContext['value']): Promise<LimbContext> {
  const control = await fixture<LimbContext>(`<limb-context ${attributes}></limb-context>`);
  if (value) control.value = value;
  await drawn(control);
  return control;
}

async function choose(select: HTMLSelectElement, value: string): Promise<void> {
  select.focus();
  select.value = value;
  select.dispatchEvent(new Event('change', { bubbles: true, composed: true }));
  await drawn(select);
}

describe('<limb-context>', () => {
  it('says nothing until something is entered', async () => {
    const control = await open();
    expect(control.value).to.equal(undefined);
    expect(
      allByRole(control, 'radio').filter((r) => r.getAttribute('aria-checked') === 'true'),
    ).to.have.length(0);
  });

  it('takes age, diabetes, smoking and cause, each with one click and one input and one change', async () => {
    const control = await open();
    const events = eventsOf(control);
    await click(byRole(control, 'radio', '60 to 79'));
    await click(byRole(control, 'radio', 'No'));
    await click(byRole(control, 'radio', 'Now'));
    await click(byRole(control, 'radio', 'Embolism'));
    await drawn(control);
    expect(control.value).to.deep.equal({
      ageBand: '60-79',
      diabetes: false,
      smoking: 'current',
      mechanism: 'embolic',
    });
    expect(events).to.deep.equal({ input: 4, change: 4 });
  });

  it('takes an answer back by pressing it again, and by Delete', async () => {
    const control = await open('', { ageBand: '60-79', diabetes: true });
    await click(byRole(control, 'radio', '60 to 79'));
    byRole(control, 'radio', 'Yes').focus();
    await press('Delete');
    expect(control.value).to.equal(undefined);
  });

  it('keeps right and left apart, by keys alone', async () => {
    const control = await open();
    const group = byRole(control, 'radiogroup', 'Amputated, left leg');
    group.querySelector<HTMLElement>('[tabindex="0"]')?.focus();
    await press('3');
    const missing = byRole(control, 'group', 'Congenitally absent pulse, right leg');
    missing.querySelector<HTMLElement>('[tabindex="0"]')?.focus();
    await press('1');
    await drawn(control);
    expect(control.value).to.deep.equal({
      legAmputation: { left: 'below-knee' },
      absentFromBirth: { right: ['dorsalis-pedis'] },
    });
  });

  it('takes where it hurts, where the injury was, and leaves the pain to another control when told to', async () => {
    const control = await open();
    await click(byRole(byRole(control, 'radiogroup', 'Claudication in, right leg'), 'radio', 'Upper calf'));
    await choose(field<HTMLSelectElement>(control, 'Site of trauma or surgery, left'), 'knee');
    expect(control.value).to.deep.equal({
      legClaudication: { right: 'calf-upper' },
      injury: { left: 'knee' },
    });
    const other = await open('no-claudication');
    expect(allByRole(other, 'radiogroup', /Claudication in/)).to.have.length(0);
  });

  it('lists bypasses and stents, adds one and takes it away', async () => {
    const control = await open();
    expect(readableText(control)).to.contain('None recorded.');
    await choose(field<HTMLSelectElement>(control, 'Kind'), 'stent');
    await choose(field<HTMLSelectElement>(control, 'Side'), 'left');
    await choose(field<HTMLSelectElement>(control, 'Artery'), 'common-iliac');
    await click(byRole(control, 'button', 'Add'));
    await drawn(control);
    expect(control.value?.revascularisations).to.deep.equal([
      { artery: 'common-iliac', side: 'left', kind: 'stent' },
    ]);
    expect(readableText(control)).to.contain('Stent in left common iliac');
    await click(byRole(control, 'button', 'Remove: Stent in left common iliac'));
    await drawn(control);
    expect(control.value).to.equal(undefined);
  });

  it('leaves a bypass that was begun for one record out of the next', async () => {
    const control = await open('', { ageBand: '60-79' });
    const begun = () =>
      ['Kind', 'Artery', 'Side'].map((label) => field<HTMLSelectElement>(control, label).selectedIndex);
    const before = begun();
    await choose(field<HTMLSelectElement>(control, 'Kind'), 'stent');
    await choose(field<HTMLSelectElement>(control, 'Side'), 'left');
    await choose(field<HTMLSelectElement>(control, 'Artery'), 'popliteal');
    expect(begun()).to.not.deep.equal(before);
    control.value = { ageBand: '20-39' };
    await drawn(control);
    expect(begun()).to.deep.equal(before);
  });

  it('offers no side for an artery of the midline', async () => {
    const control = await open();
    await choose(field<HTMLSelectElement>(control, 'Artery'), 'infrarenal-aorta');
    expect(field<HTMLSelectElement>(control, 'Side').disabled).to.equal(true);
    await click(byRole(control, 'button', 'Add'));
    expect(control.value?.revascularisations?.[0]?.side).to.equal('midline');
  });

  it('submits its value and returns to the first one on reset', async () => {
    const form = await fixture<HTMLFormElement>(
      `<form><limb-context name="known" value='{"diabetes":true}'></limb-context></form>`,
    );
    const control = form.querySelector('limb-context') as LimbContext;
    await drawn(control);
    await click(byRole(control, 'radio', '20 to 39'));
    expect(JSON.parse(String(new FormData(form).get('known')))).to.deep.equal({
      diabetes: true,
      ageBand: '20-39',
    });
    form.reset();
    expect(control.value).to.deep.equal({ diabetes: true });
  });

  it('names what is wrong with a value it cannot read, and shows nothing of the one before', async () => {
    const control = await open('', { ageBand: '40-59' });
    const given = { diabetes: 'maybe' };
    control.value = given as never;
    expect(control.value).to.equal(given);
    expect(control.sealed).to.equal(true);
    expect(control.faults[0]?.path).to.deep.equal(['diabetes']);
    await drawn(control);
    expect(allByRole(control, 'radio')).to.have.length(0);
  });

  it('changes nothing while it is read-only or disabled', async () => {
    for (const bar of ['readonly', 'disabled']) {
      const control = await open(bar, {
        revascularisations: [{ artery: 'popliteal', side: 'right', kind: 'bypass' }],
      });
      expect(allByRole(control, 'button', /Remove|Add/)).to.have.length(0);
      await click(byRole(control, 'radio', '60 to 79'));
      expect(control.value).to.deep.equal({
        revascularisations: [{ artery: 'popliteal', side: 'right', kind: 'bypass' }],
      });
    }
  });

  for (const scheme of ['light', 'dark'] as const) {
    it(`has no accessibility fault that axe finds, ${scheme}`, async () => {
      await emulate({ colorScheme: scheme });
      const control = await open('', { ageBand: '60-79', legAmputation: { left: 'toes' } });
      await expect(control).to.be.accessible();
    });
  }
});

describe('what matters to the arteries', () => {
  const pick = async (control: Element, where: string, word: string): Promise<void> => {
    const groups = [...allByRole(control, 'group', where), ...allByRole(control, 'radiogroup', where)];
    const [button] = groups.flatMap((group) => [
      ...allByRole(group, 'checkbox', word),
      ...allByRole(group, 'radio', word),
    ]);
    if (!button) throw new Error(`no "${word}" in "${where}"`);
    await click(button);
    await drawn(control);
  };
  /** Shows every group, whatever it holds. */
  const unfold = async (control: LimbContext): Promise<void> => {
    for (const details of control.renderRoot.querySelectorAll('details')) details.open = true;
    await drawn(control);
  };

  it('takes medicines, aneurysms, access, lines and cold injuries, each with its side', async () => {
    const control = await open();
    await unfold(control);
    await pick(control, 'Medicines', 'Anticoagulant');
    await pick(control, 'Known aneurysm', 'Abdominal aorta');
    await pick(control, 'Known aneurysm, left', 'Popliteal artery');
    await pick(control, 'Dialysis access, right arm', 'Fistula');
    await pick(control, 'Signs at the access, right arm', 'No thrill');
    await pick(control, 'Line or catheter in an artery, left arm', 'Radial catheter');
    await pick(control, 'Cold injury, left leg', 'Frostbite');
    expect(control.value).to.deep.equal({
      medicines: ['anticoagulant'],
      aneurysms: [{ place: 'abdominal-aorta' }, { place: 'popliteal', side: 'left' }],
      access: [{ side: 'right', kind: 'fistula', signs: ['no-thrill'] }],
      devices: [{ limb: 'arm', side: 'left', kind: 'radial-catheter' }],
      coldInjury: { leg: { left: {} } },
    });
    for (const [where, word] of [
      ['Medicines', 'None of these'],
      ['Known aneurysm', 'None known'],
      ['Dialysis access, right arm', 'Fistula'],
      ['Line or catheter in an artery, left arm', 'Radial catheter'],
      ['Cold injury, left leg', 'Frostbite'],
    ] as const)
      await pick(control, where, word);
    expect(control.value).to.deep.equal({ medicines: [], aneurysms: [] });
  });

  it('takes the route of a bypass, its own pulse and signs of infection over it', async () => {
    const control = await open();
    await choose(field<HTMLSelectElement>(control, 'Course'), 'axillo-femoral');
    await choose(field<HTMLSelectElement>(control, 'Artery'), 'common-iliac');
    await click(byRole(control, 'button', 'Add'));
    await drawn(control);
    await click(byRole(control, 'radio', 'Absent'));
    await click(byRole(control, 'checkbox', 'Sinus'));
    await drawn(control);
    expect(control.value?.revascularisations).to.deep.equal([
      {
        artery: 'common-iliac',
        side: 'right',
        kind: 'bypass',
        route: 'axillo-femoral',
        graftPulse: 'absent',
        infectionSigns: ['sinus'],
      },
    ]);
  });

  it('keeps a second access of an arm, which it does not show', async () => {
    const second = { side: 'left', kind: 'graft' } as const;
    const control = await open('', { access: [{ side: 'left', kind: 'fistula' }, second] });
    await pick(control, 'Dialysis access, left arm', 'Graft');
    expect(control.value?.access).to.deep.equal([{ side: 'left', kind: 'graft' }, second]);
  });
});
