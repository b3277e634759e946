// Who speaks to the page says what they see: "click Save draft". So the name of every control holds the words written on it
// (WCAG 2.2, success criterion 2.5.3, Label in Name).
import { expect, fixture } from '@open-wc/testing';
import { html } from 'lit';
import type { LimbExamination, PulseMap } from 'pulse-map';
import 'pulse-map';
import 'pulse-map/locale/de';
import { formatExamination } from 'pulse-map/core';
import { ALL_SAMPLES } from '../../languages/index.js';
import { everything } from '../tools/perceive.js';
import { drawn } from '../tools/limbs.js';
import { chronic } from '../../../stories/limb-records.js';

const CONTROLS =
  'button, summary, a[href], input, select, textarea, [role=button], [role=radio], [role=checkbox], [role=tab], [role=switch], [role=option]';

/** Letters and digits alone: signs, glyphs and spaces are not spoken. */
const spoken = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** The words seen on a control, or on the label around or for it. */
function seenOn(control: HTMLElement): string {
  if (!/^(input|select|textarea)$/.test(control.localName)) return control.innerText ?? '';
  return [...((control as HTMLInputElement).labels ?? [])]
    .flatMap((label) => [...label.childNodes])
    .filter((node) => !(node instanceof Element) || !node.matches('input, select, textarea'))
    .map((node) => (node instanceof HTMLElement ? node.innerText : (node.textContent ?? '')))
    .join(' ');
}

/** Controls whose given name leaves out what is written on them; only a name of its own can. */
const misnamed = (root: Element): string[] => [
  ...new Set(
    everything(root)
      .filter(
        (element): element is HTMLElement => element instanceof HTMLElement && element.matches(CONTROLS),
      )
      .filter((control) => control.checkVisibility() && control.hasAttribute('aria-label'))
      .flatMap((control) => {
        const [name, seen] = [control.getAttribute('aria-label') ?? '', seenOn(control)];
        return spoken(name).includes(spoken(seen))
          ? []
          : [`"${seen.replace(/\s+/g, ' ')}" is named "${name}"`];
      }),
  ),
];

describe('voice control', () => {
  for (const { tag } of ALL_SAMPLES) {
    it(`finds every control of the whole examination by what is written on it, in ${tag}`, async function () {
      this.timeout(120_000);
      const whole = await fixture<LimbExamination>(
        html`<limb-examination lang=${tag} value=${formatExamination(chronic)}></limb-examination>`,
      );
      for (const part of ['inspection', 'pulses', 'bedside', 'pressures', 'staging', 'summary'] as const)
        await whole.openPart(part);
      for (const fold of everything(whole).filter((element) =>
        element.matches('button[aria-expanded="false"], details:not([open]) > summary'),
      ))
        (fold as HTMLElement).click();
      await drawn(whole);
      expect(everything(whole).filter((element) => element.matches(CONTROLS)).length).to.be.above(150);
      expect(misnamed(whole)).to.deep.equal([]);
    });

    it(`finds every control of the map, its panel and its table, in ${tag}`, async function () {
      this.timeout(120_000);
      const map = await fixture<PulseMap>(
        html`<pulse-map lang=${tag} value=${formatExamination(chronic)}></pulse-map>`,
      );
      await drawn(map);
      map.openPlace('left popliteal');
      await drawn(map);
      const found = misnamed(map);
      map.display = 'table';
      await drawn(map);
      expect([...found, ...misnamed(map)]).to.deep.equal([]);
    });
  }
});
