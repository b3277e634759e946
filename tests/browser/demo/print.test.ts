import { expect } from '@open-wc/testing';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import { emulate } from '../../tools/real-input.js';
import { openClinic, withClinicStyle } from '../tools/clinic.js';
import { until } from '../tools/until.js';

describe('a visit of the demo on paper', () => {
  withClinicStyle();
  after(() => emulate({}));

  it('has nothing to choose or to open, and what was opened', async () => {
    const app = await openClinic('#/patients/okafor/visits/okafor-1', 'print-test');
    try {
      await until(() => app.querySelectorAll('details.letter').length === 2, 'letter and export');
      const [letter, exported] = app.querySelectorAll<HTMLDetailsElement>('details.letter');
      letter!.open = true;
      await emulate({ media: 'print' });
      const seen = (element: Element | null | undefined) => element!.checkVisibility();
      expect(seen(app.querySelector('language-choice')), 'choice of language').to.equal(false);
      expect(seen(exported), 'export').to.equal(false);
      expect(seen(letter), 'the opened letter').to.equal(true);
      expect(seen(app.querySelector('limb-report')), 'report').to.equal(true);
    } finally {
      app.remove();
    }
  });
});
