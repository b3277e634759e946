// The tools to draw with come in a chunk of their own. Nothing here fetches them beforehand.
import { expect } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { byRole } from '../tools/perceive.js';
import { until } from '../tools/until.js';

describe('the tools to draw on the skin', () => {
  it('do not keep an empty map from its first paint, and answer a press made before they are there', async () => {
    const map = document.createElement('pulse-map') as unknown as PulseMap;
    document.body.append(map);
    await map.updateComplete;
    const root = map.shadowRoot as ShadowRoot;
    expect(root.querySelector('.figure')).to.exist;
    expect(root.querySelector('.marks select'), 'the tools are not there yet').to.equal(null);
    byRole(map, 'button', 'Draw on the skin').click();
    await until(() => root.querySelector('.palette'), 'the tools');
    expect(byRole(map, 'button', 'Draw on the skin').getAttribute('aria-pressed')).to.equal('true');
    expect(root.querySelector('.marks select')).to.exist;
    map.remove();
  });
});
