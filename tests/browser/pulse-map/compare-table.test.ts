import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map';
import 'pulse-map/locale/de';
import type { PulseMap } from 'pulse-map';
import { emptyExamination, type Examination, PULSE_PLACES, setBruit, setPulse } from 'pulse-map/core';
import { setViewport } from '../../tools/real-input.js';
import { settled } from '../tools/map.js';

const all = (grade: 'normal' | 'absent'): Examination =>
  PULSE_PLACES.reduce(
    (record, place) => setPulse(record, place, { grade }),
    emptyExamination() as Examination,
  );
const earlier = setBruit(all('absent'), { site: 'femoral', side: 'left' }, { bruit: 'systolic' });

/** Pairs of boxes of one row that lie on each other. */
function overlaps(row: Element): string[] {
  const cells = [...row.querySelectorAll('.cell')].map((cell) => ({
    text: cell.querySelector('.was')?.textContent ?? '',
    boxes: [...cell.querySelectorAll('select, .was')].map((part) => part.getBoundingClientRect()),
  }));
  return cells.flatMap((a, i) =>
    cells
      .slice(i + 1)
      .flatMap((b) =>
        a.boxes.some((p) =>
          b.boxes.some(
            (q) =>
              p.right > q.left + 1 && q.right > p.left + 1 && p.bottom > q.top + 1 && q.bottom > p.top + 1,
          ),
        )
          ? [`${a.text} on ${b.text}`]
          : [],
      ),
  );
}

describe('an earlier record in the table', () => {
  for (const lang of ['en', 'de'])
    for (const width of [390, 820, 1440])
      it(`stands under its own field at ${width} px, ${lang}`, async () => {
        await setViewport({ width, height: 900 });
        const map = await fixture<PulseMap>(
          html`<pulse-map
            lang=${lang}
            display="table"
            .examination=${all('normal')}
            .compare=${earlier}
          ></pulse-map>`,
        );
        await settled(map);
        const rows = [...map.shadowRoot!.querySelectorAll('.table tr')];
        expect(rows.length).to.be.above(10);
        expect(rows.flatMap(overlaps)).to.deep.equal([]);
        const said = map.shadowRoot!.querySelector('.table')!.textContent;
        expect(said).to.contain(lang === 'en' ? 'before: absent' : 'vorher: fehlend');
        expect(said).to.contain(lang === 'en' ? 'before: systolic' : 'vorher: systolisch');
        expect(document.documentElement.scrollWidth).to.be.at.most(width);
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
