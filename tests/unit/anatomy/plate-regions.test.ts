import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  contains,
  type MarkForm,
  onFigure,
  onPlate,
  partOf,
  PLATE_BOXES,
  PLATE_VIEWS,
  plateOf,
  type PlatePlace,
  platePlaces,
  platePlaceShape,
  plateRegionsOf,
  type PlateView,
  regionsOf,
  regionShape,
  SKIN_PLACES,
  type SkinName,
  type SurfacePoint,
} from '../../../src/anatomy/index.js';

const FORMS: readonly MarkForm[] = ['area', 'across', 'along'];
const places = PLATE_VIEWS.flatMap(platePlaces);
const called = ({ view, name }: PlatePlace): string =>
  `${view}: ${[name.side, name.third, name.region, name.face].filter(Boolean).join(' ')}`;

/** The regions of the whole figure on which each area may lie (from memory of surface anatomy). */
const ON_FIGURE: Partial<Record<SkinName['region'], readonly SkinName['region'][]>> = {
  thenar: ['hand'],
  hypothenar: ['hand'],
  palm: ['hand'],
  // The figure shows no back: what lies behind is kept where its limb begins.
  buttock: ['groin', 'abdomen', 'thigh'],
  'thigh-back': ['thigh'],
  'popliteal-fossa': ['knee'],
  calf: ['shin'],
  gaiter: ['shin'],
  achilles: ['shin', 'ankle'],
  'medial-malleolus': ['ankle'],
  'lateral-malleolus': ['ankle'],
  dorsum: ['midfoot', 'forefoot'],
  instep: ['midfoot', 'heel'],
  'base-5': ['midfoot', 'forefoot'],
  'met-head-1': ['forefoot'],
  'met-head-2': ['forefoot'],
  'met-head-3': ['forefoot'],
  'met-head-4': ['forefoot'],
  'met-head-5': ['forefoot'],
  'first-web': ['forefoot', 'great-toe', 'second-toe'],
  midfoot: ['midfoot', 'forefoot'],
};

describe('the named areas of the plates', () => {
  it.each(places.map((place) => [called(place), place] as const))(
    '%s names the mark that is made from it',
    (_, place) => {
      for (const form of FORMS) {
        const points = platePlaceShape(place, form);
        const [width, height] = PLATE_BOXES[plateOf(place.view).name];
        for (const [x, y] of points) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(width);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(height);
        }
        const { region, side } = place.name;
        expect(plateRegionsOf(place.view, points, form)[0], form).toMatchObject({ region, side });
      }
    },
  );

  it.each(places.map((place) => [called(place), place] as const))(
    '%s lies on the same part of the whole figure',
    (_, place) => {
      const { region, side } = place.name;
      const onBody = onFigure(place.view, platePlaceShape(place, 'area'));
      const [name] = regionsOf(onBody, 'area');
      expect(ON_FIGURE[region] ?? [region]).toContain(name?.region);
      expect(name?.side).toBe(side);
    },
  );

  it('are mirror images on the other side', () => {
    for (const view of PLATE_VIEWS.filter((one) => one.startsWith('left'))) {
      const other = view.replace('left', 'right') as PlateView;
      const [width] = PLATE_BOXES[plateOf(view).name];
      const mirrored = platePlaces(view).map(({ name, shape }) => ({
        view: other,
        name: { ...name, side: 'right' },
        shape: shape.map(([x, y]) => [width - x, y]),
      }));
      expect(platePlaces(other)).toEqual(mirrored);
    }
  });

  it('leave a mark off the skin without a name', () => {
    const far: SurfacePoint[] = [
      [20, 900],
      [60, 900],
      [40, 960],
    ];
    for (const view of ['left-hand', 'left-sole', 'left-knee'] as const)
      expect(plateRegionsOf(view, far, 'area')).toEqual([]);
  });

  it('name three toes or more together, with the face that was marked', () => {
    const toes = platePlaces('left-sole').filter(({ name }) => name.region.endsWith('-toe'));
    const across = toes.map(({ shape }) =>
      shape.reduce(([ax, ay], [x, y]) => [ax + x / shape.length, ay + y / shape.length], [0, 0]),
    );
    expect(plateRegionsOf('left-sole', across as unknown as SurfacePoint[], 'along')).toContainEqual({
      region: 'toes',
      side: 'left',
      face: 'plantar',
    });
  });

  it.each([
    ['left-foot', '160 718 238 717 277 700 312 672 360 636'],
    ['left-sole', '345 130 480 120 543 149 598 193 675 262'],
  ] as const)('call a line across all toes of the %s "toes", as the whole figure does', (view, text) => {
    const numbers = text.split(' ').map(Number);
    const line = Array.from({ length: 5 }, (_, i) =>
      numbers.slice(2 * i, 2 * i + 2),
    ) as unknown as SurfacePoint[];
    for (const form of ['across', 'along'] as const) {
      expect(plateRegionsOf(view, line, form)).toMatchObject([{ region: 'toes', side: 'left' }]);
      expect(regionsOf(onFigure(view, line), form)).toMatchObject([{ region: 'toes', side: 'left' }]);
    }
  });

  it('call the heads of all metatarsal bones the forefoot', () => {
    const heads = platePlaces('left-sole').filter(({ name }) => name.region.startsWith('met-head'));
    const line = heads.map(({ shape }) => shape[0] as SurfacePoint);
    expect(plateRegionsOf('left-sole', line, 'across')).toMatchObject([{ region: 'forefoot' }]);
  });

  it('name the one toe of a sore that only touches its neighbours', () => {
    const sore: SurfacePoint[] = [
      [442, 120],
      [460, 80],
      [500, 80],
      [516, 140],
      [500, 165],
      [460, 165],
    ];
    for (const names of [
      plateRegionsOf('left-sole', sore, 'area'),
      regionsOf(onFigure('left-sole', sore), 'area'),
    ])
      expect(names).toMatchObject([{ region: 'second-toe' }]);
  });

  it('give a line across a limb one name', () => {
    expect(
      plateRegionsOf(
        'legs-behind',
        [
          [620, 900],
          [815, 900],
        ],
        'across',
      ),
    ).toEqual([{ region: 'calf', side: 'right', third: 'mid' }]);
  });
});

describe('a mark of the whole figure on a plate', () => {
  const SHOWN: Partial<Record<PlateView, (name: SkinName) => boolean>> = {
    'left-hand': ({ region }) => partOf({ region }) === 'arm',
    'left-foot': ({ region }) => partOf({ region }) === 'leg',
  };

  it('keeps its toe, finger, heel and side', () => {
    const same = /toe|finger|thumb|heel|wrist/;
    const seen = new Set<string>();
    for (const place of SKIN_PLACES) {
      if (!same.test(place.region)) continue;
      for (const view of PLATE_VIEWS) {
        const points = onPlate(view, regionShape(place, 'area'));
        if (!points) continue;
        seen.add(`${place.side} ${place.region}`);
        expect(plateRegionsOf(view, points, 'area').map(({ region, side }) => `${side} ${region}`)).toContain(
          `${place.side} ${place.region}`,
        );
      }
    }
    expect(seen.size).toBe(SKIN_PLACES.filter(({ region }) => same.test(region)).length);
  });

  it('is never shown on another limb, nor on a face that the figure does not show', () => {
    for (const place of SKIN_PLACES)
      for (const view of PLATE_VIEWS) {
        const points = onPlate(view, regionShape(place, 'area'));
        if (!points) continue;
        expect(['hand', 'foot']).toContain(plateOf(view).name);
        expect(plateOf(view).side).toBe(place.side);
        expect(SHOWN[view]?.({ region: place.region, side: place.side }) ?? true).toBe(true);
      }
  });

  it('comes back near where it was, wherever it lies within an area that both show', () => {
    let came = 0;
    const anyPlace = fc.constantFrom(
      ...places.filter(({ view }) => ['hand', 'sole', 'knee', 'legs-behind'].includes(plateOf(view).name)),
    );
    fc.assert(
      fc.property(anyPlace, fc.double({ min: 0, max: 1, noNaN: true }), fc.nat(), (place, share, corner) => {
        const { shape, view } = place;
        const middle = platePlaceShape(place, 'along')[1] as SurfacePoint;
        const to = shape[corner % shape.length] as SurfacePoint;
        const point: SurfacePoint = [
          middle[0] + (to[0] - middle[0]) * share * 0.6,
          middle[1] + (to[1] - middle[1]) * share * 0.6,
        ];
        if (!contains(shape, point)) return;
        const back = onPlate(view, onFigure(view, [point, point, point]), view);
        if (!back) return;
        const [x, y] = back[0] as SurfacePoint;
        // A twelfth of a plate is about a finger's breadth.
        expect(Math.hypot(x - point[0], y - point[1])).toBeLessThan(80);
        came++;
      }),
    );
    expect(came).toBeGreaterThan(20);
  });
});
