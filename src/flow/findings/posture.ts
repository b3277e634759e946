import { type Side } from '../../anatomy/index.js';
import { copyForTest } from '../mean/circulation.js';
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

/** Imbalance in ml/s that moves the sole's pressure by less than a tenth of a mmHg. */
const ENOUGH = 1e-5;

/** Raises a leg in steps of halving until the angle of pallor is known to a degree. */
export function readPosture(simulation: Simulation, side: Side): PostureReading {
  const { network, beating, sound, circulation } = simulation;
  const sole = network.nodeOf.get(`${side} sole`)!;
  let start = beating.steady.pressure;
  /** Mean pressure in the sole of the raised leg at its own height, mmHg. */
  const solePressure = (degrees: number): number => {
    const c = copyForTest(circulation);
    raise(c, side, degrees);
    const { pressure } = solveSteady(c, start, undefined, ENOUGH);
    start = pressure;
    return pressure[sole]! - climbOf(degrees);
  };
  const pale = limit('pallorPressure');
  const hold = limit('pallorHold');
  const at60 = solePressure(60);
  const pallorTime = at60 < pale ? Math.round(5 + (hold - 5) * Math.max(0, at60 / pale)) : undefined;
  const highest = limit('highestRaise');
  let pallorAngle: number | undefined;
  if (at60 < pale || solePressure(highest) < pale) {
    let low = at60 < pale ? 0 : 60;
    let high = at60 < pale ? 60 : highest;
    while (high - low > 1) {
      const mid = (low + high) / 2;
      if (solePressure(mid) < pale) high = mid;
      else low = mid;
    }
    pallorAngle = Math.round(high);
  }

  const bed = network.beds.findIndex(({ id }) => id === `${side} sole`);
  const outside = circulation.outside[bed]!;
  const drive = (pressure: Float64Array): number => Math.max(0.5, pressure[sole]! - outside);
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
