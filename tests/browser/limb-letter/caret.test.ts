// What is under the pointer where a browser has no caretPositionFromPoint. Where a click puts the caret is every browser's own answer.
import { expect, fixture, html } from '@open-wc/testing';
import { wordUnder } from '../../../src/elements/limb-letter/caret.js';
import { click } from '../../tools/real-input.js';

const TEXT = `Right leg: femoral 2, normal; popliteal 0, absent. Occlusion between these is likely.

Left leg: everything normal. ${'A sentence that goes on over several lines. '.repeat(6)}`;

const BEGINNINGS = [...TEXT.matchAll(/\S+/g)].map(({ index }) => index);

async function field(): Promise<HTMLTextAreaElement> {
  const area = await fixture<HTMLTextAreaElement>(
    html`<textarea
      style="inline-size: 320px; block-size: 160px; padding: 12px; border: 3px solid; font: 16px/24px sans-serif; letter-spacing: 0.5px"
      .value=${TEXT}
    ></textarea>`,
  );
  area.scrollIntoView({ block: 'center', behavior: 'instant' });
  return area;
}

/** Clicks at points of every line, and tells where the caret is in another word than the one found. */
async function differing(area: HTMLTextAreaElement): Promise<string[]> {
  const found: string[] = [];
  for (let line = 0; line < 5; line++) {
    for (const across of [30, 120, 210]) {
      const { left, top } = area.getBoundingClientRect();
      const point = [left + across, top + 15 + 12 + line * 24] as const;
      const word = wordUnder(area, ...point) ?? -1;
      await click(point);
      const caret = area.selectionStart;
      // The caret stands between two letters, at most up to where the next word begins.
      const next = BEGINNINGS.find((at) => at > word) ?? TEXT.length;
      if (caret < word || caret > next) found.push(`line ${line} at ${across}: word ${word}, caret ${caret}`);
    }
  }
  return found;
}

describe('the word under a point of a text field', () => {
  it('is the one into which a click puts the caret', async () => {
    expect(await differing(await field())).to.deep.equal([]);
  });

  it('is so where the field is scrolled', async () => {
    const area = await field();
    area.scrollTop = 50;
    expect(area.scrollTop).to.equal(50);
    expect(await differing(area)).to.deep.equal([]);
  });

  it('is looked for without a trace', async () => {
    const area = await field();
    const around = area.parentElement as HTMLElement;
    const before = around.innerHTML;
    const { left, top } = area.getBoundingClientRect();
    expect(wordUnder(area, left + 30, top + 27 + 24)).to.be.above(0);
    expect(around.innerHTML).to.equal(before);
  });
});
