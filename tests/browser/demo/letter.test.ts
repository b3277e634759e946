import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map';
import type { LimbExamination } from 'pulse-map';
import { PLACES } from 'pulse-map/core';
import { sitesTable } from 'pulse-map/letter';
import { visitLetter } from '../../../demo/clinic/letter.js';
import { chronic } from '../../../stories/limb-records.js';
import { click, setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { byRole } from '../tools/perceive.js';

before(() => setViewport({ width: 1000, height: 900 }));

/** Takes what is copied in place of the clipboard, which the browser keeps from pages in the background. */
async function copiedBy(act: () => Promise<void>): Promise<string> {
  const taken: ClipboardItems[] = [];
  const { clipboard } = navigator;
  const write = clipboard.write.bind(clipboard);
  clipboard.write = (items) => Promise.resolve(void taken.push(items as ClipboardItems));
  try {
    await act();
  } finally {
    clipboard.write = write;
  }
  return (await taken[0]![0]!.getType('text/plain')).text();
}

describe('from the last finding to a letter', () => {
  it('takes three acts in the whole examination: the summary, the letter, the copy', async () => {
    const control = await fixture<LimbExamination>(
      html`<limb-examination subject="Xenia Example"></limb-examination>`,
    );
    control.examination = chronic;
    await drawn(control);
    let acts = 0;
    const act = async (name: RegExp, within: Element = control): Promise<void> => {
      acts++;
      await click(byRole(within, 'button', name));
      await drawn(control);
    };
    const letter = await copiedBy(async () => {
      await act(/^Summary\b/, control.renderRoot.querySelector('#part-summary')!);
      await act(/^Letter$/);
      await act(/^Copy text$/);
    });
    expect(acts).to.be.at.most(3);
    expect(letter).to.contain('Dear colleague,');
    expect(letter).to.contain('Xenia Example was examined');
    expect(letter).to.match(/^Red flag/);
  });

  it('stands with a saved visit too, in two', async () => {
    const page = await fixture<HTMLElement>(
      html`<main>${visitLetter(chronic, 'Xenia Example', '2026-10-06')}</main>`,
    );
    const letter = await copiedBy(async () => {
      await click(page.querySelector('summary')!);
      await page.querySelector('limb-letter')!.updateComplete;
      await click(byRole(page, 'button', /^Copy text$/));
    });
    expect(letter).to.contain('Xenia Example was examined');
  });

  it('saves the table of sites as a file that a spreadsheet opens', async () => {
    const page = await fixture<HTMLElement>(
      html`<main>${visitLetter(chronic, 'Xenia Example', '2026-10-06')}</main>`,
    );
    await click(page.querySelector('summary')!);
    const files: Blob[] = [];
    const names: string[] = [];
    const { createObjectURL } = URL;
    URL.createObjectURL = (file) => createObjectURL.call(URL, (files.push(file as Blob), file));
    // A download would leave the page under test.
    const keep = (event: Event): void => {
      event.preventDefault();
      names.push((event.target as HTMLAnchorElement).download);
    };
    const { click: follow } = HTMLAnchorElement.prototype;
    HTMLAnchorElement.prototype.click = function (this: HTMLAnchorElement) {
      this.addEventListener('click', keep, { once: true });
      follow.call(this);
    };
    try {
      await click(byRole(page, 'button', /^Save the table of sites/));
    } finally {
      HTMLAnchorElement.prototype.click = follow;
      URL.createObjectURL = createObjectURL;
    }
    expect(names).to.deep.equal(['sites-2026-10-06.csv']);
    expect(files[0]!.type).to.equal('text/csv');
    const bytes = new Uint8Array(await files[0]!.arrayBuffer());
    expect([...bytes.slice(0, 3)]).to.deep.equal([0xef, 0xbb, 0xbf]);
    const table = new TextDecoder().decode(bytes);
    expect(table).to.equal(sitesTable(chronic, { format: 'csv' }));
    const rows = table.trimEnd().split('\r\n');
    expect(rows.length).to.equal(1 + PLACES.length);
    expect(rows[0]).to.match(/^Site,Side,/);
  });
});
