// A page opened in a low window, whose height belongs to the figure. WebKit takes up a change to or from it late, so no other is opened here.
import { expect } from '@open-wc/testing';
import { setFields, setPulse } from 'pulse-map/core';
import { OVER_HEIGHT } from '../../../src/drawing/index.js';
import { emptyExamination, restNormal } from '../../../src/examination/index.js';
import { openMap } from '../tools/map.js';
import { figureOf } from '../tools/skin.js';

describe('a low window', () => {
  for (const [width, height] of [
    [1326, 768],
    [1240, 720],
  ] as const)
    for (const [strip, inspection] of [
      ['question when the trouble began', {}],
      ['red flag', { leg: { right: { temperature: 'cold' } } }],
    ] as const)
      it(`of ${width} by ${height} px holds tools and figure below the ${strip}, toes and names of the foot included`, async () => {
        const pulseless = (['femoral', 'popliteal', 'posterior-tibial', 'dorsalis-pedis'] as const).reduce(
          (record, site) => setPulse(record, { site, side: 'right' }, { grade: 'absent' }),
          restNormal(emptyExamination('0-3')),
        );
        const map = await openMap({
          width,
          height,
          examination: setFields(pulseless, { inspection }),
        });
        const flags = map.shadowRoot!.querySelector('limb-flags')!;
        const strips = flags.getBoundingClientRect();
        expect(strips.height).to.be.above(30);
        const line = flags.shadowRoot!.querySelector('.title')!;
        expect(line.scrollWidth, 'words').to.be.at.most(line.clientWidth);
        const figure = figureOf(map);
        const spare =
          (OVER_HEIGHT / 2) * (figure.getBoundingClientRect().height / figure.viewBox.baseVal.height);
        expect(figure.getBoundingClientRect().bottom - spare - strips.top).to.be.at.most(height);
      });
});
