import { expect } from '@open-wc/testing';
import { bruitAt, parseExaminationText, pulseAt, setPulse } from 'pulse-map/core';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { examined, place } from '../../tools/examinations.js';
import { click, focused, press, type } from '../../tools/real-input.js';
import { choose, chooser, eventsOf, openMap, openSite, saidAt, settled, site, status } from '../tools/map.js';
import { allByRole, byRole, nameOf, readableText } from '../tools/perceive.js';

function recordOf(map: PulseMap) {
  const parsed = parseExaminationText(map.value);
  if (!parsed.ok) throw new Error(`the value cannot be read: ${map.value}`);
  return parsed.value;
}

async function pin(map: PulseMap): Promise<void> {
  await choose(map, 'button', 'Keep open for several entries');
}

describe('what can be found at a site', () => {
  it('is a grade, taken in one act that closes the chooser and is spoken', async () => {
    const map = await openMap();
    await openSite(map, 'left brachial');
    await choose(map, 'radio', '3, bounding');
    expect(chooser(map)).to.equal(undefined);
    expect(saidAt(map, 'left brachial')).to.equal('3, bounding');
    expect(status(map)).to.equal('Left brachial 3, bounding');
  });

  it('is the reason why it could not be examined, in place of a grade', async () => {
    const map = await openMap({ examination: examined({ 'left popliteal': 'normal' }) });
    await openSite(map, 'left popliteal');
    await choose(map, 'button', 'Not assessable');
    const group = byRole(chooser(map) as HTMLElement, 'radiogroup', 'Not assessable');
    expect(allByRole(group, 'radio').map(nameOf)).to.deep.equal([
      'Dressing',
      'Cast',
      'Oedema',
      'Pain',
      'Amputated',
      'Line in place',
      'Declined',
      'Other',
    ]);
    await choose(map, 'radio', 'Oedema');
    expect(saidAt(map, 'left popliteal')).to.equal('not assessable: oedema');
    expect(pulseAt(recordOf(map), place('left popliteal'))).to.deep.equal({ couldNotExamine: 'oedema' });
  });

  it('is each kind of bruit, and “no bruit” differs from “not examined”', async () => {
    const map = await openMap();
    await openSite(map, 'right carotid');
    await choose(map, 'button', 'Bruit');
    for (const [word, bruit, said] of [
      ['Systolic', 'systolic', 'systolic bruit'],
      ['Continuous', 'continuous', 'continuous bruit'],
      ['None', 'none', 'no bruit'],
    ] as const) {
      await choose(map, 'radio', word);
      expect(bruitAt(recordOf(map), place('right carotid'))).to.deep.equal({ bruit });
      expect(saidAt(map, 'right carotid')).to.equal(said);
    }
    expect(saidAt(map, 'left carotid')).to.equal('not examined');
    expect(chooser(map), 'stays open for the pulse').to.not.equal(undefined);
  });

  it('is a bruit in one act where one only listens', async () => {
    const map = await openMap();
    const panel = await openSite(map, 'left adductor canal');
    expect(allByRole(panel, 'radiogroup').map(nameOf)).to.deep.equal(['Bruit']);
    await choose(map, 'radio', 'Systolic');
    expect(chooser(map)).to.equal(undefined);
    expect(saidAt(map, 'left adductor canal')).to.equal('systolic bruit');
  });

  it('is why one could not listen, where one only listens', async () => {
    const map = await openMap();
    await openSite(map, 'right renal');
    await choose(map, 'button', 'Not assessable');
    await choose(map, 'radio', 'Dressing');
    expect(saidAt(map, 'right renal')).to.equal('auscultation not possible: dressing');
  });

  it('is a thrill and an expansile pulse, each on and off', async () => {
    const map = await openMap();
    await openSite(map, 'abdominal aorta');
    await choose(map, 'button', 'Thrill');
    await choose(map, 'button', 'Expansile');
    expect(saidAt(map, 'abdominal aorta')).to.equal('thrill; expansile');
    await choose(map, 'button', 'Thrill');
    expect(saidAt(map, 'abdominal aorta')).to.equal('expansile');
    expect(byRole(chooser(map) as HTMLElement, 'button', 'Expansile').getAttribute('aria-pressed')).to.equal(
      'true',
    );
  });

  it('is no expansile pulse at the ankle, where no aneurysm is felt for, unless the record holds one', async () => {
    const map = await openMap();
    for (const site of ['right dorsalis pedis', 'right posterior tibial']) {
      await openSite(map, site);
      expect(allByRole(chooser(map) as HTMLElement, 'button', 'Expansile')).to.have.length(0);
      await press('e', 'Escape');
      expect(saidAt(map, site)).to.equal('not examined');
    }
    map.examination = setPulse(
      map.examination,
      { site: 'dorsalis-pedis', side: 'right' },
      { expansile: true },
    );
    await openSite(map, 'right dorsalis pedis');
    await choose(map, 'button', 'Expansile');
    expect(saidAt(map, 'right dorsalis pedis')).to.equal('not examined');
  });

  it('is the Doppler signal, also where the finger could not feel', async () => {
    const map = await openMap();
    await openSite(map, 'right dorsalis pedis');
    await pin(map);
    await choose(map, 'button', 'Not assessable');
    await choose(map, 'radio', 'Oedema');
    await choose(map, 'button', 'Doppler signal');
    const group = byRole(chooser(map) as HTMLElement, 'radiogroup', 'Doppler signal');
    expect(allByRole(group, 'radio').map(nameOf)).to.deep.equal([
      'Triphasic',
      'Biphasic',
      'Monophasic',
      'No signal',
    ]);
    await choose(map, 'radio', 'Monophasic');
    expect(saidAt(map, 'right dorsalis pedis')).to.equal('not assessable: oedema; Doppler monophasic');
  });

  it('is a note in the examiner’s own words', async () => {
    const map = await openMap();
    await openSite(map, 'left radial');
    await choose(map, 'button', 'Add a note');
    await type('Art line, felt beside it');
    await press('Enter');
    await settled(map);
    expect(nameOf(focused() as Element), 'the focus stays where it was').to.match(/^Note/);
    expect(saidAt(map, 'left radial')).to.equal('note: Art line, felt beside it');
    expect(pulseAt(recordOf(map), place('left radial'))).to.deep.equal({ note: 'Art line, felt beside it' });
  });

  for (const kind of ['mouse', 'pen', 'touch'] as const) {
    it(`is a note left for another site by ${kind}, which is kept`, async () => {
      const map = await openMap();
      await openSite(map, 'left radial');
      await choose(map, 'button', 'Add a note');
      await type('Cold hand');
      await click(site(map, 'right femoral'), { kind });
      await settled(map);
      expect(saidAt(map, 'left radial')).to.equal('note: Cold hand');
      expect(saidAt(map, 'right femoral'), 'the note stays with its own site').to.equal('not examined');
      map.undo();
      await settled(map);
      expect(map.value, 'one step').to.equal('');
    });
  }

  for (const [how, leave] of [
    ['Escape', () => press('Escape')],
    ['the next site', (map: PulseMap) => choose(map, 'button', /^Next/)],
    ['closing', (map: PulseMap) => choose(map, 'button', 'Close')],
  ] as const) {
    it(`is a note left by ${how}, which is kept`, async () => {
      const map = await openMap();
      await openSite(map, 'left radial');
      await choose(map, 'button', 'Add a note');
      await type('Cold hand');
      await leave(map);
      await settled(map);
      expect(saidAt(map, 'left radial')).to.equal('note: Cold hand');
    });
  }

  it('goes when the site is cleared', async () => {
    const map = await openMap({
      examination: examined({ 'left femoral': { grade: 'normal', thrill: true } }),
    });
    await openSite(map, 'left femoral');
    await choose(map, 'button', 'Clear this site');
    expect(saidAt(map, 'left femoral')).to.equal('not examined');
    expect(status(map)).to.equal('Left femoral cleared');
    expect(
      byRole<HTMLButtonElement>(chooser(map) as HTMLElement, 'button', 'Clear this site').disabled,
    ).to.equal(true);
  });
});

describe('the chooser', () => {
  it('is called by its site and says how to feel it', async () => {
    const map = await openMap();
    const panel = await openSite(map, 'left posterior tibial');
    expect(nameOf(panel)).to.equal('Left posterior tibial');
    expect(readableText(panel)).to.include('below and behind the medial malleolus');
  });

  it('leads on to the next site in the order of examination', async () => {
    const map = await openMap();
    await openSite(map, 'right femoral');
    await choose(map, 'button', 'Next: left femoral');
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Left femoral');
    expect(saidAt(map, 'right femoral')).to.equal('not examined');
  });

  it('stays open for more when pinned', async () => {
    const map = await openMap();
    await openSite(map, 'right femoral');
    await pin(map);
    await choose(map, 'radio', '1, reduced');
    await choose(map, 'button', 'Thrill');
    await choose(map, 'button', 'Bruit');
    await choose(map, 'radio', 'Systolic');
    expect(saidAt(map, 'right femoral')).to.equal('1, reduced; thrill; systolic bruit');
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Right femoral');
    await choose(map, 'button', 'Close');
    expect(chooser(map)).to.equal(undefined);
  });

  it('closes on a press outside and opens at the next site pressed', async () => {
    const map = await openMap();
    await openSite(map, 'right femoral');
    await openSite(map, 'left femoral');
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Left femoral');
    await click(byRole(map, 'status'));
    await settled(map);
    expect(chooser(map)).to.equal(undefined);
  });
});

describe('the scale', () => {
  async function pick(map: PulseMap, key: 'ArrowDown' | 'ArrowUp'): Promise<void> {
    if (!allByRole(map, 'combobox', 'Scale').length) await click(byRole(map, 'button', 'Scale, table, help'));
    await settled(map);
    byRole(map, 'combobox', 'Scale').focus();
    await press(key);
    await settled(map);
  }

  it('changes the words and leaves every grade as it was', async () => {
    const grades = {
      'left femoral': 'bounding',
      'left popliteal': 'normal',
      'left dorsalis-pedis': 'reduced',
      'right radial': 'absent',
    } as const;
    const map = await openMap({ examination: examined(grades) });
    const events = eventsOf(map);
    await pick(map, 'ArrowDown');
    expect(saidAt(map, 'left femoral')).to.equal('4, bounding');
    expect(saidAt(map, 'left popliteal')).to.equal('2, normal');
    await pick(map, 'ArrowDown');
    expect(saidAt(map, 'left femoral')).to.equal('bounding');
    expect(saidAt(map, 'right radial')).to.equal('absent');
    expect(readableText(map)).to.include('4 of 23, scale words');
    for (const [key, grade] of Object.entries(grades)) {
      expect(pulseAt(recordOf(map), place(key)), key).to.deep.equal({ grade });
    }
    expect(recordOf(map).scale).to.equal('words');
    expect(events).to.deep.equal({ input: 2, change: 2 });
  });

  it('of five steps keeps increased apart from bounding, also after a look at another scale', async () => {
    const map = await openMap();
    await pick(map, 'ArrowDown');
    await openSite(map, 'left carotid');
    expect(
      allByRole(byRole(chooser(map) as HTMLElement, 'radiogroup', /^Pulse/), 'radio').map(nameOf),
    ).to.deep.equal(['0, absent', '1, reduced', '2, normal', '3, increased', '4, bounding']);
    await choose(map, 'radio', '3, increased');
    expect(saidAt(map, 'left carotid')).to.equal('3, increased');
    await pick(map, 'ArrowUp');
    expect(saidAt(map, 'left carotid')).to.equal('3, bounding');
    await pick(map, 'ArrowDown');
    expect(saidAt(map, 'left carotid')).to.equal('3, increased');
  });
});

function onsetFold(map: PulseMap): HTMLElement {
  const folds = [...(map.shadowRoot?.querySelectorAll('summary') ?? [])];
  return folds.find((fold) => fold.textContent === 'Onset and delays') as HTMLElement;
}

describe('onset and delays', () => {
  it('are recorded beside the figure', async () => {
    const map = await openMap();
    await click(onsetFold(map));
    for (const [label, words] of [
      ['Onset', 'Acute'],
      ['Radial pulses compared', 'Left later'],
      ['Femoral after radial, right', 'Femoral later'],
      ['Femoral after radial, left', 'Together'],
    ] as const) {
      byRole(map, 'combobox', label).focus();
      await type(words);
      await settled(map);
    }
    const { onset, delays } = recordOf(map);
    expect(onset).to.equal('acute');
    expect(delays).to.deep.equal({
      radioRadial: 'left-later',
      radioFemoral: { right: 'delayed', left: 'none' },
    });
  });

  it('stay in sight while they are set one after the other, and can be taken back', async () => {
    const map = await openMap();
    await click(onsetFold(map));
    byRole(map, 'combobox', 'Onset').focus();
    await press('ArrowDown');
    await settled(map);
    expect(recordOf(map).onset).to.equal('acute');
    await press('ArrowUp');
    await settled(map);
    expect(map.value).to.equal('');
    expect(allByRole(map, 'combobox', 'Onset'), 'still in sight').to.have.length(1);
  });
});
