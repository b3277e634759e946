import { expect } from '@open-wc/testing';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import { press, setViewport } from '../../tools/real-input.js';
import { openClinic } from '../tools/clinic.js';
import { until } from '../tools/until.js';

const DATABASE = 'clinic in another language';

describe('a saved visit', () => {
  let app: HTMLElementTagNameMap['clinic-app'];
  beforeEach(async () => {
    localStorage.clear();
    await setViewport({ width: 1000, height: 800 });
    app = await openClinic('#/patients/okafor/visits/okafor-1', DATABASE);
  });
  afterEach(async () => {
    app.remove();
    localStorage.clear();
    await new Promise((done) => {
      const request = indexedDB.deleteDatabase(DATABASE);
      request.onsuccess = request.onerror = request.onblocked = done;
    });
  });

  it('is put into another language and into plain words as soon as they are chosen', async () => {
    const speaks = (said: string) =>
      until(
        () => app.querySelector('limb-report')?.shadowRoot?.textContent?.includes(said),
        `a report that says "${said}"`,
      );
    await speaks('Acute limb ischaemia likely');
    const [language, words] = app.querySelectorAll<HTMLSelectElement>('.language select');
    language!.focus();
    await press('ArrowDown');
    await speaks('Akute Extremitätenischämie wahrscheinlich');
    await press('ArrowUp');
    words!.focus();
    await press('ArrowDown');
    await speaks('has probably lost its blood supply suddenly');
    await press('ArrowUp');
    await speaks('Acute limb ischaemia likely');
    expect(words!.value).to.equal('trade');
  });
});
