import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/pulse-reading/define';
import type { PulseReading } from 'pulse-map/elements/pulse-reading';
import { emptyExamination, type Examination, localise, setPulse } from 'pulse-map/core';
import * as records from '../../../stories/records.js';
import { click } from '../../tools/real-input.js';

async function reading(examination: Examination, numbers = false): Promise<PulseReading> {
  const page = await fixture<HTMLElement>(
    html`<main lang="en">
      <h2>Reading</h2>
      <pulse-reading .examination=${examination} ?numbers=${numbers}></pulse-reading>
    </main>`,
  );
  const element = page.querySelector('pulse-reading') as PulseReading;
  await element.updateComplete;
  return element;
}

const text = (element: PulseReading): string => (element.shadowRoot?.textContent ?? '').replace(/\s+/g, ' ');

/** The percentages of the bars under a heading, as a reader sees them. */
function bars(element: PulseReading, limb: string): { name: string; percent: string }[] {
  const section = element.shadowRoot?.querySelector(`section[data-limb="${limb}"]`);
  return [...(section?.querySelectorAll('.part:first-of-type .bar, .bar') ?? [])].map((bar) => ({
    name: bar.children[0]?.textContent?.trim() ?? '',
    percent: bar.children[2]?.textContent?.trim() ?? '',
  }));
}

describe('pulse-reading', () => {
  it('claims nothing when nothing was examined, and says where to start', async () => {
    const element = await reading(emptyExamination());
    expect(text(element)).to.include('No pulse recorded').and.to.include('Begin with');
    expect(text(element)).not.to.match(/%|[Bb]lock between/);
  });

  it('names no site as the next step whose entry this version cannot read', async () => {
    const next = (element: PulseReading): string =>
      element.shadowRoot?.querySelector('.next .ask b')?.textContent?.trim() ?? '';
    const examination = setPulse(
      emptyExamination(),
      { site: 'popliteal', side: 'left' },
      { grade: 'absent' },
    );
    expect(next(await reading(examination))).to.equal('Left femoral pulse');
    const carried = [{ path: ['pulses', 'femoral', 'left'], value: { grade: 'thready' } }];
    const locked = next(await reading({ ...examination, carried }));
    expect(locked).not.to.equal('Left femoral pulse');
    expect(locked).not.to.equal('');
  });

  it('shows both voices: the rule in a sentence, the network as bars and numbers of its own', async () => {
    const element = await reading(records.oneBlock);
    expect(text(element)).to.include('Occlusion between left femoral and left popliteal');
    expect(text(element)).to.include('Site of the occlusion, by probability');
    expect(text(element)).to.include('Pulse rule and probability model agree.');
    const network = localise(records.oneBlock);
    if (network.status !== 'read') throw new Error('not read');
    const { occluded } = network.limbs['left leg'];
    const [stretch, artery] = bars(element, 'left leg');
    expect(stretch?.name).to.equal('Somewhere between left femoral and left popliteal');
    const first = occluded.entries[0]?.probability ?? 0;
    expect(artery?.percent).to.equal(`${Math.round(first * 100)}%`);
    expect(parseFloat(stretch?.percent ?? '')).to.be.at.least(Math.round(occluded.stretch.probability * 100));
  });

  it('names what speaks for the first answer and how firm it is', async () => {
    const element = await reading(records.oneBlock);
    expect(text(element)).to.include('Evidence for and against the leading site');
    expect(text(element)).to.match(/Left femoral pulse normal, for/);
    expect(text(element)).to.match(/Robustness\s*(Robust|Fairly robust|Not robust): of answers graded so,/);
  });

  it('asks next only for what the form around can record, and for nothing where it only shows', async () => {
    const element = await reading(records.oneBlock);
    expect(text(element)).to.include('Most informative next step');
    element.can = [];
    await element.updateComplete;
    expect(text(element)).not.to.include('Most informative next step');
    element.can = ['feel'];
    await element.updateComplete;
    expect(text(element)).not.to.match(/auscultate|ankle pressure/);
  });

  it('asks first what a red flag depends on, where the form around can record it', async () => {
    const threatened: Examination = {
      ...setPulse(records.oneBlock, { site: 'femoral', side: 'left' }, { grade: 'normal' }),
      inspection: { leg: { left: { sensation: 'lost', temperature: 'cold' } } },
    };
    delete (threatened as { onset?: unknown }).onset;
    const element = await reading(threatened);
    const next = (): string =>
      element.shadowRoot?.querySelector('.next')?.textContent?.replace(/\s+/g, ' ') ?? '';
    expect(next()).to.include('Left leg: When did it begin').and.to.include('A red flag depends on this.');
    element.can = ['feel'];
    await element.updateComplete;
    expect(next()).not.to.include('When did it begin');
  });

  it('takes an earlier record for what is new in this one', async () => {
    const before = ['femoral', 'popliteal'].reduce(
      (record, site) => setPulse(record, { site, side: 'left' } as never, { grade: 'normal' }),
      emptyExamination(),
    );
    const record = setPulse(before, { site: 'popliteal', side: 'left' }, { grade: 'absent' });
    const element = await reading(record, true);
    const alone = localise(record);
    const beside = localise(record, { earlier: before });
    if (alone.status !== 'read' || beside.status !== 'read') throw new Error('not read');
    expect(beside.acute).to.be.greaterThan(alone.acute);
    const shown = text(element);
    element.earlier = before;
    await element.updateComplete;
    expect(text(element)).not.to.equal(shown);
    const { reading: told } = element;
    if (told?.network.status !== 'read') throw new Error('not read');
    expect(told.network.acute).to.equal(beside.acute);
  });

  it('says when rule and probabilities disagree, and what to check again', async () => {
    const element = await reading(records.contradiction);
    expect(text(element)).to.include('Pulse rule and probability model disagree.');
    expect(text(element)).to.include('Recheck');
  });

  it('headlines a block as the rule’s alone where none is more likely, and as found where both voices see it', async () => {
    const headline = async (record: Examination): Promise<string> =>
      ((await reading(record)).shadowRoot?.querySelector('[part=lead]')?.textContent ?? '').trim();
    const place = { site: 'posterior-tibial', side: 'left' } as const;
    const oneFootPulse = setPulse(records.normal, place, { grade: 'absent' });
    const network = localise(oneFootPulse);
    const blamed = network.status === 'read' && network.limbs['left leg'].headline !== undefined;
    expect(await headline(oneFootPulse)).to.match(
      blamed ? /^Occlusion somewhere between left popliteal/ : /^Pulse rule: Occlusion of the left/,
    );
    expect(await headline(records.oneBlock)).to.match(/^Occlusion somewhere between left femoral/);
  });

  it('asks a map around it to open the site that it wants checked', async () => {
    const element = await reading(records.contradiction);
    const asked: string[] = [];
    element.addEventListener('open-place', (event) => asked.push(`${event.place.side} ${event.place.site}`));
    const button = [...(element.shadowRoot?.querySelectorAll('button') ?? [])].find((b) =>
      b.textContent?.includes('Open left popliteal'),
    );
    await click(button as HTMLElement);
    expect(asked).to.deep.equal(['left popliteal']);
  });

  it('reads no record of a later version as one of its own, and nothing that is no record', async () => {
    for (const given of [
      { ...records.oneBlock, format: 'pulse-map/2' },
      { ...records.oneBlock, pulses: 7 },
      [1],
      { self: undefined as unknown },
    ]) {
      const element = await reading(records.oneBlock);
      expect(text(element)).to.include('Occlusion between left femoral');
      element.examination = given as never;
      await element.updateComplete;
      expect(text(element)).to.include('made by a version that cannot be shown here');
      expect(text(element)).not.to.match(/Block|Nothing examined/);
      element.examination = records.oneBlock;
      await element.updateComplete;
      expect(text(element)).to.include('Occlusion between left femoral');
    }
  });

  it('shows levels, causes and the likeliest story on demand', async () => {
    const element = await reading(records.oneBlock);
    const button = [...(element.shadowRoot?.querySelectorAll('button') ?? [])].find(
      (b) => b.textContent?.trim() === 'All probabilities',
    );
    expect(text(element)).not.to.include('Most probable overall explanation');
    await click(button as HTMLElement);
    await element.updateComplete;
    expect(text(element)).to.include('Most probable overall explanation');
    expect(element.shadowRoot?.querySelector('table caption')?.textContent).to.include(
      'Left leg, by arterial level',
    );
  });

  it('does not put the one cause of weak pulses everywhere into every limb', async () => {
    const weak = ['radial', 'femoral'].reduce(
      (examination, site) =>
        (['right', 'left'] as const).reduce(
          (next, side) => setPulse(next, { site: site as 'radial' | 'femoral', side }, { grade: 'reduced' }),
          examination,
        ),
      emptyExamination(),
    );
    expect(text(await reading(weak))).to.include(
      'consider low flow or vasoconstriction before multiple stenoses',
    );
  });

  it('always says that it is not a diagnosis', async () => {
    for (const examination of [emptyExamination(), records.normal, records.several]) {
      expect(text(await reading(examination))).to.include('it is not a diagnosis');
    }
  });
});
