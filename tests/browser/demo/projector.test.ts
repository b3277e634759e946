import { expect } from '@open-wc/testing';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import { seenBox, setViewport } from '../../tools/real-input.js';
import { boxOf, overlaps } from '../tools/boxes.js';
import { openClinic, withClinicStyle } from '../tools/clinic.js';
import { settled } from '../tools/map.js';
import { until } from '../tools/until.js';

const DATABASE = 'projector test';
let app: HTMLElementTagNameMap['clinic-app'];

withClinicStyle();

afterEach(() => app.remove());

after(async () => {
  await new Promise((done) => {
    const request = indexedDB.deleteDatabase(DATABASE);
    request.onsuccess = request.onerror = request.onblocked = done;
  });
});

async function opened(size: { width: number; height: number }) {
  await setViewport(size);
  app = await openClinic('#/patients/lindqvist/visits/new', DATABASE);
  const map = () => app.querySelector('pulse-map');
  await until(() => map() !== null, 'the map');
  await settled(map()!);
  return map()!;
}

describe('the clinic’s form', () => {
  it('gives the map the screen of a projector, and the figure its height', async () => {
    const map = await opened({ width: 1920, height: 1080 });
    expect(map.getBoundingClientRect().width, 'nearly the whole screen').to.be.at.least(1840);
    const [tools, figure] = ['.toolbar', '.figure'].map((part) =>
      seenBox(map.shadowRoot!.querySelector(part)!),
    );
    expect(figure!.bottom - tools!.top).to.be.at.most(1080);
    expect(document.documentElement.scrollWidth, 'nothing sticks out').to.be.at.most(1920);
  });

  for (const [width, height] of [
    [1366, 768],
    [1280, 720],
  ] as const)
    it(`begins the map in the upper half of ${width} by ${height} px, and no word of its head lies on another`, async () => {
      const map = await opened({ width, height });
      expect(map.getBoundingClientRect().top + scrollY).to.be.at.most(height / 2);
      const words = [...app.querySelectorAll('.page :is(h1, h2, nav, .identity, label, legend, .hint)')]
        .filter((one) => !one.closest('pulse-map') && !one.querySelector('label'))
        .map((one) => boxOf(one, one.textContent!.trim(), 1.5));
      expect(words.length).to.be.above(10);
      expect(overlaps(words)).to.deep.equal([]);
    });

  it('keeps the labels of its head within their columns at 400% zoom', async () => {
    await setViewport({ width: 320, height: 568 });
    app = await openClinic('#/about', DATABASE);
    await until(() => app.querySelector('.language') !== null, 'the choices');
    for (const label of app.querySelectorAll('.language'))
      expect(label.scrollWidth, label.textContent!.trim()).to.be.at.most(label.clientWidth);
  });

  for (const [hash, part] of [
    ['#/lecture/superficial-femoral', 'pulse-lesson'],
    ['#/practice', 'pulse-practice'],
  ] as const)
    it(`begins the head where its page does: ${hash}`, async () => {
      await setViewport({ width: 1920, height: 1080 });
      app = await openClinic(hash, DATABASE);
      await until(() => app.querySelector(part) !== null, part);
      const [clinic, title] = ['.clinic', 'main h1'].map((one) =>
        app.querySelector(one)!.getBoundingClientRect(),
      );
      expect(clinic!.left).to.be.closeTo(title!.left, 1);
    });

  it('takes no more than a fifth of a phone for the head of the page', async () => {
    await opened({ width: 390, height: 844 });
    const head = app.querySelector('.top') as Element;
    expect(head.getBoundingClientRect().height).to.be.at.most(844 / 5);
    const controls = [...head.querySelectorAll('a, select')];
    expect(controls.length).to.be.above(3);
    for (const control of controls)
      expect(control.getBoundingClientRect().height, control.textContent).to.be.at.least(44);
    expect(document.documentElement.scrollWidth, 'nothing sticks out').to.be.at.most(390);
  });
});
