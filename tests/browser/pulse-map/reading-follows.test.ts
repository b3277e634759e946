import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { examined } from '../../tools/examinations.js';
import { openMap, saidAt, settled, site } from '../tools/map.js';

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
});
