// Still pictures as a page or another program takes them: as XML, and many in one document.
import { expect, fixture } from '@open-wc/testing';
import fc from 'fast-check';
import { html } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { setPulse } from 'pulse-map/core';
import { figureBody, figureSVG, VIEWS } from 'pulse-map/picture';
import { anyExamination, noteText } from '../../tools/arbitraries.js';
import { examined, place } from '../../tools/examinations.js';
import { luminance } from '../tools/contrast.js';

/** The text between the tags of the error that an XML parser reports; empty where there is none. */
const faultOf = (text: string): string =>
  new DOMParser().parseFromString(text, 'image/svg+xml').querySelector('parsererror')?.textContent ?? '';

/** A picture as its dots. */
async function pixelsOf(text: string): Promise<Uint8ClampedArray> {
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  await image.decode();
  URL.revokeObjectURL(image.src);
  const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
  const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
  context.drawImage(image, 0, 0);
  return context.getImageData(0, 0, canvas.width, canvas.height).data;
}

describe('figureSVG', () => {
  it('is well-formed XML whatever a note holds, in every view, small and with names', () => {
    fc.assert(
      fc.property(
        anyExamination,
        noteText,
        fc.constantFrom(...VIEWS),
        fc.boolean(),
        fc.constantFrom(undefined, 24, 160),
        (record, note, view, names, width) => {
          const noted = setPulse(record, place('left femoral'), {
            grade: 'absent',
            note: `${note}\uD800<&">]]>`,
          });
          expect(faultOf(figureSVG(noted, { view, names, title: note, ...(width && { width }) }))).to.equal(
            '',
          );
        },
      ),
      { numRuns: 25, seed: 7 },
    );
    for (const view of VIEWS) expect(faultOf(figureBody({ view })), view).to.equal('');
  });

  const RECORD = examined({
    'left femoral': 'normal',
    'left popliteal': 'absent',
    'left brachial': 'normal',
    'left radial': 'reduced',
    'left ulnar': 'absent',
    'right radial': 'reduced',
  });

  for (const view of VIEWS)
    it(`is drawn the same with a shared body as on its own: ${view}`, async () => {
      const drawn = (shared: boolean): Promise<Uint8ClampedArray> => {
        const text = figureSVG(RECORD, { shared, width: 160, view });
        // An image has no page around it, so what is referred to must stand inside.
        const defs = shared ? /<defs>.*<\/defs>/s.exec(figureBody({ width: 160, view }))![0] : '';
        return pixelsOf(text.replace('</title>', `</title>${defs}`));
      };
      const [alone, together] = [await drawn(false), await drawn(true)];
      expect(together.length).to.equal(alone.length);
      const far = alone.filter((value, i) => Math.abs(value - (together[i] as number)) > 60).length;
      expect(far / alone.length).to.be.below(0.005);
      expect(alone.some((value, i) => i % 4 === 3 && value > 0)).to.equal(true);
    });

  for (const width of [24, 30])
    for (const scheme of ['light', 'dark'] as const)
      it(`at ${width} px, ${scheme}, shows a stretch mark that is seen without colour`, async () => {
        const blocked = examined({ 'left femoral': 'normal', 'left popliteal': 'absent' });
        for (const view of ['whole', 'left-leg', 'left-knee', 'legs-behind'] as const) {
          const text = figureSVG(blocked, { view, width, scheme });
          const [with_, without] = await Promise.all([
            pixelsOf(text),
            // The same without the mark and the dots of the sites.
            pixelsOf(text.replace(/<g><title>[^]*?<\/g>/, '')),
          ]);
          const lights = (data: Uint8ClampedArray): number[] =>
            Array.from({ length: data.length / 4 }, (_, i) =>
              luminance([data[4 * i]!, data[4 * i + 1]!, data[4 * i + 2]!]),
            );
          const before = lights(without);
          const seen = lights(with_).filter((light, i) => {
            const [low, high] = [light, before[i]!].sort((a, b) => a - b) as [number, number];
            return without[4 * i + 3]! > 200 && (high + 0.05) / (low + 0.05) >= 3;
          }).length;
          expect(seen, `${view}: px of at least 3:1`).to.be.at.least(5);
        }
      });

  it('shows body and arteries where the page has them once, and follows its colours', async () => {
    const records = [examined({ 'left femoral': 'absent' }), examined({ 'left femoral': 'normal' })];
    const look = { width: 120, scheme: 'page' } as const;
    const list = await fixture<HTMLElement>(
      html`<div style="color-scheme: dark">
        ${unsafeSVG(figureBody(look))}${records.map((record) => unsafeSVG(figureSVG(record, { ...look, shared: true })))}
      </div>`,
    );
    const pictures = [...list.querySelectorAll<SVGSVGElement>('svg[role=img]')];
    expect(pictures.length).to.equal(2);
    for (const picture of pictures) {
      const body = picture.querySelector('use') as SVGUseElement;
      expect(body.getBBox().height).to.be.greaterThan(1000);
    }
    const path = list.querySelector('defs g[id$=body] path') as Element;
    expect(getComputedStyle(path).fill).to.equal('rgb(38, 44, 51)');
    const ids = [...list.querySelectorAll('[id]')].map(({ id }) => id);
    expect(new Set(ids).size).to.equal(ids.length);
  });
});
