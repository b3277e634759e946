import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contains, PIECES, type Place, placeKey, type Side, SIDES } from '../../../src/anatomy/index.js';
import {
  drawnFlow,
  drawnRadius,
  isPlateView,
  PLATE_NAMES,
  PLATE_VIEWS,
  type PlateName,
  plateOf,
  type PlateView,
  placeRidges,
  placesIn,
  type Point,
  RADII_MM,
  sampleAt,
  type Spline,
  VIEWS,
} from '../../../src/drawing/index.js';
import { drawnRecord } from '../../../src/drawing/drawn-record.js';
import { layOutPlate } from '../../../src/drawing/plates/layout.js';
import { helpPath, plateParts } from '../../../src/drawing/plates/parts.js';
import type { Plate } from '../../../src/drawing/plates/plate.js';
import { onArtery, preparedPlate, type PreparedPlate } from '../../../src/drawing/plates/prepared.js';
import { emptyExamination, setPulse } from '../../../src/examination/index.js';
import { de } from '../../../src/locale/de/index.js';
import { en } from '../../../src/locale/index.js';
import { gradedExamination } from '../../tools/arbitraries.js';

const PLATES = Object.fromEntries(
  await Promise.all(
    PLATE_NAMES.map(async (name) => {
      const { plate } = (await import(`../../../src/drawing/plates/${name}.ts`)) as { plate: Plate };
      return [name, plate] as const;
    }),
  ),
) as Record<PlateName, Plate>;

const prepared = (view: PlateView): PreparedPlate => preparedPlate(PLATES[plateOf(view).name], view);
const WIDTHS = [358, 412, 638, 766, 818, 1051, 1531];
const cases = PLATE_VIEWS.flatMap((view) =>
  WIDTHS.flatMap((width) => [en, de].map((words) => [view, width, words] as const)),
);
const laidOut = ([view, width, words]: (typeof cases)[number]): ReturnType<typeof layOutPlate> =>
  layOutPlate(prepared(view), width, 860, (place: Place) => ({
    name: words.map.siteShort(place.site),
    code: words.anatomy.codes[place.site],
  }));

const samples = (spline: Spline, step: number): Point[] => {
  const count = Math.ceil(spline.length / step);
  return Array.from({ length: count + 1 }, (_, i): Point => {
    const { x, y } = sampleAt(spline, i / count);
    return [x, y];
  });
};

/** The largest turn between neighbours of a line sampled every 2 units, in degrees, and where it is. */
function sharpest(points: readonly Point[]): { turn: number; at: Point } {
  let worst = { turn: 0, at: points[0] as Point };
  for (let i = 1; i < points.length - 1; i++) {
    const [[ax, ay], [bx, by], [cx, cy]] = [points[i - 1], points[i], points[i + 1]] as [Point, Point, Point];
    const turn = Math.abs(
      Math.atan2(
        (bx - ax) * (cy - by) - (by - ay) * (cx - bx),
        (bx - ax) * (cx - bx) + (by - ay) * (cy - by),
      ),
    );
    if ((turn * 180) / Math.PI > worst.turn) worst = { turn: (turn * 180) / Math.PI, at: [bx, by] };
  }
  return worst;
}

describe('plates', () => {
  it('are every view that is no part of the whole figure', () => {
    expect(VIEWS.filter(isPlateView)).toEqual([...PLATE_VIEWS]);
    expect(Object.keys(PLATES)).toEqual([...PLATE_NAMES]);
  });

  it.each(PLATE_NAMES)('%s: the data take at most 8 kB gzipped', (name) => {
    const source = readFileSync(new URL(`../../../src/drawing/plates/${name}.ts`, import.meta.url));
    expect(gzipSync(source, { level: 9 }).length).toBeLessThanOrEqual(8 * 1024);
  });

  it.each(PLATE_VIEWS)('%s: has each of its sites once, on the skin', (view) => {
    const plate = prepared(view);
    const skin = plate.outlines.map((outline) => samples(outline, 3));
    for (const place of placesIn(view)) {
      const at = plate.positionOf(place);
      expect(at, placeKey(place)).toBeDefined();
      expect(skin.some((contour) => contains(contour, at as Point))).toBe(true);
    }
    expect(plate.plate.sites.map(({ site }) => site).sort()).toEqual(
      [...new Set(placesIn(view).map(({ site }) => site))].sort(),
    );
  });

  it.each(PLATE_NAMES.filter((name) => name !== 'legs-behind'))(
    '%s: the right is the mirror image of the left',
    (name) => {
      const [right, left] = SIDES.map((side) => prepared(`${side}-${name}` as PlateView)) as [
        PreparedPlate,
        PreparedPlate,
      ];
      const width = left.size[0];
      for (const { site } of left.plate.sites) {
        const [x, y] = left.positionOf({ site, side: 'left' } as Place) as Point;
        const [mirroredX, mirroredY] = right.positionOf({ site, side: 'right' } as Place) as Point;
        expect(mirroredX).toBeCloseTo(width - x, 6);
        expect(mirroredY).toBeCloseTo(y, 6);
      }
      expect(right.courses.every(({ side }) => side === 'right')).toBe(true);
      expect(left.courses.every(({ side }) => side === 'left')).toBe(true);
    },
  );

  // Standard anatomy (from memory): which of two courses lies nearer the reader's right.
  it.each<[PlateView, string, string, string]>([
    ['left-hand', 'radial', 'ulnar', 'the thumb of a left palm with the fingers down points to the right'],
    ['right-hand', 'ulnar', 'radial', 'the thumb of a right palm points to the left'],
    [
      'left-knee',
      'posterior-tibial',
      'peroneal',
      'from behind, the inner side of a left knee is on the right',
    ],
    [
      'right-knee',
      'peroneal',
      'posterior-tibial',
      'from behind, the inner side of a right knee is on the left',
    ],
    [
      'left-sole',
      'metatarsal-5',
      'metatarsal-1',
      'the little toe of a left sole with the toes up is on the right',
    ],
    ['right-sole', 'metatarsal-1', 'metatarsal-5', 'the little toe of a right sole is on the left'],
    [
      'left-foot',
      'dorsal-metatarsal-4',
      'first-dorsal-metatarsal',
      'the little toe of a left foot is on the right',
    ],
    [
      'right-foot',
      'first-dorsal-metatarsal',
      'dorsal-metatarsal-4',
      'the little toe of a right foot is on the left',
    ],
  ])('%s: %s lies right of %s (%s)', (view, more, less) => {
    const end = (id: string): number => {
      const course = prepared(view).courses.find(({ artery }) => artery.id === id);
      return sampleAt((course as { spline: Spline }).spline, 1).x;
    };
    expect(end(more)).toBeGreaterThan(end(less));
  });

  it.each(PLATE_VIEWS)('%s: has landmarks by which each of its sites is found, on its own side', (view) => {
    const plate = prepared(view);
    for (const place of placesIn(view)) {
      const d = helpPath(plate, place);
      expect(d, placeKey(place)).not.toBe('');
      const [x] = plate.positionOf(place) as Point;
      const [first] = [...d.matchAll(/M(-?\d+)/g)].map(([, at]) => Number(at) / 10);
      if (plate.plate.pair) expect(first! > plate.size[0] / 2).toBe(x > plate.size[0] / 2);
    }
  });

  it('shows the left leg on the left from behind', () => {
    const plate = prepared('legs-behind');
    const x = (side: Side): number => (plate.positionOf({ site: 'popliteal', side }) as Point)[0];
    expect(x('left')).toBeLessThan(x('right'));
    expect(laidOut(['legs-behind', 766, en]).letters.map(({ side }) => side)).toEqual(['left', 'right']);
  });

  it.each(PLATE_VIEWS)('%s: its arteries bend smoothly', (view) => {
    for (const { artery, spline } of prepared(view).courses) {
      const { turn, at } = sharpest(samples(spline, 2));
      expect(turn, `${artery.id} at ${at.join(' ')}`).toBeLessThan(35);
    }
  });

  it.each(PLATE_NAMES)('%s: draws arteries by the law of the calibre, times its factor', (name) => {
    const view = name === 'legs-behind' ? name : (`left-${name}` as PlateView);
    for (const { artery, radius } of prepared(view).courses)
      for (const u of [0, 0.3, 1]) {
        const [origin, end] = artery.mm ?? RADII_MM[artery.artery!];
        const t = artery.mm ? u : onArtery(artery, u);
        expect(radius(u)).toBeCloseTo(PLATES[name].factor * drawnRadius(origin + (end - origin) * t), 9);
      }
  });

  it('shows every part of an artery at most once and in its order', () => {
    for (const view of PLATE_VIEWS)
      for (const piece of PIECES) {
        const strands = prepared(view).strandsOf(piece);
        expect(strands.reduce((sum, { share }) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
        for (const { from, to, share } of strands) {
          expect(to).toBeGreaterThan(from);
          expect(share).toBeGreaterThan(0);
        }
      }
  });
});

describe('plateParts', () => {
  it('draws an artery hollow where and only where the record says that it has no flow', () => {
    fc.assert(
      fc.property(gradedExamination, fc.constantFrom(...PLATE_VIEWS), (examination, view) => {
        const plate = prepared(view);
        const flow = drawnFlow(examination, []);
        const none = plate.courses.some(({ artery, side }) =>
          flow.some(({ piece, from, to, flow: own }) => {
            if (piece.side !== side || own !== 'none') return false;
            if (artery.source)
              return artery.source[0] === piece.artery && from <= artery.source[1] && artery.source[1] <= to;
            return artery.artery === piece.artery && from < onArtery(artery, 1) && to > onArtery(artery, 0);
          }),
        );
        const kinds = plateParts(plate, flow).map(({ kind }) => kind);
        expect(kinds.includes('hollow') || kinds.includes('behind-hollow')).toBe(none);
      }),
      { numRuns: 60 },
    );
  });

  it('draws nothing hollow in an empty record', () => {
    for (const view of PLATE_VIEWS) {
      const kinds = plateParts(prepared(view), drawnFlow(emptyExamination(), [])).map(({ kind }) => kind);
      expect(kinds).not.toContain('hollow');
      expect(kinds).not.toContain('behind-hollow');
    }
  });
});

describe('layOutPlate', () => {
  it('keeps targets 44 px apart, and sites and names within the drawing', () => {
    for (const one of cases) {
      const { sites, labels, width, height, naming } = laidOut(one);
      sites.forEach((a, i) => {
        for (const b of sites.slice(i + 1))
          expect(Math.hypot(a.x - b.x, a.y - b.y), `${one[0]} at ${one[1]}`).toBeGreaterThanOrEqual(44);
      });
      const words = one[2];
      for (const { place, x, y, anchor } of labels) {
        const wide = naming === 'names' ? words.map.siteShort(place.site).length * 7.5 : 22;
        const [left, right] = anchor === 'start' ? [x, x + wide] : [x - wide, x];
        expect(left, `${one[0]} at ${one[1]}`).toBeGreaterThanOrEqual(0);
        expect(right, `${one[0]} at ${one[1]}`).toBeLessThanOrEqual(width);
        expect(y).toBeLessThan(height);
      }
      for (const { x, y } of sites) {
        expect(x - 22).toBeGreaterThanOrEqual(0);
        expect(x + 22).toBeLessThanOrEqual(width);
        expect(y + 22).toBeLessThanOrEqual(height);
      }
    }
  });

  it('lets no name or leader stand on skin other than that of its own limb, nor on another site', () => {
    for (const one of cases) {
      const { sites, labels, scale, offsetX, offsetY } = laidOut(one);
      const skin = prepared(one[0]).outlines.map((outline) =>
        samples(outline, 6).map(([x, y]): Point => [x * scale + offsetX, y * scale + offsetY]),
      );
      for (const { place, x, y, leader } of labels) {
        expect(
          skin.some((contour) => contains(contour, [x, y])),
          `${one[0]} at ${one[1]}`,
        ).toBe(false);
        for (const site of sites.filter((other) => other.place !== place))
          for (let i = 0; i <= 20; i++) {
            const [[ax, ay], [bx, by]] = leader as [Point, Point];
            const distance = Math.hypot(
              ax + ((bx - ax) * i) / 20 - site.x,
              ay + ((by - ay) * i) / 20 - site.y,
            );
            expect(distance).toBeGreaterThan(22);
          }
      }
    }
  });

  it('always says the side', () => {
    for (const one of cases) {
      const { letters, captions } = laidOut(one);
      const { side } = plateOf(one[0]);
      expect(letters.map((letter) => letter.side)).toEqual(side === 'midline' ? ['left', 'right'] : [side]);
      expect(captions?.some(({ word }) => word === 'title')).toBe(true);
    }
  });

  it('stands its captions clear of the skin, in full, at every width', () => {
    for (const one of cases) {
      const [view, width, words] = one;
      const { captions = [], scale, offsetX, offsetY, height } = laidOut(one);
      const { outlines, size } = prepared(view);
      const skin = outlines.map((outline) =>
        samples(outline, 8).map(([x, y]): Point => [x * scale + offsetX, y * scale + offsetY]),
      );
      const end = size[1] * scale + offsetY;
      for (const { word, x, y } of captions) {
        if (word === 'title') continue;
        const half = (words.map.plates.captions[word].length * 7) / 2;
        expect([x - half >= 0, x + half <= width, y <= height], `${view} ${width} ${word}`).toEqual([
          true,
          true,
          true,
        ]);
        // What lies past the end of the box is not drawn.
        const on = [-half, 0, half].some((dx) =>
          [-10, 3].some((dy) => y + dy < end && skin.some((contour) => contains(contour, [x + dx, y + dy]))),
        );
        expect(on, `${view} ${width} ${word}`).toBe(false);
      }
    }
  });

  it('stands what the localisation says beside the arteries that it shows, with its number', () => {
    let examination = emptyExamination();
    for (const [site, grade] of [
      ['femoral', 'normal'],
      ['popliteal', 'absent'],
    ] as const)
      examination = setPulse(examination, { site, side: 'left' }, { grade });
    const { marks } = drawnRecord(examination);
    expect(marks.length).toBeGreaterThan(0);
    for (const view of ['left-knee', 'legs-behind'] as const) {
      const layout = laidOut([view, 818, en]);
      const placed = placeRidges(marks, layout);
      const shown = placed.filter(({ outline }) => outline !== '');
      expect(shown.length).toBeGreaterThan(0);
      for (const { number } of shown) {
        expect(number).toBeDefined();
        expect(number!.x).toBeGreaterThan(0);
        expect(number!.x).toBeLessThan(layout.width);
      }
    }
    expect(placeRidges(marks, laidOut(['right-knee', 818, en])).every(({ outline }) => outline === '')).toBe(
      true,
    );
  });
});
