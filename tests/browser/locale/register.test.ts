import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import 'pulse-map/elements/limb-examination/define';
import 'pulse-map/elements/pulse-reading/define';
import type { PulseReading } from 'pulse-map/elements/pulse-reading';
import { readableText } from '../tools/perceive.js';

const record = {
  format: 'pulse-map/1',
  scale: '0-3',
  pulses: { femoral: { left: { grade: 'normal' } }, popliteal: { left: { grade: 'absent' } } },
};

describe('the register of an element', () => {
  async function read(markup: ReturnType<typeof html>): Promise<() => Promise<string>> {
    const box = await fixture<HTMLElement>(markup);
    const reading = box.querySelector('pulse-reading') as PulseReading;
    reading.examination = record as never;
    return async () => {
      await reading.updateComplete;
      return readableText(reading);
    };
  }

  it('is the trade’s, or that of the closest ancestor with one, or its own', async () => {
    const trade = await read(html`<div lang="en"><pulse-reading></pulse-reading></div>`);
    expect(await trade()).to.include('Occlusion between left femoral and left popliteal');
    const around = await read(html`<div lang="en" register="plain"><pulse-reading></pulse-reading></div>`);
    expect(await around()).to.include('Blockage between left groin and left hollow of the knee');
    const own = await read(
      html`<div lang="en" register="plain"><pulse-reading register="trade"></pulse-reading></div>`,
    );
    expect(await own()).to.include('Occlusion between left femoral');
  });
});
