import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import { setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { settled } from '../tools/map.js';
import { figureOf } from '../tools/skin.js';
import { threatened } from '../../../stories/limb-records.js';

/** The topmost line of text below a node that is drawn. */
function firstLine(node: Node): number {
  if (node instanceof Text) {
    const range = document.createRange();
    range.selectNodeContents(node);
    const box = range.getBoundingClientRect();
    return node.data.trim() && box.width > 2 ? box.top : Infinity;
  }
  if (node instanceof HTMLStyleElement) return Infinity;
  const below = node instanceof Element ? (node.shadowRoot ?? node) : node;
  return Math.min(Infinity, ...[...below.childNodes].map(firstLine));
}

describe('a part of the examination', () => {
  it('keeps its first line clear of the frame of its heading', async () => {
    const control = await fixture<LimbExamination>(html`<limb-examination lang="en"></limb-examination>`);
    for (const part of ['history', 'inspection', 'bedside', 'pressures', 'staging', 'summary'] as const) {
      await control.openPart(part);
      await drawn(control);
      const section = control.renderRoot.querySelector(`#part-${part}`)!;
      const heading = section.querySelector('.heading')!.getBoundingClientRect();
      const first = firstLine(section.querySelector('.body')!);
      expect(first, `${part} has a line`).to.be.finite;
      expect(first - heading.bottom, part).to.be.at.least(6);
    }
  });
});

describe('the map within the examination', () => {
  after(async () => {
    window.scrollTo({ top: 0, behavior: 'instant' });
    await setViewport({ width: 1000, height: 900 });
  });

  for (const [width, height] of [
    [1440, 900],
    [1366, 768],
    [1280, 720],
  ] as const)
    it(`shows tools and whole figure under the row of sections of a window of ${width} by ${height} px`, async () => {
      await setViewport({ width, height });
      const page = await fixture<HTMLElement>(
        html`<main lang="en"><limb-examination .value=${threatened}></limb-examination></main>`,
      );
      const control = page.querySelector('limb-examination') as LimbExamination;
      await control.openPart('pulses');
      await drawn(control);
      const map = control.renderRoot.querySelector('pulse-map')!;
      await settled(map);
      // Scrolled, the figure leaves its tools and stays in sight beside the reading.
      window.scrollTo({ top: 0, behavior: 'instant' });
      const top = map.shadowRoot!.querySelector('.toolbar')!.getBoundingClientRect().top;
      const bar = control.renderRoot.querySelector('.head .tools')!.getBoundingClientRect().height;
      expect(figureOf(map).getBoundingClientRect().bottom - top).to.be.at.most(height - bar);
    });
});
