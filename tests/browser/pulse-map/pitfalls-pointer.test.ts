// What is known to go wrong with pen, touch and mouse on a drawing, numbered as in the list in pitfalls.test.ts.
import { expect } from '@open-wc/testing';
import { html } from 'lit';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { examined } from '../../tools/examinations.js';
import { click, drag, hover, press, setViewport } from '../../tools/real-input.js';
import { chooser, eventsOf, mapWithin, openMap, openSite, saidAt, settled, site } from '../tools/map.js';
import { byRole, nameOf } from '../tools/perceive.js';
import { middleOf, pointer, tap } from '../tools/pointer.js';

async function carrying(word = '0, absent'): Promise<PulseMap> {
  const map = await openMap();
  await click(byRole(map, 'button', `Grade several as ${word}`));
  await settled(map);
  return map;
}

const spot = (map: PulseMap, name: string): readonly [number, number] => middleOf(site(map, name));
describe('pitfall 1: a cancelled pen stroke', () => {
  it('records nothing and tells nobody, and the next one works', async () => {
    const map = await carrying();
    const events = eventsOf(map);
    pointer('pointerdown', spot(map, 'left femoral'));
    pointer('pointermove', spot(map, 'left adductor canal'));
    pointer('pointermove', spot(map, 'left popliteal'));
    await settled(map);
    expect(saidAt(map, 'left popliteal'), 'shown while drawing').to.equal('0, absent');
    pointer('pointercancel', spot(map, 'left popliteal'));
    await settled(map);
    expect(saidAt(map, 'left popliteal')).to.equal('not examined');
    expect(map.value).to.equal('');
    expect(events).to.deep.equal({ input: 0, change: 0 });
    tap(spot(map, 'left popliteal'));
    await settled(map);
    expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
  });

  it('opens nothing when a press is cancelled', async () => {
    const map = await openMap();
    pointer('pointerdown', spot(map, 'left femoral'));
    pointer('pointercancel', spot(map, 'left femoral'));
    await settled(map);
    expect(chooser(map)).to.equal(undefined);
  });
});

describe('pitfall 2: a palm beside the pen', () => {
  it('neither marks nor ends the stroke', async () => {
    const map = await carrying();
    pointer('pointerdown', spot(map, 'left femoral'));
    tap(spot(map, 'right radial'), { type: 'touch', id: 20 });
    pointer('pointermove', spot(map, 'left popliteal'));
    pointer('pointerup', spot(map, 'left popliteal'));
    await settled(map);
    expect(saidAt(map, 'right radial')).to.equal('not examined');
    expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
  });

  it('rests for some seconds after the pen left, then a finger counts again', async () => {
    const map = await carrying();
    pointer('pointermove', spot(map, 'left femoral'), { buttons: 0, at: 100_000 });
    tap(spot(map, 'right radial'), { type: 'touch', at: 101_000 });
    await settled(map);
    expect(saidAt(map, 'right radial')).to.equal('not examined');
    tap(spot(map, 'right radial'), { type: 'touch', at: 104_000 });
    await settled(map);
    expect(saidAt(map, 'right radial')).to.equal('0, absent');
  });
});

describe('pitfall 3: too strict against palms', () => {
  it('fingers alone do everything: tap, choose, draw', async () => {
    const map = await openMap();
    await click(site(map, 'left femoral'), { kind: 'touch' });
    await settled(map);
    await click(byRole(chooser(map) as HTMLElement, 'radio', '2, normal'), { kind: 'touch' });
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('2, normal');
    await click(byRole(map, 'button', 'Grade several as 1, reduced'), { kind: 'touch' });
    await settled(map);
    await drag([site(map, 'right popliteal'), site(map, 'right posterior tibial')], { kind: 'touch' });
    await settled(map);
    expect(saidAt(map, 'right posterior tibial')).to.equal('1, reduced');
  });
});

describe('pitfall 4: capture', () => {
  it('is taken by a drag, never by a tap', async () => {
    const map = await carrying();
    let captured = 0;
    map.shadowRoot?.addEventListener('gotpointercapture', () => captured++);
    await click(site(map, 'left femoral'), { kind: 'pen' });
    expect(captured).to.equal(0);
    await drag([site(map, 'left femoral'), site(map, 'left popliteal')], { kind: 'pen' });
    expect(captured).to.equal(1);
  });

  it('lost ends the stroke cleanly', async () => {
    const map = await carrying();
    pointer('pointerdown', spot(map, 'left femoral'));
    pointer('pointermove', spot(map, 'left popliteal'));
    pointer('lostpointercapture', spot(map, 'left popliteal'));
    pointer('pointerup', spot(map, 'left popliteal'));
    await settled(map);
    expect(map.value).to.equal('');
    tap(spot(map, 'right femoral'));
    await settled(map);
    expect(saidAt(map, 'right femoral')).to.equal('0, absent');
  });
});

describe('pitfall 5: a click that lands elsewhere', () => {
  it('does not matter: where the press began and ended decides, once', async () => {
    const map = await carrying();
    const events = eventsOf(map);
    const figure = map.shadowRoot?.querySelector('.figure') as Element;
    const at = spot(map, 'left femoral');
    pointer('pointerdown', at);
    pointer('pointerup', at, {}, figure);
    figure.dispatchEvent(
      new MouseEvent('click', { bubbles: true, composed: true, detail: 1, clientX: at[0], clientY: at[1] }),
    );
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('0, absent');
    expect(events.input).to.equal(1);
  });

  it('is one act when a real hand clicks', async () => {
    for (const kind of ['mouse', 'pen', 'touch'] as const) {
      const map = await carrying();
      const events = eventsOf(map);
      await click(site(map, 'left femoral'), { kind });
      await settled(map);
      expect(events, kind).to.deep.equal({ input: 1, change: 1 });
    }
  });

  it('that no pointer made, as from a screen reader, is an act', async () => {
    const map = await openMap();
    site(map, 'left femoral').dispatchEvent(
      new MouseEvent('click', { bubbles: true, composed: true, detail: 0 }),
    );
    await settled(map);
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Left femoral');
  });
});

describe('pitfall 6: a page that captures pointers around the map', () => {
  // It takes taps away, as it would from any drawing; it should capture when its own drag begins.
  it('leaves the keys working and the map alive', async () => {
    await setViewport({ width: 940, height: 1000 });
    const { root, map } = await mapWithin(html`<div><pulse-map></pulse-map></div>`);
    const capture = (event: PointerEvent): void => root.setPointerCapture(event.pointerId);
    root.addEventListener('pointerdown', capture);
    await click(site(map, 'left femoral'));
    site(map, 'left femoral').focus();
    await press('2');
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('2, normal');
    root.removeEventListener('pointerdown', capture);
    await openSite(map, 'right femoral');
  });
});

describe('pitfalls 13 to 15: what a moved pointer reports', () => {
  const odd = ([clientX, clientY]: readonly [number, number]): PointerEvent =>
    ({ clientX, clientY, offsetX: -5, offsetY: -5, pointerId: 0, target: null }) as unknown as PointerEvent;

  for (const [what, samples] of [
    ['samples without identity, target or sensible offsets', 'odd'],
    ['an empty list of samples', []],
    ['no list at all', null],
  ] as const) {
    it(`records the same with ${what}`, async () => {
      const map = await carrying();
      const [from, over, to] = ['left femoral', 'left adductor canal', 'left popliteal'].map((name) =>
        spot(map, name),
      );
      if (!from || !over || !to) throw new Error('no such sites');
      pointer('pointerdown', from);
      if (samples === 'odd') pointer('pointermove', to, { samples: [odd(over), odd(to)] });
      else for (const point of [over, to]) pointer('pointermove', point, { samples });
      pointer('pointerup', to);
      await settled(map);
      expect(saidAt(map, 'left femoral')).to.equal('0, absent');
      expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
      expect(saidAt(map, 'left posterior tibial')).to.equal('not examined');
    });
  }

  for (const style of [
    'transform: scale(0.8)',
    'transform: rotate(4deg)',
    'zoom: 1.25',
    'transform: scale(1.1, 0.9)',
  ]) {
    it(`finds the site under the hand with ${style}`, async () => {
      await setViewport({ width: 1200, height: 1300 });
      const { map } = await mapWithin(
        html`<div style="width: 800px; transform-origin: 0 0; ${style}"><pulse-map></pulse-map></div>`,
      );
      for (const name of ['left radial', 'right posterior tibial']) {
        await click(site(map, name));
        await settled(map);
        expect(nameOf(chooser(map) as HTMLElement).toLowerCase()).to.equal(name);
        await press('Escape');
        await settled(map);
      }
    });
  }
});

describe('pitfalls 17 and 18: hovering pens and their buttons', () => {
  it('a hovering pen only shows which site it means', async () => {
    const map = await openMap();
    const events = eventsOf(map);
    await hover(site(map, 'left femoral'), 'pen');
    await settled(map);
    expect(site(map, 'left femoral').classList.contains('preview')).to.equal(true);
    expect(events.input).to.equal(0);
    expect(chooser(map)).to.equal(undefined);
  });

  it('no button but the first sets a grade', async () => {
    const map = await carrying();
    await click(site(map, 'left femoral'), { button: 'right' });
    for (const button of [1, 2, 3, 4])
      tap(spot(map, 'left popliteal'), { type: 'mouse', button, buttons: 2 });
    await settled(map);
    expect(map.value).to.equal('');
  });

  for (const [what, how] of [
    ['the eraser end', { button: 5, buttons: 32 }],
    ['the barrel button', { button: 2, buttons: 2 }],
  ] as const) {
    it(`${what} clears a site, and every site it is drawn over, as one step`, async () => {
      const map = await openMap({
        examination: examined({ 'left femoral': 'reduced', 'left popliteal': 'absent' }),
      });
      tap(spot(map, 'left femoral'), how);
      await settled(map);
      expect(saidAt(map, 'left femoral')).to.equal('not examined');
      expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
      map.undo();
      await settled(map);
      pointer('pointerdown', spot(map, 'left femoral'), how);
      pointer('pointermove', spot(map, 'left popliteal'), { buttons: how.buttons });
      pointer('pointerup', spot(map, 'left popliteal'), how);
      await settled(map);
      expect(map.value).to.equal('');
      map.undo();
      expect(map.value, 'one step').to.not.equal('');
    });
  }
});
