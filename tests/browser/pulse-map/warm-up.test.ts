// What maps do beforehand for the first acts. No other map of the page has begun it before.
import { expect } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { later } from '../../../src/elements/pulse-map/fetched.js';
import { reader } from '../../../src/elements/pulse-reading/reader.js';
import { heldBack } from '../tools/held-back.js';
import { painted } from '../tools/perceive.js';
import { until } from '../tools/until.js';

describe('the warm-up of a page', () => {
  it('comes once for all its maps, after what they fetch, and only when the browser is idle', async () => {
    await later.load();
    const { arrive, restore } = await heldBack();
    const known = reader.part;
    const { requestIdleCallback } = window;
    const asked: IdleRequestCallback[] = [];
    window.requestIdleCallback = (act) => asked.push(act);
    reader.part = undefined;
    const maps = [0, 1].map(() => document.createElement('pulse-map') as unknown as PulseMap);
    try {
      document.body.append(...maps);
      await Promise.all(maps.map((map) => map.updateComplete));
      await painted();
      expect(asked, 'before it has arrived').to.have.length(0);
      arrive();
      await until(() => reader.part !== undefined, 'the engine arrives');
      await Promise.all(maps.map((map) => map.updateComplete));
      for (const map of maps) {
        map.requestUpdate();
        await map.updateComplete;
      }
      expect(asked).to.have.length(1);
    } finally {
      window.requestIdleCallback = requestIdleCallback;
      reader.part = known ?? reader.part;
      restore();
      for (const map of maps) map.remove();
    }
  });
});
