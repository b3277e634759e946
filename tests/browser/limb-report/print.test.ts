import { expect, fixture, html } from '@open-wc/testing';
import type { TemplateResult } from 'lit';
import 'pulse-map';
import 'pulse-map/locale/de';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { LimbReport } from 'pulse-map/elements/limb-report';
import { type Examination, messagesFor, partMessagesFor, setFields } from 'pulse-map/core';
import { PULSE_PLACES, siteDefinition } from '../../../src/anatomy/index.js';
import { pulseAt, setPulse } from '../../../src/examination/index.js';
import { reportOf } from '../../../src/report/index.js';
import { chronic, threatened } from '../../../stories/limb-records.js';
import { emulate, type PrintedPage, printedPages } from '../../tools/real-input.js';
import { PAPER } from '../tools/paper.js';
import { reportSheet } from '../../../src/elements/limb-report/sheet-reader.js';

/** Every pulse felt, one leg without blood since six hours: an ordinary case with much in it. */
const ordinary: Examination = setFields(
  PULSE_PLACES.filter((place) => !pulseAt(threatened, place)).reduce(
    (record, place) => setPulse(record, place, { grade: 'normal' }),
    threatened,
  ),
  { examinedAt: '2026-11-02T21:14+01:00', examiner: 'L. Brandt' },
);

/** Lines break anywhere, so that texts are compared without spaces. */
const solid = (text: string): string => text.replace(/\s+/g, '');
const says = ({ text }: PrintedPage, words: string): boolean => solid(text).includes(solid(words));

/** Puts it on a page that asks for A4, and waits until it is drawn. */
async function onPaper(content: TemplateResult, tag: string): Promise<void> {
  const page = await fixture(html`<div>${PAPER}${content}</div>`);
  await reportSheet.load();
  await page.querySelector<LimbReport>(tag)!.updateComplete;
}

function expectWhole(pages: readonly PrintedPage[], record: Examination, language = 'en'): void {
  const [first] = pages as [PrintedPage];
  const all = pages.map(({ text }) => text).join(' ');
  const report = reportOf(record);
  const { anatomy, localisation } = messagesFor(language);
  const { report: words, flags } = partMessagesFor(language);
  const [flag] = report.triage.flags;
  if (flag)
    expect(says(first, flags.action(flag)), 'what the flag asks for, on the first page').to.equal(true);
  for (const { where } of report.conclusion.limbs)
    if (where) expect(says(first, localisation.headline(where)), 'the conclusion').to.equal(true);
  const missing = report.parts
    .flatMap(({ at, sites: told, normals }) =>
      [...told, ...normals.sites].map((group) => words.sites(at, group)),
    )
    .filter(
      ({ where, what }) =>
        !solid(all)
          .toLowerCase()
          .includes(solid(`${where}: ${what}`).toLowerCase()),
    );
  expect(missing, 'findings that are not on paper').to.deep.equal([]);
  const felt = PULSE_PLACES.filter((place) => pulseAt(record, place)?.grade);
  const unnamed = felt.filter(
    ({ site }) => !solid(all).toLowerCase().includes(solid(anatomy.sites[site]).toLowerCase()),
  );
  expect(unnamed.map(({ site }) => siteDefinition(site).region)).to.deep.equal([]);
}

function expectA4(pages: readonly PrintedPage[]): void {
  for (const { width, height } of pages) {
    expect(width).to.be.closeTo(210, 1);
    expect(height).to.be.closeTo(297, 1);
  }
}

describe('a report as PDF', () => {
  it('is one tagged page of A4 for an ordinary case, with every pulse, the flag and the conclusion', async () => {
    await onPaper(
      html`<limb-report lang="en" subject="Tobias Okafor" .examination=${ordinary}></limb-report>`,
      'limb-report',
    );
    const { tagged, pages } = await printedPages();
    expect(tagged).to.equal(true);
    expect(
      pages.slice(1).map(({ text }) => text),
      'beyond the first page',
    ).to.deep.equal([]);
    expectA4(pages);
    expectWhole(pages, ordinary);
    const [{ headings, text }] = pages as [PrintedPage];
    expect(headings[0]).to.equal('Tobias Okafor');
    for (const heading of ['Red flags', 'Conclusion', 'Findings', 'Stages', 'Not examined'])
      expect(headings, heading).to.include(heading);
    expect(text).to.contain('L. Brandt');
    expect(text).to.contain('not a diagnosis');
  });

  it('is one page in German, too, whose words are longer', async () => {
    await onPaper(
      html`<limb-report lang="de" subject="Tobias Okafor" .examination=${ordinary}></limb-report>`,
      'limb-report',
    );
    const { pages } = await printedPages();
    expect(pages).to.have.length(1);
    expectA4(pages);
    expectWhole(pages, ordinary, 'de');
  });

  it('is set in 9 pt for readers over fifty, and in no less than 7.8 pt anywhere', async () => {
    await onPaper(html`<limb-report lang="en" .examination=${ordinary}></limb-report>`, 'limb-report');
    await emulate({ media: 'print' });
    try {
      const { shadowRoot } = document.querySelector<LimbReport>('limb-report')!;
      const pt = (one: Element): number => (parseFloat(getComputedStyle(one).fontSize) * 72) / 96;
      expect(pt(shadowRoot!.querySelector('.report')!)).to.be.at.least(9);
      const texts = [...shadowRoot!.querySelectorAll('.report *:not(svg, svg *)')].filter((one) =>
        [...one.childNodes].some((node) => node instanceof Text && node.data.trim()),
      );
      const small = texts.filter((one) => pt(one) < 7.79).map((one) => one.textContent);
      expect(small).to.deep.equal([]);
    } finally {
      await emulate({});
    }
  });

  it('goes on to further pages for a long case, and leaves no heading alone at the foot of one', async () => {
    await onPaper(html`<limb-report lang="en" .examination=${chronic}></limb-report>`, 'limb-report');
    const { pages } = await printedPages();
    expect(pages.length).to.be.within(2, 3);
    expectA4(pages);
    expectWhole(pages, chronic);
    const [first, ...rest] = pages as [PrintedPage];
    expect(says(first, 'Red flags')).to.equal(true);
    for (const page of rest) expect(says(page, 'Red flags')).to.equal(false);
    for (const { text, headings } of pages.slice(0, -1))
      for (const heading of headings) expect(text.endsWith(heading), heading).to.equal(false);
  });

  it('is what the whole examination prints, and nothing of its form', async () => {
    await onPaper(
      html`<limb-examination lang="en" subject="Tobias Okafor" .value=${ordinary}></limb-examination>`,
      'limb-examination',
    );
    const control = document.querySelector<LimbExamination>('limb-examination')!;
    expect(control.shadowRoot!.querySelector('limb-report'), 'no report before the print').to.equal(null);
    const { pages } = await printedPages();
    expect(
      pages.slice(1).map(({ text }) => text),
      'beyond the first page',
    ).to.deep.equal([]);
    expectWhole(pages, ordinary);
    expect(says(pages[0]!, 'Undo')).to.equal(false);
    expect(says(pages[0]!, 'entries')).to.equal(false);
    await control.updateComplete;
    expect(control.shadowRoot!.querySelector('limb-report'), 'none after it').to.equal(null);
  });
});
