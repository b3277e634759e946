// A reader who spaces text out (WCAG 2.2, success criterion 1.4.12, Text Spacing) loses none of it. Names on the figure are text of a
// picture, with lanes of fixed width, and keep theirs.
import { expect, fixture } from '@open-wc/testing';
import { html } from 'lit/static-html.js';
import type { LimbExamination, PulseMap } from 'pulse-map';
import 'pulse-map';
import 'pulse-map/locale/de';
import { formatExamination } from 'pulse-map/core';
import { PARTS } from '../../../src/elements/limb-examination/parts.js';
import { everything } from '../tools/perceive.js';
import { drawn } from '../tools/limbs.js';
import { setViewport } from '../../tools/real-input.js';
import { chronic } from '../../../stories/limb-records.js';

/** The spacing that the criterion names: https://www.w3.org/TR/WCAG22/#text-spacing (from memory). */
const SPACED = `:not(svg, svg *) { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }
  p { margin-block-end: 2em !important }`;

/** Spaces out every text of an element, in its shadow trees too. */
function space(root: HTMLElement): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(SPACED);
  const roots = [root, ...everything(root)].flatMap(({ shadowRoot }) => shadowRoot ?? []);
  for (const one of roots)
    if (!one.adoptedStyleSheets.includes(sheet)) one.adoptedStyleSheets = [...one.adoptedStyleSheets, sheet];
}

/** What holds more text than it shows, and cannot be scrolled; and whether the page must be scrolled sideways. */
function cut(root: HTMLElement): string[] {
  const found = everything(root).flatMap((element) => {
    if (!(element instanceof HTMLElement) || !element.checkVisibility() || !element.textContent?.trim())
      return [];
    const { overflowX, overflowY, clipPath, position, textOverflow, color } = getComputedStyle(element);
    // Drawn as an arrow alone, beside what it chose; Firefox says that its text is cut.
    if (element.localName === 'select' && color === 'rgba(0, 0, 0, 0)') return [];
    // The line of a flag is one line by design, cut or not; what it opens says all of it.
    if (textOverflow === 'ellipsis' && element.closest('[aria-expanded]')) return [];
    // For assistive technology alone.
    if (clipPath !== 'none' || (position === 'absolute' && element.clientWidth <= 1)) return [];
    const lost = (overflow: string, has: number, shows: number): boolean =>
      /hidden|clip/.test(overflow) && has > shows + 1;
    return lost(overflowX, element.scrollWidth, element.clientWidth) ||
      lost(overflowY, element.scrollHeight, element.clientHeight)
      ? [`${element.localName}.${element.className}: "${element.textContent.trim().slice(0, 60)}"`]
      : [];
  });
  if (root.scrollWidth > root.clientWidth + 1)
    found.push(`${root.localName}: ${root.scrollWidth} px of content in ${root.clientWidth} px`);
  return found;
}

describe('text that a reader spaces out', () => {
  for (const width of [390, 1280]) {
    for (const lang of ['en', 'de']) {
      it(`of the map, its chooser and its table is all there, ${width} px, ${lang}`, async () => {
        await setViewport({ width, height: 900 });
        const map = await fixture<PulseMap>(
          html`<pulse-map lang=${lang} value=${formatExamination(chronic)}></pulse-map>`,
        );
        await drawn(map);
        map.openPlace('left popliteal');
        await drawn(map);
        space(map);
        await drawn(map);
        expect(cut(map)).to.deep.equal([]);
        map.display = 'table';
        await drawn(map);
        space(map);
        expect(cut(map)).to.deep.equal([]);
      });

      it(`of the whole examination is all there, ${width} px, ${lang}`, async () => {
        await setViewport({ width, height: 900 });
        const whole = await fixture<LimbExamination>(
          html`<limb-examination lang=${lang} value=${formatExamination(chronic)}></limb-examination>`,
        );
        for (const part of PARTS) await whole.openPart(part);
        await drawn(whole);
        space(whole);
        await drawn(whole);
        expect(cut(whole)).to.deep.equal([]);
      });
    }
  }

  it('would be told where it is cut', async () => {
    const box = await fixture<HTMLElement>(
      html`<div>
        <p style="overflow: hidden; white-space: nowrap; inline-size: 5em">Left popliteal artery</p>
      </div>`,
    );
    expect(cut(box)).to.have.length(1);
  });
});
