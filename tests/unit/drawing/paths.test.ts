import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Vessel, vesselKey, VESSELS } from '../../../src/anatomy/index.js';
import {
  arteryPaths,
  courseOf,
  drawnFlow,
  drawRibbon,
  PathWriter,
  radiusAt,
  sampleAt,
  silhouetteOf,
} from '../../../src/drawing/index.js';
import { emptyExamination, type Examination, setPulse } from '../../../src/examination/index.js';
import { contours, signedArea, type XY } from '../../tools/path.js';

/** Body and arteries are in tenths. */
const TENTH = 0.1;

function ribbonOf(vessel: Vessel, from = 0, to = 1): XY[] {
  const path = new PathWriter();
  drawRibbon(path, courseOf(vessel), from, to, (t) => radiusAt(vessel.artery, t));
  const [contour = []] = contours(path.toString());
  return contour;
}

/** Both edges of a vessel, densely, straight from the definition: the course moved sideways by the radius. */
function edgesOf(vessel: Vessel): XY[] {
  const course = courseOf(vessel);
  return Array.from({ length: 600 }, (_, i) => {
    const p = sampleAt(course, i / 599);
    const r = radiusAt(vessel.artery, p.t);
    return [
      [p.x + p.nx * r, p.y + p.ny * r],
      [p.x - p.nx * r, p.y - p.ny * r],
    ] as XY[];
  }).flat();
}

const nearest = ([x, y]: XY, points: readonly XY[]): number =>
  points.reduce((least, [px, py]) => Math.min(least, Math.hypot(px - x, py - y)), Infinity);

const graded = (grade: 'absent' | 'reduced'): Examination =>
  setPulse(emptyExamination(), { site: 'femoral', side: 'left' }, { grade });

describe('PathWriter', () => {
  it('does not let the rounding of relative steps add up', () => {
    const point = fc.tuple(
      fc.double({ min: -2000, max: 2000, noNaN: true }),
      fc.double({ min: -2000, max: 2000, noNaN: true }),
    );
    fc.assert(
      fc.property(point, fc.array(point, { minLength: 1, maxLength: 60 }), ([x, y], points) => {
        const path = new PathWriter();
        path.moveTo(x, y);
        for (const [toX, toY] of points) path.lineTo(toX, toY);
        const [contour = []] = contours(path.toString());
        expect(contour).toHaveLength(points.length + 1);
        points.forEach(([toX, toY], i) => {
          expect(contour[i + 1]?.[0]).toBeCloseTo(Math.round(toX * 10) / 10, 6);
          expect(contour[i + 1]?.[1]).toBeCloseTo(Math.round(toY * 10) / 10, 6);
        });
      }),
    );
  });
});

describe('drawRibbon', () => {
  it.each(VESSELS.map((vessel) => [vesselKey(vessel), vessel] as const))(
    'keeps the edges of the %s within a third of a unit of the true offset of its course',
    (_, vessel) => {
      const edges = edgesOf(vessel);
      const ends = [0, 1].map((t) => ({ ...sampleAt(courseOf(vessel), t), r: radiusAt(vessel.artery, t) }));
      for (const point of ribbonOf(vessel)) {
        // A cap lies on the circle about its end instead.
        const onCap = ends.map(({ x, y, r }) => Math.abs(Math.hypot(point[0] - x, point[1] - y) - r));
        expect(Math.min(nearest(point, edges), ...onCap)).toBeLessThan(0.34);
      }
    },
  );

  it('draws the parts of an artery along the same edges as the whole', () => {
    const vessel: Vessel = { artery: 'superficial-femoral', side: 'left' };
    const whole = edgesOf(vessel);
    const middle = sampleAt(courseOf(vessel), 0.37);
    const radius = radiusAt(vessel.artery, 0.37);
    for (const point of [...ribbonOf(vessel, 0, 0.37), ...ribbonOf(vessel, 0.37, 1)]) {
      const onCap = [middle, sampleAt(courseOf(vessel), 0), sampleAt(courseOf(vessel), 1)].map(({ x, y }) =>
        Math.hypot(point[0] - x, point[1] - y),
      );
      if (Math.min(...onCap) > radius + 1) expect(nearest(point, whole)).toBeLessThan(0.34);
    }
  });
});

describe('arteryPaths', () => {
  const full = arteryPaths(drawnFlow(emptyExamination(), []), true);

  it('runs all contours of a tone the same way round, so that where they overlap the fill has no hole', () => {
    for (const d of [full.behind, full.deep, full.trunk, full.near]) {
      const areas = contours(d, TENTH).map(signedArea);
      expect(areas.length).toBeGreaterThan(0);
      expect(areas.every((area) => area < 0)).toBe(true);
    }
  });

  it('draws nothing hollow while nothing is absent', () => {
    expect(full.hollow).toBe('');
  });

  it('moves the arteries beyond an absent pulse into the hollow path, and leaves the other side', () => {
    const { hollow, near } = arteryPaths(drawnFlow(graded('absent'), []), true);
    const xs = contours(hollow, TENTH)
      .flat()
      .map(([x]) => x);
    expect(contours(hollow, TENTH).length).toBeGreaterThan(5);
    expect(Math.min(...xs)).toBeGreaterThan(600);
    expect(near.length).toBeLessThan(full.near.length);
  });

  it('draws an artery beyond a reduced pulse half as wide', () => {
    const area = (examination: Examination): number => {
      const shins = contours(arteryPaths(drawnFlow(examination, []), false).near, TENTH).filter((points) =>
        points.every(([x, y]) => x > 700 && y > 1040),
      );
      return shins.reduce((sum, points) => sum + signedArea(points), 0);
    };
    const share = area(graded('reduced')) / area(emptyExamination());
    expect(share).toBeGreaterThan(0.45);
    expect(share).toBeLessThan(0.55);
  });

  it('leaves the arms out on request', () => {
    const xs = (arms: boolean): number[] =>
      Object.values(arteryPaths(drawnFlow(emptyExamination(), []), arms)).flatMap((d) =>
        contours(d, TENTH)
          .flat()
          .map(([x]) => x),
      );
    expect(Math.max(...xs(true))).toBeGreaterThan(1000);
    expect(Math.max(...xs(false))).toBeLessThan(860);
  });
});

describe('silhouetteOf', () => {
  it.each([true, false])('closes the body into one shape without holes (arms: %s)', (arms) => {
    const areas = contours(silhouetteOf(arms).body, TENTH).map(signedArea);
    expect(areas).toHaveLength(1);
    expect(areas[0]).toBeGreaterThan(0);
  });

  it('draws a body that is its own mirror image', () => {
    const points = contours(silhouetteOf(true).body, TENTH).flat();
    for (const [x, y] of points.filter((_, i) => i % 7 === 0)) {
      expect(nearest([1200 - x, y], points)).toBeLessThan(3);
    }
  });
});
