import { expect, fixture } from '@open-wc/testing';
import { html } from 'lit';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { emptyExamination, type Examination, setFields } from '../../../src/examination/index.js';
import { examined } from '../../tools/examinations.js';
import { setViewport } from '../../tools/real-input.js';
import { site } from '../tools/map.js';
import { painted, readableText } from '../tools/perceive.js';

interface LayoutShift extends PerformanceEntry {
  readonly value: number;
}

/**
 * What a map painted on a page with text below it moves from then on, until all that it fetches later is there: the sum of layout shifts,
 * which Chromium alone tells, and how far the text and a site went, in px.
 */
async function shiftsOf(
  examination: Examination,
  width: number,
): Promise<{ sum: number; far: readonly number[]; map: PulseMap }> {
  await setViewport({ width: width + 40, height: 1400 });
  const page = await fixture(
    html`<div style="width:${width}px">
      <pulse-map .value=${examination}></pulse-map>
      <p>Below</p>
    </div>`,
  );
  const map = page.querySelector('pulse-map') as PulseMap;
  await map.updateComplete;
  await painted();
  const tops = (): readonly number[] =>
    [page.querySelector('p') as HTMLElement, site(map, 'right femoral')].map(
      (element) => element.getBoundingClientRect().top,
    );
  const first = tops();
  const from = performance.now();
  let sum = 0;
  const observer = new PerformanceObserver((list) => {
    for (const shift of list.getEntries() as LayoutShift[]) if (shift.startTime > from) sum += shift.value;
  });
  observer.observe({ type: 'layout-shift', buffered: true });
  await customElements.whenDefined('limb-flags');
  await import('../../../src/elements/pulse-map/later.js');
  for (let i = 0; i < 4; i++) await painted();
  observer.disconnect();
  return { sum, far: tops().map((top, i) => top - first[i]!), map };
}

describe('a map, once painted,', () => {
  // The first of these finds nothing fetched yet.
  for (const width of [1240, 900, 360]) {
    it(`has its red flags from the beginning and does not move, ${width} px wide`, async () => {
      const sick = setFields(examined({ 'left femoral': 'normal', 'left popliteal': 'absent' }), {
        onset: 'acute',
      });
      const { sum, far, map } = await shiftsOf(sick, width);
      expect(readableText(map)).to.include('Possible acute limb ischaemia (ALI)');
      expect(sum).to.equal(0);
      expect(far).to.deep.equal([0, 0]);
    });
  }

  it('stands still while the tools of later come in', async () => {
    const { sum, far } = await shiftsOf(emptyExamination(), 900);
    expect(sum).to.equal(0);
    expect(far).to.deep.equal([0, 0]);
  });
});
