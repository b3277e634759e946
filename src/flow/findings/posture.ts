import { type Side } from '../../anatomy/index.js';
import { copyOf } from '../mean/circulation.js';
import { solveSteady } from '../mean/steady.js';
import { climbOf, raise } from '../setup.js';
import type { Simulation } from '../simulate.js';
import { limit } from './rules.js';

/** What raising a leg and letting it hang shows. Angles in degrees, times in s; `undefined` where nothing happened. */
export interface PostureReading {
  /** The lowest angle at which the sole turns pale; `undefined` where it never does. */
  readonly pallorAngle: number | undefined;
  /** Time to pallor at 60 degrees. */
  readonly pallorTime: number | undefined;
  /** Time until colour returns and until the veins fill, after the leg is let down. */
  readonly colourReturn: number;
  readonly venousFilling: number;
}

/** Mean pressure in the sole of a raised leg, mmHg at its own height. */
function solePressure(simulation: Simulation, side: Side, degrees: number): number {
  const { circulation, network, beating } = simulation;
  const c = copyOf(circulation);
  raise(c, side, degrees);
  const { pressure } = solveSteady(c, beating.steady.pressure);
  return pressure[network.nodeOf.get(`${side} sole`)!]! - climbOf(degrees);
}

/** Raises a leg in steps of halving until the angle of pallor is known to a degree. */
export function readPosture(simulation: Simulation, side: Side): PostureReading {
  const { network, beating, sound, circulation } = simulation;
  const isPale = (degrees: number): boolean =>
    solePressure(simulation, side, degrees) < limit('pallorPressure');
  let pallorAngle: number | undefined;
  const highest = limit('highestRaise');
  if (isPale(highest)) {
    let low = 0;
    let high = highest;
    while (high - low > 1) {
      const mid = (low + high) / 2;
      if (isPale(mid)) high = mid;
      else low = mid;
    }
    pallorAngle = Math.round(high);
  }
  const at60 = solePressure(simulation, side, 60);
  const hold = limit('pallorHold');
  const pallorTime =
    at60 < limit('pallorPressure')
      ? Math.round(5 + (hold - 5) * Math.max(0, at60 / limit('pallorPressure')))
      : undefined;

  const node = network.nodeOf.get(`${side} sole`)!;
  const bed = network.beds.findIndex(({ id }) => id === `${side} sole`);
  const outside = circulation.outside[bed]!;
  const drive = (pressure: Float64Array): number => Math.max(0.5, pressure[node]! - outside);
  const slower = drive(sound.steady.pressure) / drive(beating.steady.pressure);
  const starved = sound.steady.bedFlow[bed]! / Math.max(1e-4, beating.steady.bedFlow[bed]!);
  const wait = (seconds: number): number => Math.min(limit('longestWait'), Math.round(seconds));
  return {
    pallorAngle,
    pallorTime,
    colourReturn: wait(limit('colourReturn') * slower),
    venousFilling: wait(limit('venousFilling') * starved),
  };
}
