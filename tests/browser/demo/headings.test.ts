import { expect } from '@open-wc/testing';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import { openClinic } from '../tools/clinic.js';
import { headingsIn, skippedIn } from '../tools/headings.js';
import { until } from '../tools/until.js';

const DATABASE = 'headings-test';
/** Each page with a heading that it has once all of it is there. */
const PAGES: readonly (readonly [hash: string, last: RegExp])[] = [
  ['#/', /^Patients$/],
  ['#/about', /^About/],
  ['#/patients/okafor', /^After an operation$/],
  ['#/patients/okafor/visits/new', /Pulses and bruits/],
  ['#/patients/okafor/visits/okafor-1', /^Not examined$/],
  ['#/patients/lindqvist/visits/lindqvist-2/edit', /^Occlusion/],
  ['#/patients/lindqvist/visits/new/from-last', /Pulses and bruits/],
  ['#/lecture', /^Lecture$/],
  ['#/lecture/write', /^Preview$/],
  ['#/lecture/superficial-femoral', /^The calf that stops at the corner$/],
  ['#/lecture/superficial-femoral/presenter', /^Notes$/],
  ['#/lecture/superficial-femoral/hand-out', /^Listen/],
  ['#/practice', /^Choose a patient$/],
  ['#/practice/clear-7', /^What else you can do$/],
  ['#/practice/clear-7/examiner', /^Examiner’s sheet/],
];

describe('the headings of the demo', () => {
  for (const [hash, last] of PAGES)
    it(`begin with one first level and skip none at ${hash}`, async () => {
      const app = await openClinic(hash, DATABASE);
      try {
        const shown = () => headingsIn(app);
        await until(() => shown().some(([, text]) => last.test(text)), `the heading ${String(last)}`);
        const headings = shown();
        expect(headings.filter(([level]) => level === 1)).to.have.length(1);
        expect(headings[0]![0]).to.equal(1);
        expect(skippedIn(headings), JSON.stringify(headings)).to.deep.equal([]);
      } finally {
        app.remove();
      }
    });
});
