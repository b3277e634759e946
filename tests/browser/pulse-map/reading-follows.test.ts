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
