import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { BODY_VIEWS, type View } from '../../../src/drawing/index.js';
import { openMap, settled } from '../tools/map.js';
import { figureOf } from '../tools/skin.js';

const toolbarOf = (map: PulseMap): DOMRect =>
  map.shadowRoot!.querySelector('.toolbar')!.getBoundingClientRect();

async function showing(map: PulseMap, view: View): Promise<PulseMap> {
  map.view = view;
  await settled(map);
  return map;
}

describe('the height of the window', () => {
  for (const [width, height, views] of [
    [1424, 900, BODY_VIEWS],
    [1904, 1080, BODY_VIEWS],
    [1340, 920, BODY_VIEWS],
    [374, 844, ['legs', 'right-leg', 'left-leg']],
  ] as const)
    it(`of ${width} by ${height} px holds tools and figure, feet included`, async () => {
      const map = await openMap({ width, height });
      for (const view of views) {
        await showing(map, view);
        const { bottom } = figureOf(map).getBoundingClientRect();
        expect(bottom - toolbarOf(map).top, view).to.be.at.most(height);
      }
    });

  it('makes no figure so low that targets, names or the buttons of plates lose their room', async () => {
    const map = await showing(await openMap({ width: 1424, height: 500 }), 'whole');
    const figure = figureOf(map).getBoundingClientRect();
    expect(figure.height).to.be.at.least(766);
    expect(map.shadowRoot!.querySelectorAll('.doors button')).to.have.length(9);
  });
});
