import { expect } from '@open-wc/testing';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import { setViewport } from '../../tools/real-input.js';
import { openClinic, withClinicStyle } from '../tools/clinic.js';
import { until } from '../tools/until.js';

/** Elements of the page itself that hold text, with its size; what lies in shadow trees is the elements' own. */
const sizes = (app: Element): Map<Element, number> =>
  new Map(
    [...app.querySelectorAll('*')]
      .filter(
        (element) =>
          !element.closest('svg') &&
          element.checkVisibility() &&
          [...element.childNodes].some((node) => node instanceof Text && node.data.trim() !== ''),
      )
      .map((element) => [element, parseFloat(getComputedStyle(element).fontSize)]),
  );

describe('the demo for a reader who has set text of twice the size', () => {
  withClinicStyle();
  before(() => setViewport({ width: 390, height: 844 }));
  afterEach(() => {
    document.documentElement.style.fontSize = '';
  });
  after(() => setViewport({ width: 1000, height: 900 }));

  for (const [hash, ready] of [
    ['#/', 'patient-list .row'],
    ['#/patients/okafor', 'limb-visits'],
    ['#/patients/okafor/visits/okafor-1', 'limb-report'],
    ['#/patients/okafor/visits/new', 'visit-form input[type=date]'],
    ['#/practice', 'pulse-practice'],
  ] as const)
    it(`writes everything in that size and shows it whole on a phone at ${hash}`, async () => {
      const app = await openClinic(hash, 'large-text-test');
      try {
        await until(() => app.querySelector(ready), ready);
        const before = sizes(app);
        document.documentElement.style.fontSize = '32px';
        const small = [...before].filter(
          ([element, size]) => parseFloat(getComputedStyle(element).fontSize) < 2 * size - 0.5,
        );
        expect(small.map(([element]) => element.textContent)).to.deep.equal([]);
        expect(document.documentElement.scrollWidth).to.be.at.most(390);
        const date = app.querySelector('input[type=date]')?.getBoundingClientRect();
        if (date) expect(date.width, 'room for a date').to.be.above(300);
      } finally {
        app.remove();
      }
    });
});
