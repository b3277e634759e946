import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import type { Examination } from '../../../src/examination/index.js';
import { type LanguageSamples, TRANSLATIONS } from '../../languages/index.js';
import { badLabels, impossible, longest, WIDTHS } from '../tools/drawn.js';
import { openMap, settled } from '../tools/map.js';
import { byRole, everything } from '../tools/perceive.js';

async function openIn(language: LanguageSamples, width: number, examination: Examination): Promise<PulseMap> {
  await language.load();
  const map = await openMap({ width, examination });
  map.lang = language.tag;
  await settled(map);
  expect(byRole(map, 'group', language.figure)).to.exist;
  return map;
}

/** Buttons whose words are wider than they. */
function spilling(map: PulseMap): string[] {
  return everything(map.shadowRoot as ShadowRoot)
    .filter((element) => element.localName === 'button' && element.scrollWidth > element.clientWidth + 1)
    .map((element) => element.textContent?.trim() ?? '');
}

for (const language of TRANSLATIONS) {
  describe(`${language.english} labels`, () => {
    for (const width of WIDTHS) {
      it(`at ${width} px touch neither each other nor a site, and are not cut off, in any view`, async () => {
        expect(await badLabels(await openIn(language, width, longest()), width)).to.deep.equal([]);
        expect(await badLabels(await openIn(language, width, impossible()), width)).to.deep.equal([]);
      });

      it(`at ${width} px, beside an earlier record, do so too`, async () => {
        const map = await openIn(language, width, longest());
        map.compare = impossible();
        expect(await badLabels(map, width)).to.deep.equal([]);
      });

      it(`at ${width} px leave the control no wider than its place, and spill over no button`, async () => {
        const map = await openIn(language, width, longest());
        for (const display of ['figure', 'table'] as const) {
          map.display = display;
          await settled(map);
          expect(map.scrollWidth, `${display}: wider than itself`).to.be.at.most(map.clientWidth);
          expect(spilling(map), display).to.deep.equal([]);
        }
      });
    }
  });

  describe(`the ${language.english} chooser`, () => {
    for (const width of [300, 360, 900]) {
      it(`at ${width} px holds every word in its button, whatever is unfolded`, async () => {
        const map = await openIn(language, width, longest());
        map.openPlace('left femoral');
        await settled(map);
        expect(byRole(map, 'dialog', language.chooser.leftFemoral)).to.exist;
        for (const name of language.chooser.folds) {
          const fold = byRole(map, 'button', name);
          if (fold.getAttribute('aria-expanded') !== 'true') fold.click();
          await settled(map);
          expect(spilling(map), String(name)).to.deep.equal([]);
        }
      });
    }
  });
}
