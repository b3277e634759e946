import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findingLines, type PlacedLabel, type PlacedSite, spread } from '../../../src/drawing/index.js';
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
    return { key: `${at.side} ${at.site}`, place: at, x, y, anchor, leader: [] };
  };
  const frame = (findings: Record<string, string>) => ({
    width: 400,
    height: 300,
    textWidth: (text: string) => text.length * 7,
    nameOf: () => 'Name',
    findingOf: ({ side, site }: { side: string; site: string }) => findings[`${side} ${site}`] ?? '',
  });
  const NO_SITES: readonly PlacedSite[] = [];

  it('puts a short finding on one line', () => {
    const lines = findingLines(
      [label('left femoral', 200, 100)],
      NO_SITES,
      frame({ 'left femoral': 'absent, bruit' }),
    );
    expect(lines.get('left femoral')).toEqual(['absent, bruit']);
  });

  it('breaks a long one between words at the edge of the drawing', () => {
    const text = 'increased, bruit, thrill, expansile';
    const lines = findingLines([label('left femoral', 260, 100)], NO_SITES, frame({ 'left femoral': text }));
    expect(lines.get('left femoral')).toEqual(['increased, bruit,', 'thrill, expansile']);
  });

  it('stops before the next name and says that there is more', () => {
    const text = 'increased, bruit, thrill, expansile';
    const labels = [label('left femoral', 260, 100), label('left popliteal', 260, 142)];
    const [line, ...more] =
      findingLines(labels, NO_SITES, frame({ 'left femoral': text })).get('left femoral') ?? [];
    expect(line).toBe('increased, bruit…');
    expect(more).toEqual([]);
  });

  it('leaves a finding out where not even one word has room', () => {
    const labels = [label('left femoral', 260, 100), label('left popliteal', 260, 114)];
    expect(findingLines(labels, NO_SITES, frame({ 'left femoral': 'absent' })).get('left femoral')).toEqual(
      [],
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
      fc.property(anchors, spot, spot, words, (anchor, at, other, said) => {
        // A name does not lie over a site to begin with; placing names sees to that.
        fc.pre(Math.abs(at.y - other.y) > 30 || Math.abs(at.x - other.x) > 60);
        const site: PlacedSite = { place: place('left radial'), ...other };
        const one = label('left femoral', at.x, at.y, anchor);
        const lines =
          findingLines([one], [site], frame({ 'left femoral': said.join(' ') })).get('left femoral') ?? [];
        lines.forEach((line, i) => {
          const width = line.length * 7;
          const middle = at.y + 16 * (i + 1);
          const [left, right] = anchor === 'start' ? [at.x, at.x + width] : [at.x - width, at.x];
          const clear = right <= other.x - 15 || left >= other.x + 15 || Math.abs(middle - other.y) >= 15 + 8;
          expect(clear, `${line} at ${left}..${right}, ${middle}`).toBe(true);
          expect(left).toBeGreaterThanOrEqual(0);
          expect(right).toBeLessThanOrEqual(400);
        });
      }),
    );
  });
});
