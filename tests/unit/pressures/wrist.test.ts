import { describe, expect, it } from 'vitest';
import { indexIn, readPressures } from '../../../src/pressures/index.js';

// Laboratory criteria: forearm to brachial pressure in one limb, so that it means disease between the cuffs.
describe('the wrist index is taken over the arm of the same side', () => {
  it.each([
    [{ brachial: { right: 140, left: 100 }, radial: { left: 100 } }, 'left', 1, 'normal'],
    [{ brachial: { right: 120, left: 118 }, radial: { right: 114 } }, 'right', 0.95, 'borderline'],
    [{ brachial: { right: 120, left: 118 }, radial: { right: 101 } }, 'right', 0.84, 'abnormal'],
  ] as const)('%j, %s: %f, %s', (pressures, side, value, band) => {
    expect(indexIn(readPressures(pressures), 'wrist', side)).toMatchObject({ value, band });
  });

  it('is not there without that arm, which is told', () => {
    const found = indexIn(
      readPressures({ brachial: { right: 140 }, radial: { left: 100 } }),
      'wrist',
      'left',
    );
    expect(found?.value).toBeUndefined();
    expect(found?.missing).toContainEqual({ site: 'brachial', side: 'left' });
  });
});
