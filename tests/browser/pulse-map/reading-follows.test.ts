import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { later } from '../../../src/elements/pulse-map/fetched.js';
import { reader } from '../../../src/elements/pulse-reading/reader.js';
import { examined } from '../../tools/examinations.js';
import { openMap, saidAt, settled, site } from '../tools/map.js';
import { painted } from '../tools/perceive.js';
import { until } from '../tools/until.js';

const blocks = (map: PulseMap): number => map.shadowRoot?.querySelectorAll('[data-lesion]').length ?? 0;

/** What a key does before anything else has its turn. */
async function keyed(map: PulseMap, name: string, key: string): Promise<void> {
  site(map, name).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, composed: true }));
  await Promise.resolve();
  await Promise.resolve();
}

describe('the reading of an edit', () => {
  it('follows the mark under the hand, which comes first', async () => {
    const map = await openMap({
      examination: examined({ 'left femoral': 'normal', 'left popliteal': 'normal' }),
    });
    expect(blocks(map)).to.equal(0);
    await keyed(map, 'left popliteal', '0');
    expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
    expect(blocks(map)).to.equal(0);
    await map.updateComplete;
    expect(blocks(map)).to.equal(1);
  });

  it('waits for a pause, so that it never stands in the way of the next act', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    await keyed(map, 'left popliteal', '0');
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    expect(blocks(map)).to.equal(0);
    await map.updateComplete;
    expect(blocks(map)).to.equal(1);
  });

  it('is that of the last of several edits made at once', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    await keyed(map, 'left popliteal', '0');
    await keyed(map, 'left popliteal', '2');
    await map.updateComplete;
    expect(blocks(map)).to.equal(0);
    await keyed(map, 'left popliteal', '0');
    await settled(map);
    expect(blocks(map)).to.equal(1);
  });

  it('is one for a burst of acts, each of which is shown at once', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    let readings = 0;
    map.addEventListener('reading-change', () => readings++);
    const sites = ['left popliteal', 'left posterior-tibial', 'left dorsalis-pedis', 'right femoral'];
    for (const name of sites) {
      await keyed(map, name.replace('-', ' '), '0');
      expect(saidAt(map, name.replace('-', ' '))).to.equal('0, absent');
    }
    expect(readings, 'while the hand is at work').to.equal(0);
    await settled(map);
    expect(readings, 'after it').to.equal(1);
    expect(blocks(map)).to.be.greaterThan(0);
  });

  it('is worked out, drawn and told one after another, and a hand gets in between', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    const told = (): string => map.reading.sentences.join(' ');
    const before = told();
    const { requestIdleCallback } = window;
    /** What waits for an idle moment; each is given by hand. */
    const waiting: IdleRequestCallback[] = [];
    const next = async (): Promise<void> => {
      await until(() => waiting.length === 1, 'a part waits');
      waiting.shift()?.({ didTimeout: false, timeRemaining: () => 10 });
      await painted();
    };
    window.requestIdleCallback = (act) => waiting.push(act);
    try {
      await keyed(map, 'left popliteal', '0');
      let parts = 0;
      for (; blocks(map) === 0; parts++) await next();
      expect(parts, 'moments in which it is worked out and drawn').to.be.above(8);
      expect(blocks(map), 'drawn').to.equal(1);
      expect(told(), 'not told in the moment in which it is drawn').to.equal(before);
      await next();
      await map.updateComplete;
      expect(told()).to.not.equal(before);
    } finally {
      window.requestIdleCallback = requestIdleCallback;
    }
  });

  it('begins no part in an idle moment that is nearly over, but none is put off for long', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    const { requestIdleCallback } = window;
    let asked = 0;
    /** How much was drawn when a moment was asked for the fourth time. */
    let early: number | undefined;
    window.requestIdleCallback = (act) => {
      setTimeout(() => act({ didTimeout: false, timeRemaining: () => 2 }), 1);
      if (++asked === 4) early = blocks(map);
      return asked;
    };
    try {
      await keyed(map, 'left popliteal', '0');
      await until(() => asked > 3, 'an idle moment that is long enough is waited for');
      expect(early).to.equal(0);
      await map.updateComplete;
      expect(blocks(map)).to.equal(1);
    } finally {
      window.requestIdleCallback = requestIdleCallback;
    }
  });

  it('begins anew where an act comes between its parts', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    const requestIdleCallback = window.requestIdleCallback as typeof window.requestIdleCallback | undefined;
    let came = false;
    window.requestIdleCallback = (act, options) => {
      if (!came) void keyed(map, 'left popliteal', '2');
      came = true;
      // Not every browser tells when it rests.
      if (requestIdleCallback) return requestIdleCallback.call(window, act, options);
      setTimeout(() => act({ didTimeout: false, timeRemaining: () => 10 }));
      return 1;
    };
    try {
      await keyed(map, 'left popliteal', '0');
      await until(() => came, 'the act between');
      await map.updateComplete;
      expect(saidAt(map, 'left popliteal')).to.equal('2, normal');
      expect(blocks(map)).to.equal(0);
    } finally {
      window.requestIdleCallback = requestIdleCallback as typeof window.requestIdleCallback;
    }
  });

  it('of another record stands beside it at once, though one of the record before is being worked out', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    const { requestIdleCallback } = window;
    let waiting: IdleRequestCallback | undefined;
    window.requestIdleCallback = (act) => {
      waiting = act;
      return 1;
    };
    try {
      await keyed(map, 'left popliteal', '0');
      await until(() => waiting !== undefined, 'a part waits');
      map.value = examined({ 'right femoral': 'normal', 'right popliteal': 'normal' });
      window.requestIdleCallback = requestIdleCallback;
      waiting?.({ didTimeout: false, timeRemaining: () => 10 });
      const seen = new Set<number>();
      for (let frame = 0; frame < 20; frame++) {
        await painted();
        seen.add(blocks(map));
      }
      await settled(map);
      seen.add(blocks(map));
      expect([...seen]).to.deep.equal([0]);
      expect(map.reading.sentences.join(' ')).to.not.match(/left/i);
    } finally {
      window.requestIdleCallback = requestIdleCallback;
    }
  });

  it('stands there without an animation, which would cost frames', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    await keyed(map, 'left popliteal', '0');
    await settled(map);
    expect(blocks(map)).to.equal(1);
    const moving = map.shadowRoot?.querySelector('.figure')?.getAnimations({ subtree: true }) ?? [];
    expect(moving.length).to.equal(0);
  });

  it('is there from the first paint of a record that was there before', async () => {
    const map = document.createElement('pulse-map') as PulseMap;
    map.value = examined({ 'left femoral': 'normal', 'left popliteal': 'absent' });
    document.body.append(map);
    // Before anything is painted: only what runs without a frame has run.
    await new Promise((resolve) => setTimeout(resolve));
    expect(blocks(map)).to.equal(1);
    map.remove();
  });

  it('works out once what an act asks several times: its sentences, and what of the record is not known', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    await settled(map);
    const [limbs, rest] = [reader.part, later.part];
    if (!limbs || !rest) throw new Error('found no code of the reading');
    let asked = { sentences: 0, unknown: 0 };
    reader.part = {
      ...limbs,
      lesionSentences: (...given) => {
        asked.sentences++;
        return limbs.lesionSentences(...given);
      },
    };
    later.part = {
      ...rest,
      unknownFields: (...given) => {
        asked.unknown++;
        return rest.unknownFields(...given);
      },
    };
    try {
      await keyed(map, 'left popliteal', '0');
      await settled(map);
      asked = { sentences: 0, unknown: 0 };
      await keyed(map, 'left popliteal', '1');
      await settled(map);
      expect(saidAt(map, 'left popliteal')).to.contain('1');
      expect(asked).to.deep.equal({ sentences: 1, unknown: 1 });
    } finally {
      reader.part = limbs;
      later.part = rest;
    }
  });

  it('has the page measured for red flags while nothing is changed yet, so that it is laid out once', async () => {
    const map = await openMap({ examination: examined({ 'right femoral': 'normal' }) });
    await settled(map);
    const changes = new MutationObserver(() => undefined);
    changes.observe(map.shadowRoot as ShadowRoot, { subtree: true, childList: true, attributes: true });
    const measure = Element.prototype.getBoundingClientRect;
    /** How much of the map had been changed each time that the page was measured. */
    const changed: number[] = [];
    Element.prototype.getBoundingClientRect = function () {
      changed.push(changes.takeRecords().length);
      return measure.call(this);
    };
    try {
      await keyed(map, 'left femoral', '0');
      await map.shadowRoot?.querySelector('limb-flags')?.updateComplete;
      expect(changed[0], 'before the act is drawn').to.equal(0);
      expect(Math.max(...changed), 'after it').to.be.above(0);
    } finally {
      Element.prototype.getBoundingClientRect = measure;
      changes.disconnect();
    }
  });
});
