import type { Model } from './columns.js';
import { type Feet, withFeet } from './feet.js';
import type { Finding } from './finding.js';
import { READINGS } from './model.js';
import { Propagation } from './propagate.js';
import { Room } from './room.js';

/** Columns with less of the belief than this are not divided by the states of the feet. */
const LEAST_DIVIDED = 0.02;
/** Columns with less than this are left out then. */
const LEAST_KEPT = 2e-4;

/** The rooms of the latest reading; what an older one is still asked for is worked out once more. */
export const ROOMS = [new Room(), new Room()] as const;

/** The network with the findings in it; columns that hold next to nothing are not divided by the states of the feet. */
export function propagate(model: Model, feet: readonly Feet[], findings: readonly Finding[]): Propagation {
  const factors = findings.flatMap((finding) => finding.factors);
  const net = new Propagation(model, factors, feet.length && READINGS.gone + 1 + feet.length, ROOMS[0]);
  const total = net.total();
  if (feet.length && total > 0) {
    const division = withFeet(model, feet, (c) => {
      const share = net.joint(c) / total;
      return share >= LEAST_DIVIDED ? 'divide' : share >= LEAST_KEPT ? 'keep' : 'drop';
    });
    net.divide(division);
  }
  return net;
}
