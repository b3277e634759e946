// Every plate as a person uses it: by hand, by keys alone, on any ground and in any colours.
import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { PLATE_VIEWS, type PlateView } from '../../../src/anatomy/index.js';
import { placesIn, VIEWS } from '../../../src/drawing/index.js';
import { fetchPlate } from '../../../src/elements/pulse-map/plate/fetched.js';
import { en } from '../../../src/locale/index.js';
import { examined } from '../../tools/examinations.js';
import { click, emulate, press } from '../../tools/real-input.js';
import { channels, contrast } from '../tools/contrast.js';
import { openMap, openSite, saidAt, settled, site } from '../tools/map.js';
import { byRole } from '../tools/perceive.js';

/** The names of the sites of a view, as a person says them. */
const namesIn = (view: PlateView): string[] => placesIn(view).map((place) => en.anatomy.place(place));

const focused = (map: PulseMap): HTMLElement | null => map.shadowRoot?.activeElement as HTMLElement | null;

async function opened(view: PlateView): Promise<PulseMap> {
  const map = await openMap({ width: 900, height: 1100 });
  await fetchPlate(view);
  const door = byRole<HTMLButtonElement>(map, 'button', new RegExp(`: ${en.map.views[view]}$`));
  expect(door.getBoundingClientRect().height).to.be.at.least(44);
  await click(door);
  await settled(map);
  expect(map.view).to.equal(view);
  return map;
}

describe('plates', () => {
  for (const view of PLATE_VIEWS) {
    it(`${view}: its button opens it, a tap on each site records, Escape leads back`, async () => {
      const map = await opened(view);
      for (const name of namesIn(view).filter((one) => !/adductor/.test(one))) {
        await openSite(map, name);
        await press('0');
        await settled(map);
        expect(saidAt(map, name), name).to.equal('0, absent');
        await press('Escape');
        await settled(map);
      }
      byRole(map, 'button', 'Back to the figure').focus();
      await press('Escape');
      await settled(map);
      expect(map.view).to.equal('auto');
      expect(focused(map)?.dataset.plate).to.equal(view);
    });
  }

  it('need no pointer: a plate is opened, recorded on and left by keys', async () => {
    const map = await openMap({ width: 900 });
    await fetchPlate('left-foot');
    byRole(map, 'button', /: Left foot, dorsal and medial$/).focus();
    await press('Enter');
    await settled(map);
    expect(focused(map)?.textContent?.trim()).to.equal('Back to the figure');
    for (let i = 0; i < 12 && focused(map)?.getAttribute('part') !== 'site'; i++) await press('Tab');
    const first = focused(map)?.dataset.place as string;
    // The dorsalis pedis lies left of the posterior tibial on this plate.
    await press('0', 'ArrowLeft');
    await settled(map);
    const second = focused(map)?.dataset.place as string;
    expect(second).to.not.equal(first);
    await press('1');
    await settled(map);
    const said = new Map([
      [first, '0, absent'],
      [second, '1, reduced'],
    ]);
    expect(said.size).to.equal(2);
    for (const [key, what] of said) expect(saidAt(map, key.replace('-', ' '))).to.equal(what);
    await press('Escape');
    await settled(map);
    expect(map.view).to.equal('auto');
  });

  for (const colorScheme of ['light', 'dark'] as const)
    it(`show, ${colorScheme}, by which landmarks the open site is found, and only as long as it is open`, async () => {
      await emulate({ colorScheme });
      document.documentElement.style.colorScheme = colorScheme;
      try {
        for (const view of ['left-hand', 'right-foot', 'left-knee', 'legs-behind'] as const) {
          const map = await opened(view);
          for (const name of namesIn(view)) {
            expect(map.shadowRoot?.querySelector('.helps') === null, name).to.equal(true);
            await openSite(map, name);
            const line = map.shadowRoot?.querySelector<SVGPathElement>('.helps');
            expect((line?.getTotalLength() ?? 0) > 100, name).to.equal(true);
            const body = map.shadowRoot?.querySelector('.p-body') as Element;
            const [stroke, ground] = [getComputedStyle(line!).stroke, getComputedStyle(body).fill].map(
              channels,
            );
            expect(contrast(stroke!, ground!)).to.be.at.least(3);
            await press('Escape');
            await settled(map);
          }
        }
      } finally {
        document.documentElement.removeAttribute('style');
        await emulate({});
      }
    });

  it('fit the window beneath a red flag', async () => {
    const map = await openMap({
      width: 1380,
      height: 900,
      examination: {
        ...examined({ 'left femoral': 'normal', 'left popliteal': 'absent' }),
        inspection: { leg: { left: { colour: 'pale', temperature: 'cold' } } },
      },
    });
    const flag = map.shadowRoot!.querySelector('limb-flags')!;
    expect(flag.getBoundingClientRect().height).to.be.above(30);
    for (const view of ['left-hand', 'legs-behind'] as const) {
      map.view = 'auto';
      await fetchPlate(view);
      await settled(map);
      map.view = view;
      await settled(map);
      const figure = map.shadowRoot?.querySelector('.figure') as Element;
      const { height } = figure.getBoundingClientRect();
      const { top } = map.getBoundingClientRect();
      const over = figure.getBoundingClientRect().top - top;
      expect(over + height, view).to.be.at.most(900);
      for (const name of namesIn(view)) expect(site(map, name) instanceof Element).to.equal(true);
    }
  });
});

describe('the colours of every view and plate', function () {
  this.timeout(120_000);
  const FOUND = examined({
    'left femoral': 'normal',
    'left popliteal': 'absent',
    'left posterior-tibial': 'absent',
    'left dorsalis-pedis': 'absent',
    'left brachial': 'normal',
    'left radial': 'reduced',
    'left ulnar': 'absent',
  });
  const GROUNDS = [
    ['light', { colorScheme: 'light' }],
    ['dark', { colorScheme: 'dark' }],
    ['forced colours', { forcedColors: 'active' }],
  ] as const;
  for (const [what, settings] of GROUNDS)
    it(`${what}: arteries, the edge of a hollow one, ridges and glyphs stand out 3 to 1 without hue`, async () => {
      await emulate(settings);
      document.documentElement.style.colorScheme = what === 'dark' ? 'dark' : 'light';
      try {
        const map = await openMap({ width: 900, examination: FOUND });
        await Promise.all(PLATE_VIEWS.map(fetchPlate));
        const faint: string[] = [];
        for (const view of VIEWS) {
          map.view = view;
          await settled(map);
          const root = map.shadowRoot as ShadowRoot;
          const body = root.querySelector('.figure .body, .figure .p-body') as Element;
          const ground = getComputedStyle(body).fill;
          const seen = (selector: string, paint: 'fill' | 'stroke'): void => {
            for (const part of root.querySelectorAll(`.figure ${selector}`)) {
              const colour = getComputedStyle(part)[paint];
              if (contrast(channels(colour), channels(ground)) < 3)
                faint.push(`${view}: ${selector} ${colour} on ${ground}`);
            }
          };
          seen('.artery:not(.behind)', 'fill');
          seen('.p-near, .figure .p-deep', 'fill');
          seen('.hollow, .figure .p-hollow', 'stroke');
          seen('.lesions .ridge', 'stroke');
          seen('.g-absent .fill', 'fill');
          seen('.g-normal .line', 'stroke');
          seen('.g-reduced .fill', 'stroke');
          // What differs in hue alone would be one outline: each grade has a shape of its own.
          const shapes = new Map<string, string>();
          for (const glyph of root.querySelectorAll('.figure .glyph')) {
            const kind = /g-[\w-]+/.exec(glyph.getAttribute('class') ?? '')?.[0] ?? '';
            const d = [...glyph.querySelectorAll('.line, .fill, .dash')].map((path) =>
              path.getAttribute('d'),
            );
            shapes.set(d.join(), kind);
          }
          expect(new Set(shapes.values()).size, `${view}: shapes`).to.equal(shapes.size);
        }
        expect([...new Set(faint)]).to.deep.equal([]);
      } finally {
        document.documentElement.removeAttribute('style');
        await emulate({});
      }
    });
});
