import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-pressures/define';
import type { LimbPressures } from 'pulse-map/elements/limb-pressures';
import { emptyExamination } from 'pulse-map/core';
import type { PressuresPart } from 'pulse-map/core/tables';
import { click, consoleOf, focused, press, setViewport, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { eventsOf } from '../tools/map.js';
import { byRole, everything, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 1000, height: 900 }));

async function open(value?: PressuresPart): Promise<{ form: HTMLFormElement; control: LimbPressures }> {
  const form = await fixture<HTMLFormElement>(
    html`<form lang="en"><limb-pressures name="pressures" .value=${value}></limb-pressures></form>`,
  );
  const control = form.querySelector('limb-pressures') as LimbPressures;
  await drawn(control);
  return { form, control };
}

/** Types into a field in place of what stands there, and leaves it. */
async function enter(control: LimbPressures, label: string, text: string): Promise<void> {
  const input = field(control, label);
  input.focus();
  input.select();
  await type(text);
  await press('Tab');
  await drawn(control);
}

describe('limb-pressures', () => {
  it('works out the index from the figures entered, underlines them, and sends them with the form', async () => {
    const { form, control } = await open();
    const events = eventsOf(form);
    await enter(control, 'Arm, right', '142');
    await enter(control, 'Arm, left', '138');
    await enter(control, 'Posterior tibial, left', '82');
    await enter(control, 'Dorsalis pedis, left', '74');
    expect(readableText(control)).to.include('0.58 L, abnormal');
    expect(readableText(control)).to.include('Denominator: higher arm, right (142). 82 ÷ 142.');
    const used = everything(control).filter((e) => e.matches('.cell.used input'));
    expect(used.map((input) => input.getAttribute('aria-label'))).to.deep.equal([
      'Arm, right',
      'Posterior tibial, left',
    ]);
    expect(events, 'one input for each key').to.deep.equal({ input: 10, change: 4 });
    expect(JSON.parse(String(new FormData(form).get('pressures')))).to.deep.equal(control.value);
    expect(control.value).to.deep.equal({
      brachial: { right: 142, left: 138 },
      'posterior-tibial': { left: 82 },
      'dorsalis-pedis': { left: 74 },
    });
  });

  it('forgets what was half typed in where the reason for no number is picked instead', async () => {
    const { control } = await open();
    field(control, 'Great toe, left').focus();
    await type('high');
    // As a program for dictation does it: the focus stays in the field, which then is there no more.
    const reason = field<HTMLSelectElement>(control, 'No number for great toe, left: why');
    reason.value = 'incompressible';
    const said = await consoleOf(async () => {
      reason.dispatchEvent(new Event('change', { bubbles: true }));
      await drawn(control);
    });
    expect(said).to.deep.equal([]);
    expect(control.value).to.deep.equal({ toe: { left: 'incompressible' } });
    expect(control.unfinished).to.equal(undefined);
  });

  for (const typed of ['400', '-5', 'high', '12o', '1e2']) {
    it(`refuses "${typed}" with a sentence, and loses nothing`, async () => {
      const { form, control } = await open({ brachial: { right: 140 }, toe: { left: 44 } });
      await enter(control, 'Great toe, left', typed);
      const said = readableText(control);
      expect(said).to.include(
        `Great toe, left: “${typed}” was not taken. Expected a number from 0 to 300 mmHg`,
      );
      expect(field(control, 'Great toe, left').value, 'what was typed stays').to.equal(typed);
      expect(control.value?.toe).to.deep.equal({ left: 44 });
      expect(control.validity.badInput).to.equal(true);
      expect(form.checkValidity()).to.equal(false);
      await enter(control, 'Arm, left', '120');
      expect(field(control, 'Great toe, left').value, 'after another entry').to.equal(typed);
      expect(control.value?.brachial).to.deep.equal({ right: 140, left: 120 });
      await enter(control, 'Great toe, left', '50');
      expect(control.value?.toe).to.deep.equal({ left: 50 });
      expect(readableText(control)).not.to.include('was not taken');
      expect(form.checkValidity()).to.equal(true);
    });
  }

  it('refuses both arms at 0, since nothing could be divided by them', async () => {
    const { control } = await open({ brachial: { right: 0 } });
    await enter(control, 'Arm, left', '0');
    expect(readableText(control)).to.include('Both arms at 0');
    expect(control.value?.brachial).to.deep.equal({ right: 0 });
  });

  it('tells a missing arm and guesses none', async () => {
    const { control } = await open({ 'posterior-tibial': { left: 75 } });
    expect(readableText(control)).to.include(
      'No ankle-brachial pressure index (ABPI) without a brachial pressure.',
    );
    await enter(control, 'Arm, left', '150');
    expect(readableText(control)).to.include('0.50 L, abnormal');
    expect(readableText(control)).to.include(
      'Right brachial pressure not recorded: if it is higher, every index is lower than shown.',
    );
  });

  it('takes a reason in place of a number, and a number again', async () => {
    const { control } = await open({ brachial: { right: 140 }, 'dorsalis-pedis': { left: 90 } });
    const why = field<HTMLSelectElement>(control, /^No number for dorsalis pedis, left/);
    why.focus();
    await press('i');
    await drawn(control);
    expect(control.value?.['dorsalis-pedis']).to.deep.equal({ left: 'incompressible' });
    expect(readableText(control)).to.include('L, incompressible');
    expect(readableText(control)).to.include(
      'Left: ankle arteries incompressible; measure toe pressure and TBPI.',
    );
    field<HTMLSelectElement>(control, /^No number for dorsalis pedis, left/).focus();
    await press('ArrowUp');
    await drawn(control);
    expect(control.value?.['dorsalis-pedis']).to.equal(undefined);
    await enter(control, 'Dorsalis pedis, left', '88');
    expect(control.value?.['dorsalis-pedis']).to.deep.equal({ left: 88 });
  });

  it('enters and shows kPa, keeps mmHg, and comes back to the same figures', async () => {
    const { control } = await open();
    await click(byRole(control, 'radio', 'kPa'));
    await drawn(control);
    await enter(control, 'Arm, right', '16,0');
    await enter(control, 'Great toe, right', '6.1');
    expect(control.value?.brachial).to.deep.equal({ right: 120 });
    expect(field(control, 'Great toe, right').value).to.equal('6.1');
    await enter(control, 'Arm, left', '50');
    expect(readableText(control)).to.include('Expected a number from 0 to 40 kPa');
    await click(byRole(control, 'radio', 'mmHg'));
    await drawn(control);
    expect(field(control, 'Arm, right').value).to.equal('120');
  });

  it('goes on to the next field at Enter', async () => {
    const { control } = await open();
    field(control, 'Arm, right').focus();
    await press('1', '4', '0', 'Enter');
    await drawn(control);
    expect(focused()).to.equal(field(control, 'Arm, left'));
    expect(control.value?.brachial).to.deep.equal({ right: 140 });
  });

  it('lets the method be changed where sources disagree, and keeps it in the record', async () => {
    const { form, control } = await open({
      brachial: { right: 100, left: 100 },
      'posterior-tibial': { right: 120 },
      'dorsalis-pedis': { right: 80 },
    });
    expect(readableText(control)).to.include('1.20 R, normal');
    const methods = everything(control).find((e) =>
      e.textContent?.trim().startsWith('Method and limits'),
    ) as HTMLElement;
    await click(methods);
    await drawn(control);
    const events = eventsOf(form);
    const list = field<HTMLSelectElement>(control, 'Ankle artery divided');
    expect(list.selectedOptions[0]?.label).to.equal('The higher one (by default)');
    list.focus();
    await press('ArrowDown', 'ArrowDown');
    await drawn(control);
    expect(readableText(control)).to.include('0.80 R, abnormal');
    expect(control.value?.method).to.deep.equal({ ankle: 'lower' });
    expect(JSON.parse(String(new FormData(form).get('pressures'))).method).to.deep.equal({ ankle: 'lower' });
    expect(events, 'one step for each choice passed').to.deep.equal({ input: 2, change: 2 });
    await press('ArrowUp', 'ArrowUp');
    await drawn(control);
    expect(control.value?.method, 'the default again').to.equal(undefined);
  });

  it('bars the methods where nothing may be changed, and those the page decides', async () => {
    const { control } = await open({
      brachial: { right: 100 },
      'posterior-tibial': { right: 120 },
      'dorsalis-pedis': { right: 80 },
      method: { ankle: 'higher' },
    });
    const unfold = async (): Promise<void> => {
      for (const fold of everything(control)) if (fold instanceof HTMLDetailsElement) fold.open = true;
      await drawn(control);
    };
    const list = (label: string) => field<HTMLSelectElement>(control, label);
    control.settings = { ankle: 'lower' };
    await unfold();
    expect(list('Ankle artery divided').disabled, 'decided by the page').to.equal(true);
    expect(list('Ankle artery divided').value).to.equal('lower');
    expect(readableText(control)).to.include('0.80 R, abnormal');
    expect(list('Threatened limb by').disabled).to.equal(false);
    control.settings = {};
    control.readOnly = true;
    await unfold();
    const fields = [
      ...control.renderRoot.querySelectorAll<HTMLSelectElement>('.methods select, .curves select'),
    ];
    expect(fields.length).to.be.above(4);
    for (const field of fields) expect(field.disabled, field.labels?.[0]?.textContent ?? '').to.equal(true);
  });

  it('records the shape of the volume curve at each ankle', async () => {
    const { control } = await open();
    await click(
      everything(control).find((e) => e.textContent?.trim() === 'Segmental pressures') as HTMLElement,
    );
    const list = field<HTMLSelectElement>(control, 'Volume curve at the ankle, left');
    list.focus();
    await press('f');
    await drawn(control);
    expect(control.value).to.deep.equal({ volumeCurve: { left: 'flat' } });
  });

  it('draws each leg from arm to toe, and says the same in words', async () => {
    const { control } = await open({
      brachial: { right: 142 },
      'posterior-tibial': { right: 146, left: 82 },
      toe: { left: 44 },
    });
    const plot = byRole(control, 'img', /^Pressure from arm to toe/);
    expect(plot.getAttribute('aria-label')).to.include('Right: arm 142, ankle 146 mmHg.');
    expect(plot.getAttribute('aria-label')).to.include('Left: arm 142, ankle 82, toe 44 mmHg.');
    const [right, left] = ['right', 'left'].map(
      (s) => plot.querySelector(`.${s} .line`)?.getAttribute('d') ?? '',
    );
    expect(right).to.match(/^M46,.*L181,/);
    expect(left?.split('L')).to.have.length(3);
  });

  it('names what is wrong with a value from code for developers, and shows nothing of the one before', async () => {
    const { control } = await open({ toe: { left: 44 } });
    control.value = { toe: { left: 999 } } as never;
    expect(control.value).to.deep.equal({ toe: { left: 999 } });
    expect(control.faults[0]?.path).to.deep.equal(['toe', 'left']);
    control.value = null;
    expect(control.value).to.equal(undefined);
    expect(control.validity.valid).to.equal(true);
  });

  it('resets to its attribute and follows a disabled fieldset', async () => {
    const form = await fixture<HTMLFormElement>(
      html`<form>
        <fieldset><limb-pressures name="p" value='{"toe":{"right":90}}'></limb-pressures></fieldset>
      </form>`,
    );
    const control = form.querySelector('limb-pressures') as LimbPressures;
    control.value = { toe: { right: 30 } };
    form.reset();
    await drawn(control);
    expect(control.value).to.deep.equal({ toe: { right: 90 } });
    (form.querySelector('fieldset') as HTMLFieldSetElement).disabled = true;
    await drawn(control);
    expect(new FormData(form).has('p')).to.equal(false);
    expect(field(control, 'Great toe, right').disabled).to.equal(true);
  });

  it('warns of the cuffs that this patient’s record speaks against, above the first field', async () => {
    const { control } = await open();
    const cautions = () => readableText(byRole(control, 'note'));
    expect(cautions()).not.to.match(/Left (arm|leg),/);
    control.examination = {
      ...emptyExamination(),
      context: {
        access: [{ side: 'left', kind: 'fistula' }],
        revascularisations: [{ artery: 'popliteal', side: 'left', kind: 'bypass' }],
      },
    };
    await drawn(control);
    expect(cautions()).to.include('Left arm, dialysis access: no cuff on this limb.');
    expect(cautions()).to.include('Left leg, graft or stent: ask your local rule before a cuff');
    control.triage = { graftCuff: 'allowed' };
    await drawn(control);
    expect(cautions()).not.to.include('graft or stent: ask');
    const first = field(control, 'Arm, right');
    const note = byRole(control, 'note');
    expect(note.compareDocumentPosition(first) & Node.DOCUMENT_POSITION_FOLLOWING).to.be.above(0);
  });

  it('warns beside the index that both arms may be diseased', async () => {
    const { control } = await open();
    await enter(control, 'Arm, right', '90');
    await enter(control, 'Arm, left', '92');
    await enter(control, 'Posterior tibial, left', '130');
    expect(readableText(control)).to.match(/Both arm arteries may be diseased: left ABPI 1\.41/);
    await enter(control, 'Arm, right', '128');
    expect(readableText(control)).not.to.include('left ABPI 1.41');
  });

  it('tells an ankle index that fell since the visit before', async () => {
    const { control } = await open();
    control.earlier = { brachial: { right: 140 }, 'posterior-tibial': { left: 133 } };
    await enter(control, 'Arm, right', '140');
    await enter(control, 'Posterior tibial, left', '126');
    expect(readableText(control)).not.to.include('earlier visit');
    await enter(control, 'Posterior tibial, left', '112');
    expect(readableText(control)).to.include('Left: ABPI 0.80, 0.95 at the earlier visit: fallen by 0.15');
  });

  it('takes a note in the examiner’s own words', async () => {
    const { control } = await open();
    await enter(control, 'Note', 'cuff slipped once');
    expect(control.value).to.deep.equal({ note: 'cuff slipped once' });
  });
});
