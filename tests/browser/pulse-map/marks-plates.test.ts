import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { platePlaces, type PlateView } from '../../../src/anatomy/index.js';
import { fetchPlate } from '../../../src/elements/pulse-map/plate/fetched.js';
import { click, type Point, press } from '../../tools/real-input.js';
import { eventsOf, openMap, settled, status } from '../tools/map.js';
import { byRole } from '../tools/perceive.js';
import {
  drawnMarks,
  drawStroke,
  LEFT_FOREFOOT,
  listed,
  markButton,
  marked,
  marksIn,
  pick,
  round,
  startDrawing,
  tapSkin,
} from '../tools/skin.js';

const NAMED: readonly (readonly [PlateView, string, string])[] = [
  ['left-sole', 'heel', 'Left heel (plantar) ulcer'],
  ['right-sole', 'met-head-1', 'Right first metatarsal head (plantar) ulcer'],
  ['left-foot', 'great-toe', 'Left great toe (medial) ulcer'],
  ['right-foot', 'medial-malleolus', 'Right medial malleolus ulcer'],
  ['left-hand', 'palm', 'Left palm ulcer'],
  ['right-hand', 'index-finger', 'Right index finger (palmar) ulcer'],
  ['left-knee', 'popliteal-fossa', 'Left popliteal fossa ulcer'],
  ['legs-behind', 'calf', 'Left mid calf ulcer'],
];

/** The middle of a named area of a plate, on the left where it shows both. */
function middleOf(view: PlateView, region: string): Point {
  const place = platePlaces(view).findLast(
    ({ name }) => name.region === region && (view !== 'legs-behind' || name.side === 'left'),
  );
  const { shape } = place as NonNullable<typeof place>;
  const [xs, ys] = [shape.map(([x]) => x), shape.map(([, y]) => y)];
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}

async function openPlate(view: PlateView, examination = marked()): Promise<PulseMap> {
  const map = await openMap({ width: 900, examination });
  await fetchPlate(view);
  map.view = view;
  await settled(map);
  return map;
}

describe('marks on plates', () => {
  for (const [view, region, said] of NAMED)
    it(`are drawn on ${view} where the hand goes: ${said}`, async () => {
      const map = await openPlate(view);
      await startDrawing(map);
      const [x, y] = middleOf(view, region);
      await drawStroke(map, round(x, y, 13));
      expect(listed(map)).to.deep.equal([said]);
      const [mark] = marksIn(map);
      expect(mark?.on?.plate).to.equal(view);
      for (const [px, py] of mark?.on?.points ?? []) expect(Math.hypot(px - x, py - y)).to.be.below(16);
      expect(drawnMarks(map)).to.deep.equal(['ulcer']);
      map.undo();
      await settled(map);
      expect(listed(map)).to.deep.equal([]);
      expect(drawnMarks(map)).to.deep.equal([]);
    });

  it('are drawn with a pen too, and are shown on the whole figure, faint where they lie behind', async () => {
    const map = await openPlate('left-sole');
    const events = eventsOf(map);
    await startDrawing(map, 'Redness');
    await drawStroke(map, round(490, 840, 50), 'pen');
    expect(status(map)).to.contain('Left heel (plantar)');
    expect(events).to.deep.equal({ input: 1, change: 1 });
    map.view = 'whole';
    await settled(map);
    expect(drawnMarks(map)).to.deep.equal(['redness behind']);
  });

  it('show on a plate what was drawn on the figure there', async () => {
    const map = await openPlate('left-foot', marked(['gangrene', LEFT_FOREFOOT]));
    expect(drawnMarks(map)).to.deep.equal(['gangrene']);
    for (const view of ['right-foot', 'left-sole', 'left-hand'] as const) {
      await fetchPlate(view);
      map.view = view;
      await settled(map);
      expect(drawnMarks(map)).to.deep.equal([]);
      expect(listed(map), 'but the list never leaves one out').to.deep.equal(['Left forefoot gangrene']);
    }
  });

  it('are selected and deleted by the pen that lies on them', async () => {
    const map = await openPlate('left-sole');
    await startDrawing(map);
    await drawStroke(map, round(490, 840, 40));
    await tapSkin(map, [490, 840]);
    expect(drawnMarks(map)).to.deep.equal(['ulcer selected']);
    await pick(map, 'Gangrene');
    expect(listed(map)).to.deep.equal(['Left heel (plantar) gangrene']);
    await pick(map, 'Delete');
    expect(listed(map)).to.deep.equal([]);
  });

  it('need no hand: a place of the plate is chosen by name, and arrows move the mark', async () => {
    const map = await openPlate('left-sole');
    await startDrawing(map);
    const [kinds, places] = [...(map.shadowRoot?.querySelectorAll('.marks select') ?? [])] as [
      HTMLSelectElement,
      HTMLSelectElement,
    ];
    expect(places.querySelector('optgroup')?.label).to.equal('Left sole');
    const option = [...places.options].find(({ text }) => text === 'Left fifth metatarsal head (plantar)');
    kinds.value = 'ulcer';
    places.value = option?.value ?? '';
    byRole(map, 'button', 'Add').click();
    await settled(map);
    expect(listed(map)).to.deep.equal(['Left fifth metatarsal head (plantar) ulcer']);
    const before = marksIn(map)[0]?.on?.points ?? [];
    markButton(map, /fifth metatarsal/).focus();
    await press('ArrowUp');
    await settled(map);
    const after = marksIn(map)[0]?.on?.points ?? [];
    expect(after.map(([, y]) => y)).to.deep.equal(before.map(([, y]) => y - 16));
    markButton(map, /metatarsal/).focus();
    await press('Delete');
    await settled(map);
    expect(listed(map)).to.deep.equal([]);
  });

  it('are edited on the drawing on which they were made', async () => {
    const map = await openPlate('right-sole');
    await startDrawing(map);
    await drawStroke(map, round(510, 840, 40));
    await press('Escape');
    await press('Escape');
    map.view = 'whole';
    await settled(map);
    await click(byRole(map, 'button', /^Edit: Right heel/));
    await settled(map);
    expect(map.view).to.equal('right-sole');
    expect(drawnMarks(map)).to.deep.equal(['ulcer selected']);
    map.view = 'whole';
    await settled(map);
    markButton(map, /Right heel/).focus();
    await press('ArrowDown');
    await settled(map);
    expect(map.view, 'up and down are those of the plate').to.equal('right-sole');
  });

  it('leave nothing where the stroke was off the skin', async () => {
    const map = await openPlate('left-hand');
    await startDrawing(map);
    await drawStroke(map, round(60, 900, 30));
    expect(listed(map)).to.deep.equal([]);
    expect(status(map)).to.contain('off the body');
  });
});
