import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import 'pulse-map/locale/de';
import type { Examination } from '../../../src/examination/index.js';
import { badLabels, impossible, longest, WIDTHS } from '../tools/drawn.js';
import { openMap, settled } from '../tools/map.js';
import { byRole, everything } from '../tools/perceive.js';

async function openGerman(width: number, examination: Examination): Promise<PulseMap> {
  const map = await openMap({ width, examination });
  map.lang = 'de';
  await settled(map);
  expect(byRole(map, 'group', /^Arterien des Körpers/)).to.exist;
  return map;
}

/** Buttons whose words are wider than they. */
function spilling(map: PulseMap): string[] {
  return everything(map.shadowRoot as ShadowRoot)
    .filter((element) => element.localName === 'button' && element.scrollWidth > element.clientWidth + 1)
    .map((element) => element.textContent?.trim() ?? '');
}

describe('German labels', () => {
  for (const width of WIDTHS) {
    it(`at ${width} px touch neither each other nor a site, and are not cut off, in any view`, async () => {
      expect(await badLabels(await openGerman(width, longest()), width)).to.deep.equal([]);
      expect(await badLabels(await openGerman(width, impossible()), width)).to.deep.equal([]);
    });

    it(`at ${width} px, beside an earlier record, do so too`, async () => {
      const map = await openGerman(width, longest());
      map.compare = impossible();
      expect(await badLabels(map, width)).to.deep.equal([]);
    });

    it(`at ${width} px leave the control no wider than its place, and spill over no button`, async () => {
      const map = await openGerman(width, longest());
      for (const display of ['figure', 'table'] as const) {
        map.display = display;
        await settled(map);
        expect(map.scrollWidth, `${display}: wider than itself`).to.be.at.most(map.clientWidth);
        expect(spilling(map), display).to.deep.equal([]);
      }
    });
  }
});

describe('the German chooser', () => {
  for (const width of [300, 360, 900]) {
    it(`at ${width} px holds every word in its button, whatever is unfolded`, async () => {
      const map = await openGerman(width, longest());
      map.openPlace('left femoral');
      await settled(map);
      expect(byRole(map, 'dialog', 'Femoralis links')).to.exist;
      for (const name of [/^Geräusch$/, /^Nicht untersuchbar/, /^Dopplersignal/]) {
        const fold = byRole(map, 'button', name);
        if (fold.getAttribute('aria-expanded') !== 'true') fold.click();
        await settled(map);
        expect(spilling(map), String(name)).to.deep.equal([]);
      }
    });
  }
});
