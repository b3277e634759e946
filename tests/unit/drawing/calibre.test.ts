import { scalePow } from 'd3-scale';
import { describe, expect, it } from 'vitest';
import {
  type ArteryId,
  ARTERY_IDS,
  leavesAt,
  parentVessel,
  vesselKey,
  VESSELS,
} from '../../../src/anatomy/index.js';
import {
  AXIS,
  CALIBRE_LAW,
  courseOf,
  drawnRadius,
  RADII_MM,
  radiusAt,
  sampleAt,
} from '../../../src/drawing/index.js';

/**
 * Lumen radii at origin and end in cm, left side, as printed in the table of the ADAN56 network: Boileau E et al., Int J
 * Numer Method Biomed Eng 2015;31(10):e02732, doi:10.1002/cnm.2732. An artery that the table cuts into segments has the
 * origin of its first and the end of its last one.
 */
const ADAN56_CM: Partial<Record<ArteryId, readonly [number, number]>> = {
  brachiocephalic: [0.6728, 0.6159],
  'common-carotid': [0.4476, 0.3326],
  'external-carotid': [0.2265, 0.2265],
  'internal-carotid': [0.2765, 0.2765],
  subclavian: [0.4896, 0.2301],
  vertebral: [0.1335, 0.1335],
  axillary: [0.2301, 0.2077],
  brachial: [0.2077, 0.1828],
  radial: [0.1378, 0.1378],
  ulnar: [0.1408, 0.1408],
  'thoracic-aorta': [1.055, 0.7495],
  renal: [0.2709, 0.2709],
  'infrarenal-aorta': [0.7114, 0.5904],
  'common-iliac': [0.4499, 0.4091],
  'external-iliac': [0.3378, 0.3189],
  'internal-iliac': [0.2818, 0.2818],
  'common-femoral': [0.3189, 0.3144],
  'deep-femoral': [0.2144, 0.2144],
  'superficial-femoral': [0.3144, 0.2686],
  popliteal: [0.2686, 0.2346],
  'anterior-tibial': [0.1166, 0.1166],
  'tibioperoneal-trunk': [0.2346, 0.2346],
  'posterior-tibial': [0.1229, 0.1229],
};

describe('RADII_MM', () => {
  it('holds every artery of the tree', () => {
    expect(Object.keys(RADII_MM).sort()).toEqual([...ARTERY_IDS].sort());
  });

  it.each(Object.entries(ADAN56_CM))('gives %s its published radius', (artery, [origin, end]) => {
    const [from, to] = RADII_MM[artery as ArteryId];
    expect(from).toBeCloseTo(origin * 10, 0);
    expect(to).toBeCloseTo(end * 10, 0);
    expect(Math.abs(from - origin * 10)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(to - end * 10)).toBeLessThanOrEqual(0.1);
  });

  it('never lets an artery widen on its way', () => {
    for (const [artery, [origin, end]] of Object.entries(RADII_MM))
      expect(end, artery).toBeLessThanOrEqual(origin);
  });
});

describe('drawnRadius', () => {
  it('is the power scale of the reference library', () => {
    const widest = RADII_MM['ascending-aorta'][0];
    const scale = scalePow([0, widest], [0, drawnRadius(widest)]).exponent(CALIBRE_LAW.power);
    for (const radii of Object.values(RADII_MM)) {
      for (const mm of radii) expect(drawnRadius(mm)).toBeCloseTo(scale(mm), 10);
    }
  });
});

describe('radiusAt', () => {
  it('tapers evenly from origin to end of the published calibre', () => {
    expect(radiusAt('brachial', 0)).toBe(drawnRadius(RADII_MM.brachial[0]));
    expect(radiusAt('brachial', 1)).toBe(drawnRadius(RADII_MM.brachial[1]));
    for (const artery of ARTERY_IDS) {
      for (let t = 0; t < 1; t += 0.1)
        expect(radiusAt(artery, t + 0.1)).toBeLessThanOrEqual(radiusAt(artery, t) + 1e-9);
    }
  });

  it('lets no branch be wider than what it leaves', () => {
    for (const vessel of VESSELS) {
      const parent = parentVessel(vessel);
      if (!parent) continue;
      expect(radiusAt(vessel.artery, 0), vesselKey(vessel)).toBeLessThanOrEqual(radiusAt(parent.artery, 0));
    }
  });
});

describe('courseOf', () => {
  const FRACTIONS = Array.from({ length: 41 }, (_, i) => i / 40);

  it('runs from the origin of every vessel to its end, by equal shares of its length', () => {
    for (const vessel of VESSELS) {
      const points = FRACTIONS.map((t) => sampleAt(courseOf(vessel), t));
      const steps = points
        .slice(1)
        .map(({ x, y }, i) => Math.hypot(x - (points[i]?.x ?? 0), y - (points[i]?.y ?? 0)));
      const even = steps.reduce((sum, step) => sum + step, 0) / steps.length;
      for (const step of steps) expect(step / even, vesselKey(vessel)).toBeCloseTo(1, 0);
    }
  });

  it('has a normal of length one, square to the way, everywhere', () => {
    for (const vessel of VESSELS) {
      for (const t of FRACTIONS.slice(1, -1)) {
        const { nx, ny } = sampleAt(courseOf(vessel), t);
        const before = sampleAt(courseOf(vessel), t - 0.01);
        const after = sampleAt(courseOf(vessel), t + 0.01);
        const along = [after.x - before.x, after.y - before.y] as const;
        const length = Math.hypot(...along);
        expect(Math.hypot(nx, ny)).toBeCloseTo(1, 6);
        expect(Math.abs((nx * along[0] + ny * along[1]) / length), `${vesselKey(vessel)} ${t}`).toBeLessThan(
          0.12,
        );
      }
    }
  });

  it('lets every artery leave from within what it branches off, so that the joint has no gap', () => {
    for (const vessel of VESSELS) {
      const parent = parentVessel(vessel);
      if (!parent) continue;
      const { x, y } = sampleAt(courseOf(vessel), 0);
      // The arch is drawn as the end of the ascending aorta and itself; its first branch leaves where the two meet.
      const around = [parent, parentVessel(parent)].flatMap((from) => from ?? []);
      const gap = Math.min(
        ...around.flatMap((from) =>
          FRACTIONS.map((t) => {
            const p = sampleAt(courseOf(from), t);
            return Math.hypot(p.x - x, p.y - y) - radiusAt(from.artery, t) - radiusAt(vessel.artery, 0);
          }),
        ),
      );
      expect(gap, vesselKey(vessel)).toBeLessThan(0);
    }
  });

  it('lets an artery that leaves another on its way begin where the tree says', () => {
    const branches = VESSELS.filter((vessel) => leavesAt(vessel) < 1);
    expect(branches.map(vesselKey)).toContain('left vertebral');
    for (const vessel of branches) {
      const from = parentVessel(vessel)!;
      const at = sampleAt(courseOf(from), leavesAt(vessel));
      const start = sampleAt(courseOf(vessel), 0);
      const gap = Math.hypot(at.x - start.x, at.y - start.y);
      expect(gap, vesselKey(vessel)).toBeLessThan(radiusAt(from.artery, leavesAt(vessel)));
    }
  });

  it('mirrors every paired vessel but those of the arch and the first part of the subclavian', () => {
    for (const left of VESSELS.filter(({ side }) => side === 'left')) {
      const twin = VESSELS.find(({ artery, side }) => artery === left.artery && side === 'right');
      if (!twin || ['common-carotid', 'subclavian'].includes(left.artery) || leavesAt(left) < 1) continue;
      for (const t of FRACTIONS) {
        const a = sampleAt(courseOf(left), t);
        const b = sampleAt(courseOf(twin), t);
        expect(Math.hypot(a.x + b.x - 2 * AXIS, a.y - b.y), `${vesselKey(left)} ${t}`).toBeLessThan(6);
      }
    }
  });
});
