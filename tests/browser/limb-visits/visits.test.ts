import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-visits/define';
import 'pulse-map/locale/de';
import type {
  CompareChangeEvent,
  LimbVisits,
  PatientVisit,
  VisitOpenEvent,
} from 'pulse-map/elements/limb-visits';
import { amend, emptyExamination, type Examination, setPulse } from 'pulse-map/core/tables';
import { atFullSize, click, consoleOf, focused, press, setViewport } from '../../tools/real-input.js';
import { until } from '../tools/until.js';

const grades = ['normal', 'reduced', 'absent'] as const;
const record = (at: number, more: Partial<Examination> = {}): Examination => ({
  ...setPulse(emptyExamination(), { site: 'popliteal', side: 'left' }, { grade: grades[at % 3]! }),
  pressures: { brachial: { right: 140 }, 'posterior-tibial': { left: 126 - 4 * (at % 9), right: 140 } },
  ...more,
});
const day = (at: number): string => new Date(Date.UTC(2000, 0, 1 + at)).toISOString().slice(0, 10);
const series = (count: number): PatientVisit[] =>
  Array.from({ length: count }, (_, at) => ({
    id: `v${at}`,
    at: day(at),
    examination: record(at),
    note: 'Review',
  }));

const root = (element: LimbVisits): ShadowRoot => element.shadowRoot!;
const all = <E extends Element>(element: LimbVisits, selector: string): E[] => [
  ...root(element).querySelectorAll<E>(selector),
];
const tidy = (node: Element | null | undefined) =>
  node?.textContent
    ?.replace(/\s+/g, ' ')
    .replace(/ (?=:)/g, '')
    .trim() ?? '';
const opens = (element: LimbVisits) => all<HTMLButtonElement>(element, '[data-at] .open');
const named = (element: LimbVisits, name: RegExp) => {
  const found = all<HTMLElement>(element, 'button').filter((one) => name.test(tidy(one)));
  if (found.length !== 1) throw new Error(`${found.length} buttons ${String(name)}`);
  return found[0]!;
};
const slider = (element: LimbVisits) => root(element).querySelector<HTMLElement>('[role=slider]')!;
const read = (element: LimbVisits) => slider(element).getAttribute('aria-valuetext')!;
const changes = (element: LimbVisits) =>
  root(element).querySelector('limb-changes')?.shadowRoot?.textContent ?? '';

async function show(visits: readonly PatientVisit[], lang = 'en'): Promise<LimbVisits> {
  const element = await fixture<LimbVisits>(html`<limb-visits lang=${lang} .visits=${visits}></limb-visits>`);
  if (visits.length)
    await until(
      () =>
        all(element, '.picture svg').length > 0 ||
        visits.every(({ examination }) => typeof examination === 'string'),
      'the maps',
    );
  return element;
}

/** Until everything was read and drawn. */
const settled = (element: LimbVisits) =>
  until(() => slider(element) && !/ read so far/.test(root(element).textContent), 'the lines');

before(() => setViewport({ width: 1200, height: 900 }));

describe('<limb-visits>', () => {
  it('tells a page of a view that the small maps do not have, and shows the legs', async () => {
    const element = await show(series(2));
    await settled(element);
    for (const view of ['auto', 'left-sole', 'legs left']) {
      const said = await consoleOf(async () => {
        element.setAttribute('view', view);
        await settled(element);
      });
      expect(said.join()).to.match(
        new RegExp(`^limb-visits: found view="?${view}"?, expected whole, arms, legs`),
      );
      expect(element.view).to.equal('legs');
    }
    expect(opens(element).length).to.equal(2);
  });

  it('says that there is none, and that one has nothing to be compared with', async () => {
    const none = await show([]);
    expect(root(none).textContent).to.contain('No visit has been recorded yet.');
    const one = await show(series(1));
    await settled(one);
    expect(root(one).textContent).to.contain('nothing to compare');
    expect(opens(one).length).to.equal(1);
    expect(all(one, '.pick').length).to.equal(0);
    await click(named(one, /^\s*Table/));
    await one.updateComplete;
    expect(opens(one).length).to.equal(1);
    expect(all(one, '.pick').length).to.equal(0);
  });

  it('shows every visit with what changed since the one before, and compares the last two', async () => {
    const element = await show(series(4));
    await settled(element);
    expect(opens(element).map(tidy)).to.deep.equal(
      [1, 2, 3, 4].map((date) => `Open the visit of ${date} Jan 2000Review`),
    );
    await until(() => changes(element).includes('Changes since 3 January 2000'), 'the changes');
    expect(changes(element)).to.contain('Left popliteal pulse: normal; before: absent.');
    const cards = all(element, '[data-at]');
    expect(cards[0]!.textContent).to.contain('First visit');
    expect(cards[2]!.textContent.replace(/\s+/g, ' ')).to.contain(
      '1 site changed: Left popliteal (changed).',
    );
    expect(cards[2]!.querySelectorAll('.rings .matters').length).to.equal(1);
    expect(cards[1]!.querySelectorAll('.rings .chance').length).to.equal(1);
    expect(element.shadowRoot!.querySelectorAll('.plots figure').length).to.equal(2);
    await expect(element).to.be.accessible();
  });

  it('says the red flag of a visit whole, and begins every map at one height all the same', async () => {
    const flag = 'Now: Acute limb ischaemia likely, limb may be threatened (Rutherford IIa to III): left leg';
    for (const width of [390, 1200]) {
      await setViewport({ width, height: 900 });
      const element = await show(series(2).map((one, at) => (at === 1 ? { ...one, flag } : one)));
      await settled(element);
      const said = all<HTMLElement>(element, '.flag span')[0]!;
      expect(said.textContent).to.equal(flag);
      expect(said.scrollWidth).to.be.at.most(said.clientWidth + 1);
      const { bottom } = said.getBoundingClientRect();
      const tops = all(element, '.picture').map((one) => Math.round(one.getBoundingClientRect().top));
      expect(new Set(tops).size).to.equal(1);
      expect(bottom).to.be.at.most(tops[0]! + 1);
    }
    await setViewport({ width: 1200, height: 900 });
  });

  it('compares the two that a person chooses, and tells the page', async () => {
    const element = await show(series(4));
    await settled(element);
    const told: (readonly string[])[] = [];
    element.addEventListener('compare-change', (event) => told.push((event as CompareChangeEvent).ids));
    await click(named(element, /Compare: 1 Jan/));
    await element.updateComplete;
    expect(told).to.deep.equal([['v0', 'v3']]);
    await until(() => changes(element).includes('before: 0.90'), 'the changes');
    expect(changes(element))
      .to.contain('Changes since 1 January 2000')
      .and.to.contain('left: 0.81; before: 0.90');
    await click(named(element, /Compare: 3 Jan/));
    expect(told.at(-1)).to.deep.equal(['v0', 'v2']);
    expect(named(element, /Compare: 1 Jan.*A, the earlier/).getAttribute('aria-pressed')).to.equal('true');
    await until(
      () => changes(element).includes('Left popliteal pulse: absent; before: normal.'),
      'the other changes',
    );
    await click(named(element, /Compare: 1 Jan/));
    await element.updateComplete;
    expect(root(element).textContent).to.contain('Choose two visits');
  });

  it('tells the page which visit is opened', async () => {
    const element = await show(series(3));
    const opened: string[] = [];
    element.addEventListener('visit-open', (event) => opened.push((event as VisitOpenEvent).visit.id));
    await click(named(element, /^Open the visit of 2 Jan/));
    await click(all(element, '.picture')[2]!);
    expect(opened).to.deep.equal(['v1', 'v2']);
  });

  it('is walked by keys alone, in the strip and in the plots, with one stop of Tab each', async () => {
    const element = await show(series(40));
    await settled(element);
    expect(all(element, 'li [tabindex="0"]').length).to.equal(2);
    opens(element).at(-1)!.focus();
    const at = () => tidy(focused());
    await press('ArrowLeft');
    await until(() => at().includes('8 Feb 2000'), 'the visit before');
    await press('Home');
    await until(() => at().includes('1 Jan 2000'), 'the first visit');
    expect(focused()!.getBoundingClientRect().left).to.be.at.least(element.getBoundingClientRect().left - 1);
    await press('PageDown');
    await until(() => !at().includes(' 1 Jan 2000'), 'a page on');
    await press('End');
    await until(() => at().includes('9 Feb 2000'), 'the last visit');
    await press('ArrowRight');
    expect(at()).to.contain('9 Feb 2000');
    slider(element).focus();
    expect(read(element)).to.equal(
      '9 Feb 2000. Ankle-brachial pressure index: right 1.00; left 0.81. Ankle pressure: right 140 mmHg; left 114 mmHg.',
    );
    await press('ArrowLeft');
    await until(() => read(element).startsWith('8 Feb 2000.'), 'the reader one visit back');
    expect(focused()).to.equal(slider(element));
  });

  it('reads the visit under the pointer', async () => {
    const element = await show(series(12));
    await settled(element);
    const svg = root(element).querySelector('.plots figure svg')!;
    svg.scrollIntoView({ block: 'center' });
    const { left, top } = svg.getBoundingClientRect();
    await click([left + 50, top + 60]);
    await until(() => read(element).startsWith('1 Jan 2000.'), 'the first visit read');
  });

  it('joins nothing across a visit at which nothing was measured, and says so of it', async () => {
    const visits = series(5).map((visit, at) =>
      at === 2 ? { ...visit, examination: emptyExamination() } : visit,
    );
    const element = await show(visits);
    await settled(element);
    const paths = all(element, '.left .line').map((path) => path.getAttribute('d')!);
    expect(paths[0]!.match(/M/g)!.length).to.equal(2);
    slider(element).focus();
    await press('ArrowLeft', 'ArrowLeft');
    await until(() => read(element).startsWith('3 Jan'), 'the empty visit');
    expect(read(element)).to.contain('right not examined; left not examined');
  });

  it('strikes what was entered in error, and leaves it out of lines and comparison', async () => {
    const wrong = amend(record(2), { kind: 'entered-in-error', at: '2026-01-01T10:00Z', by: 'Dr X' });
    const visits = series(4).map((visit, at) => (at === 2 ? { ...visit, examination: wrong } : visit));
    const element = await show(visits);
    await settled(element);
    const card = all(element, '[data-at]')[2]!;
    expect(card.textContent).to.contain('Entered in error');
    expect(card.querySelector('s')?.textContent).to.equal('3 Jan 2000');
    expect(card.querySelector<HTMLButtonElement>('.pick')!.disabled).to.equal(true);
    expect(all(element, '.left .line')[0]!.getAttribute('d')!.match(/[ML]/g)!.length).to.equal(3);
    expect(all(element, '.pick[aria-pressed=true]').map(tidy)).to.deep.equal([
      'ACompare: 2 Jan 2000 (A, the earlier)',
      'BCompare: 4 Jan 2000 (B, the later)',
    ]);
  });

  it('says what it cannot read, and shows the rest', async () => {
    const element = await show([
      ...series(2),
      { id: 'x', at: '2001-01-01', examination: '{"format":"pulse-map/9"}' },
    ]);
    await settled(element);
    expect(all(element, '[data-at]')[2]!.textContent).to.contain('cannot read the record');
  });

  it('shows the same as a table, the latest first, with keys', async () => {
    const element = await show(series(30));
    await settled(element);
    await click(named(element, /^\s*Table/));
    await element.updateComplete;
    const table = root(element).querySelector('table')!;
    expect(table.getAttribute('aria-rowcount')).to.equal('31');
    const [first] = all(element, 'tbody tr[data-at]');
    expect(first!.textContent.replace(/\s+/g, ' ')).to.match(
      /30 Jan 2000 R 1\.00, L 0\.84.*R 140 mmHg, L 118 mmHg.*Left popliteal/,
    );
    first!.querySelector<HTMLElement>('.open')!.focus();
    await press('End');
    await until(() => tidy(focused()) === 'Open the visit of 1 Jan 2000', 'the first visit');
    await press('ArrowUp');
    await until(() => tidy(focused()) === 'Open the visit of 2 Jan 2000', 'the next one');
    await expect(element).to.be.accessible();
  });

  it('holds ten thousand visits with the nodes of a few dozen', async () => {
    const element = await fixture<LimbVisits>(html`<limb-visits .visits=${series(10_000)}></limb-visits>`);
    expect(opens(element).length).to.be.within(5, 20);
    const strip = root(element).querySelector('.strip')!;
    opens(element).at(-1)!.focus();
    await press('Home');
    await until(() => tidy(focused()).includes('1 Jan 2000'), 'the first of them');
    expect(Math.abs(strip.scrollLeft)).to.be.below(5);
    expect(opens(element).length).to.be.within(5, 20);
    element.remove();
  });

  it('cuts no card where the strip comes to rest, on a phone as on a desk', () =>
    atFullSize(async () => {
      for (const width of [296, 336, 366, 700, 1160]) {
        const holder = await fixture(
          html`<div style="inline-size: ${width}px"><limb-visits .visits=${series(12)}></limb-visits></div>`,
        );
        const element = holder.querySelector<LimbVisits>('limb-visits')!;
        await until(() => all(element, '.picture svg').length > 0, 'the maps');
        const strip = root(element).querySelector('.strip')!;
        const box = strip.getBoundingClientRect();
        const cards = () =>
          all(element, '[data-at]').map((card) => [card, card.getBoundingClientRect()] as const);
        const cut = () =>
          cards()
            .filter(([, { left, right }]) => right > box.left + 1 && left < box.right - 1)
            .filter(([, { left, right }]) => left < box.left - 1 || right > box.right + 1)
            .map(([card]) => tidy(card.querySelector('.open')));
        expect(cut(), `${width} px`).to.deep.equal([]);
        expect(cards().at(-1)![1].right, `the latest at ${width} px`).to.be.closeTo(box.right, 1);
        const before = strip.scrollLeft;
        strip.scrollBy({ left: -250, behavior: 'smooth' });
        await until(() => strip.scrollLeft < before - 100 && !cut().length, `whole cards at ${width} px`);
        holder.remove();
      }
    }));

  it('speaks German', async () => {
    const element = await show(series(3), 'de');
    await settled(element);
    expect(root(element).textContent).to.contain('3 Untersuchungen');
    expect(read(element)).to.contain('Knöchel-Arm-Index: rechts 1,00; links 0,84.');
  });
});
