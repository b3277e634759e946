// Still pictures as a page or another program takes them: as XML, and many in one document.
import { expect, fixture } from '@open-wc/testing';
import fc from 'fast-check';
import { html } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { setPulse } from 'pulse-map/core';
import { figureBody, figureSVG, VIEWS } from 'pulse-map/picture';
import { anyExamination, noteText } from '../../tools/arbitraries.js';
import { examined, place } from '../../tools/examinations.js';

/** The text between the tags of the error that an XML parser reports; empty where there is none. */
const faultOf = (text: string): string =>
  new DOMParser().parseFromString(text, 'image/svg+xml').querySelector('parsererror')?.textContent ?? '';

describe('figureSVG', () => {
  it('is well-formed XML whatever a note holds, in every view, small and with names', () => {
    fc.assert(
      fc.property(
        anyExamination,
        noteText,
        fc.constantFrom(...VIEWS),
        fc.boolean(),
        (record, note, view, names) => {
          const noted = setPulse(record, place('left femoral'), {
            grade: 'absent',
            note: `${note}\uD800<&">]]>`,
          });
          expect(faultOf(figureSVG(noted, { view, names, title: note }))).to.equal('');
        },
      ),
      { numRuns: 25 },
    );
    for (const view of VIEWS) expect(faultOf(figureBody({ view })), view).to.equal('');
  });

  it('is drawn the same with a shared body as on its own', async () => {
    const record = examined({
      'left femoral': 'normal',
      'left popliteal': 'absent',
      'right radial': 'reduced',
    });
    const drawn = async (shared: boolean): Promise<Uint8ClampedArray> => {
      const text = figureSVG(record, { shared, width: 160 });
      // An image has no page around it, so what is referred to must stand inside.
      const defs = shared ? /<defs>.*<\/defs>/s.exec(figureBody({ width: 160 }))![0] : '';
      const image = new Image();
      image.src = URL.createObjectURL(
        new Blob([text.replace('</title>', `</title>${defs}`)], { type: 'image/svg+xml' }),
      );
      await image.decode();
      URL.revokeObjectURL(image.src);
      const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
      const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
      context.drawImage(image, 0, 0);
      return context.getImageData(0, 0, canvas.width, canvas.height).data;
    };
    const [alone, together] = [await drawn(false), await drawn(true)];
    expect(together.length).to.equal(alone.length);
    const far = alone.filter((value, i) => Math.abs(value - (together[i] as number)) > 60).length;
    expect(far / alone.length).to.be.below(0.002);
    expect(alone.some((value, i) => i % 4 === 3 && value > 0)).to.equal(true);
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
