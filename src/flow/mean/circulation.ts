import { type Network } from '../tree/network.js';
import { EXPONENT } from '../tree/beds.js';
import { perSecond, RESTING_DRIVE, RESTING_PRESSURE, VENOUS_PRESSURE } from '../units.js';
import { type Narrowing, tubeResistance } from './laws.js';

/** `open`; `stopped`: closed at a point, stumps on both sides; `gone`: closed over its whole length. */
export const OPEN = 0;
export const STOPPED = 1;
export const GONE = 2;

/**
 * One patient's circulation as numbers: what the laws of every section, collateral and bed are at this moment. Flows in ml/s,
 * pressures in mmHg.
 */
export interface Circulation {
  readonly network: Network;
  /** Mean pressure at the root. */
  rootPressure: number;
  /** By section: open, stopped or gone. */
  readonly state: Uint8Array;
  /** By section: resistance of the tube with its narrowings, and the coefficient of Q|Q|. */
  readonly linear: Float64Array;
  /** By section: resistance of the open tube alone. */
  readonly tube: Float64Array;
  readonly turbulent: Float64Array;
  /** By section: inertia and length of its narrowings, and the smallest throat in cm² (0 where there is none). */
  readonly inertia: Float64Array;
  readonly narrowed: Float64Array;
  readonly throat: Float64Array;
  /** By collateral. */
  readonly fresh: Float64Array;
  readonly gain: Float64Array;
  /** By bed: greatest conductance, resting flow, exponent, pressure outside its small vessels. */
  readonly greatest: Float64Array;
  readonly resting: Float64Array;
  readonly exponent: Float64Array;
  readonly outside: Float64Array;
}

const tables = new WeakMap<Network, Circulation>();

/** The circulation of a sound, resting adult; collaterals usual. */
export function soundCirculation(network: Network, rootPressure: number): Circulation {
  let table = tables.get(network);
  if (!table) tables.set(network, (table = tableOf(network)));
  return { ...copyOf(table), rootPressure };
}

function tableOf(network: Network): Circulation {
  const { sections, collaterals, beds } = network;
  const tube = Float64Array.from(sections, ({ length, radii }) => tubeResistance(length, radii));
  return {
    network,
    rootPressure: RESTING_PRESSURE,
    state: Uint8Array.from(sections, ({ onlyIn }) => (onlyIn ? GONE : OPEN)),
    linear: tube.slice(),
    tube,
    turbulent: new Float64Array(sections.length),
    inertia: new Float64Array(sections.length),
    narrowed: new Float64Array(sections.length),
    throat: new Float64Array(sections.length),
    fresh: Float64Array.from(collaterals, ({ fresh }) => perSecond(fresh)),
    gain: Float64Array.from(collaterals, ({ fresh, developed }) => perSecond(developed - fresh)),
    greatest: Float64Array.from(beds, ({ flow, reserve }) => perSecond(flow * reserve) / RESTING_DRIVE),
    resting: Float64Array.from(beds, ({ flow }) => perSecond(flow)),
    exponent: Float64Array.from(beds, ({ kind }) => EXPONENT[kind]),
    outside: new Float64Array(beds.length).fill(VENOUS_PRESSURE),
  };
}

/** A copy that can be changed apart. */
export function copyOf(c: Circulation): Circulation {
  return {
    ...c,
    state: c.state.slice(),
    linear: c.linear.slice(),
    turbulent: c.turbulent.slice(),
    inertia: c.inertia.slice(),
    narrowed: c.narrowed.slice(),
    throat: c.throat.slice(),
    fresh: c.fresh.slice(),
    gain: c.gain.slice(),
    greatest: c.greatest.slice(),
    resting: c.resting.slice(),
    outside: c.outside.slice(),
  };
}

/** A copy whose beds and blocks can be changed apart: enough for a test at the bedside. */
export function copyForTest(c: Circulation): Circulation {
  return {
    ...c,
    state: c.state.slice(),
    greatest: c.greatest.slice(),
    resting: c.resting.slice(),
    outside: c.outside.slice(),
  };
}

/** Puts a narrowing into a section, in series with what is there. */
export function narrow(c: Circulation, section: number, one: Narrowing, length: number): void {
  c.linear[section]! += one.viscous;
  c.turbulent[section]! += one.turbulent;
  c.inertia[section]! += one.inertia;
  c.narrowed[section]! += length;
  const before = c.throat[section]!;
  c.throat[section] = before === 0 ? one.throat : Math.min(before, one.throat);
}

/** Closes a section at a point or over its length; never opens one again. */
export function close(c: Circulation, section: number, extent: typeof STOPPED | typeof GONE): void {
  c.state[section] = Math.max(c.state[section]!, extent);
}
