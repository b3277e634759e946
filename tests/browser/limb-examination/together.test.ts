import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { Examination } from 'pulse-map/core';
import { chronic, threatened } from '../../../stories/limb-records.js';
import { click, press, setViewport, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { eventsOf } from '../tools/map.js';
import { allByRole, byRole, everything, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 1100, height: 1000 }));

async function open(examination?: Examination): Promise<LimbExamination> {
  const page = await fixture<HTMLElement>(
    html`<main lang="en">
      <h1>Visit</h1>
      <form><limb-examination name="e"></limb-examination></form>
    </main>`,
  );
  const control = page.querySelector('limb-examination') as LimbExamination;
  if (examination) control.examination = examination;
  await drawn(control);
  return control;
}

const pick = async (control: LimbExamination, group: string, word: string): Promise<void> => {
  const [found] = allByRole(control, 'radiogroup', group);
  await click(byRole(found as HTMLElement, 'radio', word));
  await drawn(control);
};

describe('limb-examination', () => {
  it('holds one record and one undo for all its parts', async () => {
    const control = await open();
    const events = eventsOf(control.form as HTMLFormElement);
    await pick(control, 'Symptom, left leg', 'Claudication');
    await control.openPart('inspection');
    await pick(control, 'Colour, left leg', 'Pale');
    await control.openPart('pulses');
    await drawn(control);
    await click(byRole(control, 'button', /^Left femoral: /));
    await drawn(control);
    await press('0');
    await drawn(control);
    await control.openPart('pressures');
    await drawn(control);
    const arm = field(control, 'Arm, right');
    arm.focus();
    await type('140');
    await press('Tab');
    await drawn(control);
    expect(Object.keys(control.examination)).to.include.members([
      'history',
      'inspection',
      'pulses',
      'pressures',
    ]);
    expect(events, 'three keys of one pressure').to.deep.equal({ input: 6, change: 4 });
    const undo = allByRole(control, 'button', 'Undo')[0] as HTMLElement;
    for (const left of [['history', 'inspection', 'pulses'], ['history', 'inspection'], ['history'], []]) {
      await click(undo);
      await drawn(control);
      expect(Object.keys(control.examination).filter((k) => !['format', 'scale'].includes(k))).to.deep.equal(
        left,
      );
    }
    await click(allByRole(control, 'button', 'Redo')[0] as HTMLElement);
    await drawn(control);
    expect(control.examination.history?.leg?.left?.symptom).to.equal('claudication');
    expect(
      allByRole(control, 'radio', 'Claudication').some((r) => r.getAttribute('aria-checked') === 'true'),
    ).to.equal(true);
  });

  it('shows how far each part is, and takes back by key', async () => {
    const control = await open(chronic);
    expect(allByRole(control, 'button', 'Bedside tests, 5 entries')).to.have.length(1);
    expect(allByRole(control, 'button', 'Stages, 1 entry')).to.have.length(1);
    await pick(control, 'Heart rhythm', 'Atrial fibrillation');
    expect(control.examination.history?.rhythm).to.equal('atrial-fibrillation');
    await press('Control+z');
    await drawn(control);
    expect(control.examination.history?.rhythm).to.equal('regular');
  });

  it('keeps a part drawn when it is folded, so that a running watch runs on', async () => {
    const control = await open();
    await control.openPart('bedside');
    await click(byRole(control, 'button', 'Colour return on dependency (Buerger)'));
    await drawn(control);
    await click(byRole(control, 'button', 'Foot is down: start'));
    await drawn(control);
    const heading = everything(control).find(
      (e) => e.matches('.heading') && e.textContent?.includes('Bedside tests'),
    );
    await click(heading as HTMLElement);
    await drawn(control);
    expect(allByRole(control, 'button', 'Pink again')).to.have.length(0);
    await click(heading as HTMLElement);
    await drawn(control);
    await click(byRole(control, 'button', 'Pink again'));
    await drawn(control);
    expect(control.examination.bedside?.['colour-return']?.right?.seconds).to.be.a('number');
  });

  it('interrupts with the finding that makes a leg threatened', async () => {
    const control = await open();
    const alert = (): string => readableText(allByRole(control, 'alert')[0] ?? document.createElement('p'));
    await pick(control, 'Symptom, left leg', 'Rest pain');
    expect(alert()).to.include('Acute limb ischaemia (ALI) not excluded: left leg');
    await pick(control, 'Began, left leg', 'Suddenly');
    expect(alert()).to.include('Possible acute limb ischaemia (ALI): left leg');
    await control.openPart('inspection');
    await pick(control, 'Movement, left leg', 'Weak');
    expect(alert()).to.include('limb may be threatened (Rutherford IIb): left leg');
  });

  it('says every value of a full record in a letter', async () => {
    const control = await open(chronic);
    await control.openPart('summary');
    await drawn(control);
    await click(byRole(control, 'button', 'Letter'));
    await drawn(control);
    const said = (byRole(control, 'textbox', /^Text, to be changed/) as HTMLTextAreaElement).value;
    for (const value of [
      'tissue loss',
      'pain-free walking distance 180 m',
      'upper calf',
      'diabetes',
      'Varicose veins on the left, 1999',
      'ulcer deep, to bone, joint or tendon, forefoot',
      'redness reaches 1.5 cm',
      'Leg elevation, right: pale at 25° after 34 s',
      'Venous filling time, right: Not done: oedema',
      'dorsalis pedis right incompressible',
      'posterior tibial left 70',
      'walk completed',
      'bone probes beyond the forefoot',
    ]) {
      expect(said.toLowerCase(), value).to.include(value.toLowerCase());
    }
  });

  it('names what is wrong with a value for developers, and shows nothing of the one before', async () => {
    const control = await open(threatened);
    control.value = JSON.stringify({ ...threatened, pressures: { toe: { left: 999 } } });
    await drawn(control);
    expect(control.faults[0]?.path).to.deep.equal(['pressures', 'toe', 'left']);
    expect(control.recordState).to.equal('sealed');
    expect(control.value).to.equal(JSON.stringify({ ...threatened, pressures: { toe: { left: 999 } } }));
    expect(readableText(control)).to.match(/^This entry was made by a version that cannot be shown here/);
  });

  it('has no part wider than a phone', async () => {
    await setViewport({ width: 360, height: 800 });
    try {
      const control = await open(chronic);
      for (const part of ['inspection', 'bedside', 'pressures', 'staging', 'summary'] as const)
        await control.openPart(part);
      await drawn(control);
      expect(document.documentElement.scrollWidth).to.be.at.most(360);
    } finally {
      await setViewport({ width: 1100, height: 1000 });
    }
  });
});
