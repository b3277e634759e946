// A record beside an earlier one in the table: whatever changed, nothing of a cell lies on anything else, and nothing is cut off.
import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map';
import 'pulse-map/locale/de';
import type { PulseMap } from 'pulse-map';
import {
  emptyExamination,
  type Examination,
  LISTENING_PLACES,
  PULSE_PLACES,
  setBruit,
  setPulse,
} from 'pulse-map/core';
import { setViewport } from '../../tools/real-input.js';
import { boxOf, type NamedBox, overlap } from '../tools/boxes.js';
import { impossible, longest } from '../tools/drawn.js';
import { settled } from '../tools/map.js';

const all = (grade: 'normal' | 'absent'): Examination =>
  PULSE_PLACES.reduce(
    (record, place) => setPulse(record, place, { grade }),
    emptyExamination() as Examination,
  );
const earlier = setBruit(all('absent'), { site: 'femoral', side: 'left' }, { bruit: 'systolic' });

/** Something to say in every cell, and notes. */
function noted(): Examination {
  const felt = PULSE_PLACES.reduce(
    (record, place) => setPulse(record, place, { doppler: 'monophasic', note: 'felt by two examiners' }),
    longest(),
  );
  return LISTENING_PLACES.reduce((record, place) => setBruit(record, place, { bruit: 'none' }), felt);
}
const heard = LISTENING_PLACES.reduce(
  (record, place) => setBruit(record, place, { bruit: 'systolic' }),
  all('normal'),
);
const PAIRS: readonly (readonly [what: string, now: Examination, before: Examination])[] = [
  ['a grade elsewhere', all('normal'), earlier],
  ['the longest findings, where nothing could be examined', longest(), impossible()],
  ['what could not be examined, where the longest findings were', impossible(), longest()],
  ['all that a cell can hold, where bruits were heard', noted(), heard],
];

/** What is read or touched in a table, each as a box: words, fields, signs and buttons. */
function partsOf(table: Element): NamedBox[] {
  return [...table.querySelectorAll('th, .letter, .cell > svg, select, .extra, .more, .notes, .midline')]
    .filter((part) => part.checkVisibility())
    .flatMap((part) => {
      const range = document.createRange();
      range.selectNodeContents(part);
      // The words of a heading or note rather than the cell about them.
      const box = part.matches('th, .notes, .midline') ? range.getBoundingClientRect() : boxOf(part, '');
      const { left, top, right, bottom } = box;
      const name = part.getAttribute('aria-label') ?? part.textContent?.trim() ?? part.localName;
      return right - left < 1
        ? []
        : [{ name, left: left + 1, top: top + 1, right: right - 1, bottom: bottom - 1 }];
    });
}

function collisions(table: Element): string[] {
  const parts = partsOf(table).sort((a, b) => a.top - b.top);
  return parts.flatMap((a, i) => {
    const found: string[] = [];
    for (const b of parts.slice(i + 1)) {
      if (b.top >= a.bottom) break;
      if (overlap(a, b)) found.push(`${a.name} on ${b.name}`);
    }
    return found;
  });
}

/** Fields whose chosen word is wider than they. */
function cutFields(table: Element): string[] {
  const pen = document.createElement('canvas').getContext('2d')!;
  return [...table.querySelectorAll('select')].flatMap((field) => {
    const style = getComputedStyle(field);
    pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const said = field.selectedOptions[0]?.textContent?.trim() ?? '';
    const arrow = style.appearance === 'none' ? 0 : 18;
    const room = field.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) - arrow;
    return pen.measureText(said).width > room ? [`${said} in ${Math.round(room)} px`] : [];
  });
}

describe('an earlier record in the table', () => {
  for (const lang of ['en', 'de'])
    for (const width of [320, 390, 640, 820, 1080, 1440])
      it(`touches nothing and is not cut off at ${width} px, ${lang}`, async () => {
        await setViewport({ width, height: 900 });
        const map = await fixture<PulseMap>(
          html`<pulse-map lang=${lang} display="table" no-reading no-flags></pulse-map>`,
        );
        for (const [what, now, before] of PAIRS) {
          map.examination = now;
          map.compare = before;
          await settled(map);
          const table = map.shadowRoot!.querySelector('.table')!;
          expect(partsOf(table).length, what).to.be.above(60);
          expect(table.querySelectorAll('.was').length, what).to.be.above(15);
          expect(collisions(table), what).to.deep.equal([]);
          expect(cutFields(table), what).to.deep.equal([]);
          expect(map.scrollWidth, what).to.be.at.most(map.clientWidth);
        }
      });

  for (const lang of ['en', 'de'])
    it(`says what was found then, ${lang}`, async () => {
      await setViewport({ width: 1440, height: 900 });
      const map = await fixture<PulseMap>(
        html`<pulse-map
          lang=${lang}
          display="table"
          .examination=${all('normal')}
          .compare=${earlier}
        ></pulse-map>`,
      );
      await settled(map);
      const said = map.shadowRoot!.querySelector('.table')!.textContent;
      expect(said).to.contain(lang === 'en' ? 'before: absent' : 'vorher: fehlend');
      expect(said).to.contain(lang === 'en' ? 'before: systolic' : 'vorher: systolisch');
    });

  it('says nothing of what was not examined then', async () => {
    await setViewport({ width: 1440, height: 900 });
    const map = await fixture<PulseMap>(
      html`<pulse-map
        display="table"
        .examination=${all('normal')}
        .compare=${emptyExamination()}
      ></pulse-map>`,
    );
    await settled(map);
    expect(map.shadowRoot!.querySelectorAll('.was').length).to.equal(0);
  });
});
