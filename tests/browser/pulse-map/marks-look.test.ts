import { expect } from '@open-wc/testing';
import { MARK_KINDS } from '../../../src/examination/index.js';
import { click, emulate } from '../../tools/real-input.js';
import { channels, contrast, luminance } from '../tools/contrast.js';
import { openMap, settled } from '../tools/map.js';
import { byRole, nameOf, readableText } from '../tools/perceive.js';
import { drawStroke, listed, markedRegions, round, startDrawing } from '../tools/skin.js';

const three = () => markedRegions(['ulcer', 'heel', 'dry'], ['cold', 'shin'], ['gangrene', 'great-toe']);

describe('the look of marks', () => {
  afterEach(() => emulate({}));

  const everyKind = () =>
    markedRegions(
      ['ulcer', 'heel'],
      ['gangrene', 'great-toe'],
      ['pallor', 'thigh'],
      ['redness', 'abdomen'],
      ['cyanosis', 'hand'],
      ['cold', 'shin'],
      ['scar', 'forearm'],
      ['amputation', 'knee'],
    );

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`stands out from the body by 3 to 1 and is never the colour of danger, ${colorScheme}`, async () => {
      await emulate({ colorScheme });
      document.documentElement.style.colorScheme = colorScheme;
      try {
        const map = await openMap({ examination: everyKind() });
        const root = map.shadowRoot as ShadowRoot;
        const body = getComputedStyle(root.querySelector('.body') as Element).fill;
        const probe = document.createElement('span');
        probe.style.color = 'var(--_danger)';
        root.append(probe);
        const danger = getComputedStyle(probe).color;
        probe.remove();
        const edges = [...root.querySelectorAll('.figure .skin .edge')];
        expect(edges).to.have.length(MARK_KINDS.length);
        for (const edge of edges) {
          const { stroke } = getComputedStyle(edge);
          const name = edge.parentElement?.getAttribute('class') ?? '';
          expect(
            contrast(channels(stroke), channels(body)),
            `${name} ${stroke} on ${body}`,
          ).to.be.greaterThan(3);
          expect(stroke, name).to.not.equal(danger);
        }
      } finally {
        document.documentElement.style.removeProperty('color-scheme');
      }
    });
  }

  it('tells every kind from every other without colour', async () => {
    const map = await openMap({ examination: everyKind() });
    const looks = [...(map.shadowRoot?.querySelectorAll('.figure .skin') ?? [])].map((mark) => {
      const paint = [...mark.querySelectorAll('path:not(clipPath path)')].map((path) => {
        const { strokeDasharray, strokeWidth, stroke, fill, fillOpacity } = getComputedStyle(path);
        const part = path.getAttribute('class');
        // Of a colour only whether there is one, and whether a fill is as dark as ink.
        const dark = fill !== 'none' && luminance(channels(fill)) < 0.05;
        return [part, strokeDasharray, strokeWidth, stroke !== 'none', fill !== 'none' && fillOpacity, dark];
      });
      const hatched = mark.querySelector('.texture')?.getAttribute('d')?.includes('H') ?? false;
      return JSON.stringify([paint.filter(([part]) => part !== 'halo'), hatched]);
    });
    expect(new Set(looks).size).to.equal(MARK_KINDS.length);
  });

  it('has a word beside the picture of every kind, part of its whole name', async () => {
    const map = await openMap();
    await startDrawing(map);
    const kinds = [...(map.shadowRoot?.querySelectorAll('.kinds button') ?? [])];
    expect(kinds.map(nameOf)).to.deep.equal([
      'Ulcer',
      'Gangrene',
      'Pallor',
      'Redness',
      'Cyanosis',
      'Cold below this line',
      'Scar',
      'Amputation line',
    ]);
    for (const kind of kinds) {
      expect(kind.querySelector('svg path')?.getAttribute('d')).to.not.equal('');
      expect(nameOf(kind).startsWith(readableText(kind)), nameOf(kind)).to.equal(true);
      const { width, height } = kind.getBoundingClientRect();
      expect(Math.min(width, height)).to.be.at.least(44);
    }
  });

  it('goes along with a picture of the figure, with a legend, and leaves the figure as it was', async () => {
    const map = await openMap({ examination: markedRegions(['ulcer', 'heel', 'dry'], ['cold', 'shin']) });
    const text = map.toSVG({ width: 1200 });
    const picture = new DOMParser().parseFromString(text, 'image/svg+xml');
    expect([...picture.querySelectorAll('title')].map((title) => title.textContent)).to.include.members([
      'Left heel: ulcer; note: dry',
      'Left mid shin: cold below this line',
    ]);
    const said = [...picture.querySelectorAll('text')].map((words) => words.textContent);
    expect(said).to.include.members(['Ulcer', 'Cold below this line']);
    expect(said).to.not.include('Gangrene');
    const clips = [...picture.querySelectorAll('[clip-path]')].map((path) =>
      path.getAttribute('clip-path')?.slice(5, -1),
    );
    expect(clips.length).to.be.greaterThan(1);
    for (const id of clips) expect(picture.getElementById(id ?? ''), id).to.exist;
    // Strokes are still placed by the figure on the page, not by the picture, which is larger.
    await startDrawing(map);
    await drawStroke(map, round(505, 850, 30));
    expect(listed(map).at(-1)).to.equal('Right mid thigh ulcer');
  });

  for (const width of [360, 820]) {
    it(`passes axe while one draws and while one does not, ${width} px wide`, async () => {
      const map = await openMap({ width, examination: everyKind() });
      await expect(map).to.be.accessible();
      await startDrawing(map);
      await expect(map).to.be.accessible();
      await click(byRole(map, 'button', /^Edit: Left heel/));
      await settled(map);
      await expect(map).to.be.accessible();
    });
  }

  it('needs no more room than the map has, at any width', async () => {
    for (const width of [280, 328, 360, 640, 820]) {
      const map = await openMap({ width, examination: three() });
      await startDrawing(map);
      await click(byRole(map, 'button', /^Edit: Left heel/));
      await settled(map);
      const { left, right } = map.getBoundingClientRect();
      for (const part of map.shadowRoot?.querySelectorAll('.palette *, .marks *') ?? []) {
        const box = part.getBoundingClientRect();
        if (box.width === 0 || part.closest('svg')) continue;
        expect(box.left, `${width} ${part.className}`).to.be.at.least(left);
        expect(box.right, `${width} ${part.outerHTML.slice(0, 200)}`).to.be.at.most(right);
      }
    }
  });
});
