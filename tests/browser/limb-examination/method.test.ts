import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import { emptyExamination, type Examination } from 'pulse-map/core';
import type { Pathway } from 'pulse-map/core/tables';
import { click, press, setViewport } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { eventsOf } from '../tools/map.js';
import { byRole, everything, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 1100, height: 1000 }));

/** A toe of a wounded foot that one criterion calls threatened and another does not; ankles of two grades. */
const wound: Examination = {
  ...emptyExamination(),
  onset: 'chronic',
  context: { diabetes: false },
  inspection: {
    leg: { left: { ulcer: 'shallow', ulcerPlace: 'digits', ulcerCause: 'arterial', gangrene: 'none' } },
  },
  pressures: {
    brachial: { right: 130, left: 130 },
    'dorsalis-pedis': { left: 130 },
    'posterior-tibial': { left: 60 },
    toe: { left: 45 },
  },
};

async function open(examination: Examination, pathway?: Pathway): Promise<LimbExamination> {
  const page = await fixture<HTMLElement>(
    html`<main lang="en">
      <form><limb-examination name="e" label="Visit" .pathway=${pathway}></limb-examination></form>
    </main>`,
  );
  const control = page.querySelector('limb-examination') as LimbExamination;
  control.examination = examination;
  for (const part of ['pressures', 'staging', 'summary'] as const) await control.openPart(part);
  for (const fold of everything(control)) if (fold instanceof HTMLDetailsElement) fold.open = true;
  await drawn(control);
  return control;
}

const said = (control: LimbExamination, within: string): string =>
  readableText(everything(control).find((element) => element.matches(within)) as HTMLElement);

/** Chooses an entry of a list by its first letters, as a hand at the keyboard does. */
async function choose(control: LimbExamination, label: string, letters: string): Promise<void> {
  field<HTMLSelectElement>(control, label).focus();
  await press(...letters);
  await drawn(control);
}

describe('a method chosen among the pressures', () => {
  it('changes pressures, flags, stages and summary alike, as one step of undo', async () => {
    const control = await open(wound);
    const threat = 'toe pressure 45 mmhg, below 50 mmhg';
    const flags = control.renderRoot.querySelector('limb-flags') as HTMLElement & { open: boolean };
    flags.open = true;
    await drawn(control);
    const usual = /By default: .*Threatened limb by: Global Vascular Guidelines 2019\./;
    expect(said(control, 'limb-pressures')).to.include('Global Vascular Guidelines 2019 (by default)');
    expect(said(control, 'limb-staging')).to.match(usual);
    for (const part of ['limb-pressures', 'limb-flags'])
      expect(said(control, part), part).not.to.match(/toe pressure 45 mmHg, below 50/i);

    const events = eventsOf(control.form as HTMLFormElement);
    await choose(control, 'Threatened limb by', 'PARC');
    expect(control.examination.method).to.deep.equal({ threat: 'parc-2015' });
    expect(events).to.deep.equal({ input: 1, change: 1 });
    expect(said(control, 'limb-pressures').toLowerCase()).to.include(threat);
    expect(said(control, 'limb-flags').toLowerCase()).to.include('toe pressure 45');
    expect(said(control, 'limb-staging')).to.include('Threatened limb by: PARC 2015.');
    await click(byRole(control, 'button', 'Letter'));
    await drawn(control);
    expect((byRole(control, 'textbox', /^Text, to be changed/) as HTMLTextAreaElement).value).to.include(
      'PARC 2015',
    );
    expect(JSON.parse(control.value).method).to.deep.equal({ threat: 'parc-2015' });

    control.undo();
    await drawn(control);
    expect(control.examination.method).to.equal(undefined);
    expect(control.store.canUndo).to.equal(false);
    expect(said(control, 'limb-staging')).to.match(usual);
    expect(said(control, 'limb-pressures').toLowerCase()).not.to.include(threat);
  });
});
