import { type RealSystem, realSystem, solveReal } from '../tree/elimination.js';
import type { Network } from '../tree/network.js';
import { VENOUS_PRESSURE } from '../units.js';
import { type Circulation, OPEN } from './circulation.js';
import { bedFlow, collateralFlow, type Flow } from './laws.js';

/**
 * What the pulse adds to the mean drop across a narrowing, by section: the mean of |Q|, the mean of Q|Q| and the mean flow they
 * were found at. Sections without it follow the steady law.
 */
export interface Pulsation {
  readonly known: Uint8Array;
  readonly absolute: Float64Array;
  readonly square: Float64Array;
  readonly mean: Float64Array;
}

/** Mean pressures and flows. A solution that was not reached is told by `converged: false`, never hidden. */
export interface Steady {
  /** By node, mmHg. */
  readonly pressure: Float64Array;
  /** By section, collateral and bed, ml/s, positive from `from` to `to`. */
  readonly sectionFlow: Float64Array;
  readonly collateralFlow: Float64Array;
  readonly bedFlow: Float64Array;
  /** What leaves the heart, ml/s. */
  readonly output: number;
  readonly steps: number;
  /** Greatest imbalance at a node, ml/s. */
  readonly residual: number;
  /** What leaves the heart less what the beds take, ml/s. */
  readonly imbalance: number;
  readonly converged: boolean;
}

/** Imbalance at which the search may stop, and the one a solution may not exceed, ml/s. */
const GOOD = 1e-9;
const ACCEPTED = 1e-8;
const MOST_STEPS = 60;
/** Keeps a node between two blocks from being undetermined; ml/s per mmHg. */
const LEAK = 1e-12;

const NO_PULSATION: Pulsation = {
  known: new Uint8Array(0),
  absolute: new Float64Array(0),
  square: new Float64Array(0),
  mean: new Float64Array(0),
};

interface Room {
  system: RealSystem;
  trial: Float64Array;
  residual: Float64Array;
}
const rooms = new WeakMap<Network, Room>();
function roomOf(network: Network): Room {
  let room = rooms.get(network);
  if (!room) {
    const size = network.nodes.length;
    room = {
      system: realSystem(network.elimination),
      trial: new Float64Array(size),
      residual: new Float64Array(size),
    };
    rooms.set(network, room);
  }
  return room;
}

/**
 * Solves for the pressures at which every node's flows balance, by Newton's method with halved steps. Every element's flow rises
 * with its pressure drop, so there is one solution.
 * @param start pressures to begin from, by node; the root's pressure everywhere where none is given
 * @param good imbalance in ml/s at which the search stops; a coarser one serves where only a limit is asked for
 */
export function solveSteady(
  c: Circulation,
  start?: Float64Array,
  pulsation?: Pulsation,
  good = GOOD,
): Steady {
  const { network } = c;
  const { from, to, slot, bedNode, elimination } = network;
  const nSections = network.sections.length;
  const nEdges = nSections + network.collaterals.length;
  const nBeds = network.beds.length;
  const root = network.nodes.length - 1;
  const { system, trial, residual } = roomOf(network);
  const { diagonal, off, right } = system;
  const pressure = start ? start.slice() : new Float64Array(root + 1).fill(c.rootPressure);
  pressure[root] = c.rootPressure;
  const sectionFlow = new Float64Array(nSections);
  const collateral = new Float64Array(nEdges - nSections);
  const beds = new Float64Array(nBeds);
  const flow: Flow = { q: 0, slope: 0 };

  const { state, linear, turbulent, fresh, gain, greatest: widest, resting, exponent, outside } = c;
  const { known, absolute, square: squared, mean } = pulsation ?? NO_PULSATION;

  /** Fills flows, residual and matrix at these pressures; returns the sum of squares of the imbalance. */
  const balance = (p: Float64Array): number => {
    for (let i = 0; i <= root; i++) {
      diagonal[i] = LEAK;
      residual[i] = -LEAK * (p[i]! - VENOUS_PRESSURE);
    }
    off.fill(0);
    for (let edge = 0; edge < nEdges; edge++) {
      const f = from[edge]!;
      const t = to[edge]!;
      const drop = p[f]! - p[t]!;
      let q: number;
      let slope: number;
      if (edge < nSections) {
        if (state[edge] !== OPEN) {
          sectionFlow[edge] = 0;
          continue;
        }
        const a = linear[edge]!;
        const b = turbulent[edge]!;
        if (b === 0) {
          slope = 1 / a;
          q = drop * slope;
        } else if (known[edge]) {
          const m1 = 2 * b * absolute[edge]!;
          slope = 1 / (a + m1);
          q = (drop - b * squared[edge]! + m1 * mean[edge]!) * slope;
        } else {
          const rootOf = Math.sqrt(a * a + 4 * b * Math.abs(drop));
          slope = 1 / rootOf;
          q = (2 * drop) / (a + rootOf);
        }
        sectionFlow[edge] = q;
      } else {
        const e = edge - nSections;
        collateralFlow(drop, fresh[e]!, gain[e]!, flow);
        collateral[e] = q = flow.q;
        slope = flow.slope;
      }
      residual[f]! -= q;
      residual[t]! += q;
      diagonal[f]! += slope;
      diagonal[t]! += slope;
      off[slot[edge]!]! -= slope;
    }
    for (let i = 0; i < nBeds; i++) {
      const node = bedNode[i]!;
      bedFlow(p[node]! - outside[i]!, widest[i]!, resting[i]!, exponent[i]!, flow);
      beds[i] = flow.q;
      residual[node]! -= flow.q;
      diagonal[node]! += flow.slope;
    }
    let sum = 0;
    for (let i = 0; i < root; i++) sum += residual[i]! * residual[i]!;
    return sum;
  };
  const greatest = (): number => {
    let worst = 0;
    for (let i = 0; i < root; i++) worst = Math.max(worst, Math.abs(residual[i]!));
    return worst;
  };

  let steps = 0;
  let square = balance(pressure);
  let worst = greatest();
  while (worst > good && steps < MOST_STEPS && Number.isFinite(square)) {
    right.set(residual);
    solveReal(elimination, system);
    steps++;
    const before = worst;
    let scale = 1;
    let next = Infinity;
    for (let halvings = 0; halvings < 30; halvings++, scale /= 2) {
      for (let i = 0; i <= root; i++) trial[i] = pressure[i]! + scale * right[i]!;
      // `balance` leaves `right` alone, so that a shorter step can be tried from it.
      next = balance(trial);
      if (next < square || before < ACCEPTED) break;
    }
    if (before < ACCEPTED && !(next < square)) {
      // At the floor of rounding no step helps further.
      worst = before;
      balance(pressure);
      break;
    }
    pressure.set(trial);
    square = next;
    worst = greatest();
  }

  const output = -residual[root]!;
  let taken = 0;
  for (const q of beds) taken += q;
  return {
    pressure,
    sectionFlow,
    collateralFlow: collateral,
    bedFlow: beds,
    output,
    steps,
    residual: worst,
    imbalance: output - taken,
    converged: worst <= Math.max(good, ACCEPTED),
  };
}
