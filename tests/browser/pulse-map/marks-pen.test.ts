import { expect } from '@open-wc/testing';
import { hover, type Point } from '../../tools/real-input.js';
import { eventsOf, openMap, settled, status } from '../tools/map.js';
import {
  drawnMarks,
  drawStroke,
  fake,
  fakeStroke,
  figureOf,
  LEFT_FOREFOOT,
  listed,
  markButton,
  marked,
  marksIn,
  pick,
  round,
  startDrawing,
} from '../tools/skin.js';

describe('a pen on the skin', () => {
  const shin: Point = [730, 1180];
  const both = () => marked(['redness', round(730, 1180, 30)], ['ulcer', LEFT_FOREFOOT]);

  for (const [what, buttons] of [
    ['its eraser end', { button: 5, buttons: 32 }],
    ['its barrel button', { button: 2, buttons: 2 }],
  ] as const) {
    it(`deletes with ${what} what it goes over, as one step`, async () => {
      const map = await openMap({ examination: both() });
      await startDrawing(map);
      const events = eventsOf(map);
      fake(map, 'pointerdown', shin, buttons);
      fake(map, 'pointermove', [760, 1190], { ...buttons, button: -1 });
      await settled(map);
      expect(drawnMarks(map)).to.deep.equal(['redness erasing', 'ulcer']);
      expect(events.input, 'nothing is gone before the pen is lifted').to.equal(0);
      fake(map, 'pointerup', [760, 1190], { button: buttons.button, buttons: 0 });
      await settled(map);
      expect(listed(map)).to.deep.equal(['Left forefoot ulcer']);
      expect(status(map)).to.equal('Left mid shin: redness deleted.');
      expect(events).to.deep.equal({ input: 1, change: 1 });
      map.undo();
      await settled(map);
      expect(listed(map)).to.have.length(2);
    });
  }

  it('has the same eraser as a button, for those whose pen has none', async () => {
    const map = await openMap({ examination: both() });
    await startDrawing(map);
    await pick(map, 'Eraser');
    await drawStroke(map, [
      [690, 1180],
      [760, 1180],
    ]);
    expect(listed(map)).to.deep.equal(['Left forefoot ulcer']);
  });

  it('keeps the palm from drawing while it is near', async () => {
    const map = await openMap();
    await startDrawing(map);
    fake(map, 'pointermove', shin, { buttons: 0 });
    await fakeStroke(map, LEFT_FOREFOOT, { pointerType: 'touch', pointerId: 51 });
    expect(map.value).to.equal('');
    await fakeStroke(map, LEFT_FOREFOOT);
    expect(listed(map)).to.deep.equal(['Left forefoot ulcer']);
  });

  it('goes before a palm that touched first', async () => {
    const map = await openMap();
    await startDrawing(map);
    await fakeStroke(
      map,
      [
        [500, 1000],
        [530, 1010],
      ],
      { pointerType: 'touch', pointerId: 51 },
      'none',
    );
    await fakeStroke(map, LEFT_FOREFOOT);
    fake(map, 'pointerup', [530, 1010], { pointerType: 'touch', pointerId: 51 });
    await settled(map);
    expect(listed(map)).to.deep.equal(['Left forefoot ulcer']);
  });

  it('records nothing when its stroke is cancelled, and draws again after that', async () => {
    const map = await openMap();
    await startDrawing(map);
    const events = eventsOf(map);
    await fakeStroke(map, LEFT_FOREFOOT, {}, 'pointercancel');
    expect(map.value).to.equal('');
    expect(events).to.deep.equal({ input: 0, change: 0 });
    expect(figureOf(map).querySelector('.ink')?.hasAttribute('d')).to.equal(false);
    await fakeStroke(map, LEFT_FOREFOOT);
    expect(listed(map)).to.have.length(1);
  });

  it('deletes nothing when erasing is cancelled', async () => {
    const map = await openMap({ examination: both() });
    await startDrawing(map);
    await fakeStroke(map, [shin, [735, 1185]], { button: 5, buttons: 32 }, 'pointercancel');
    expect(listed(map)).to.have.length(2);
    expect(drawnMarks(map)).to.deep.equal(['redness', 'ulcer']);
  });

  it('does nothing while it hovers, eraser or not', async () => {
    const map = await openMap({ examination: both() });
    await startDrawing(map);
    const before = map.value;
    const markup = figureOf(map).innerHTML;
    await hover(markButton(map, /redness/), 'pen');
    fake(map, 'pointermove', shin, { buttons: 0, button: -1 });
    await settled(map);
    expect(map.value).to.equal(before);
    expect(figureOf(map).innerHTML).to.equal(markup);
  });

  it('is read between its events, even where samples come without identity', async () => {
    const map = await openMap();
    await startDrawing(map, 'Scar');
    fake(map, 'pointerdown', [690, 800]);
    const samples = (
      [
        [700, 830],
        [690, 860],
        [700, 890],
      ] as const
    ).map(([x, y]) => {
      const { clientX, clientY } = fake(map, 'pointermove', [x, y], { pointerId: 99, buttons: 0 });
      return new PointerEvent('pointermove', { clientX, clientY, pointerId: 0 });
    });
    const last = new PointerEvent('pointermove', {
      bubbles: true,
      composed: true,
      pointerId: 50,
      pointerType: 'pen',
      buttons: 1,
      clientX: samples.at(-1)?.clientX,
      clientY: samples.at(-1)?.clientY,
    });
    last.getCoalescedEvents = () => samples;
    figureOf(map).dispatchEvent(last);
    fake(map, 'pointerup', [700, 890]);
    await settled(map);
    const points = marksIn(map)[0]?.points ?? [];
    expect(points).to.have.length(4);
    expect(points[1]?.[1]).to.be.closeTo(830, 1);
  });
});
