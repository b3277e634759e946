import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-observations/define';
import 'pulse-map/locale/de';
import {
  type ChartChangeEvent,
  emptyChart,
  type LimbObservations,
  type ObservationChart,
} from 'pulse-map/elements/limb-observations';
import { clock } from '../../../src/elements/common/clock.js';
import { messagesFor } from '../../../src/locale/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import { click, focused, press, setViewport } from '../../tools/real-input.js';
import { boxOf, overlaps, within } from '../tools/boxes.js';
import { until } from '../tools/until.js';

const { now } = clock;
let time = Date.UTC(2026, 9, 28, 13, 0);
const LEFT_LEG = { kind: 'leg', side: 'left' } as const;

const root = (element: LimbObservations) => element.shadowRoot!;
const text = (element: LimbObservations, selector: string) =>
  root(element).querySelector(selector)?.textContent.replace(/\s+/g, ' ').trim() ?? '';
const flags = (element: LimbObservations) =>
  root(element).querySelector('limb-flags')!.shadowRoot!.textContent;
const field = (element: LimbObservations, label: RegExp) =>
  [...root(element).querySelectorAll('label')]
    .find((one) => label.test(one.textContent))!
    .querySelector<HTMLElement>('select, input')!;
const button = (element: LimbObservations, name: string) =>
  [...root(element).querySelectorAll('button')].find((one) => one.textContent.trim() === name)!;
const choose = (element: LimbObservations, label: RegExp, value: string): void => {
  const select = field(element, label) as HTMLSelectElement;
  select.value = value;
  select.dispatchEvent(new Event('change', { bubbles: true }));
};
const show = (chart: ObservationChart | string = emptyChart(LEFT_LEG), lang = 'en') =>
  fixture<LimbObservations>(html`<limb-observations lang=${lang} .chart=${chart}></limb-observations>`);

before(async () => {
  await setViewport({ width: 1000, height: 900 });
  clock.now = () => time;
});
after(() => {
  clock.now = now;
});
beforeEach(() => {
  time = Date.UTC(2026, 9, 28, 13, 0);
});

describe('<limb-observations>', () => {
  it('takes a round in a few acts, tells the page, and says when the next one is due', async () => {
    const element = await show();
    expect(text(element, '.due')).to.contain('No round recorded yet');
    const told: ObservationChart[] = [];
    element.addEventListener('chart-change', (event) => told.push((event as ChartChangeEvent).chart));
    choose(element, /Doppler/, 'triphasic');
    choose(element, /Colour/, 'normal');
    await element.updateComplete;
    await click(button(element, 'Record this round'));
    await until(() => told.length === 1, 'the round');
    expect(told[0]!.observations).to.deep.equal([
      { at: '2026-10-28T13:00:00.000Z', signal: 'triphasic', colour: 'normal' },
    ]);
    await element.updateComplete;
    expect(text(element, '.due')).to.match(/^Next round due at .*, in 60 min\.$/);
    expect(text(element, 'tbody tr')).to.contain('triphasic').and.to.contain('not examined');
    expect(flags(element).trim()).to.equal('');
    time += 75 * 60_000;
    element.requestUpdate();
    await element.updateComplete;
    expect(text(element, '.due')).to.match(/^Overdue: .* 15 min late\.$/);
    await expect(element).to.be.accessible();
  });

  it('raises the flag for a lost signal, keeps it while nobody heard it again, and takes a round back', async () => {
    const element = await show();
    choose(element, /Doppler/, 'absent');
    await element.updateComplete;
    await click(button(element, 'Record this round'));
    await until(() => /limb/i.test(flags(element)), 'the flag');
    time += 3_600_000;
    choose(element, /Colour/, 'normal');
    await element.updateComplete;
    await click(button(element, 'Record this round'));
    await until(() => root(element).querySelectorAll('tbody tr').length === 2, 'another round');
    expect(/limb/i.test(flags(element))).to.equal(true);
    await click(button(element, 'Undo'));
    await until(() => root(element).querySelectorAll('tbody tr').length === 1, 'one round less');
    await click(button(element, 'Undo'));
    // What is left is the sentence that speaks of its withdrawal.
    await until(
      () => root(element).querySelector('limb-flags')!.getBoundingClientRect().height < 5,
      'no flag',
    );
    expect(root(element).querySelectorAll('tbody tr').length).to.equal(0);
  });

  it('takes nothing of a round that was begun for one limb over to the chart of another', async () => {
    const element = await show();
    choose(element, /Doppler/, 'triphasic');
    await element.updateComplete;
    await click(button(element, 'Record this round'));
    await until(() => text(element, 'p[role=status]') !== '', 'word of the round');
    choose(element, /Doppler/, 'absent');
    const own = element.chart as ObservationChart;
    element.chart = JSON.stringify(own);
    await element.updateComplete;
    expect((field(element, /Doppler/) as HTMLSelectElement).value, 'the page hands the same back').to.equal(
      'absent',
    );
    expect(Boolean(button(element, 'Undo')), 'and it can still be taken back').to.equal(true);
    element.chart = emptyChart({ kind: 'arm', side: 'right' });
    await element.updateComplete;
    expect((field(element, /Doppler/) as HTMLSelectElement).value).to.equal('');
    expect(text(element, 'p[role=status]')).to.equal('');
    await click(button(element, 'Record this round'));
    await element.updateComplete;
    expect((element.chart as ObservationChart).observations).to.deep.equal([]);
  });

  it('works by keys alone, and records nothing where nothing is entered', async () => {
    const element = await show();
    field(element, /Pain/).focus();
    await press('Enter');
    await until(() => text(element, '[role=status]').includes('Nothing is entered'), 'word of it');
    await press('7', 'Enter');
    await until(() => root(element).querySelectorAll('tbody tr').length === 1, 'the round');
    expect(text(element, 'tbody tr')).to.match(/7$/);
    await until(() => focused()?.localName === 'select', 'the focus on the first field');
  });

  for (const lang of ['en', 'de'])
    for (const width of [320, 390, 820])
      it(`draws every field over the hours, gaps left open, a lost signal apart, at ${width} px, ${lang}`, async () => {
        await setViewport({ width, height: 900 });
        const hours = [0, 1, 2, 4, 9, 26].map((hour) =>
          new Date(Date.UTC(2026, 9, 28, 13 + hour)).toISOString(),
        );
        const chart: ObservationChart = {
          ...emptyChart(LEFT_LEG),
          observations: hours.map((at, i) => ({
            at,
            signal: i < 4 ? 'triphasic' : 'absent',
            ...(i !== 2 && { pain: 2 * i, sensation: i < 5 ? 'normal' : 'digits' }),
          })),
        };
        const element = await show(chart, lang);
        const rows = [...root(element).querySelectorAll('.course-row')];
        expect(rows.length, 'only what was looked at').to.equal(3);
        const signs = rows.map((row) =>
          ['.plain', '.worse', '.lost', '.step'].map((kind) => row.querySelectorAll(kind).length),
        );
        expect(signs).to.deep.equal([
          [4, 0, 2, 5],
          [4, 1, 0, 3],
          [5, 0, 0, 3],
        ]);
        const { table } = partMessagesFor(lang).chart;
        const said = rows.map((row) => row.querySelector('p')!.textContent.replace(/\s+/g, ' ').trim());
        expect(said[0]).to.equal(`${table.fields.signal}: ${messagesFor(lang).examination.dopplers.absent}`);
        const texts = [...root(element).querySelectorAll('.hours text')].map((text) =>
          boxOf(text, text.textContent),
        );
        expect(texts.length).to.be.above(1);
        expect(overlaps(texts)).to.deep.equal([]);
        const frame = boxOf(root(element).querySelector('figure')!, 'figure');
        for (const text of texts)
          expect(within(text, { ...frame, top: -1e5, bottom: 1e5 }), text.name).to.equal(true);
        expect(document.documentElement.scrollWidth).to.be.at.most(width);
        // What is drawn is told by the table for those who cannot see it.
        expect(root(element).querySelectorAll('tbody tr').length).to.equal(hours.length);
        await expect(element).to.be.accessible();
      });

  it('leaves a chart that it cannot read as it is, and speaks German', async () => {
    const element = await show('{"format":"pulse-map-chart/9"}');
    expect(text(element, '[role=status]')).to.contain('cannot read');
    const german = await show(emptyChart(LEFT_LEG, 30), 'de');
    expect(text(german, 'h2')).to.equal('Extremitätenkontrolle: linkes Bein');
    expect(root(german).textContent).to.contain('Alle 30 min');
  });
});
