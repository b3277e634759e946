import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import {
  areaOf,
  feedingPiece,
  LIMBS,
  limbKey,
  type Piece,
  pieceAbove,
  piecesTo,
  type Place,
  type PulseSiteId,
  SIDES,
  stationsOf,
} from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  restNormal,
  setBruit,
  setPulse,
} from '../../../src/examination/index.js';
import {
  AXIS,
  drawnRecord,
  earlierGlyphs,
  FIGURE_RIDGE,
  labelSize,
  layOut,
  type LesionMark,
  type NumberSpot,
  placeRidges,
  type Point,
  positionOf,
  type Ridge,
  ridgesOf,
} from '../../../src/drawing/index.js';
import { boxOfLine } from '../../../src/drawing/box.js';
import { en } from '../../../src/locale/index.js';

const area = (ridges: readonly Ridge[]): number =>
  ridges.reduce((sum, { outline }) => sum + areaOf(outline), 0);

/** A stretch of a limb from one station to a later one. */
const anyStretch = fc
  .record({
    limb: fc.constantFrom(...LIMBS),
    ends: fc.tuple(fc.nat(5), fc.nat(5)),
    weights: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 20, maxLength: 20 }),
    probability: fc.double({ min: 0.3, max: 0.95, noNaN: true }),
  })
  .map(({ limb, ends, weights, probability }) => {
    const stations = stationsOf(limb);
    const [a, b] = ends.map((end) => end % stations.length).sort((x, y) => x - y) as [number, number];
    const end = (i: number): Place<PulseSiteId> => stations[i]?.[0] as Place<PulseSiteId>;
    const [from, to] = a === b ? [Math.max(0, a - 1), Math.max(1, b)] : [a, b];
    const before = piecesTo(pieceAbove(end(from)));
    const way = piecesTo(pieceAbove(end(to))).filter((piece) => !before.includes(piece));
    const total = way.reduce((sum, _, i) => sum + (weights[i] as number), 0);
    const mark: LesionMark = {
      limb: limbKey(limb),
      kind: 'block',
      strength: probability,
      pieces: way.map((piece, i) => ({ piece, weight: (probability * (weights[i] as number)) / total })),
    };
    return { mark, from: end(from), to: end(to) };
  });

const opposite = (mark: LesionMark): LesionMark => {
  const swap = (key: string): string =>
    key.startsWith('left') ? key.replace('left', 'right') : key.replace('right', 'left');
  const found = (piece: Piece): Piece => MIRRORED.get(swap(piece.key)) ?? piece;
  return {
    ...mark,
    limb: swap(mark.limb) as LesionMark['limb'],
    pieces: mark.pieces.map(({ piece, weight }) => ({ piece: found(piece), weight })),
  };
};
const MIRRORED = new Map(
  LIMBS.flatMap((limb) =>
    (stationsOf(limb).at(-1) ?? []).flatMap((place) =>
      piecesTo(pieceAbove(place)).map((piece) => [piece.key as string, piece] as const),
    ),
  ),
);

describe('a ridge', () => {
  it('encloses the same area for each percent, wherever it lies', () => {
    fc.assert(
      fc.property(anyStretch, ({ mark }) => {
        const ridges = ridgesOf(mark, 24);
        const length = ridges.reduce((sum, { crest }) => sum + 3 * crest.length, 0);
        const wanted = 100 * (mark.strength as number) * FIGURE_RIDGE.area;
        // One too short for its chance is as high as a ridge may be, one too long as low.
        fc.pre(wanted < 0.6 * length * FIGURE_RIDGE.most && wanted > 1.2 * length * FIGURE_RIDGE.least);
        fc.pre(mark.limb.endsWith('leg'));
        expect(area(ridges) / wanted).toBeGreaterThan(0.93);
        expect(area(ridges) / wanted).toBeLessThan(1.07);
      }),
      { numRuns: 300 },
    );
  });

  it('grows in area with the chance', () => {
    fc.assert(
      fc.property(anyStretch, ({ mark }) => {
        const half = {
          ...mark,
          pieces: mark.pieces.map(({ piece, weight }) => ({ piece, weight: weight / 2 })),
        };
        expect(area(ridgesOf(half, 24))).toBeLessThanOrEqual(area(ridgesOf(mark, 24)) + 1);
      }),
      { numRuns: 100 },
    );
  });

  it('is on one leg the mirror image of the other', () => {
    fc.assert(
      fc.property(
        anyStretch.filter(
          ({ mark }) => /leg/.test(mark.limb) && mark.pieces.every(({ piece }) => piece.side !== 'midline'),
        ),
        ({ mark }) => {
          const [own, other] = [ridgesOf(mark, 24), ridgesOf(opposite(mark), 24)];
          expect(own.length).toBe(other.length);
          own.forEach(({ outline }, i) =>
            outline.forEach(([x, y], k) => {
              const [otherX, otherY] = other[i]?.outline[k] as Point;
              expect(otherX).toBeCloseTo(2 * AXIS - x, 3);
              expect(otherY).toBeCloseTo(y, 3);
            }),
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  it('has its feet at the sites that bound it, clear of their glyphs', () => {
    fc.assert(
      fc.property(anyStretch, ({ mark, from, to }) => {
        const feet = ridgesOf(mark, 24).flatMap((ridge) => ridge.feet);
        const near = (place: Place): number => {
          const { x, y } = positionOf(place);
          return Math.min(...feet.flatMap((foot) => foot.map(([a, b]) => Math.hypot(a - x, b - y))));
        };
        const starts = feedingPiece(mark.pieces[0]?.piece as Piece)?.endsAt !== undefined;
        for (const place of starts ? [from, to] : [to]) expect(near(place)).toBeLessThan(60);
      }),
      { numRuns: 100 },
    );
  });

  it('is worked out once for where the drawing lies, however often names and findings are laid out anew', () => {
    const { marks } = drawnRecord(
      setPulse(emptyExamination(), { site: 'popliteal', side: 'left' }, { grade: 'absent' }),
    );
    let asked = 0;
    const mark: LesionMark = {
      ...(marks[0] as LesionMark),
      pieces: (marks[0] as LesionMark).pieces.map(({ piece, weight }) => ({
        piece,
        get weight() {
          asked++;
          return weight;
        },
      })),
    };
    const named = (name: string, width: number): ReturnType<typeof layOut> =>
      layOut('whole', width, 1100, () => ({ name, code: name.slice(0, 2) }));
    const [first] = placeRidges([mark], named('femoral', 800));
    expect(asked).toBeGreaterThan(0);
    asked = 0;
    const [again] = placeRidges([mark], named('tibial', 800));
    expect(asked).toBe(0);
    expect([again?.outline, again?.feet]).toEqual([first?.outline, first?.feet]);
    const [wider] = placeRidges([mark], named('tibial', 500));
    expect(asked).toBeGreaterThan(0);
    expect(wider?.outline).not.toBe(first?.outline);
  });

  it('has its number clear of the glyphs of an earlier record', () => {
    fc.assert(
      fc.property(anyStretch, fc.integer({ min: 700, max: 1400 }), ({ mark }, width) => {
        const layout = layOut('whole', width, 900, ({ site }) => ({ name: site, code: site.slice(0, 2) }));
        for (const { number } of placeRidges([mark, opposite(mark)], layout, true)) {
          if (!number) continue;
          const { left, top, right, bottom } = boxOfLine(number, 30, 14);
          for (const { x, y, r } of earlierGlyphs(layout).discs) {
            const apart = Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
            expect(apart).toBeGreaterThan(r);
          }
        }
      }),
    );
  });

  it('has its number in sight, under no glyph, and apart from the other', () => {
    fc.assert(
      fc.property(anyStretch, fc.integer({ min: 340, max: 1400 }), ({ mark }, width) => {
        const layout = layOut('whole', width, 1100, ({ site }) => ({ name: site, code: site.slice(0, 2) }));
        const placed = placeRidges([mark, opposite(mark)], layout);
        expect(placed.some(({ number }) => number)).toBe(true);
        for (const { mark: drawn, number } of placed) {
          // The second limb's share of a lesion that is one carries no number of its own.
          expect(number === undefined).toBe(drawn.strength === undefined);
          if (!number) continue;
          const middle = number.x + (number.anchor === 'start' ? 18 : -18);
          expect(middle).toBeGreaterThan(0);
          expect(middle).toBeLessThan(layout.width);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('the number of a mark', () => {
  const names = ({ site }: Place) => ({ name: site, code: site.slice(0, 2) });
  /** Room that a number takes beside the place where it starts or ends, in px. */
  const [WIDE, HIGH] = [36, 18];

  interface Box {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  }
  const boxOf = ({ x, y, anchor }: NumberSpot): Box => {
    const left = anchor === 'start' ? x : x - WIDE;
    return { left, right: left + WIDE, top: y - HIGH / 2, bottom: y + HIGH / 2 };
  };
  const apart = (a: Box, b: Box): boolean =>
    a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
  const from = ({ left, right, top, bottom }: Box, [x, y]: Point): number =>
    Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));

  it('covers no site, no name and no other number, on any stretch and in any width', () => {
    fc.assert(
      fc.property(anyStretch, anyStretch, fc.integer({ min: 390, max: 1440 }), (one, other, width) => {
        fc.pre(one.mark.limb !== other.mark.limb);
        const layout = layOut('whole', width, 1100, names);
        const boxes = placeRidges([one.mark, other.mark], layout).flatMap(({ number }) =>
          number ? [boxOf(number)] : [],
        );
        const labels = layout.labels.map(({ place, x, y, anchor }): Box => {
          const { width: wide, height: high } = labelSize(names(place), layout.naming);
          const left = anchor === 'start' ? x : x - wide;
          return { left, right: left + wide, top: y - high / 2, bottom: y + high / 2 };
        });
        boxes.forEach((box, i) => {
          for (const { x, y } of layout.sites) expect(from(box, [x, y])).toBeGreaterThan(0);
          for (const rest of [...labels, ...boxes.slice(i + 1)]) expect(apart(box, rest)).toBe(true);
        });
      }),
      { numRuns: 40 },
    );
  }, 30_000);
});

describe('a lesion that takes the pulses of two limbs', () => {
  const names = ({ site }: Place) => ({ name: site, code: site.slice(0, 2) });
  const absent = (site: PulseSiteId): Examination =>
    SIDES.reduce((one, side) => setPulse(one, { site, side } as never, { grade: 'absent' }), legs(site));
  const legs = (but: PulseSiteId): Examination =>
    (['femoral', 'popliteal', 'dorsalis-pedis', 'posterior-tibial'] as const).reduce<Examination>(
      (record, site) =>
        SIDES.reduce(
          (one, side) =>
            setPulse(
              one,
              { site, side },
              { grade: site === 'femoral' && but !== site ? 'normal' : 'absent' },
            ),
          record,
        ),
      { ...emptyExamination(), context: { ageBand: '60-79' } },
    );

  it('is drawn once and not twice, with one number: both femoral pulses absent', () => {
    const { marks } = drawnRecord(absent('femoral'));
    const both = marks.filter(({ further }) => !further);
    expect(both.map(({ limb }) => limb)).toEqual(['right leg', 'left leg']);
    for (const view of ['whole', 'legs'] as const) {
      const placed = placeRidges(both, layOut(view, 700, 900, names));
      expect(placed.filter(({ number }) => number)).toHaveLength(1);
      const drawn = placed.flatMap(({ mark }) => mark.pieces.map(({ piece }) => piece.key));
      expect(new Set(drawn).size, 'no artery twice').toBe(drawn.length);
    }
  });

  it('leaves neither side without a mark, and gives the number of the limb where it is likelier', () => {
    const grades = ['absent', 'reduced', 'normal'] as const;
    const colours = [undefined, 'pale'] as const;
    for (const [right, left] of grades.flatMap((a) => grades.map((b) => [a, b] as const)))
      for (const colour of colours)
        for (const pale of SIDES) {
          const record: Examination = {
            ...SIDES.reduce(
              (one, side) =>
                setPulse(one, { site: 'femoral', side }, { grade: side === 'right' ? right : left }),
              emptyExamination(),
            ),
            ...(colour && {
              onset: 'acute' as const,
              inspection: { leg: { [pale]: { colour, temperature: 'cold' as const } } },
            }),
          };
          const both = drawnRecord(record).marks.filter(({ further }) => !further);
          const placed = placeRidges(both, layOut('legs', 700, 900, names));
          const what = JSON.stringify(record);
          for (const { limb, pieces } of both) {
            const own = pieces.filter(({ piece }) => piece.key.startsWith(limb.split(' ')[0] as string));
            const drawn = placed.filter(({ mark, outline }) => mark.limb === limb && outline);
            if (own.length) expect(drawn, `${limb}: ${what}`).toHaveLength(1);
          }
          const numbers = placed.flatMap(({ mark, number }) => (number ? [mark.strength ?? 0] : []));
          if (both.length)
            expect(Math.max(...numbers), what).toBe(Math.max(...both.map(({ strength }) => strength ?? 0)));
        }
  });

  it('finds its number a place without measuring how far it is from each point of every ridge', () => {
    const { marks } = drawnRecord(absent('popliteal'));
    const layout = layOut('whole', 700, 900, names);
    placeRidges(marks, layout);
    const measure = vi.spyOn(Math, 'hypot');
    const placed = placeRidges(marks, layout);
    const measured = measure.mock.calls.length;
    measure.mockRestore();
    expect(placed.some(({ number }) => number)).toBe(true);
    expect(measured).toBeLessThan(20);
  });

  it('is not made of two lesions, one in each leg', () => {
    const { marks } = drawnRecord(absent('popliteal'));
    const both = marks.filter(({ further }) => !further);
    expect(placeRidges(both, layOut('legs', 700, 900, names))).toHaveLength(2);
  });
});

describe('numbers of marks', () => {
  it('cut no leader where there is another place for them', () => {
    const felt = (
      [
        ['left popliteal', 'absent'],
        ['left posterior-tibial', 'absent'],
        ['left dorsalis-pedis', 'absent'],
        ['left ulnar', 'absent'],
        ['left radial', 'reduced'],
        ['right femoral', 'reduced'],
        ['right popliteal', 'reduced'],
      ] as const
    ).reduce(
      (record, [key, grade]) => {
        const [side, site] = key.split(' ') as ['left' | 'right', PulseSiteId];
        return setPulse(record, { site, side } as Place<PulseSiteId>, { grade });
      },
      restNormal(emptyExamination('0-3')),
    );
    const sick = setBruit(felt, { site: 'iliac', side: 'right' }, { bruit: 'systolic' });
    const { marks } = drawnRecord(sick, undefined);
    for (const [width, height] of [
      [1033, 770],
      [1190, 770],
      [818, 872],
    ] as const) {
      const layout = layOut('whole', width, height, ({ site }) => ({
        name: en.map.siteShort(site),
        code: en.anatomy.codes[site],
      }));
      const spots = placeRidges(marks, layout).flatMap(({ number }) => number ?? []);
      expect(spots.length).toBeGreaterThan(1);
      for (const spot of spots) {
        const { left, right, top, bottom } = boxOfLine(spot, 36, 18);
        for (const { key, leader } of layout.labels) {
          const [[ax, ay], [bx, by]] = leader.slice(-2) as [Point, Point];
          const cut =
            ay === by && ay > top && ay < bottom && Math.min(ax, bx) < right && Math.max(ax, bx) > left;
          expect(cut, `${key} at ${width} px`).toBe(false);
        }
      }
    }
  });
});
