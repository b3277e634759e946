import { expect } from '@open-wc/testing';
import { areaOf } from '../../../src/anatomy/index.js';
import { type Point, press } from '../../tools/real-input.js';
import { chooser, eventsOf, openMap, saidAt, settled, site, status } from '../tools/map.js';
import { allByRole, byRole } from '../tools/perceive.js';
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
  tapSkin,
} from '../tools/skin.js';

/* Regions as in the record's figure: 1200 x 1500 units, the patient's left beyond x = 600 (see src/anatomy/surface.ts). */
const LEFT_SHIN: Point[] = [
  [660, 1140],
  [730, 1146],
  [796, 1140],
];
const RIGHT_THIGH = round(505, 850, 30);

describe('drawing on the skin', () => {
  for (const kind of ['mouse', 'pen', 'touch'] as const) {
    it(`records an ulcer drawn by ${kind}: one step, one event, in words and on the figure`, async () => {
      const map = await openMap();
      await startDrawing(map);
      const events = eventsOf(map);
      await drawStroke(map, LEFT_FOREFOOT, kind);
      expect(status(map)).to.equal('Left forefoot ulcer recorded');
      expect(listed(map)).to.deep.equal(['Left forefoot ulcer']);
      expect(drawnMarks(map)).to.deep.equal(['ulcer']);
      expect(events).to.deep.equal({ input: 1, change: 1 });
      map.undo();
      await settled(map);
      expect(map.value).to.equal('');
      expect(listed(map)).to.deep.equal([]);
      map.redo();
      await settled(map);
      expect(listed(map)).to.deep.equal(['Left forefoot ulcer']);
    });
  }

  it('keeps what was drawn in units of the figure, however large the figure is shown', async () => {
    const seen: { area: number; left: number; top: number }[] = [];
    for (const width of [1000, 500]) {
      const map = await openMap({ width });
      await startDrawing(map);
      await drawStroke(map, RIGHT_THIGH);
      const [mark] = marksIn(map);
      const points = mark?.points ?? [];
      seen.push({
        area: areaOf(points),
        left: Math.min(...points.map(([x]) => x)),
        top: Math.min(...points.map(([, y]) => y)),
      });
    }
    for (const { area, left, top } of seen) {
      expect(area).to.be.closeTo(areaOf(RIGHT_THIGH), areaOf(RIGHT_THIGH) * 0.06);
      expect(left).to.be.closeTo(475, 3);
      expect(top).to.be.closeTo(820, 3);
    }
  });

  it('takes a line across the shin as where cold begins, named by where it crosses', async () => {
    const map = await openMap();
    await startDrawing(map, 'Cold below this line');
    await drawStroke(map, LEFT_SHIN);
    expect(listed(map)).to.deep.equal(['Left mid shin cold below this line']);
    expect(marksIn(map)[0]?.points.length).to.be.within(2, 4);
  });

  it('shows the stroke under the hand before it is recorded', async () => {
    const map = await openMap();
    await startDrawing(map);
    await fakeStroke(map, LEFT_FOREFOOT, {}, 'none');
    expect(figureOf(map).querySelector('.ink')?.getAttribute('d')?.split('L')).to.have.length(
      LEFT_FOREFOOT.length,
    );
    expect(map.value).to.equal('');
    fake(map, 'pointerup', LEFT_FOREFOOT[0] as Point);
    expect(figureOf(map).querySelector('.ink')?.hasAttribute('d')).to.equal(false);
    expect(marksIn(map)).to.have.length(1);
  });

  it('touches no pulse, though the stroke runs over sites, and opens no site', async () => {
    const map = await openMap();
    await startDrawing(map, 'Scar');
    await drawStroke(map, [
      [676, 735],
      [684, 860],
      [700, 1000],
    ]);
    expect(marksIn(map)).to.have.length(1);
    await tapSkin(map, [685, 760], 'touch');
    expect(chooser(map)).to.equal(undefined);
    await press('Escape', 'Escape');
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('not examined');
    expect(Object.keys(map.examination)).to.deep.equal(['format', 'scale', 'marks']);
  });

  it('ends the grading of several sites, and is ended by it', async () => {
    const map = await openMap();
    await pick(map, 'Grade several as 0, absent');
    await startDrawing(map);
    expect(byRole(map, 'button', 'Grade several as 0, absent').getAttribute('aria-pressed')).to.equal(
      'false',
    );
    await pick(map, 'Grade several as 0, absent');
    expect(byRole(map, 'button', 'Draw on the skin').getAttribute('aria-pressed')).to.equal('false');
    expect(allByRole(map, 'button', 'Eraser')).to.have.length(0);
  });

  it('records nothing off the body, nor for a slip, and says why', async () => {
    const map = await openMap();
    await startDrawing(map);
    await drawStroke(map, round(960, 1000, 24));
    expect(status(map)).to.equal('Nothing recorded: that was off the body.');
    await drawStroke(map, [
      [700, 850],
      [730, 850],
    ]);
    expect(status(map)).to.equal('Nothing recorded: draw round an area, or along a line.');
    expect(map.value).to.equal('');
  });

  it('leaves out marks of what a view does not show', async () => {
    const map = await openMap({
      examination: marked(['cyanosis', round(1030, 660, 24)], ['ulcer', LEFT_FOREFOOT]),
    });
    expect(drawnMarks(map)).to.have.length(2);
    for (const [view, kinds] of [
      ['legs', ['ulcer']],
      ['left-arm', ['cyanosis']],
      ['right-leg', []],
      ['left-leg', ['ulcer']],
    ] as const) {
      map.view = view;
      await settled(map);
      expect(drawnMarks(map), view).to.deep.equal(kinds);
    }
    expect(listed(map)).to.deep.equal(['Left hand cyanosis', 'Left forefoot ulcer']);
  });
});

describe('other presses while drawing on the skin', () => {
  it('with the right mouse button draw nothing', async () => {
    const map = await openMap();
    await startDrawing(map);
    await fakeStroke(map, LEFT_FOREFOOT, { pointerType: 'mouse', button: 2, buttons: 2 });
    expect(map.value).to.equal('');
  });

  it('with two fingers are for the page: what the first began is dropped', async () => {
    const map = await openMap();
    await startDrawing(map);
    const finger = { pointerType: 'touch', pointerId: 61 };
    await fakeStroke(map, LEFT_FOREFOOT, finger, 'none');
    fake(map, 'pointerdown', [500, 1000], { pointerType: 'touch', pointerId: 62 });
    fake(map, 'pointerup', LEFT_FOREFOOT[0] as Point, finger);
    fake(map, 'pointerup', [500, 1000], { pointerType: 'touch', pointerId: 62 });
    await settled(map);
    expect(map.value).to.equal('');
  });

  it('leave scrolling and zooming to the page outside of drawing, and zooming within', async () => {
    const map = await openMap();
    const action = (): string => getComputedStyle(figureOf(map)).touchAction;
    expect(action()).to.equal('manipulation');
    await startDrawing(map);
    expect(action()).to.equal('pinch-zoom');
    await pick(map, 'Done');
    expect(action()).to.equal('manipulation');
  });

  it('do not move the page while the finger draws', async () => {
    const map = await openMap({ height: 500 });
    await startDrawing(map);
    site(map, 'left popliteal').scrollIntoView({ block: 'center' });
    await settled(map);
    const before = window.scrollY;
    await drawStroke(
      map,
      [
        [700, 900],
        [720, 960],
        [690, 960],
      ],
      'touch',
    );
    expect(window.scrollY).to.equal(before);
    expect(marksIn(map)).to.have.length(1);
  });

  it('end with Escape: first the stroke, then the drawing', async () => {
    const map = await openMap();
    await startDrawing(map);
    await fakeStroke(map, LEFT_FOREFOOT, {}, 'none');
    await press('Escape');
    fake(map, 'pointerup', LEFT_FOREFOOT[0] as Point);
    await settled(map);
    expect(map.value).to.equal('');
    expect(byRole(map, 'button', 'Draw on the skin').getAttribute('aria-pressed')).to.equal('true');
    await drawStroke(map, LEFT_FOREFOOT);
    await press('Escape');
    await settled(map);
    expect(byRole(map, 'button', 'Draw on the skin').getAttribute('aria-pressed')).to.equal('false');
    expect(listed(map)).to.have.length(1);
  });
});

describe('a mark that is tapped', () => {
  for (const kind of ['mouse', 'pen', 'touch'] as const) {
    it(`by ${kind} is selected; its kind can be changed and it can be deleted`, async () => {
      const map = await openMap({
        examination: marked(
          ['ulcer', LEFT_FOREFOOT, 'dry'],
          [
            'scar',
            [
              [505, 800],
              [505, 900],
            ],
          ],
        ),
      });
      await startDrawing(map);
      await tapSkin(map, [818, 1398], kind);
      expect(markButton(map, /ulcer/).getAttribute('aria-pressed')).to.equal('true');
      expect(
        byRole(map, 'button', 'Scar').hasAttribute('disabled'),
        'an area does not become a line',
      ).to.equal(true);
      await pick(map, 'Gangrene');
      expect(listed(map)[0]).to.equal('Left forefoot gangrene dry');
      expect(status(map)).to.equal('Left forefoot gangrene; note: dry');
      await pick(map, 'Delete');
      expect(listed(map)).to.deep.equal(['Right mid thigh scar']);
      map.undo();
      map.undo();
      await settled(map);
      expect(listed(map)[0]).to.equal('Left forefoot ulcer dry');
    });
  }

  it('lies over a larger one that holds it', async () => {
    const map = await openMap({
      examination: marked(['ulcer', round(730, 1180, 12)], ['pallor', round(730, 1180, 50)]),
    });
    await startDrawing(map);
    await tapSkin(map, [732, 1182]);
    expect(markButton(map, /ulcer/).getAttribute('aria-pressed')).to.equal('true');
    await tapSkin(map, [730, 1220]);
    expect(markButton(map, /pallor/).getAttribute('aria-pressed')).to.equal('true');
  });

  it('is let go by a tap beside it', async () => {
    const map = await openMap({ examination: marked(['ulcer', LEFT_FOREFOOT]) });
    await startDrawing(map);
    await tapSkin(map, [818, 1398]);
    await tapSkin(map, [705, 850]);
    expect(markButton(map, /ulcer/).getAttribute('aria-pressed')).to.equal('false');
    expect(allByRole(map, 'button', 'Delete')).to.have.length(0);
  });
});
