import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaOf,
  AXIS,
  contains,
  FIGURE_HEIGHT,
  FIGURE_WIDTH,
  fromStretch,
  type MarkForm,
  mirrorPoint,
  regionAt,
  regionAxis,
  regionShape,
  regionsOf,
  SKIN_PLACES,
  SKIN_REGION_IDS,
  SKIN_REGIONS,
  type SkinName,
  type SkinPlace,
  type SurfacePoint,
} from '../../../src/anatomy/index.js';
import { en } from '../../../src/locale/index.js';

/* Points are of the patient's left, whose x is beyond the axis of the figure's box (common practice, no source). */
const UNMISTAKABLE: readonly [string, SurfacePoint][] = [
  ['head', [640, 110]],
  ['neck', [635, 230]],
  ['chest', [680, 360]],
  ['abdomen', [660, 580]],
  ['shoulder', [785, 300]],
  ['upper-arm', [826, 412]],
  ['elbow', [872, 484]],
  ['forearm', [932, 545]],
  ['wrist', [985, 607]],
  ['hand', [1030, 662]],
  ['thumb', [1105, 625]],
  ['index-finger', [1125, 708]],
  ['middle-finger', [1110, 737]],
  ['ring-finger', [1084, 752]],
  ['little-finger', [1046, 752]],
  ['groin', [682, 735]],
  ['thigh', [705, 850]],
  ['knee', [710, 970]],
  ['shin', [730, 1150]],
  ['ankle', [738, 1318]],
  ['heel', [708, 1395]],
  ['midfoot', [765, 1385]],
  ['forefoot', [815, 1400]],
  ['great-toe', [858, 1454]],
  ['second-toe', [880, 1444]],
  ['third-toe', [884, 1427]],
  ['fourth-toe', [884, 1410]],
  ['little-toe', [882, 1396]],
];

function circle([cx, cy]: SurfacePoint, r: number, corners = 24): SurfacePoint[] {
  return Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
  });
}

const say = (points: readonly SurfacePoint[], form: MarkForm): string =>
  en.marks.where(regionsOf(points, form));
const mirrorName = (name: SkinName): SkinName => ({
  ...name,
  side: name.side === 'midline' ? 'midline' : name.side === 'left' ? 'right' : 'left',
});

describe('the regions of the skin', () => {
  it.each(UNMISTAKABLE)(
    'call a point of the left %s by its name, and its mirror image the right one',
    (region, point) => {
      expect(regionAt(point)).toEqual({ region, side: 'left' });
      expect(regionAt(mirrorPoint(point))).toEqual({ region, side: 'right' });
    },
  );

  it('are those that contain a point, or else the nearest, wherever it lies', () => {
    const point = fc.tuple(
      fc.double({ min: AXIS, max: 1200, noNaN: true }),
      fc.double({ min: 0, max: 1520, noNaN: true }),
    );
    fc.assert(
      fc.property(point, (at) => {
        const strips = SKIN_REGION_IDS.map((id) => [id, SKIN_REGIONS[id].strip] as const);
        const within = strips.filter(([, strip]) => contains(strip, at)).map(([id]) => id);
        const edge = (strip: readonly SurfacePoint[]): number =>
          Math.min(
            ...strip.map((corner, i) => fromStretch(at, corner, strip.at(i - 1) as SurfacePoint).distance),
          );
        const found = regionAt(at)?.region;
        if (within.length) expect(within).toContain(found);
        else {
          const [least, nearest] = strips
            .map(([id, strip]) => [edge(strip), id] as const)
            .reduce((a, b) => (b[0] < a[0] ? b : a));
          expect(found).toBe(least < 24 ? nearest : undefined);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('are all tried above', () => {
    expect(UNMISTAKABLE.map(([region]) => region)).toEqual([...SKIN_REGION_IDS]);
  });

  it('end a little way off the body', () => {
    expect(regionAt([892, 1410])?.side).toBe('left');
    for (const point of [
      [900, 900],
      [AXIS, 900],
      [10, 10],
      [AXIS, 1480],
    ] as const)
      expect(regionAt(point)).toBeUndefined();
  });

  it('overlap nowhere but in fingers and toes', () => {
    const whole = SKIN_REGION_IDS.filter((id) => !SKIN_REGIONS[id].row);
    for (let x = AXIS + 5; x < 1150; x += 5)
      for (let y = 5; y < 1500; y += 5) {
        const at = whole.filter((id) => contains(SKIN_REGIONS[id].strip, [x, y]));
        expect(at.length, `${x} ${y}: ${at.join(' ')}`).toBeLessThan(2);
      }
  });

  it('run from the heart outward, so that a limb is in one order', () => {
    const far = (region: SkinPlace['region']): number => {
      const [, end] = regionAxis({ region, side: 'left' });
      return Math.hypot(end[0] - AXIS, end[1] - 400);
    };
    for (const part of ['arm', 'leg'] as const) {
      const limb = SKIN_REGION_IDS.filter((id) => SKIN_REGIONS[id].of === part && !SKIN_REGIONS[id].row);
      const reach = limb.map(far);
      // The heel lies behind the ankle, so it alone is no farther out than what comes before it.
      expect(reach.filter((r, i) => i > 0 && r < (reach[i - 1] as number)).length).toBeLessThan(2);
      for (const id of limb) {
        const [near, end] = regionAxis({ region: id, side: 'left' });
        expect(Math.hypot(end[0] - near[0], end[1] - near[1]), id).toBeGreaterThan(20);
      }
    }
  });
});

describe('naming an area', () => {
  it.each([
    ['left forefoot', circle([818, 1398], 16)],
    ['right forefoot', circle(mirrorPoint([818, 1398]), 16)],
    ['left great toe', circle([858, 1453], 9)],
    ['left heel', circle([706, 1392], 14)],
    ['right thumb', circle(mirrorPoint([1100, 624]), 10)],
    ['abdomen', circle([AXIS, 560], 40)],
    ['left abdomen', circle([665, 560], 25)],
    ['left upper thigh', circle([690, 790], 20)],
    ['right mid shin', circle(mirrorPoint([730, 1150]), 25)],
    ['left lower shin', circle([738, 1255], 20)],
    ['left mid forearm', circle([932, 546], 14)],
  ] as const)('says %s', (name, points) => {
    expect(say(points, 'area')).toBe(name);
  });

  it('calls three toes and more "toes", and one or two by their names', () => {
    expect(
      say(
        [
          [866, 1386],
          [896, 1386],
          [902, 1432],
          [878, 1470],
          [844, 1466],
          [846, 1420],
        ],
        'area',
      ),
    ).toBe('left toes');
    expect(
      say(
        [
          [846, 1432],
          [884, 1436],
          [896, 1448],
          [866, 1476],
          [840, 1462],
        ],
        'area',
      ),
    ).toBe('left great toe and second toe');
  });

  it('names a small toe that is wholly covered beside a large region', () => {
    const covered = regionsOf(
      [
        [742, 1345],
        [800, 1335],
        [850, 1380],
        [898, 1384],
        [898, 1404],
        [856, 1404],
        [786, 1440],
        [744, 1425],
      ],
      'area',
    );
    expect(covered.map(({ region }) => region)).toContain('little-toe');
  });

  it('names a long row of regions by its ends', () => {
    const leg: SurfacePoint[] = [
      [660, 950],
      [760, 950],
      [800, 1150],
      [800, 1300],
      [900, 1390],
      [860, 1475],
      [680, 1440],
      [660, 1150],
    ];
    expect(say(leg, 'area')).toBe('left knee to toes');
    expect(say(leg.map(mirrorPoint), 'area')).toBe('right knee to toes');
  });

  it('says both sides where both are covered', () => {
    expect(
      say(
        [
          [430, 820],
          [770, 820],
          [770, 880],
          [430, 880],
        ],
        'area',
      ),
    ).toMatch(/^(left mid thigh and right|right mid thigh and left) mid thigh$/);
  });

  it('names nothing off the body', () => {
    expect(regionsOf(circle([950, 1000], 30), 'area')).toEqual([]);
    expect(
      regionsOf(
        [
          [20, 20],
          [60, 20],
        ],
        'across',
      ),
    ).toEqual([]);
  });

  it('finds a home for a shape too thin to hold a sample', () => {
    expect(
      say(
        [
          [700, 850],
          [704, 850],
          [702, 850],
        ],
        'area',
      ),
    ).toBe('left mid thigh');
  });
});

describe('naming a line', () => {
  it.each([
    [
      'left mid shin',
      [
        [660, 1140],
        [800, 1150],
      ],
    ],
    [
      'right lower thigh',
      [
        [540, 915],
        [440, 920],
      ],
    ],
    [
      'left ankle',
      [
        [680, 1320],
        [800, 1312],
      ],
    ],
    [
      'left wrist',
      [
        [1030, 570],
        [945, 650],
      ],
    ],
    [
      'left toes',
      [
        [868, 1384],
        [846, 1462],
      ],
    ],
  ] as const)('across a limb says where it crosses: %s', (name, points) => {
    expect(say(points, 'across')).toBe(name);
  });

  it('across both legs names both', () => {
    expect(
      regionsOf(
        [
          [400, 1140],
          [800, 1140],
        ],
        'across',
      )
        .map((n) => `${n.side} ${n.region}`)
        .sort(),
    ).toEqual(['left shin', 'right shin']);
  });

  it('along a limb names what it runs over', () => {
    expect(
      say(
        [
          [690, 700],
          [700, 900],
          [705, 960],
        ],
        'along',
      ),
    ).toBe('left thigh and groin');
    expect(
      say(
        [
          [682, 735],
          [700, 900],
          [710, 1100],
          [720, 1320],
        ],
        'along',
      ),
    ).toBe('left thigh to ankle');
  });
});

describe('left and right', () => {
  it('change places and nothing else when a mark is mirrored', () => {
    const point = fc.tuple(fc.integer({ min: 605, max: 1150 }), fc.integer({ min: 30, max: 1470 }));
    const shapes = fc.array(point, { minLength: 3, maxLength: 12 });
    fc.assert(
      fc.property(shapes, fc.constantFrom<MarkForm>('area', 'along', 'across'), (points, form) => {
        const sorted = (names: readonly SkinName[]): string[] => names.map((n) => JSON.stringify(n)).sort();
        expect(sorted(regionsOf(points.map(mirrorPoint), form))).toEqual(
          sorted(regionsOf(points, form).map(mirrorName)),
        );
      }),
      { numRuns: 60, seed: 4 },
    );
  });
});

describe('the shape put on a region', () => {
  const every = SKIN_PLACES.flatMap((place) =>
    (['area', 'across', 'along'] as const).map((form) => ({ ...place, form })),
  );
  it.each(every)('is named after it: $side $region, $form', ({ region, side, form }) => {
    const points = regionShape({ region, side }, form);
    const [name, ...more] = regionsOf(points, form);
    expect(more).toEqual([]);
    expect({ region: name?.region, side: name?.side }).toEqual({ region, side });
    for (const [x, y] of points) {
      expect(x >= 0 && x <= FIGURE_WIDTH && y >= 0 && y <= FIGURE_HEIGHT).toBe(true);
      expect([Math.round(x * 10) / 10, Math.round(y * 10) / 10]).toEqual([x, y]);
    }
  });

  it('covers a good part of it', () => {
    for (const region of SKIN_REGION_IDS) {
      const share =
        areaOf(regionShape({ region, side: 'left' }, 'area')) / areaOf(SKIN_REGIONS[region].strip);
      expect(share, region).toBeGreaterThan(0.3);
      expect(share, region).toBeLessThan(0.5);
    }
  });
});
