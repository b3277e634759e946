import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-staging/define';
import 'pulse-map/locale/de';
import type { LimbStaging } from 'pulse-map/elements/limb-staging';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { allByRole, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 1000, height: 900 }));

/** Varicose veins with a good index, but nobody looked for a thrombosis. */
const varices: Examination = {
  ...emptyExamination(),
  onset: 'chronic',
  context: { diabetes: false },
  inspection: { leg: { left: { varices: true, pigment: true, sensation: 'normal' } } },
  pressures: { brachial: { right: 140, left: 138 }, 'dorsalis-pedis': { left: 133 } },
};
const looked: Examination = {
  ...varices,
  inspection: { leg: { left: { ...varices.inspection?.leg?.left, thrombosisSigns: [] } } },
};

async function open(examination: Examination, lang = 'en', register = ''): Promise<LimbStaging> {
  const control = await fixture<LimbStaging>(
    html`<limb-staging lang=${lang} register=${register} .examination=${examination}></limb-staging>`,
  );
  await drawn(control);
  return control;
}
const said = (control: LimbStaging, name: RegExp = /^Compression/): string =>
  readableText(allByRole(control, 'group', name)[0] as HTMLElement);

describe('compression in limb-staging', () => {
  it('is a question for the leg with diseased veins alone', async () => {
    const control = await open(looked);
    expect(allByRole(control, 'group', /^Compression/)).to.have.length(1);
    expect(allByRole(control, 'group', 'Compression: arterial limits, Left leg')).to.have.length(1);
    control.examination = { ...looked, inspection: {} };
    await drawn(control);
    expect(allByRole(control, 'group', /^Compression/)).to.have.length(0);
  });

  it('is never said to be within the limits while something is not recorded', async () => {
    const control = await open(varices);
    expect(said(control)).to.include('Not known: not enough recorded to compress');
    expect(said(control)).to.include('Not yet recorded: signs of deep vein thrombosis.');
    control.examination = looked;
    await drawn(control);
    expect(said(control)).to.include('Within the limits for full compression; your local protocol decides');
    expect(said(control)).to.include('From: ankle-brachial pressure index (ABPI) 0.95, within 0.80 to 1.30.');
    expect(said(control)).to.include('By published consensus; your local protocol may differ.');
  });

  it('goes by the limits of the pathway, and names them', async () => {
    const control = await open(looked);
    control.pathway = { settings: { compression: { indexFrom: 1 } } };
    await drawn(control);
    expect(said(control)).to.include('reduced compression only, if the specialist agrees');
    expect(said(control)).to.include('(ABPI) 0.95, below 1.00');
    expect(said(control)).to.include('By your pathway.');
  });

  it('is said in plain words, and in German', async () => {
    const plain = await open(looked, 'en', 'plain');
    expect(said(plain)).to.include('The measurements allow full compression; the team treating you decides');
    const german = await open(varices, 'de');
    expect(said(german, /^Kompression/)).to.include('Noch nicht erfasst: Zeichen der tiefen Venenthrombose.');
    expect(said(german, /^Kompression/)).to.include('ABI 0,80 bis 1,30');
  });
});
