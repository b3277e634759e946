import { DENSITY, RESTING_DRIVE, VISCOSITY } from '../units.js';
import { HALF_OPEN } from '../tree/collaterals.js';

/** Resistance of a tapered tube by Poiseuille's law, mmHg·s/ml. Length and radii in cm. */
export function tubeResistance(length: number, [r1, r2]: readonly [number, number]): number {
  const fall = r1 - r2;
  if (Math.abs(fall) < 1e-9 * r1) return (8 * VISCOSITY * length) / (Math.PI * r1 ** 4);
  return ((8 * VISCOSITY * length) / (3 * Math.PI * fall)) * (r2 ** -3 - r1 ** -3);
}

/** Pressure drop across a narrowing: `viscous` Q + `turbulent` Q|Q| + `inertia` dQ/dt, in mmHg with Q in ml/s. */
export interface Narrowing {
  readonly viscous: number;
  readonly turbulent: number;
  readonly inertia: number;
  /** Area of the throat and of the open artery, cm². */
  readonly throat: number;
  readonly open: number;
}

const TURBULENT = 1.52;
const INERTIAL = 1.2;

/**
 * The law of Young and Tsai: viscous loss in the throat, loss of the jet beyond it, inertia.
 * Source: Young DF, Tsai FY, J Biomech 1973;6:395-410 and 547-559 (Kt 1.52, Ku 1.2), with the viscous coefficient of Seeley BD,
 * Young DF, J Biomech 1976;9:439-448; tried in dogs by Young DF, Cholvin NR, Roth AC, Circ Res 1975;36:735-743. Constants from
 * memory.
 * @param percent narrowing in percent of the diameter, below 100
 * @param length length of the narrowing, cm
 * @param radius inner radius of the open artery, cm
 */
export function narrowingOf(percent: number, length: number, radius: number): Narrowing {
  const d0 = 2 * radius;
  const d1 = d0 * (1 - percent / 100);
  const open = Math.PI * radius ** 2;
  const throat = (Math.PI * d1 ** 2) / 4;
  const ratio = open / throat;
  const kv = ((32 * (0.83 * length + 1.64 * d1)) / d0) * ratio ** 2;
  return {
    viscous: (kv * VISCOSITY) / (d0 * open),
    turbulent: ((TURBULENT / 2) * DENSITY * (ratio - 1) ** 2) / open ** 2,
    inertia: (INERTIAL * DENSITY * length) / open,
    throat,
    open,
  };
}

/** The flow at which a Q + b Q|Q| equals a pressure drop; exact, no search. */
export function flowThrough(a: number, b: number, drop: number): number {
  return (2 * drop) / (a + Math.sqrt(a * a + 4 * b * Math.abs(drop)));
}

/** A flow and its slope against the pressure. */
export interface Flow {
  q: number;
  slope: number;
}

/**
 * Flow of a bed at a driving pressure: it holds its own flow as the pressure falls, until its vessels are wide open.
 * Rises with the pressure everywhere; its slope is explicit. Rule of thumb.
 * @param drive arterial less outside pressure, mmHg
 * @param greatest greatest conductance, ml/s per mmHg
 * @param resting flow at the resting driving pressure, ml/s
 * @param exponent how the resting flow follows the pressure
 */
export function bedFlow(drive: number, greatest: number, resting: number, exponent: number, out: Flow): void {
  if (drive <= 1e-9) {
    out.q = drive * greatest;
    out.slope = greatest;
    return;
  }
  const open = drive * greatest;
  const held = resting * Math.exp(exponent * Math.log(drive / RESTING_DRIVE));
  const ratio = open / held;
  const r2 = ratio * ratio;
  const share = 1 / Math.sqrt(Math.sqrt(1 + r2 * r2));
  const s2 = share * share;
  const s5 = s2 * s2 * share;
  const h = share * ratio;
  const h2 = h * h;
  out.q = open * share;
  out.slope = s5 * greatest + (h2 * h2 * h * exponent * held) / drive;
}

/**
 * Flow of a collateral: it opens with the pressure difference across it. Rule of thumb.
 * @param fresh conductance when no difference opens it, ml/s per mmHg
 * @param gain what it can gain, ml/s per mmHg
 */
export function collateralFlow(difference: number, fresh: number, gain: number, out: Flow): void {
  const square = difference * difference;
  const half = HALF_OPEN * HALF_OPEN;
  const sum = square + half;
  out.q = difference * (fresh + (gain * square) / sum);
  out.slope = fresh + (gain * (square * square + 3 * half * square)) / (sum * sum);
}
