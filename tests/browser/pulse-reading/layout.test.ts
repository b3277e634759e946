import { expect, fixture } from '@open-wc/testing';
import { html } from 'lit';
import 'pulse-map/elements/pulse-reading/define';
import type { PulseReading } from 'pulse-map/elements/pulse-reading';
import { setBruit } from 'pulse-map/core';
import { emptyExamination, type Examination, restNormal } from '../../../src/examination/index.js';
import { examined } from '../../tools/examinations.js';
import { emulate, setViewport } from '../../tools/real-input.js';
import { boxOf, overlaps } from '../tools/boxes.js';
import { longest } from '../tools/drawn.js';
import { everything, painted } from '../tools/perceive.js';

const WIDTHS = [240, 280, 348, 388, 640, 820, 1200] as const;

const RECORDS: Readonly<Record<string, Examination>> = {
  'nothing recorded': emptyExamination(),
  'a block': restNormal(
    examined({
      'left popliteal': 'absent',
      'left posterior-tibial': 'absent',
      'left dorsalis-pedis': 'absent',
    }),
  ),
  'blocks everywhere': restNormal(
    examined({
      'right femoral': 'absent',
      'left popliteal': 'absent',
      'left brachial': 'absent',
      'right radial': 'absent',
      'left carotid': 'reduced',
      'right subclavian': 'reduced',
    }),
  ),
  'a block in each limb': restNormal(
    examined({
      'right popliteal': 'absent',
      'left femoral': 'absent',
      'right radial': 'absent',
      'left brachial': 'absent',
    }),
  ),
  'a stenosis above an occlusion, and one more beyond it': setBruit(
    examined({
      'right femoral': 'normal',
      'right popliteal': 'reduced',
      'right posterior-tibial': 'absent',
      'left femoral': 'absent',
      'left popliteal': 'absent',
      'left posterior-tibial': 'absent',
      'left dorsalis-pedis': 'absent',
    }),
    { site: 'femoral', side: 'right' },
    { bruit: 'systolic' },
  ),
  'every mark at every site': longest(),
};

/** Words and numbers of a limb laid flat that a stretch is drawn through. */
function onRidges(line: Element): string[] {
  const ridges = [...line.querySelectorAll<SVGPathElement>('.ridge')];
  return [...line.querySelectorAll('text')].flatMap((text) => {
    const { left, right, top, bottom } = boxOf(text, '', 2);
    const points = [0, 0.25, 0.5, 0.75, 1].flatMap((x) =>
      [0.2, 0.5, 0.8].map((y) => new DOMPoint(left + x * (right - left), top + y * (bottom - top))),
    );
    const hit = ridges.some((ridge) =>
      points.some((point) => ridge.isPointInFill(point.matrixTransform(ridge.getScreenCTM()!.inverse()))),
    );
    return hit ? [text.textContent] : [];
  });
}

async function reading(width: number, examination: Examination): Promise<PulseReading> {
  await setViewport({ width: width + 60, height: 900 });
  const frame = await fixture<HTMLElement>(
    html`<div style="width:${width}px; background: Canvas">
      <pulse-reading .examination=${examination}></pulse-reading>
    </div>`,
  );
  const element = frame.querySelector('pulse-reading') as unknown as PulseReading;
  await element.updateComplete;
  await painted();
  await element.updateComplete;
  return element;
}

describe('the reading at its widths', () => {
  afterEach(async () => {
    document.documentElement.removeAttribute('style');
    await emulate({});
  });

  for (const width of WIDTHS) {
    for (const [what, examination] of Object.entries(RECORDS)) {
      it(`${width} px, with ${what}: is no wider than its place, scrolls nowhere, and axe finds nothing`, async () => {
        const element = await reading(width, examination);
        const { right } = element.getBoundingClientRect();
        const out = everything(element.shadowRoot as ShadowRoot).filter((inner) => {
          const box = inner.getBoundingClientRect();
          return box.width > 2 && inner.checkVisibility() && box.right > right + 1;
        });
        expect(out.map((inner) => `${inner.localName}.${inner.getAttribute('class')}`)).to.deep.equal([]);
        await expect(element).to.be.accessible();
      });
    }

    it(`${width} px: names and percentages on the limb laid flat keep off each other, off the glyphs and off the stretches`, async () => {
      let looked = 0;
      for (const examination of Object.values(RECORDS)) {
        const element = await reading(width, examination);
        for (const line of element.shadowRoot?.querySelectorAll('.limb-line') ?? []) {
          looked++;
          const texts = [...line.querySelectorAll('text')].map((text) =>
            boxOf(text, `"${text.textContent}"`, 1.5),
          );
          const glyphs = [...line.querySelectorAll('.glyph path:not(.halo, .mark-halo)')].map((path) =>
            boxOf(path, 'a glyph'),
          );
          expect(Math.min(texts.length, glyphs.length)).to.be.above(1);
          expect(overlaps(texts, glyphs)).to.deep.equal([]);
          expect(onRidges(line)).to.deep.equal([]);
        }
      }
      expect(looked).to.be.above(6);
    });
  }

  for (const settings of [{ colorScheme: 'dark' }, { forcedColors: 'active' }] as const) {
    it(`is accessible in ${Object.values(settings)[0]} colours`, async () => {
      await emulate(settings);
      document.documentElement.style.colorScheme = 'light dark';
      await expect(await reading(388, RECORDS['blocks everywhere'] as Examination)).to.be.accessible();
    });
  }
});
