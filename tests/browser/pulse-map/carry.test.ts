import { expect } from '@open-wc/testing';
import { examined } from '../../tools/examinations.js';
import { click, drag, press } from '../../tools/real-input.js';
import { chooser, eventsOf, openMap, saidAt, settled, site, status } from '../tools/map.js';
import { allByRole, byRole, nameOf } from '../tools/perceive.js';

const LEFT_LEG = ['left popliteal', 'left posterior tibial'];

async function carrying(word: string) {
  const map = await openMap();
  await click(byRole(map, 'button', `Grade several as ${word}`));
  await settled(map);
  return map;
}

describe('grading several sites alike', () => {
  it('is told, and tapped onto one site after the other without a chooser', async () => {
    const map = await carrying('1, reduced');
    expect(byRole(map, 'button', 'Grade several as 1, reduced').getAttribute('aria-pressed')).to.equal(
      'true',
    );
    for (const name of ['right femoral', 'left femoral']) {
      await click(site(map, name));
      await settled(map);
      expect(chooser(map)).to.equal(undefined);
      expect(saidAt(map, name)).to.equal('1, reduced');
    }
    expect(status(map)).to.match(/^Left femoral 1, reduced/);
  });

  for (const kind of ['mouse', 'pen', 'touch'] as const) {
    it(`is drawn across sites by ${kind}, as one undo step and one event`, async () => {
      const map = await carrying('0, absent');
      const events = eventsOf(map);
      await drag(
        LEFT_LEG.map((name) => site(map, name)),
        { kind },
      );
      await settled(map);
      for (const name of LEFT_LEG) expect(saidAt(map, name), name).to.equal('0, absent');
      expect(saidAt(map, 'left femoral')).to.equal('not examined');
      expect(events).to.deep.equal({ input: 1, change: 1 });
      map.undo();
      await settled(map);
      expect(map.value).to.equal('');
    });
  }

  it('shows while drawing what will be recorded, and records nothing before the hand lets go', async () => {
    const map = await carrying('0, absent');
    const events = eventsOf(map);
    let during: string | undefined;
    let eventsDuring = 0;
    map.addEventListener(
      'pointerup',
      () => {
        during = saidAt(map, 'left popliteal');
        eventsDuring = events.input;
      },
      { capture: true },
    );
    await drag(LEFT_LEG.map((name) => site(map, name)));
    expect(during).to.equal('0, absent');
    expect(eventsDuring).to.equal(0);
  });

  it('passes over sites where one only listens', async () => {
    const map = await carrying('0, absent');
    await drag(['left femoral', 'left adductor canal', 'left popliteal'].map((name) => site(map, name)));
    await settled(map);
    expect(saidAt(map, 'left adductor canal')).to.equal('not auscultated');
    expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
  });

  it('opens a site where one only listens, as there is nothing to leave there', async () => {
    const map = await carrying('0, absent');
    await click(site(map, 'left renal'));
    await settled(map);
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Left renal');
  });

  it('replaces what stood at a site, and keeps its note', async () => {
    const map = await openMap({
      examination: examined({ 'left femoral': { grade: 'normal', note: 'scar' } }),
    });
    await click(byRole(map, 'button', 'Grade several as 1, reduced'));
    await click(site(map, 'left femoral'));
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('1, reduced; note: scar');
  });

  for (const [how, putDown] of [
    ['the button that says so', (map) => click(byRole(map, 'button', 'Stop grading'))],
    ['taking it up again', (map) => click(byRole(map, 'button', 'Grade several as 0, absent'))],
    [
      'Escape on a site',
      async (map) => {
        site(map, 'right femoral').focus();
        await press('Escape');
      },
    ],
  ] as const satisfies readonly (readonly [string, (map: HTMLElement & never) => Promise<void>])[]) {
    it(`ends with ${how}`, async () => {
      const map = await carrying('0, absent');
      await putDown(map as never);
      await settled(map);
      expect(allByRole(map, 'button', 'Stop grading')).to.have.length(0);
      await click(site(map, 'left femoral'));
      await settled(map);
      expect(saidAt(map, 'left femoral')).to.equal('not examined');
    });
  }
});

describe('a stroke while no grade is chosen', () => {
  it('from a site to its twin of the other side copies what stands there, as one step', async () => {
    const map = await openMap({
      examination: examined({ 'right femoral': { grade: 'reduced', thrill: true } }),
    });
    const events = eventsOf(map);
    await drag([site(map, 'right femoral'), site(map, 'left femoral')]);
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('1, reduced; thrill');
    expect(events).to.deep.equal({ input: 1, change: 1 });
    map.undo();
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('not examined');
  });

  it('to any other site changes nothing', async () => {
    const map = await openMap({ examination: examined({ 'right femoral': 'reduced' }) });
    const events = eventsOf(map);
    await drag([site(map, 'right femoral'), site(map, 'left popliteal')]);
    await settled(map);
    expect(events.input).to.equal(0);
    expect(chooser(map)).to.equal(undefined);
  });

  it('that leaves the drawing and ends outside loses no later tap', async () => {
    const map = await openMap();
    const { left, top } = map.getBoundingClientRect();
    const stage = site(map, 'left femoral').ownerSVGElement?.getBoundingClientRect() as DOMRect;
    await drag([
      [stage.left + 12, Math.max(stage.top, 0) + 200],
      [left - 4, Math.max(top, 0) + 200],
    ]);
    await click(site(map, 'left femoral'));
    await settled(map);
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Left femoral');
  });
});
