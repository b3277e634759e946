import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-flags/define';
import 'pulse-map/locale/de';
import type { LimbFlags } from 'pulse-map/elements/limb-flags';
import { emptyExamination, type Examination, type Pathway, setPulse } from 'pulse-map/core';
import { clock } from '../../../src/elements/common/clock.js';
import { threatened } from '../../../stories/limb-records.js';
import { consoleOf, press, setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 1000, height: 900 }));

const { now: wall } = clock;
afterEach(() => {
  clock.now = wall;
});

const feet: Examination = {
  ...emptyExamination(),
  pulses: {
    'posterior-tibial': { left: { grade: 'absent' } },
    'dorsalis-pedis': { left: { grade: 'absent' } },
  },
};
const cold: Examination = { ...feet, inspection: { leg: { left: { colour: 'pale', temperature: 'cold' } } } };
const two: Examination = {
  ...threatened,
  inspection: { leg: { ...threatened.inspection?.leg, right: { gangrene: 'wet' } } },
};
const called: Pathway = {
  name: 'Acute limb, Alder Row',
  calls: { vascular: { name: 'Vascular registrar', telephone: '+44 1632 960961' } },
};

async function open(examination: Examination, set: Partial<LimbFlags> = {}): Promise<LimbFlags> {
  const control = await fixture<LimbFlags>(html`<limb-flags lang="en"></limb-flags>`);
  Object.assign(control, { examination, ...set });
  await drawn(control);
  return control;
}
const spoken = (control: LimbFlags): string => readableText(byRole(control, 'alert'));

describe('the flag bar', () => {
  it('measures the page only for a record that changes the bar', async () => {
    const page = await fixture(
      html`<div>
        <limb-flags lang="en" steady></limb-flags>
        <p>Below</p>
      </div>`,
    );
    const control = page.querySelector('limb-flags') as LimbFlags;
    control.examination = feet;
    await drawn(control);
    const measure = Element.prototype.getBoundingClientRect;
    let measured = 0;
    Element.prototype.getBoundingClientRect = function () {
      measured++;
      return measure.call(this);
    };
    try {
      control.examination = setPulse(feet, { site: 'carotid', side: 'left' }, { grade: 'normal' });
      await control.updateComplete;
      expect(measured).to.equal(0);
      control.examination = cold;
      await control.updateComplete;
      expect(measured).to.be.above(0);
    } finally {
      Element.prototype.getBoundingClientRect = measure;
    }
  });

  it('is one line with the worst flag and its place, and opens by key to action, deadline and questions', async () => {
    const control = await open(two);
    expect(control.getBoundingClientRect().height).to.be.within(44, 60);
    const button = byRole(control, 'button');
    expect(button.getAttribute('aria-expanded')).to.equal('false');
    expect(readableText(button)).to.match(/^Acute limb ischaemia likely.*left leg.*1 of 3$/s);
    expect(readableText(control)).not.to.include('Call the vascular team');
    button.focus();
    await press('Enter');
    await drawn(control);
    expect(button.getAttribute('aria-expanded')).to.equal('true');
    const said = readableText(control);
    expect(said).to.match(/Call the vascular team now[^.]*your local [^.]*pathway\./i);
    expect(said).to.include('within 6 hours').and.to.include('not a diagnosis');
    expect(said).to.include('Wet gangrene: right leg');
    await press('Space');
    await drawn(control);
    expect(control.open).to.equal(false);
  });

  it('asks when it began before there is a flag, and in the line of a flag that waits for it', async () => {
    const control = await open(feet);
    expect(byRole(control, 'region', 'Open question')).to.exist;
    expect(readableText(byRole(control, 'button'))).to.match(/^Left leg: when did it begin\?/);
    control.examination = cold;
    await drawn(control);
    expect(byRole(control, 'region', 'Red flags')).to.exist;
    expect(readableText(byRole(control, 'button'))).to.match(/Now · When did it begin/);
    control.open = true;
    await drawn(control);
    expect(readableText(control)).to.include('To ask and examine next');
  });

  it('tells what was raised, worsened and withdrawn, each in one sentence', async () => {
    const control = await open(emptyExamination());
    expect(spoken(control)).to.equal('');
    control.examination = cold;
    await drawn(control);
    expect(spoken(control)).to.match(/^Red flag: [^.]*left leg\.$/);
    control.examination = {
      ...cold,
      inspection: { leg: { left: { ...cold.inspection?.leg?.left, movement: 'weak', sensation: 'lost' } } },
    };
    await drawn(control);
    expect(spoken(control)).to.match(/^Red flag, worse: [^.]*left leg\.$/);
    control.examination = emptyExamination();
    await drawn(control);
    expect(spoken(control)).to.match(/^Red flag withdrawn: [^.]*left leg\.$/);
    expect(control.getBoundingClientRect().height).to.equal(0);
  });

  it('calls whom the pathway names, by a link that dials and holds no markup', async () => {
    const control = await open(threatened, { pathway: called, open: true });
    const links = allByRole<HTMLAnchorElement>(
      control,
      'link',
      /^Call( now,)? Vascular registrar[,:] \+44 1632 960961$/,
    );
    expect(links.map((link) => link.getAttribute('href'))).to.deep.equal(Array(2).fill('tel:+441632960961'));
    expect(readableText(control)).to.include('By the pathway “Acute limb, Alder Row”.');
    const markup = { calls: { any: { name: '<img src=x onerror=alert(1)>', telephone: '22' } } } as const;
    control.pathway = markup;
    await drawn(control);
    expect(control.renderRoot.querySelector('img')).to.equal(null);
    expect(readableText(control)).to.include('<img src=x');
  });

  it('warns of a link it will not make, and names the local pathway instead', async () => {
    const said = await consoleOf(async () => {
      const control = await open(threatened, {
        open: true,
        pathway: { calls: { any: { page: 'javascript:alert(1)' } } },
      });
      control.requestUpdate();
      await drawn(control);
      expect(allByRole(control, 'link')).to.have.length(0);
      expect(readableText(control)).to.match(/follow your local [^.]*pathway\./i);
    });
    expect(said).to.deep.equal([
      'pathway: calls.any.page: found "javascript:alert(1)", expected an https: address; shown without it',
    ]);
  });

  it('goes by the limits of the pathway', async () => {
    const control = await open(feet, { pathway: { settings: { triage: { ask: { onset: 5 } } } } });
    expect(control.getBoundingClientRect().height).to.equal(0);
  });

  it('counts the time since the onset by the clock while the patient is examined, and no longer afterwards', async () => {
    const examination = { ...threatened, examinedAt: '2026-03-01T12:00Z' };
    clock.now = () => Date.parse('2026-03-01T12:20Z');
    const control = await open(examination, { running: true });
    expect(readableText(byRole(control, 'button'))).to.include('6 h 20 min since onset');
    clock.now = () => Date.parse('2026-03-01T12:21Z');
    control.requestUpdate();
    await drawn(control);
    expect(readableText(byRole(control, 'button'))).to.include('6 h 21 min since onset');
    control.running = false;
    await drawn(control);
    expect(readableText(byRole(control, 'button'))).to.include('6 h from onset to examination');
  });

  it('says the limb first where there is little room, in both languages', async () => {
    await setViewport({ width: 390, height: 844 });
    try {
      const control = await open(threatened, { pathway: called });
      const line = readableText(byRole(control, 'button'));
      expect(line).to.match(/^Left leg: may be threatened \(IIb\)/);
      expect(readableText(byRole(control, 'link'))).to.equal('Call now');
      control.lang = 'de';
      await drawn(control);
      expect(readableText(byRole(control, 'button'))).to.match(/^Linkes Bein: vielleicht bedroht \(IIb\)/);
      expect(control.getBoundingClientRect().height).to.be.below(72);
      expect(document.documentElement.scrollWidth).to.be.at.most(390);
    } finally {
      await setViewport({ width: 1000, height: 900 });
    }
  });
});
