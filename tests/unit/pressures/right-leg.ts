import type { Pressures } from '../../../src/examination/index.js';
import { indexIn, type PressureSettings, readPressures } from '../../../src/pressures/index.js';

/** Pressures for a right leg whose index comes out at a given number of hundredths over a right arm of 100. */
export function rightLeg(ankle: number): Pressures {
  return { brachial: { right: 100, left: 100 }, 'posterior-tibial': { right: ankle } };
}

/** The ankle index of the right leg. */
export function rightIndex(pressures: Pressures, settings?: Partial<PressureSettings>) {
  return indexIn(readPressures(pressures, settings), 'ankle', 'right');
}
