import { expect, fixture, html } from '@open-wc/testing';
import { BEDSIDE_TEST_IDS } from '../../../src/bedside/index.js';
import 'pulse-map/elements/limb-pressures/define';
import type { BedsideTestId } from 'pulse-map/core/tables';
import { openTest } from '../tools/bedside.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';

/** Whether `first` comes before `then` in the order of reading. */
const before = (first: Element, then: Element): boolean =>
  Boolean(first.compareDocumentPosition(then) & Node.DOCUMENT_POSITION_FOLLOWING);

/** What must be told before the test starts; usual contraindications, common practice, no source. */
const MUST: Readonly<Record<BedsideTestId, RegExp>> = {
  elevation: /rest pain.*hip or back/i,
  'colour-return': /dizziness/i,
  'dependent-rubor': /venous skin/i,
  'venous-filling': /incompetent veins/i,
  'hand-arch': /arterial line.*does not clear a hand/i,
  'cold-provocation': /ulcers, gangrene.*cold agglutinins, cryoglobulinaemia.*angina/i,
  scalene: /unstable neck.*stroke or transient/i,
  hyperabduction: /unstable shoulder/i,
  costoclavicular: /fracture/i,
  'arm-stress': /acute limb ischaemia/i,
};

describe('cautions', () => {
  for (const id of BEDSIDE_TEST_IDS) {
    it(`are read before anything of ${id} can be started, without opening a fold`, async () => {
      const control = await openTest(id);
      const note = byRole(control, 'note');
      expect(readableText(note)).to.match(MUST[id]);
      expect(note.closest('details')).to.equal(null);
      expect(note.getBoundingClientRect().height).to.be.above(0);
      const acts = allByRole(control, 'button', /start|Pink|red|Ready|Pale|up/i);
      expect(acts.length).to.be.above(0);
      for (const act of acts) expect(before(note, act)).to.equal(true);
    });
  }

  it('of cuffs are read before the first pressure can be typed', async () => {
    const control = await fixture<HTMLElement>(html`<limb-pressures></limb-pressures>`);
    const note = byRole(control, 'note');
    expect(readableText(note)).to.match(
      /fistula.*lymphoedema.*deep vein thrombosis.*bypass or stent.*ulcer/i,
    );
    expect(readableText(note)).to.match(/heels supported.*40%.*8 to 10 MHz/i);
    const first = control.shadowRoot?.querySelector('input');
    expect(first && before(note, first)).to.equal(true);
  });
});
