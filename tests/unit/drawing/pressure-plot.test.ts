import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pressurePlot } from '../../../src/drawing/pressure-plot.js';
import { pressureSettings } from '../../../src/pressures/index.js';

const mmHg = fc.integer({ min: 20, max: 280 });
const side = fc.record({ right: mmHg, left: mmHg });
const anyPressures = fc.record(
  { brachial: side, 'high-thigh': side, calf: side, 'dorsalis-pedis': side, toe: side },
  { requiredKeys: ['brachial', 'dorsalis-pedis'] },
);

describe('pressurePlot', () => {
  it('stands its stations evenly, from the arm outward', () => {
    fc.assert(
      fc.property(anyPressures, (pressures) => {
        const { stations, width } = pressurePlot(pressures, pressureSettings({}));
        const xs = stations.map(({ x }) => x);
        const step = (xs.at(-1)! - xs[0]!) / (xs.length - 1);
        for (const [i, x] of xs.entries()) expect(x).toBeCloseTo(xs[0]! + i * step, 6);
        expect(stations[0]?.station).toBe('arm');
        expect(step).toBeGreaterThan(0);
        expect(xs.at(-1)!).toBeLessThan(width);
      }),
    );
  });

  it('draws every value at its station, and higher the higher it is', () => {
    fc.assert(
      fc.property(anyPressures, (pressures) => {
        const { stations, levels, lines } = pressurePlot(pressures, pressureSettings({}));
        const [zero, top] = [levels[0]!, levels.at(-1)!];
        expect(lines).toHaveLength(2);
        for (const point of lines.flatMap(({ points }) => points)) {
          expect(stations).toContainEqual({ station: point.station, x: point.x });
          expect((zero.y - point.y) / (zero.y - top.y)).toBeCloseTo(point.mmHg / top.mmHg, 6);
          expect(point.mmHg).toBeLessThanOrEqual(top.mmHg);
        }
      }),
    );
  });
});
