import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { LISTENING_PLACES, placeKey, PLACES, PULSE_PLACES, setBruit, setPulse } from 'pulse-map/core';
import { sitesIn, VIEWS } from '../../../src/drawing/index.js';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { en } from '../../../src/locale/index.js';
import { click, press, seenBox, setViewport } from '../../tools/real-input.js';
import { leastDistance, type NamedBox } from '../tools/boxes.js';
import { badLabels, drawn, impossible, longest, RECORDS, viewsAt, WIDTHS } from '../tools/drawn.js';
import { chooser, openMap, saidAll, settled, site } from '../tools/map.js';
import { allByRole, byRole, everything } from '../tools/perceive.js';
import { figureOf } from '../tools/skin.js';

/** From here on the reading stands beside the figure and every target has its full size. */
const DEFAULT_WIDTH = 1180;

/** Findings at every site, none of which calls for help at once. */
function restless(): Examination {
  const felt = PULSE_PLACES.reduce(
    (e, place) => setPulse(e, place, { grade: 'normal', thrill: true }),
    emptyExamination('words'),
  );
  return LISTENING_PLACES.reduce((e, place) => setBruit(e, place, { bruit: 'continuous' }), felt);
}

describe('labels', () => {
  for (const width of WIDTHS) {
    for (const [what, examination] of Object.entries(RECORDS)) {
      it(`at ${width} px, with ${what}, touch neither each other nor a site, and are not cut off, in any view`, async () => {
        expect(await badLabels(await openMap({ width, examination }), width)).to.deep.equal([]);
      });
    }

    it(`at ${width} px, beside an earlier record, do so too`, async () => {
      const map = await openMap({ width, examination: longest() });
      map.compare = impossible();
      expect(await badLabels(map, width)).to.deep.equal([]);
    });
  }
});

describe('what was found, and what was found before', () => {
  for (const width of [640, 768, 1180, 1920])
    it(`at ${width} px is said in full beside its site or below the figure, in any view with names`, async () => {
      const [now, before] = [impossible(), longest()];
      const map = await openMap({ width, examination: now });
      map.compare = before;
      let named = 0;
      for (const view of viewsAt(width)) {
        map.view = view;
        await settled(map);
        const root = map.shadowRoot as ShadowRoot;
        if (!root.querySelector('.figure .finding')) continue;
        named++;
        const below = [...root.querySelectorAll('.untold span')].map((one) => one.textContent);
        for (const [key, { place, finding, name }] of sitesIn(view, now, before, undefined, undefined, en)) {
          const lines = [...root.querySelectorAll(`.figure .finding[data-place="${key}"]`)];
          const said = lines.map((line) => line.textContent).join(' ');
          expect([said, ...below], `${view}: ${placeKey(place)}`).to.include(
            said.includes('…') || !said ? (finding ? name : '') : finding,
          );
        }
      }
      expect(named, 'views with names').to.be.above(3);
    });
});

describe('type and lines', () => {
  it('grow by a fifth and more from a laptop to a projector, in every view', async () => {
    const measure = async (size: { width: number; height: number }): Promise<Map<string, number[]>> => {
      const map = await openMap(size);
      const sizes = new Map<string, number[]>();
      for (const view of VIEWS) {
        map.view = view;
        await settled(map);
        const figure = figureOf(map) as SVGSVGElement;
        const enlarged = figure.getBoundingClientRect().width / figure.viewBox.baseVal.width;
        const typeOf = (text: Element | null | undefined): number =>
          text ? Number.parseFloat(getComputedStyle(text).fontSize) : 0;
        const door = typeOf(map.shadowRoot?.querySelector('.doors button'));
        sizes.set(view, [enlarged * typeOf(figure.querySelector('.label, .title')), ...(door ? [door] : [])]);
      }
      return sizes;
    };
    const laptop = await measure({ width: 1424, height: 900 });
    const projector = await measure({ width: 1904, height: 1080 });
    for (const [view, sizes] of projector)
      sizes.forEach((size, i) => expect(size / laptop.get(view)![i]!, `${view} ${i}`).to.be.at.least(1.2));
    expect(projector.get('whole')).to.have.length(2);
  });
});

describe('a map on a wall', () => {
  const WALL = { width: 3400, height: 2000 };

  it('is the one of a projector, larger: names, signs, tools and reading grow with the figure', async () => {
    const measure = async (size: { width: number; height: number }): Promise<number[]> => {
      const map = await openMap(size);
      const parts = [
        figureOf(map).querySelector('.label') as Element,
        figureOf(map).querySelector('.glyph') as Element,
        byRole(map, 'button', 'Table'),
        byRole(map, 'button', 'Go to site: right femoral'),
      ];
      return parts.map((part) => seenBox(part).height / seenBox(figureOf(map)).height);
    };
    const usual = await measure({ width: 1880, height: 1080 });
    (await measure(WALL)).forEach((share, i) =>
      expect(share / usual[i]!, String(i)).to.be.within(0.85, 1.15),
    );
  });

  it('keeps its labels apart, fits the screen, and opens a chooser on it, beside the site', async () => {
    const map = await openMap({ ...WALL, examination: longest() });
    expect(await badLabels(map, WALL.width)).to.deep.equal([]);
    map.view = 'auto';
    await settled(map);
    const { top } = seenBox(byRole(map, 'toolbar', 'Pulse map tools'));
    const { bottom } = seenBox(allByRole(map, 'status')[0]!);
    expect(bottom - top, 'tools, figure and status strip').to.be.at.most(window.innerHeight);
    for (const name of ['right dorsalis pedis', 'left superficial temporal']) {
      await click(site(map, name));
      await settled(map);
      const box = seenBox(chooser(map)!);
      expect(box.width, 'larger, too').to.be.above(500);
      expect(box.top).to.be.at.least(0);
      expect(box.bottom).to.be.at.most(window.innerHeight);
      const own = seenBox(site(map, name));
      expect(box.right <= own.left || box.left >= own.right, name).to.equal(true);
    }
  });
});

describe('targets', () => {
  for (const width of WIDTHS) {
    const least = width >= DEFAULT_WIDTH ? 44 : 24;
    it(`at ${width} px are at least ${least} px apart, in every view`, async () => {
      const map = await openMap({ width });
      for (const view of viewsAt(width)) {
        map.view = view;
        await settled(map);
        const { distance, between } = leastDistance(drawn(map).targets);
        expect(distance, `${view}: ${between}`).to.be.at.least(least);
      }
    });

    it(`at ${width} px has every site within reach`, async () => {
      const map = await openMap({ width });
      const reached = new Set(Object.keys(saidAll(map)));
      const parts = ['Arms', 'Right arm', 'Left arm', 'Legs'].flatMap((name) =>
        allByRole(map, 'button', name),
      );
      if (parts.length) {
        for (const part of parts) {
          part.click();
          await settled(map);
          for (const name of Object.keys(saidAll(map))) reached.add(name);
        }
      }
      expect(reached.size).to.equal(PLACES.length);
    });
  }
});

describe('the control as a whole', () => {
  // Around the widths at which something changes its form, too.
  for (const width of [...WIDTHS, 880, 1000, 1250]) {
    it(`at ${width} px never scrolls within itself and is no wider than its place`, async () => {
      const map = await openMap({ width, examination: longest() });
      for (const display of ['figure', 'table'] as const) {
        map.display = display;
        await settled(map);
        const place = map.parentElement?.getBoundingClientRect().width ?? 0;
        expect(map.getBoundingClientRect().width).to.be.at.most(place + 0.5);
        expect(map.scrollWidth, `${display}: wider than itself`).to.be.at.most(map.clientWidth);
        const scrolling = everything(map.shadowRoot as ShadowRoot).filter((element) => {
          const { overflowX, overflowY } = getComputedStyle(element);
          const across = element.scrollWidth > element.clientWidth + 1 && /auto|scroll/.test(overflowX);
          const down = element.scrollHeight > element.clientHeight + 1 && /auto|scroll/.test(overflowY);
          return (across || down) && !element.matches('select, textarea');
        });
        expect(scrolling.map((element) => `${element.localName}.${element.className}`)).to.deep.equal([]);
        const out = everything(map.shadowRoot as ShadowRoot).filter((element) => {
          const box = element.getBoundingClientRect();
          return (
            box.width > 2 && element.checkVisibility() && box.right > map.getBoundingClientRect().right + 1
          );
        });
        expect(
          out.map((element) => `${display}: ${element.localName}.${element.getAttribute('class')}`),
        ).to.deep.equal([]);
      }
    });
  }

  for (const width of WIDTHS) {
    it(`at ${width} px moves no site while findings are recorded`, async () => {
      const map = await openMap({ width });
      const spots = (): Record<string, string> =>
        Object.fromEntries(
          drawn(map).targets.map(({ name, left, top }: NamedBox) => [
            name.replace(/:.*/s, ''),
            `${Math.round(left)} ${Math.round(top)}`,
          ]),
        );
      const before = spots();
      // Everything but what raises a red flag, which is to be seen above the figure at once.
      map.examination = restless();
      await settled(map);
      expect(spots()).to.deep.equal(before);
    });
  }

  it('shifts nothing after its first paint', async () => {
    const shifts: number[] = [];
    const observer = new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        shifts.push((entry as PerformanceEntry & { value: number }).value);
    });
    for (const width of [360, 820, 1440]) {
      const frame = document.createElement('div');
      frame.style.width = `${width}px`;
      frame.innerHTML = '<pulse-map></pulse-map><p>What stands below the map.</p>';
      document.body.append(frame);
      observer.observe({ type: 'layout-shift' });
      const map = frame.querySelector('pulse-map') as unknown as PulseMap;
      const below = frame.querySelector('p') as HTMLElement;
      await new Promise(requestAnimationFrame);
      const first = [
        below.getBoundingClientRect().top,
        site(map, 'right femoral').getBoundingClientRect().top,
      ];
      await settled(map);
      await document.fonts.ready;
      await settled(map);
      const later = [
        below.getBoundingClientRect().top,
        site(map, 'right femoral').getBoundingClientRect().top,
      ];
      expect(later).to.deep.equal(first);
      frame.remove();
    }
    observer.disconnect();
    expect(shifts).to.deep.equal([]);
  });

  it('moves no site when the screen changes its height between two findings, as a bar of the browser does', async () => {
    const map = await openMap({ width: 900, height: 1300 });
    const spots = (): string[] =>
      drawn(map).targets.map(({ left, top }) => `${Math.round(left)} ${Math.round(top)}`);
    const before = spots();
    await setViewport({ width: 940, height: 1180 });
    map.examination = restless();
    await settled(map);
    expect(spots()).to.deep.equal(before);
  });

  it('keeps the figure where it is while its parts open and a step is undone', async () => {
    const map = await openMap({ width: 1200 });
    const top = (): number => site(map, 'right femoral').getBoundingClientRect().top;
    const before = top();
    site(map, 'right femoral').focus();
    await press('2', 'ArrowRight', '0', 'Control+z');
    await settled(map);
    expect(top()).to.equal(before);
  });
});
