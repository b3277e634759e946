import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { VIEWS } from '../../../src/drawing/index.js';
import { restNormal } from '../../../src/examination/index.js';
import { examined } from '../../tools/examinations.js';
import { click, consoleOf, press } from '../../tools/real-input.js';
import {
  choose,
  chooser,
  markNormal,
  openMap,
  openSite,
  saidAll,
  saidAt,
  settled,
  site,
  status,
} from '../tools/map.js';
import { allByRole, byRole, nameOf, readableText } from '../tools/perceive.js';

async function act(map: PulseMap, name: string): Promise<void> {
  const fold = [...(map.shadowRoot?.querySelectorAll('summary') ?? [])].find(
    (s) => nameOf(s) === 'Whole limbs',
  );
  if (!(fold?.parentElement as HTMLDetailsElement).open) await click(fold as Element);
  await click(byRole(map, 'button', name));
  await settled(map);
}

describe('acts on a whole limb', () => {
  it('fill in what is blank from the other side, touch nothing stated, and are one step', async () => {
    const map = await openMap({
      examination: examined({
        'right femoral': 'normal',
        'right popliteal': 'reduced',
        'right dorsalis-pedis': { couldNotExamine: 'dressing' },
        'left popliteal': 'absent',
      }),
    });
    await act(map, 'Copy the other side to the ungraded sites of the left leg');
    expect(saidAt(map, 'left femoral')).to.equal('2, normal');
    expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
    expect(saidAt(map, 'left dorsalis pedis')).to.equal('not assessable: dressing');
    expect(status(map)).to.match(/^Left leg copied from the other side/);
    map.undo();
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('not examined');
  });

  it('clear a limb and no other, in one step', async () => {
    const map = await openMap({ examination: restNormal(examined({ 'left popliteal': 'absent' })) });
    await act(map, 'Clear left leg');
    expect(saidAt(map, 'left femoral')).to.equal('not examined');
    expect(saidAt(map, 'right femoral')).to.equal('2, normal');
    expect(saidAt(map, 'left radial')).to.equal('2, normal');
    map.undo();
    await settled(map);
    expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
  });

  it('say when there is nothing to change', async () => {
    const map = await openMap();
    await act(map, 'Clear right arm');
    expect(status(map)).to.equal('Nothing to change on the right arm');
  });
});

describe('a site as on the other side', () => {
  it('takes everything but the note', async () => {
    const map = await openMap({
      examination: examined({ 'right femoral': { grade: 'reduced', thrill: true, note: 'scar' } }),
    });
    await openSite(map, 'left femoral');
    await choose(map, 'button', 'Same as right');
    expect(saidAt(map, 'left femoral')).to.equal('1, reduced; thrill');
  });

  it('is not offered in the midline', async () => {
    const map = await openMap();
    await openSite(map, 'abdominal aorta');
    expect(allByRole(chooser(map) as HTMLElement, 'button', /^Same as/)).to.have.length(0);
  });
});

describe('the views', () => {
  it('are chosen by property, attribute and the list, and show their own sites', async () => {
    const map = await openMap({ width: 1200 });
    map.view = 'left-leg';
    await settled(map);
    expect(Object.keys(saidAll(map))).to.include.members([
      'Left femoral',
      'Abdominal aorta',
      'Left dorsalis pedis',
    ]);
    expect(Object.keys(saidAll(map)).some((name) => /Right|radial/.test(name))).to.equal(false);
    expect(map.getAttribute('view')).to.equal('left-leg');
    map.setAttribute('view', 'right-hand');
    await settled(map);
    expect(Object.keys(saidAll(map))).to.deep.equal(['Right radial', 'Right ulnar']);
    const list = byRole<HTMLSelectElement>(map, 'combobox', 'View');
    expect(list.options).to.have.length(VIEWS.length + 1);
    list.value = 'arms';
    list.dispatchEvent(new Event('change'));
    await settled(map);
    expect(Object.keys(saidAll(map))).to.include('Left brachial');
  });

  it('record as the whole does', async () => {
    const map = await openMap();
    for (const [view, name] of [
      ['left-foot', 'left dorsalis pedis'],
      ['right-arm', 'right brachial'],
      ['legs', 'abdominal aorta'],
    ] as const) {
      map.view = view;
      await settled(map);
      await openSite(map, name);
      await choose(map, 'radio', '1, reduced');
      expect(saidAt(map, name)).to.equal('1, reduced');
    }
  });

  it('open a plate by its button, and Escape leads back to it', async () => {
    const map = await openMap({ width: 900 });
    const door = byRole<HTMLButtonElement>(map, 'button', /: Left hand, palm$/);
    expect(door.getBoundingClientRect().height).to.be.at.least(44);
    await click(door);
    await settled(map);
    expect(map.view).to.equal('left-hand');
    expect(Object.keys(saidAll(map))).to.deep.equal(['Left radial', 'Left ulnar']);
    expect(map.shadowRoot?.activeElement?.textContent?.trim()).to.equal('Back to the figure');
    await press('Escape');
    await settled(map);
    expect(map.view).to.equal('auto');
    expect(map.shadowRoot?.activeElement?.getAttribute('data-plate')).to.equal('left-hand');
  });

  it('lead back from a site of a plate too, once nothing else is open', async () => {
    const map = await openMap({ width: 900 });
    await click(byRole(map, 'button', /: Right foot, dorsal and medial$/));
    await settled(map);
    await openSite(map, 'right dorsalis pedis');
    await press('Escape');
    await settled(map);
    expect(map.view).to.equal('right-foot');
    expect(map.shadowRoot?.activeElement?.getAttribute('data-place')).to.equal('right dorsalis-pedis');
    await press('2');
    expect(saidAt(map, 'right dorsalis pedis')).to.equal('2, normal');
    await press('Escape');
    await settled(map);
    expect(map.view).to.equal('auto');
  });

  it('take marks on their skin, too', async () => {
    const map = await openMap({ width: 900 });
    await click(byRole(map, 'button', /: Left sole$/));
    await settled(map);
    await click(byRole(map, 'button', 'Draw on the skin'));
    await settled(map);
    expect(map.view).to.equal('left-sole');
    expect(nameOf(byRole(map, 'group', 'Draw on the skin'))).to.equal('Draw on the skin');
  });

  it('stay where the page has chosen a plate', async () => {
    const map = await openMap({ width: 900 });
    map.view = 'left-sole';
    await settled(map);
    expect(Object.keys(saidAll(map))).to.deep.equal([]);
    expect(allByRole(map, 'button', 'Back to the figure')).to.have.length(0);
  });

  it('on a phone come one part at a time, and a site asked for brings its part', async () => {
    const map = await openMap({ width: 360 });
    expect(Object.keys(saidAll(map))).to.include('Left femoral');
    await click(byRole(map, 'button', 'Right arm'));
    await settled(map);
    expect(Object.keys(saidAll(map))).to.include('Right radial');
    expect(Object.keys(saidAll(map))).to.not.include('Left radial');
    map.openPlace('left ulnar');
    await settled(map);
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Left ulnar');
    expect(site(map, 'left ulnar')).to.exist;
    map.openPlace('right popliteal');
    await settled(map);
    expect(site(map, 'right popliteal')).to.exist;
  });
});

describe('a view by a word that is none', () => {
  it('is shown as the automatic one, with a warning that lists the words', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'absent' }) });
    for (const view of ['legs left', 'bogus', '']) {
      const said = await consoleOf(async () => {
        map.view = view as never;
        await settled(map);
      });
      expect(said).to.have.length(1);
      expect(said[0]).to.include(`found view="${view}", expected auto, whole, arms`);
      expect(saidAt(map, 'left femoral')).to.equal('0, absent');
      expect(map.toSVG()).to.include('Likely occlusion');
    }
    const display = await consoleOf(async () => {
      map.display = 'list' as never;
      await settled(map);
    });
    expect(display).to.deep.equal([
      'pulse-map: found display="list", expected figure, table; shown as figure',
    ]);
    expect(saidAt(map, 'left femoral')).to.equal('0, absent');
    expect(byRole(map, 'button', 'Figure').getAttribute('aria-pressed')).to.equal('true');
    const said = await consoleOf(async () => {
      map.view = 'legs';
      await settled(map);
    });
    expect(said).to.deep.equal([]);
    expect(allByRole(map, 'button', /^Left radial: /)).to.have.length(0);
  });
});

describe('an earlier record beside the present one', () => {
  it('is told at every site, with what changed', async () => {
    const map = await openMap({
      examination: examined({ 'left femoral': 'absent', 'right femoral': 'normal' }),
    });
    map.compare = {
      ...examined({ 'left femoral': 'normal', 'right femoral': 'normal' }),
      examinedAt: '2026-01-05T09:00Z',
    };
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('0, absent; earlier: 2, normal');
    expect(saidAt(map, 'right femoral')).to.equal('2, normal; earlier: 2, normal');
    expect(saidAt(map, 'left popliteal')).to.equal('not examined');
    expect(readableText(map)).to.include('absent, was normal');
    expect(readableText(map)).to.include('the earlier record, 5 January 2026');
  });

  it('of a later version is not compared, and said to be none that can be shown', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'absent' }) });
    for (const wrong of [{ format: 'pulse-map/2' }, { pulses: 7 }]) {
      map.compare = { ...examined({ 'left femoral': 'normal' }), ...wrong } as never;
      await settled(map);
      expect(saidAt(map, 'left femoral')).to.equal('0, absent');
      expect(readableText(map)).to.include(
        'The earlier record was made by a version that cannot be shown here',
      );
    }
    map.compare = examined({ 'left femoral': 'normal' });
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('0, absent; earlier: 2, normal');
  });

  it('is never part of the value, nor changed', async () => {
    const map = await openMap();
    const earlier = examined({ 'left femoral': 'normal' });
    map.compare = earlier;
    await settled(map);
    expect(map.value).to.equal('');
    await markNormal(map);
    expect(map.compare).to.equal(earlier);
    expect(earlier).to.deep.equal(examined({ 'left femoral': 'normal' }));
  });
});
