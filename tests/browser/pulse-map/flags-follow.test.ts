import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import type { LimbFlags } from '../../../src/elements/limb-flags/element.js';
import { threatened } from '../../../stories/limb-records.js';
import { examined } from '../../tools/examinations.js';
import { openMap, saidAt, site } from '../tools/map.js';

const flagsOf = (map: PulseMap): LimbFlags => map.shadowRoot?.querySelector('limb-flags') as LimbFlags;

/** What a key does before anything else has its turn. */
async function keyed(map: PulseMap, name: string, key: string): Promise<void> {
  site(map, name).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, composed: true }));
  await Promise.resolve();
  await Promise.resolve();
}

describe('the red flags of an act', () => {
  it('come with the frame after its mark, and lay nothing out before that', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    const { getBoundingClientRect } = Element.prototype;
    let measured = 0;
    Element.prototype.getBoundingClientRect = function (this: Element) {
      measured++;
      return getBoundingClientRect.call(this);
    };
    try {
      for (const name of ['left popliteal', 'left posterior tibial', 'left dorsalis pedis'])
        await keyed(map, name, '0');
      expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
      expect(flagsOf(map).hasAttribute('raised')).to.equal(false);
      expect(measured).to.equal(0);
    } finally {
      Element.prototype.getBoundingClientRect = getBoundingClientRect;
    }
    // Long before the reading, which waits for a pause.
    for (let frame = 0; frame < 2; frame++)
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    expect(flagsOf(map).hasAttribute('raised')).to.equal(true);
  });

  it('are waited for by whoever waits for the map', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    await keyed(map, 'left popliteal', '0');
    await map.updateComplete;
    expect(flagsOf(map).examination).to.equal(map.examination);
  });

  it('stand at once where the record is another', async () => {
    const map = await openMap({ examination: threatened });
    await keyed(map, 'left radial', '0');
    map.value = examined({ 'right femoral': 'normal' });
    await Promise.resolve();
    await Promise.resolve();
    expect(flagsOf(map).examination).to.equal(map.examination);
  });

  it('note a call in the record as it stands, though they are behind', async () => {
    const map = await openMap({ examination: threatened });
    const flags = flagsOf(map);
    flags.open = true;
    await flags.updateComplete;
    await keyed(map, 'left radial', '0');
    expect(saidAt(map, 'left radial')).to.equal('0, absent');
    flags.renderRoot.querySelector<HTMLElement>('.note-call')?.click();
    await map.updateComplete;
    expect(map.examination.calls?.length).to.equal(1);
    expect(saidAt(map, 'left radial')).to.equal('0, absent');
  });
});
