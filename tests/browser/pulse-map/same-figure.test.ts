// The figure that is painted first is the one that stays: what comes later, and windows of other sizes, change it in place.
import { expect } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { heldBack } from '../tools/held-back.js';
import { byRole, painted } from '../tools/perceive.js';
import { until } from '../tools/until.js';

const figureOf = (map: PulseMap): Element | null | undefined => map.shadowRoot?.querySelector('.figure');
const focusedIn = (map: PulseMap): string | undefined =>
  (map.shadowRoot?.activeElement as HTMLElement | null | undefined)?.dataset.place;

/** Widths of the element: phone, both arms, the whole body, the reading beside it, and back. */
const WIDTHS = [390, 600, 900, 1300, 600, 390];

describe('the figure and the focus', () => {
  it('stay from the first paint until all has come, and at every width, while one records', async () => {
    const { arrive, restore } = await heldBack();
    const map = document.createElement('pulse-map') as unknown as PulseMap;
    map.style.inlineSize = '1000px';
    document.body.append(map);
    try {
      await map.updateComplete;
      const figure = figureOf(map);
      const site = byRole(map, 'button', /^Left femoral: /);
      site.focus();
      const same = (when: string): void => {
        expect(figureOf(map) === figure, `the figure, ${when}`).to.equal(true);
        expect(site.isConnected, `the site, ${when}`).to.equal(true);
        expect(focusedIn(map), `the focus, ${when}`).to.equal('left femoral');
      };
      const record = (key: string): void => {
        site.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, composed: true }));
      };
      same('first painted');
      record('2');
      await painted();
      same('recorded on, before anything else has come');
      arrive();
      await map.updateComplete;
      await until(() => map.shadowRoot?.querySelector('pulse-reading'), 'the reading');
      await painted();
      same('all fetched');
      for (const [i, width] of WIDTHS.entries()) {
        const before = figure?.getAttribute('viewBox');
        map.style.inlineSize = `${width}px`;
        await until(() => figureOf(map)?.getAttribute('viewBox') !== before, `the figure at ${width} px`);
        record(String(i % 3));
        await map.updateComplete;
        same(`${width} px wide`);
      }
    } finally {
      restore();
      map.remove();
    }
  });
});
