import { expect, fixture, html } from '@open-wc/testing';
import type { SimulatedPatientPage } from '../../../stories/simulated-patient/page.js';
import '../../../stories/simulated-patient/page.js';
import { click, press } from '../../tools/real-input.js';

async function page() {
  const element = await fixture<SimulatedPatientPage>(
    html`<simulated-patient-page></simulated-patient-page>`,
  );
  const root = element.shadowRoot!;
  return {
    element,
    text: () => root.textContent.replace(/\s+/g, ' '),
    slider: root.querySelector<HTMLInputElement>('input[type=range]')!,
    button: (name: string) => root.querySelector<HTMLButtonElement>(`button[aria-label="${name}"]`)!,
    waves: () => [...root.querySelectorAll('path')].map((path) => path.getAttribute('d')),
  };
}

describe('the page of the simulated patient', () => {
  it('follows the slider: index, pulses, waves and sounds change at once', async () => {
    const { element, slider, text, waves, button } = await page();
    const before = waves();
    expect(text()).to.match(/Ankle-brachial pressure index \(ABPI\), right and left 1\.\d\d · 1\.\d\d/);
    expect(text()).to.include('right adductor canal: systolic');
    slider.focus();
    await press('End');
    await element.updateComplete;
    expect(text()).to.include('100 %');
    expect(text()).to.match(/Ankle-brachial pressure index \(ABPI\), right and left 0\.\d\d · 1\.\d\d/);
    expect(text()).to.match(/right posterior tibial ?absent/);
    expect(text()).to.match(/Bruits: none/);
    expect(waves()).to.have.length(before.length);
    expect(waves()).not.to.deep.equal(before);
    expect(button('Doppler, right radial').disabled).to.equal(false);
  });

  it('plays only when a button is pressed, and stops at a second press', async () => {
    const { element, button } = await page();
    expect(element.playing).to.equal('');
    await click(button('Doppler, right femoral'));
    await element.updateComplete;
    expect(button('Doppler, right femoral').getAttribute('aria-pressed')).to.equal('true');
    await click(button('Doppler, right femoral'));
    await element.updateComplete;
    expect(button('Doppler, right femoral').getAttribute('aria-pressed')).to.equal('false');
  });

  it('is accessible', async () => {
    const { element } = await page();
    await expect(element).to.be.accessible();
  });
});
