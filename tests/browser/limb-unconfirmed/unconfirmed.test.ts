import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map';
import 'pulse-map/elements/limb-unconfirmed/define';
import 'pulse-map/locale/de';
import type { LimbUnconfirmed } from 'pulse-map/elements/limb-unconfirmed';
import type { PulseMap } from 'pulse-map';
import { emptyExamination, type Examination, setPulse } from 'pulse-map/core';
import { click, focused, press, setViewport } from '../../tools/real-input.js';
import { until } from '../tools/until.js';

const earlier: Examination = {
  ...emptyExamination(),
  examinedAt: '2026-05-19T09:40:00Z',
  history: { risks: ['hypertension'] },
  pulses: {
    femoral: { right: { grade: 'normal' }, left: { grade: 'normal' } },
    popliteal: { right: { grade: 'normal' }, left: { grade: 'absent' } },
  },
  pressures: { brachial: { right: 120 } },
};

async function show(lang = 'en'): Promise<{ map: PulseMap; list: LimbUnconfirmed; form: HTMLFormElement }> {
  const form = await fixture<HTMLFormElement>(
    html`<form>
      <limb-unconfirmed lang=${lang} for="map" .earlier=${earlier}></limb-unconfirmed>
      <pulse-map id="map" name="map" lang=${lang}></pulse-map>
    </form>`,
  );
  const list = form.querySelector('limb-unconfirmed')!;
  await until(() => buttons(list).length > 0, 'the list');
  return { form, list, map: form.querySelector('pulse-map')! };
}
const tidy = (node: Element | null): string => node?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
const buttons = (list: LimbUnconfirmed) => [
  ...list.shadowRoot!.querySelectorAll<HTMLButtonElement>('button'),
];
const named = (list: LimbUnconfirmed, name: RegExp) => {
  const found = buttons(list).filter((one) => name.test(tidy(one)));
  if (found.length !== 1)
    throw new Error(`${found.length} buttons ${String(name)}: ${buttons(list).map(tidy).join(' | ')}`);
  return found[0]!;
};

before(() => setViewport({ width: 1000, height: 900 }));

describe('<limb-unconfirmed>', () => {
  it('makes no page wider than it is', async () => {
    const page = await fixture(
      html`<main style="padding-inline: 60px">
        <limb-unconfirmed for="map" .earlier=${earlier}></limb-unconfirmed>
        <pulse-map id="map"></pulse-map>
      </main>`,
    );
    await until(() => buttons(page.querySelector('limb-unconfirmed')!).length > 0, 'the list');
    const { scrollWidth, clientWidth } = document.documentElement;
    expect(scrollWidth).to.equal(clientWidth);
  });

  it('shows what was found before, and submits nothing of it', async () => {
    const { form, list } = await show();
    expect(tidy(list.shadowRoot!.querySelector('section'))).to.contain('5 findings not confirmed');
    expect(tidy(list.shadowRoot!.querySelector('section'))).to.contain('19 May 2026');
    expect(new FormData(form).get('map')).to.equal('');
    await expect(list).to.be.accessible();
  });

  it('takes one finding, or those of a limb at once, into the record, each as one step to undo', async () => {
    const { form, list, map } = await show();
    await click(named(list, /^Found again: ?Left popliteal/));
    await until(() => map.value.includes('popliteal'), 'the finding');
    expect(map.examination.pulses).to.deep.equal({ popliteal: { left: { grade: 'absent' } } });
    expect(String(new FormData(form).get('map'))).to.contain('popliteal');
    await click(named(list, /^All 2 found again: ?right leg/));
    await until(() => map.examination.pulses?.femoral !== undefined, 'the limb');
    expect(map.examination.pulses).to.deep.equal({
      femoral: { right: { grade: 'normal' } },
      popliteal: { right: { grade: 'normal' }, left: { grade: 'absent' } },
    });
    expect(map.examination.pressures).to.equal(undefined);
    expect(tidy(list.shadowRoot!.querySelector('[role=status]'))).to.equal('2 findings confirmed.');
    await click(named(list, /^Undo/));
    await until(() => map.examination.pulses?.femoral === undefined, 'the step back');
    map.undo();
    await until(() => map.value === '', 'the other step back');
    await list.updateComplete;
    expect(buttons(list).filter((one) => tidy(one).startsWith('Found again')).length).to.equal(5);
  });

  it('lets go of what is recorded anew in any other way', async () => {
    const { list, map } = await show();
    map.examination = setPulse(emptyExamination(), { site: 'popliteal', side: 'left' }, { grade: 'reduced' });
    await until(() => tidy(list.shadowRoot!.querySelector('section')).includes('4 findings'), 'one less');
    expect(map.examination.pulses?.popliteal?.left).to.deep.equal({ grade: 'reduced' });
  });

  it('works by keys, with the focus going on to the next finding', async () => {
    const { list, map } = await show();
    buttons(list)[0]!.focus();
    for (let left = 5; left > 0; left--) {
      expect(tidy(focused()!)).to.match(/found again/i);
      await press('Enter');
      await until(
        () => buttons(list).filter((one) => tidy(one).startsWith('Found again')).length < left,
        'one less',
      );
      if (!buttons(list).some((one) => tidy(one).startsWith('Found again'))) break;
    }
    expect(map.examination.history?.risks).to.deep.equal(['hypertension']);
    expect(tidy(list.shadowRoot!.querySelector('section'))).to.contain('is confirmed or recorded anew');
  });

  it('speaks German', async () => {
    const { list } = await show('de');
    expect(tidy(list.shadowRoot!.querySelector('section'))).to.contain('5 Befunde nicht bestätigt');
  });
});
