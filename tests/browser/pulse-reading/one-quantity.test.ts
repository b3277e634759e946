import { expect } from '@open-wc/testing';
import { LIMBS, limbKey } from '../../../src/anatomy/index.js';
import { examined, graded, outwardFrom } from '../../tools/examinations.js';
import { openMap, settled } from '../tools/map.js';

const SITES = ['subclavian', 'axillary', 'brachial', 'radial', 'femoral', 'popliteal', 'posterior-tibial'];
const PICTURES = (['right', 'left'] as const).flatMap((side) =>
  SITES.flatMap((site) =>
    (['absent', 'reduced'] as const).map((grade) => ({ side, site, grade, key: `${side} ${site}` })),
  ),
);

const text = (element: Element | null | undefined): string =>
  (element?.textContent ?? '').replace(/\s+/g, ' ').trim();
const numberOf = (said: string): string | undefined => /[<>]?\d+%/.exec(said)?.[0];
/** A stretch in words, without what stands around it. */
const stretchOf = (said: string): string | undefined =>
  /somewhere [^,:%]*[^,:%\d\s]/i.exec(said)?.[0].toLowerCase();

describe('headline, figure, limb line and first row', () => {
  for (const site of SITES) {
    it(`tell the same stretch and the same number of every limb without a ${site} pulse`, async () => {
      const map = await openMap({ examination: examined({}) });
      let told = 0;
      for (const { key, grade } of PICTURES.filter((one) => one.site === site)) {
        map.examination = examined(graded(outwardFrom(key), grade));
        await settled(map);
        const reading = map.shadowRoot?.querySelector('pulse-reading');
        await reading?.updateComplete;
        for (const limb of LIMBS.map(limbKey)) {
          const marks = [...(map.shadowRoot?.querySelectorAll(`[data-lesion^="${limb}"] title`) ?? [])].map(
            text,
          );
          const mark = marks.find((title) => stretchOf(title));
          const section = reading?.shadowRoot?.querySelector(`section[data-limb="${limb}"]`);
          const lead = text(section?.querySelector('[part=lead]'));
          if (!mark) {
            expect(stretchOf(lead), `${key} ${grade}, ${limb}`).to.equal(undefined);
            continue;
          }
          told++;
          const row = section?.querySelector('.bar');
          const line = section?.querySelector('.limb-line .percent:not(.further)');
          const onFigure = map.shadowRoot?.querySelector(`.percent[data-limb="${limb}"]`);
          expect(stretchOf(lead), `${key} ${grade}`).to.equal(stretchOf(mark));
          expect(stretchOf(text(row?.children[0])), `${key} ${grade}`).to.equal(stretchOf(mark));
          const numbers = [mark, lead, text(row?.querySelector('.figure')), text(line), text(onFigure)].map(
            numberOf,
          );
          expect(new Set(numbers).size, `${key} ${grade}: ${numbers.join(', ')}`).to.equal(1);
          expect(numbers[0]).to.match(/^>?\d+%$/);
        }
      }
      expect(told).to.be.at.least(2);
    });
  }
});
