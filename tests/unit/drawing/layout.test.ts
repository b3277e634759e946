import { describe, expect, it } from 'vitest';
import { contains, oppositeSide, type Place, placeKey, PULSE_PLACES } from '../../../src/anatomy/index.js';
import {
  type BodyView,
  clipOf,
  cropOf,
  isPlateView,
  type Layout,
  layOut,
  nearestSite,
  placesIn,
  positionOf,
  siteIn,
  sitesIn,
  textWidth,
  untoldIn,
  VIEWS,
} from '../../../src/drawing/index.js';
import { emptyExamination, setPulse } from '../../../src/examination/index.js';
import '../../../src/locale/de/register.js';
import { en, messagesFor } from '../../../src/locale/index.js';
import { LANGUAGES } from '../../../src/locale/list.js';

const WIDTHS = [278, 318, 358, 412, 638, 766, 791, 818, 1022, 1051, 1531] as const;
const TALL = 860;
const BODY = VIEWS.filter((view): view is BodyView => !isPlateView(view));
/** The whole body is not shown where only arms or legs fit. */
const cases = WIDTHS.flatMap((width) =>
  BODY.filter((view) => view !== 'whole' || width > 600).map((view) => [view, width] as const),
);

function laidOut(view: BodyView, width: number, finding = ''): Layout {
  return layOut(view, width, TALL, (place: Place) => ({
    name: en.map.siteShort(place.site),
    code: en.anatomy.codes[place.site],
    finding,
  }));
}

describe('layOut', () => {
  it.each(cases)('keeps the sites of %s at %i px at least 24 px apart', (view, width) => {
    const { sites } = laidOut(view, width);
    sites.forEach((a, i) => {
      for (const b of sites.slice(i + 1)) {
        const distance = Math.hypot(a.x - b.x, a.y - b.y);
        expect(distance, `${placeKey(a.place)} and ${placeKey(b.place)}`).toBeGreaterThanOrEqual(24);
      }
    });
  });

  it.each(cases)('keeps sites and names of %s at %i px within the drawing', (view, width) => {
    const { sites, labels, height } = laidOut(view, width);
    for (const { x, y } of [...sites, ...labels]) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(width);
      expect(y).toBeGreaterThan(8);
      expect(y).toBeLessThan(height - 8);
    }
  });

  it.each(cases)('gives every site of %s at %i px one name, on its own side', (view, width) => {
    const { sites, labels } = laidOut(view, width);
    expect(labels.map(({ key }) => key).sort()).toEqual(sites.map(({ place }) => placeKey(place)).sort());
    for (const { place, anchor } of labels) {
      if (place.side !== 'midline') expect(anchor).toBe(place.side === 'left' ? 'start' : 'end');
    }
  });

  it.each(cases)('lets no two lines of one side of %s at %i px cross', (view, width) => {
    const { labels } = laidOut(view, width);
    type Segment = readonly [x1: number, y1: number, x2: number, y2: number];
    const segments = labels.map(({ leader }) =>
      leader.slice(1).map(([x, y], i): Segment => [leader[i]?.[0] ?? 0, leader[i]?.[1] ?? 0, x, y]),
    );
    const turn = (x1: number, y1: number, x2: number, y2: number, x: number, y: number): number =>
      Math.sign((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1));
    const cross = (a: Segment, b: Segment): boolean =>
      turn(...a, b[0], b[1]) * turn(...a, b[2], b[3]) < 0 &&
      turn(...b, a[0], a[1]) * turn(...b, a[2], a[3]) < 0;
    const crossing: string[] = [];
    labels.forEach((one, i) => {
      labels.slice(i + 1).forEach((other, k) => {
        if (segments[i]?.some((a) => segments[i + 1 + k]?.some((b) => cross(a, b)))) {
          crossing.push(`${one.key} and ${other.key}`);
        }
      });
    });
    expect(crossing).toEqual([]);
  });

  it('is the same whatever was found, but for the lines of the findings', () => {
    for (const [view, width] of cases) {
      const { findings: none, ...quiet } = laidOut(view, width);
      const { findings: some, ...loud } = laidOut(view, width, 'increased, bruit, thrill, expansile');
      expect(loud).toEqual(quiet);
      expect(none.size).toBe(0);
      if (loud.naming === 'names') expect(some.size).toBe(loud.sites.length);
      else expect(some.size).toBe(0);
    }
  });

  it('mirrors right and left, but for the first branches of the arch', () => {
    // Where the drawing is so small that sites are moved apart, neighbours that differ push differently.
    for (const [view, width] of cases.filter(([v, w]) => !v.includes('-') && w > 600)) {
      const { sites } = laidOut(view, width);
      for (const { place, x, y } of sites) {
        const twin = sites.find(
          (s) => s.place.site === place.site && s.place.side === oppositeSide(place.side),
        );
        if (place.side === 'midline' || ['carotid', 'subclavian'].includes(place.site)) continue;
        expect((twin?.x ?? 0) + x, `${place.site} ${view} ${width}`).toBeCloseTo(width, 0);
        expect(twin?.y).toBeCloseTo(y, 0);
      }
    }
  });

  it('grows with its room and never past the height allowed', () => {
    for (const view of BODY) {
      for (const naming of ['names', 'codes'] as const) {
        const scales = WIDTHS.map((width) => laidOut(view, width))
          .filter((layout) => layout.naming === naming)
          .map(({ scale }) => scale);
        expect([...scales].sort((a, b) => a - b)).toEqual(scales);
      }
      for (const width of WIDTHS) expect(laidOut(view, width).height).toBeLessThanOrEqual(TALL + 16);
    }
  });

  it.each(
    BODY.filter((view) => view.includes('-')).flatMap((view) =>
      WIDTHS.filter((width) => width >= 766).map((width) => [view, width] as const),
    ),
  )('stands the limb of %s at %i px in the middle, with its names near', (view, width) => {
    const { labels, sites, offsetX, scale } = laidOut(view, width);
    const crop = cropOf(view);
    const longest = Math.max(...labels.map(({ place }) => textWidth(en.map.siteShort(place.site))));
    const lanes = labels.flatMap(({ x, anchor }) =>
      anchor === 'start' ? [x, x + longest] : [x - longest, x],
    );
    const edges = [crop.x * scale + offsetX, (crop.x + crop.width) * scale + offsetX, ...lanes];
    const [left, right] = [Math.min(...edges), Math.max(...edges)];
    expect(Math.abs(left - (width - right)), 'room at both sides').toBeLessThan(60);
    for (const { leader } of labels) {
      const xs = leader.map(([x]) => x);
      expect(Math.max(...xs) - Math.min(...xs)).toBeLessThan(340 * scale);
    }
    expect(sites.length).toBeGreaterThan(3);
  });

  it('shows of a view of one side no other limb, and every site of its own', () => {
    for (const view of BODY) {
      const d = clipOf(view);
      expect(d === undefined).toBe(!view.includes('-'));
      if (!d) continue;
      const numbers = [...d.matchAll(/([MVHL])([\d. -]+)/g)];
      const corners: [number, number][] = [];
      for (const [, command, rest = ''] of numbers) {
        const values = rest.trim().split(' ').map(Number);
        const [x, y] = corners.at(-1) ?? [0, 0];
        corners.push(
          command === 'V'
            ? [x, values[0] as number]
            : command === 'H'
              ? [values[0] as number, y]
              : (values as [number, number]),
        );
      }
      for (const place of placesIn(view)) {
        const { x, y } = positionOf(place);
        expect(contains(corners, [x, y]), `${view} ${placeKey(place)}`).toBe(true);
      }
      const other = view.startsWith('left') ? 'right' : 'left';
      for (const site of ['popliteal', 'dorsalis-pedis', 'brachial'] as const) {
        const { x, y } = positionOf({ site, side: other });
        expect(contains(corners, [x, y]), `${view} ${other} ${site}`).toBe(false);
      }
    }
  });

  it('names the sites where there is room and gives codes where there is not', () => {
    expect(laidOut('whole', 1051).naming).toBe('names');
    expect(laidOut('legs', 358).naming).toBe('codes');
  });
});

describe('one leg on a phone', () => {
  it('is named in every language where the screen is 360 px wide or more, however high', () => {
    for (const { tag } of LANGUAGES)
      for (const width of [350, 358, 362, 380])
        for (const height of [560, 640, 714, 780])
          for (const view of ['right-leg', 'left-leg'] as const) {
            const { map, anatomy } = messagesFor(tag);
            const layout = layOut(view, width, height, ({ site }) => ({
              name: map.siteShort(site),
              code: anatomy.codes[site],
            }));
            expect(layout.naming, `${tag} ${view} ${width} by ${height} px`).toBe('names');
          }
  });
});

describe('what an earlier record found', () => {
  // As wide and high as windows of 1280 by 720 px, of 1366 by 768 and of 1440 by 900 leave a figure.
  const frames = [
    [760, 720],
    [852, 620],
    [936, 668],
    [1010, 800],
  ] as const;
  const grades = ['absent', 'reduced', 'normal', 'bounding'] as const;
  for (const { tag } of LANGUAGES)
    it.each(frames)(`has room beside every pulse in a figure of %i by %i px (${tag})`, (width, height) => {
      const words = messagesFor(tag);
      const now = emptyExamination('0-3');
      for (const grade of grades) {
        const before = PULSE_PLACES.reduce((record, place) => setPulse(record, place, { grade }), now);
        const sites = sitesIn('whole', now, before, undefined, undefined, words);
        const { findings } = layOut('whole', width, height, (place) => ({
          name: words.map.siteShort(place.site),
          code: words.anatomy.codes[place.site],
          finding: sites.get(placeKey(place))?.finding ?? '',
        }));
        expect(findings.size, grade).toBe(PULSE_PLACES.length);
        expect(untoldIn(findings), grade).toEqual([]);
      }
    });
});

describe('nearestSite', () => {
  const layout = laidOut('whole', 1051);

  it('is the one meant, at it and near it, and none out of reach', () => {
    for (const { place, x, y } of layout.sites) {
      expect(nearestSite(layout, x, y, 22)?.place).toBe(place);
      expect(nearestSite(layout, x + 5, y - 5, 22)?.place).toBe(place);
    }
    expect(nearestSite(layout, 3, 3, 22)).toBeUndefined();
  });

  it('agrees with the site found by its key', () => {
    for (const site of layout.sites) expect(siteIn(layout, placeKey(site.place))).toBe(site);
    expect(siteIn(laidOut('legs', 1051), 'left radial')).toBeUndefined();
  });
});
