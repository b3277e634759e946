import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  FINDING_STEP,
  findingLines,
  type PlacedFinding,
  type PlacedLabel,
  type PlacedSite,
  spread,
} from '../../../src/drawing/index.js';
import { place } from '../../tools/examinations.js';

/** Gap that is kept between two labels, in px. */
const GAP = 4;
const TOP = 10;

const lane = fc
  .array(fc.record({ y: fc.integer({ min: -200, max: 900 }), height: fc.integer({ min: 10, max: 60 }) }), {
    minLength: 1,
    maxLength: 12,
  })
  .map((labels) => labels.sort((a, b) => a.y - b.y));

describe('spread', () => {
  const room = (labels: readonly { height: number }[]): number =>
    labels.reduce((sum, { height }) => sum + height + GAP, 0);

  it('never lets two labels of a lane overlap, whatever they want', () => {
    fc.assert(
      fc.property(lane, (labels) => {
        const ys = spread(labels, TOP, TOP + room(labels) + 50);
        labels.slice(1).forEach(({ height }, i) => {
          const above = (ys[i] as number) + (labels[i]?.height ?? 0) / 2;
          expect((ys[i + 1] as number) - height / 2).toBeGreaterThanOrEqual(above + GAP - 1e-6);
        });
      }),
    );
  });

  it('keeps them in order and within bounds that have the room', () => {
    fc.assert(
      fc.property(lane, fc.integer({ min: 0, max: 400 }), (labels, spare) => {
        const bottom = TOP + room(labels) + spare;
        const ys = spread(labels, TOP, bottom);
        expect([...ys].sort((a, b) => a - b)).toEqual(ys);
        labels.forEach(({ height }, i) => {
          expect((ys[i] as number) - height / 2).toBeGreaterThanOrEqual(TOP - 1e-6);
          expect((ys[i] as number) + height / 2).toBeLessThanOrEqual(bottom + 1e-6);
        });
      }),
    );
  });

  it('leaves labels where they want to be when they do not meet', () => {
    const wanted = [
      { y: 100, height: 20 },
      { y: 160, height: 20 },
      { y: 300, height: 40 },
    ];
    expect(spread(wanted, 0, 600)).toEqual([100, 160, 300]);
  });

  it('moves two that want the same place apart by the same amount', () => {
    const [first = 0, second = 0] = spread(
      [
        { y: 100, height: 20 },
        { y: 100, height: 20 },
      ],
      0,
      600,
    );
    expect(100 - first).toBeCloseTo(second - 100, 6);
  });
});

describe('findingLines', () => {
  const label = (key: string, x: number, y: number, anchor: 'start' | 'end' = 'start'): PlacedLabel => {
    const at = place(key);
    return { key: `${at.side} ${at.site}`, place: at, x, y, anchor, width: 4 * 7, leader: [] };
  };
  const frame = (findings: Record<string, string>) => ({
    width: 400,
    height: 300,
    findingWidth: (text: string) => text.length * 7,
    findingOf: ({ side, site }: { side: string; site: string }) => findings[`${side} ${site}`] ?? '',
  });
  const NO_SITES: readonly PlacedSite[] = [];
  /** The lines at a site, each with the row that it stands on: 0 is that of the name. */
  const said = (found: PlacedFinding | undefined, label: PlacedLabel): [row: number, text: string][] =>
    (found?.lines ?? []).map(({ text, y }) => [(y - label.y) / FINDING_STEP, text]);

  const one = (x: number, text: string, next?: number) => {
    const label1 = label('left femoral', x, 100);
    const labels = next === undefined ? [label1] : [label1, label('left popliteal', x, next)];
    const found = findingLines(labels, NO_SITES, frame({ 'left femoral': text })).get('left femoral');
    return { lines: said(found, label1), full: found?.full, x: found?.lines.map((line) => line.x) };
  };

  it('puts a short finding on one line below the name', () => {
    expect(one(200, 'absent, bruit')).toEqual({ lines: [[1, 'absent, bruit']], full: true, x: [200] });
  });

  it('breaks a long one between words at the edge of the drawing', () => {
    expect(one(260, 'increased, bruit, thrill, expansile').lines).toEqual([
      [1, 'increased, bruit,'],
      [2, 'thrill, expansile'],
    ]);
  });

  it('stands beyond the name where there is no room below it', () => {
    expect(one(260, 'absent', 114)).toEqual({ lines: [[0, 'absent']], full: true, x: [260 + 4 * 7 + 8] });
  });

  it('leaves out whole phrases where the next name stands in the way, and says that there is more', () => {
    expect(one(260, 'increased, bruit, thrill, expansile', 142)).toMatchObject({
      lines: [
        [0, 'increased,'],
        [1, 'bruit, thrill…'],
      ],
      full: false,
    });
    expect(one(340, 'was systolic bruit', 142)).toMatchObject({ lines: [[1, '…']], full: false });
  });

  it('runs across the leader of its own label only where nothing else is left', () => {
    const upright = (x: number): PlacedLabel => ({
      ...label('left femoral', x, 100),
      leader: [
        [x + 20, 160],
        [x + 20, 112],
      ],
    });
    const rows = (x: number, text: string) =>
      said(
        findingLines([upright(x)], NO_SITES, frame({ 'left femoral': text })).get('left femoral'),
        upright(x),
      );
    expect(rows(200, 'absent')).toEqual([[0, 'absent']]);
    expect(rows(330, 'absent')).toEqual([[1, 'absent']]);
  });

  it('says nothing where not even that has room, and that it is not in full', () => {
    expect(one(365, 'absent', 114)).toEqual({ lines: [], full: false, x: [] });
  });

  it('never cuts a phrase', () => {
    const phrases = fc.array(fc.constantFrom('absent', 'line in place', 'thrill', 'was systolic bruit'), {
      minLength: 1,
      maxLength: 4,
    });
    const at = fc.integer({ min: 200, max: 380 });
    const below = fc.option(fc.integer({ min: 114, max: 190 }), { nil: undefined });
    fc.assert(
      fc.property(phrases, at, below, (texts, x, next) => {
        const { lines, full } = one(x, texts.join(', '), next);
        const text = lines.map(([, line]) => line).join(' ');
        const shown = text.replace(/…$/, '').split(', ').filter(Boolean);
        expect(shown).toEqual(texts.slice(0, shown.length));
        expect(full).toBe(shown.length === texts.length);
      }),
    );
  });

  it('never runs over a site, on either side of the drawing', () => {
    const anchors = fc.constantFrom('start' as const, 'end' as const);
    const spot = fc.record({ x: fc.integer({ min: 30, max: 370 }), y: fc.integer({ min: 30, max: 270 }) });
    const words = fc.array(fc.constantFrom('absent,', 'bruit,', 'line', 'in', 'place,', 'thrill'), {
      minLength: 1,
      maxLength: 9,
    });
    fc.assert(
      fc.property(anchors, spot, spot, words, (anchor, at, other, found) => {
        // A name does not lie over a site to begin with; placing names sees to that.
        fc.pre(Math.abs(at.y - other.y) > 30 || Math.abs(at.x - other.x) > 60);
        const site: PlacedSite = { place: place('left radial'), ...other };
        const own = label('left femoral', at.x, at.y, anchor);
        const placed = findingLines([own], [site], frame({ 'left femoral': found.join(' ') }));
        placed.get('left femoral')?.lines.forEach(({ text: line, x, y: middle }) => {
          const width = line.length * 7;
          const [left, right] = anchor === 'start' ? [x, x + width] : [x - width, x];
          const clear = right <= other.x - 15 || left >= other.x + 15 || Math.abs(middle - other.y) >= 15 + 8;
          expect(clear, `${line} at ${left}..${right}, ${middle}`).toBe(true);
          expect(left).toBeGreaterThanOrEqual(0);
          expect(right).toBeLessThanOrEqual(400);
        });
      }),
    );
  });
});
