import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaOf,
  fromStretch,
  mirrorPoint,
  partOf,
  SKIN_PLACES,
  regionShape,
} from '../../../src/anatomy/index.js';
import {
  farSide,
  markAt,
  markShape,
  openPath,
  type Point,
  showsMark,
  simplify,
  strokePoints,
} from '../../../src/drawing/index.js';
import { type Mark, MARK_FORMS, MARK_KINDS, MOST_POINTS } from '../../../src/examination/index.js';

const point = fc.tuple(fc.integer({ min: 0, max: 1200 }), fc.integer({ min: 0, max: 1500 }));
const stroke = fc.array(point, { minLength: 2, maxLength: 60 });

function circle(cx: number, cy: number, r: number, corners = 200): Point[] {
  return Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
  });
}

/** Where a path begins. */
function beginning(d: string): Point {
  const [, x, y] = /^M(-?[\d.]+) ?(-?[\d.]+)/.exec(d) ?? [];
  return [Number(x), Number(y)];
}

/** Where a path of relative curves ends. */
function end(d: string): Point {
  const [x = 0, y = 0, ...steps] = d.match(/-?\d+(\.\d+)?/g)?.map(Number) ?? [];
  const sum = (at: number): number => steps.reduce((total, v, i) => (i % 6 === at ? total + v : total), 0);
  return [Math.round((x + sum(4)) * 10) / 10, Math.round((y + sum(5)) * 10) / 10];
}

describe('simplify', () => {
  it('keeps the ends and the corners of a line and nothing in between', () => {
    const bent = [
      [0, 0],
      [10, 0.2],
      [20, 0],
      [20, 10],
      [20.3, 20],
      [20, 30],
    ] as const;
    expect(simplify(bent, 1)).toEqual([
      [0, 0],
      [20, 0],
      [20, 30],
    ]);
  });

  it('leaves no point of the stroke farther away than the tolerance', () => {
    fc.assert(
      fc.property(stroke, fc.integer({ min: 1, max: 80 }), (points, tolerance) => {
        const kept = simplify(points, tolerance);
        expect(kept[0]).toBe(points[0]);
        expect(kept.at(-1)).toBe(points.at(-1));
        for (const p of points) {
          const near = Math.min(
            ...kept.slice(1).map((to, i) => fromStretch(p, kept[i] as Point, to).distance),
          );
          expect(near).toBeLessThanOrEqual(tolerance + 1e-9);
        }
        expect(points.filter((p) => kept.includes(p))).toEqual(kept);
      }),
    );
  });

  it('survives a stroke that never moves', () => {
    expect(
      simplify(
        [
          [5, 5],
          [5, 5],
          [5, 5],
        ],
        1,
      ),
    ).toEqual([
      [5, 5],
      [5, 5],
    ]);
  });
});

describe('strokePoints', () => {
  it('makes an area of a round stroke, with far fewer points and nearly the same size', () => {
    const kept = strokePoints([...circle(760, 1390, 20), [780, 1390.5]], 'area', 1) as Point[];
    expect(kept.length).toBeLessThan(30);
    expect(areaOf(kept) / areaOf(circle(760, 1390, 20))).toBeGreaterThan(0.9);
  });

  it('closes a stroke that was not quite closed', () => {
    const kept = strokePoints(
      [
        [700, 1000],
        [740, 1000],
        [740, 1040],
        [700, 1040],
        [700.5, 1002],
      ],
      'area',
      1,
    );
    expect(kept).toEqual([
      [700, 1000],
      [740, 1000],
      [740, 1040],
      [700, 1040],
    ]);
  });

  it.each([
    [
      'a straight stroke',
      [
        [700, 1000],
        [740, 1000],
        [780, 1000],
      ],
    ],
    [
      'a speck',
      [
        [700, 1000],
        [702, 1000],
        [702, 1002],
        [700, 1002],
      ],
    ],
    ['a press that did not move', [[700, 1000]]],
  ] as const)('makes no area of %s', (_, points) => {
    expect(strokePoints(points, 'area', 0.5)).toBeUndefined();
  });

  it('keeps a line open and takes its two ends for a straight one', () => {
    expect(
      strokePoints(
        [
          [690, 1140],
          [735, 1140.3],
          [780, 1140],
        ],
        'across',
        1,
      ),
    ).toEqual([
      [690, 1140],
      [780, 1140],
    ]);
  });

  it('never makes more points than a mark may have', () => {
    const wild = Array.from({ length: 3000 }, (_, i): Point => [600 + (i % 7) * 40, 200 + i / 3]);
    const kept = strokePoints(wild, 'along', 0.5) as Point[];
    expect(kept.length).toBeLessThanOrEqual(MOST_POINTS);
    expect(kept.length).toBeGreaterThan(MOST_POINTS / 3);
    expect([kept[0], kept.at(-1)]).toEqual([wild[0], wild.at(-1)]);
  });
});

describe('markShape', () => {
  it('closes areas and leaves lines open', () => {
    for (const kind of MARK_KINDS) {
      const { d } = markShape(kind, [
        [0, 0],
        [40, 0],
        [40, 40],
      ]);
      expect(end(d), kind).toEqual(MARK_FORMS[kind] === 'area' ? beginning(d) : [40, 40]);
    }
  });

  it('passes through the points of a line', () => {
    const points: Point[] = [
      [0, 0],
      [20, 10],
      [40, 0],
    ];
    expect(markShape('scar', points).d).toBe(openPath(points));
  });

  it('tells every kind apart by what it draws, not by colour alone', () => {
    const square: Point[] = [
      [0, 0],
      [40, 0],
      [40, 40],
      [0, 40],
    ];
    expect(markShape('redness', square).hatch).not.toBe(markShape('cyanosis', square).hatch);
    for (const kind of ['ulcer', 'gangrene', 'pallor', 'scar', 'amputation'] as const)
      expect(markShape(kind, square).hatch, kind).toBeUndefined();
    for (const kind of MARK_KINDS)
      expect(markShape(kind, square).teeth !== undefined, kind).toBe(kind === 'cold');
  });

  it('hatches the whole of an area and little more', () => {
    for (const kind of ['redness', 'cyanosis'] as const) {
      const hatch =
        markShape(kind, [
          [100, 200],
          [160, 200],
          [160, 290],
          [100, 290],
        ]).hatch ?? '';
      // Starts of the lines lie left of or below the area, whose box they cross at no more than 6 units from each other.
      const starts = [...hatch.matchAll(/M(-?[\d.]+) (-?[\d.]+)/g)].map(
        ([, x, y]) => [Number(x), Number(y)] as const,
      );
      const along = kind === 'redness' ? starts.map(([, y]) => y) : starts.map(([x]) => x);
      expect(Math.max(...along.slice(1).map((v, i) => v - (along[i] as number)))).toBe(6);
      if (kind === 'redness') {
        expect(Math.min(...along)).toBeLessThanOrEqual(200);
        expect(Math.max(...along)).toBeGreaterThan(284);
      } else {
        // A line rises by its height to the right: the first has to reach the upper left corner.
        const height = Number(/l([\d.]+)/.exec(hatch)?.[1]);
        expect(Math.min(...along) + height).toBeLessThanOrEqual(100);
        expect(Math.max(...along)).toBeGreaterThan(154);
      }
    }
  });
});

describe('a line of cold', () => {
  const side = (points: readonly Point[]): number => {
    const { d, teeth } = markShape('cold', points, farSide(points));
    return Math.sign(beginning(teeth ?? '')[1] - beginning(d)[1]);
  };

  it('hangs its teeth on the far side, whichever way it was drawn', () => {
    const shin: Point[] = [
      [690, 1140],
      [735, 1144],
      [780, 1140],
    ];
    expect(side(shin)).toBe(1);
    expect(side([...shin].reverse())).toBe(1);
    expect(side(shin.map(mirrorPoint))).toBe(1);
  });

  it('knows which way forearm, thigh and shin run on', () => {
    for (const place of SKIN_PLACES) {
      const [x, y] = farSide(regionShape(place, 'across'));
      if (place.region === 'forearm') expect(Math.sign(x)).toBe(place.side === 'left' ? 1 : -1);
      if (place.region === 'shin' || place.region === 'thigh') expect(y).toBeGreaterThan(Math.abs(x));
    }
    expect(
      farSide([
        [950, 1000],
        [1000, 1000],
      ]),
    ).toEqual([0, 1]);
  });
});

describe('the view of one limb', () => {
  it('shows the marks of that limb, and none of the other, which would lie beside the body', () => {
    for (const place of SKIN_PLACES) {
      const part = partOf(place);
      // Both groins are part of the trunk that is drawn with either leg.
      if (place.side === 'midline' || place.region === 'groin' || part === 'trunk') continue;
      const other = place.side === 'left' ? 'right' : 'left';
      const mark: Mark = { id: 'm', kind: 'ulcer', points: regionShape(place, 'area') };
      const where = `${place.side} ${place.region}`;
      expect(showsMark(`${place.side}-${part}`, mark), where).toBe(true);
      expect(showsMark(`${other}-${part}`, mark), where).toBe(false);
      expect(showsMark('whole', mark), where).toBe(true);
    }
  });
});

describe('markAt', () => {
  const square = (x: number, y: number, size: number): Mark['points'] => [
    [x, y],
    [x + size, y],
    [x + size, y + size],
    [x, y + size],
  ];
  const marks: Mark[] = [
    { id: 'ulcer', kind: 'ulcer', points: square(740, 1140, 20) },
    { id: 'redness', kind: 'redness', points: square(700, 1100, 100) },
    {
      id: 'scar',
      kind: 'scar',
      points: [
        [710, 1100],
        [710, 1200],
      ],
    },
  ];

  it.each([
    ['the smaller of two areas', [750, 1150], 5, 'ulcer'],
    ['the larger where the smaller does not reach', [780, 1180], 5, 'redness'],
    ['a line lying on an area', [712, 1150], 5, 'scar'],
    ['an area close by', [803, 1150], 5, 'redness'],
    ['nothing out of reach', [806, 1150], 5, undefined],
    ['nothing inside the ends of a line', [710, 1207], 5, undefined],
  ] as const)('finds %s', (_, at, reach, id) => {
    expect(markAt(marks, at, reach)?.id).toBe(id);
  });

  it('does not close a line', () => {
    const bow: Mark[] = [
      {
        id: 'scar',
        kind: 'scar',
        points: [
          [0, 0],
          [50, 50],
          [100, 0],
        ],
      },
    ];
    expect(markAt(bow, [50, 5], 10)).toBeUndefined();
  });
});
