import { expect, fixture, html } from '@open-wc/testing';
import { until } from '../tools/until.js';
import 'pulse-map/elements/limb-flags/define';
import 'pulse-map/elements/limb-staging/define';
import 'pulse-map/elements/limb-stopwatch/define';
import type { LimbFlags } from 'pulse-map/elements/limb-flags';
import type { LimbStaging } from 'pulse-map/elements/limb-staging';
import type { LimbStopwatch } from 'pulse-map/elements/limb-stopwatch';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { chronic, threatened } from '../../../stories/limb-records.js';
import { click, press, setViewport, type } from '../../tools/real-input.js';
import { pass, withStandingClock } from '../tools/bedside.js';
import { drawn, field } from '../tools/limbs.js';
import { eventsOf } from '../tools/map.js';
import { byRole, everything, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 1000, height: 900 }));

describe('limb-flags', () => {
  async function open(examination: Examination = emptyExamination()): Promise<LimbFlags> {
    const control = await fixture<LimbFlags>(html`<limb-flags lang="en"></limb-flags>`);
    control.examination = examination;
    await drawn(control);
    return control;
  }

  it('takes no room while there is nothing to warn of', async () => {
    const control = await open();
    expect(control.getBoundingClientRect().height).to.equal(0);
  });

  it('says what is in danger, what raised it, what is missing, and that local pathways decide; and speaks it', async () => {
    const control = await open();
    control.examination = threatened;
    control.open = true;
    await drawn(control);
    const said = readableText(control);
    expect(said).to.include('Acute limb ischaemia likely, limb may be threatened (Rutherford IIb): left leg');
    expect(said).to.include('absent: left popliteal, left posterior tibial and left dorsalis pedis pulses');
    expect(said).to.include('Call the vascular team now; follow your local acute limb ischaemia pathway.');
    expect(said).to.include('not a diagnosis');
    expect(readableText(byRole(control, 'alert'))).to.match(/^Red flag: Acute limb ischaemia likely/);
  });

  it('goes with its findings, and speaks nothing twice', async () => {
    const control = await open(threatened);
    control.examination = { ...threatened, examiner: 'Somebody' };
    await drawn(control);
    expect(readableText(byRole(control, 'alert'))).to.match(/^Red flag: Acute limb ischaemia likely/);
    control.examination = emptyExamination();
    await drawn(control);
    expect(control.getBoundingClientRect().height).to.equal(0);
  });
});

describe('limb-stopwatch', () => {
  withStandingClock();

  async function open(attributes = ''): Promise<LimbStopwatch> {
    const box = await fixture<HTMLElement>(
      `<div lang="en"><limb-stopwatch ${attributes}></limb-stopwatch></div>`,
    );
    const control = box.querySelector('limb-stopwatch') as LimbStopwatch;
    await drawn(control);
    return control;
  }

  it('is started and stopped by touch, and shows true time after two minutes of sleep', async () => {
    const control = await open();
    const events = eventsOf(control);
    await click(byRole(control, 'button', 'Start'), { kind: 'touch' });
    await drawn(control);
    pass(123.4);
    await click(byRole(control, 'button', 'Stop'), { kind: 'touch' });
    await drawn(control);
    expect(control.seconds).to.equal(123.4);
    expect(readableText(byRole(control, 'timer')).replaceAll(' ', '')).to.equal('2:03.4');
    expect(events).to.deep.equal({ input: 2, change: 1 });
  });

  it('takes laps while it runs, is corrected by hand, and refuses what is no time', async () => {
    const control = await open();
    await click(byRole(control, 'button', 'Start'));
    pass(5);
    await drawn(control);
    await click(byRole(control, 'button', 'Lap'));
    pass(4);
    await click(byRole(control, 'button', 'Stop'));
    await click(byRole(control, 'button', 'Correct by hand'));
    await drawn(control);
    const time = field(control, 'Time in seconds');
    time.focus();
    time.select();
    await type('soon');
    await press('Tab');
    await drawn(control);
    expect(readableText(control)).to.include('“soon” was not taken. Expected a number from 0 to 3600 s.');
    expect(control.seconds).to.equal(9);
    field(control, 'Time in seconds').focus();
    field(control, 'Time in seconds').select();
    await type('8,5');
    await press('Tab');
    await drawn(control);
    expect(control.seconds).to.equal(8.5);
    expect(control.laps).to.deep.equal([5]);
  });

  it('runs on over a reload when it is kept', async () => {
    const control = await open('keep="left"');
    await click(byRole(control, 'button', 'Start'));
    pass(20);
    control.remove();
    const again = await open('keep="left"');
    pass(10);
    expect([again.running, again.seconds]).to.deep.equal([true, 30]);
    again.toggle();
    again.reset();
    again.remove();
    expect((await open('keep="left"')).seconds).to.equal(0);
  });

  it('counts down and stops by itself', async () => {
    const control = await open('countdown="180"');
    const events = eventsOf(control);
    await press('Tab', 'Space');
    await drawn(control);
    expect(control.running).to.equal(true);
    pass(200);
    await until(() => !control.running, 'the countdown ends');
    await drawn(control);
    expect([control.running, control.seconds]).to.deep.equal([false, 180]);
    expect(events.change).to.equal(1);
  });

  it('is worked by a pedal from anywhere, but not while text is typed', async () => {
    const box = await fixture<HTMLElement>(
      html`<div lang="en"><input aria-label="Note" /><limb-stopwatch pedal="b"></limb-stopwatch></div>`,
    );
    const control = box.querySelector('limb-stopwatch') as LimbStopwatch;
    await drawn(control);
    box.querySelector('input')?.focus();
    await press('b');
    expect(control.running).to.equal(false);
    box.querySelector('input')?.blur();
    await press('b');
    expect(control.running).to.equal(true);
    pass(3);
    await press('b');
    expect([control.running, control.seconds]).to.deep.equal([false, 3]);
    box.remove();
  });
});

describe('limb-staging', () => {
  async function open(examination: Examination): Promise<LimbStaging> {
    const control = await fixture<LimbStaging>(html`<limb-staging lang="en"></limb-staging>`);
    control.examination = examination;
    control.value = examination.staging;
    await drawn(control);
    return control;
  }
  const scheme = (control: LimbStaging, name: string): HTMLElement =>
    everything(control).find(
      (e) => e.getAttribute('part') === 'scheme' && e.getAttribute('aria-label') === name,
    ) as HTMLElement;

  it('shows each stage with what it rests on and what is missing', async () => {
    const control = await open(chronic);
    const fontaine = readableText(scheme(control, 'Fontaine stage, Left leg'));
    expect(fontaine).to.include('IIb moderate to severe claudication');
    expect(fontaine).to.include('From: claudication and pain-free walking distance 180 m (cut-off 200 m).');
    const wifi = readableText(
      scheme(control, 'Stage of wound, ischaemia and foot infection (WIfI), Right leg'),
    );
    expect(wifi).to.include('4 high risk of amputation');
    expect(wifi).to.include('wound grade 2 and ischaemia grade 2');
    expect(readableText(control)).to.include('(WIfI) after Mills 2014.');
  });

  it('is overruled by the clinician: both stages stay, and can be taken back', async () => {
    const control = await open({ ...chronic, staging: undefined });
    const events = eventsOf(control);
    const group = scheme(control, 'Rutherford category, Left leg');
    await click(group.querySelector('summary') as HTMLElement);
    await drawn(control);
    const list = group.querySelector('select') as HTMLSelectElement;
    list.focus();
    await press('4');
    await drawn(control);
    expect(control.value).to.deep.equal({ leg: { left: { rutherford: { stage: 4, derived: 1 } } } });
    const why = field(group, 'Why');
    why.focus();
    await type('pain at night');
    await press('Tab');
    await drawn(control);
    expect(control.value?.leg?.left?.rutherford).to.deep.equal({
      stage: 4,
      derived: 1,
      why: 'pain at night',
    });
    expect(readableText(scheme(control, 'Rutherford category, Left leg'))).to.match(
      /Yours: 4 .*rest pain\. Derived: 1/,
    );
    expect(events, 'a stage, then eleven keys').to.deep.equal({ input: 12, change: 2 });
    list.focus();
    await press('Home');
    await drawn(control);
    expect(control.value).to.equal(undefined);
  });

  it('does not offer the wound scheme where it is not meant to be used', async () => {
    const control = await open(threatened);
    expect(readableText(control)).to.include('Not meant for acute limb ischaemia.');
    expect(scheme(control, 'Stage of wound, ischaemia and foot infection (WIfI), Left leg')).to.equal(
      undefined,
    );
  });
});
