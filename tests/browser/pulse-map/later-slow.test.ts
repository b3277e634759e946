// What a map fetches after its first paint comes late here. Nothing fetches it beforehand.
import { expect } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { later } from '../../../src/elements/pulse-map/fetched.js';
import { allByRole, byRole, painted } from '../tools/perceive.js';

describe('a map whose later parts are slow', () => {
  it('takes findings meanwhile, and opens what was asked for once they are there', async () => {
    let arrive: () => void = () => undefined;
    const arrived = new Promise<void>((resolve) => (arrive = resolve));
    const { load } = later;
    later.load = () => arrived.then(() => load.call(later));
    const map = document.createElement('pulse-map') as unknown as PulseMap;
    document.body.append(map);
    await map.updateComplete;
    const site = byRole(map, 'button', /^Left femoral: /);
    site.focus();
    site.dispatchEvent(new KeyboardEvent('keydown', { key: '0', bubbles: true, composed: true }));
    expect(map.value).to.include('absent');
    map.openPlace('left popliteal');
    await painted();
    expect(allByRole(map, 'dialog')).to.be.empty;
    arrive();
    await map.updateComplete;
    expect(allByRole(map, 'dialog')).to.have.length(1);
    map.remove();
  });
});
