import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { examined } from '../../tools/examinations.js';
import { click, press, setViewport } from '../../tools/real-input.js';
import { behavesLikeAFormControl } from '../tools/form-contract.js';
import { keepsWhatItCannotRead, UNREADABLE_RECORDS } from '../tools/unread-contract.js';
import { saidAll, settled, site } from '../tools/map.js';
import { allByRole, byRole, painted } from '../tools/perceive.js';
import { until } from '../tools/until.js';

before(() => setViewport({ width: 940, height: 1000 }));

const FIRST = JSON.stringify(examined({ 'left femoral': 'normal', 'left popliteal': 'absent' }));
const SECOND = JSON.stringify(examined({ 'right radial': { grade: 'reduced', note: 'cold hand' } }));

/** One act of the list of what can be stated as normal. */
const PORTION = /: \d+ pulses? normal/;

keepsWhatItCannotRead({ tag: 'pulse-map', readable: FIRST, unreadable: UNREADABLE_RECORDS });

behavesLikeAFormControl({
  tag: 'pulse-map',
  first: FIRST,
  second: SECOND,
  seen: (control) => JSON.stringify(saidAll(control as PulseMap)),
  async act(control) {
    const map = control as PulseMap;
    await settled(map);
    if (!allByRole(map, 'button', PORTION).length) await click(byRole(map, 'button', 'Mark normal'));
    await settled(map);
    await click(allByRole(map, 'button', PORTION)[0] as HTMLElement);
    await settled(map);
  },
  async tryAll(control) {
    const map = control as PulseMap;
    await settled(map);
    for (const button of allByRole(map, 'button', /^Mark normal$|^Grade several/)) await click(button);
    await click(site(map, 'right femoral'));
    await settled(map);
    site(map, 'right femoral').focus();
    await press('2', 'x', 'Enter', 'a', 'Delete', 'Control+z', 'Escape');
    await click(site(map, 'right femoral'), { kind: 'touch' });
    await settled(map);
    await press('Escape');
  },
  takesFocus: (element) => element?.matches('[part~=site]') === true,
});

describe('a page that is left and come back to', () => {
  it('holds the same record, restored by the browser itself', async () => {
    const frame = document.createElement('iframe');
    frame.style.cssText = 'width: 900px; height: 900px';
    const loaded = (): Promise<unknown> =>
      new Promise((done) => frame.addEventListener('load', done, { once: true }));
    const mapIn = async (): Promise<PulseMap> => {
      await frame.contentWindow?.customElements.whenDefined('pulse-map');
      await painted();
      return frame.contentDocument?.querySelector('pulse-map') as unknown as PulseMap;
    };
    try {
      let load = loaded();
      frame.src = new URL('./form-page.html', import.meta.url).href;
      document.body.append(frame);
      await load;
      const map = await mapIn();
      map.value = FIRST;
      await settled(map);
      load = loaded();
      frame.contentWindow?.location.assign(new URL('./form-page.html?other', import.meta.url).href);
      await load;
      expect((await mapIn()).value).to.equal('');
      load = loaded();
      frame.contentWindow?.history.back();
      await load;
      const again = await mapIn();
      await until(() => again.value === FIRST, 'the record that the browser restores');
    } finally {
      frame.remove();
    }
  });
});
