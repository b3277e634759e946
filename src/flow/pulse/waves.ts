import { type ComplexSystem, complexSystem, solveComplex } from '../tree/elimination.js';
import { COLLATERAL_RADIUS } from '../tree/collaterals.js';
import { TIME_CONSTANT } from '../tree/beds.js';
import type { Network } from '../tree/network.js';
import { type Circulation, GONE, OPEN, STOPPED } from '../mean/circulation.js';
import type { Steady } from '../mean/steady.js';
import { DENSITY, perSecond, RESTING_DRIVE, VISCOSITY } from '../units.js';
import type { Inflow } from './heart.js';
import {
  type Half,
  halfTube,
  idealImpedance,
  narrowedTube,
  openTube,
  stump,
  type Tube,
  tubeOf,
  type TwoPort,
} from './tube.js';

/** The admittances of every open section at every harmonic: the same for all patients of this age, pressure and rhythm. */
export interface Tubes {
  readonly tubes: readonly Tube[];
  readonly harmonics: number;
  readonly omega: number;
  /** By harmonic and section: `(k - 1) * sections + section`. */
  readonly y11re: Float64Array;
  readonly y11im: Float64Array;
  readonly y12re: Float64Array;
  readonly y12im: Float64Array;
}

/** By section: the first section with the same tube. Right and left are mostly alike, which halves the work. */
function twins(tubes: readonly Tube[]): Int32Array {
  const first = new Map<string, number>();
  return Int32Array.from(tubes, ({ radius, length, lag }, i) => {
    const same = `${radius} ${length} ${lag}`;
    const found = first.get(same);
    if (found !== undefined) return found;
    first.set(same, i);
    return i;
  });
}

/** The admittances of a network's sections at every harmonic of an inflow. */
export function tubesOf(network: Network, age: number, meanPressure: number, inflow: Inflow): Tubes {
  return admittancesOf(
    network.sections.map((section) => tubeOf(section, age, meanPressure)),
    inflow,
  );
}

/** As {@link tubesOf}, of tubes by section. */
export function admittancesOf(tubes: readonly Tube[], inflow: Inflow): Tubes {
  const same = twins(tubes);
  const n = tubes.length;
  const room = (): Float64Array => new Float64Array(n * inflow.harmonics);
  const out = { y11re: room(), y11im: room(), y12re: room(), y12im: room() };
  const omega = (2 * Math.PI) / inflow.period;
  const port: TwoPort = { y11: { re: 0, im: 0 }, y12: { re: 0, im: 0 } };
  for (let k = 1, at = 0; k <= inflow.harmonics; k++) {
    for (let e = 0; e < n; e++, at++) {
      const twin = at - e + same[e]!;
      if (twin < at) {
        out.y11re[at] = out.y11re[twin]!;
        out.y11im[at] = out.y11im[twin]!;
        out.y12re[at] = out.y12re[twin]!;
        out.y12im[at] = out.y12im[twin]!;
        continue;
      }
      openTube(tubes[e]!, k * omega, port);
      out.y11re[at] = port.y11.re;
      out.y11im[at] = port.y11.im;
      out.y12re[at] = port.y12.re;
      out.y12im[at] = port.y12.im;
    }
  }
  return { tubes, harmonics: inflow.harmonics, omega, ...out };
}

/** A section with a narrowing or a closed point, which the shared table does not hold. */
interface Special {
  readonly section: number;
  readonly halves: readonly Half[];
}

/** Waves of pressure at every node: by harmonic and node, `(k - 1) * nodes + node`, in mmHg. */
export interface Waves {
  readonly tubes: Tubes;
  readonly re: Float64Array;
  readonly im: Float64Array;
  readonly specials: readonly Special[];
  /** By special section and harmonic: the flow in the throat, ml/s. */
  readonly throatRe: Float64Array;
  readonly throatIm: Float64Array;
  /** By section: 1 + its place among the specials, 0 for the rest. */
  readonly specialOf: Int16Array;
  /** By special section and harmonic: the two-port in place. */
  readonly port: readonly TwoPort[];
}

const TAU = (DENSITY * COLLATERAL_RADIUS ** 2) / (6 * VISCOSITY);

interface Terminal {
  readonly proximal: number;
  readonly distal: number;
  readonly capacity: number;
}

/** The windkessel of every bed at its present mean flow; the compliance stays that of rest when the bed opens. */
function terminalsOf(c: Circulation, steady: Steady, tubes: readonly Tube[]): Terminal[] {
  const { beds, bedNode, bedFeed } = c.network;
  return beds.map(({ region, flow, ends }, i) => {
    const drive = steady.pressure[bedNode[i]!]! - c.outside[i]!;
    const q = steady.bedFlow[i]!;
    const resistance = Math.abs(q) > 1e-12 ? Math.max(drive / q, 1e-6) : 1 / c.greatest[i]!;
    const feed = bedFeed[i]!;
    const match = feed < 0 ? Infinity : idealImpedance(tubes[feed]!) * (ends ? 1 : 3);
    const proximal = Math.min(0.2 * resistance, match);
    const atRest = RESTING_DRIVE / perSecond(flow);
    return { proximal, distal: resistance - proximal, capacity: TIME_CONSTANT[region] / atRest };
  });
}

const systems = new WeakMap<Network, ComplexSystem>();

/** Finds the sections that want their own two-port, with their half tubes at every harmonic. */
export function specialsOf(c: Circulation, { tubes, harmonics, omega }: Tubes): Special[] {
  const out: Special[] = [];
  for (let section = 0; section < tubes.length; section++) {
    const stopped = c.state[section] === STOPPED;
    if (!stopped && (c.state[section] !== OPEN || c.turbulent[section] === 0)) continue;
    const tube = tubes[section]!;
    const half = Math.max(0.05, (tube.length - (stopped ? 0 : c.narrowed[section]!)) / 2);
    const halves = Array.from({ length: harmonics }, (_, k) => halfTube(tube, half, (k + 1) * omega));
    out.push({ section, halves });
  }
  return out;
}

/**
 * Solves the linear wave equations of the whole tree, harmonic by harmonic.
 * @param slope by section: what turns a narrowing's Q|Q| into a resistance at this pulse
 */
export function solveWaves(
  c: Circulation,
  steady: Steady,
  tubes: Tubes,
  inflow: Inflow,
  specials: readonly Special[],
  slope: Float64Array,
): Waves {
  const { network } = c;
  const { from, to, slot, bedNode, elimination } = network;
  const nNodes = network.nodes.length;
  const nSections = network.sections.length;
  const root = nNodes - 1;
  let system = systems.get(network);
  if (!system) systems.set(network, (system = complexSystem(elimination)));
  const { diagonalRe, diagonalIm, offRe, offIm, rightRe, rightIm } = system;
  const { harmonics, omega, y11re, y11im, y12re, y12im } = tubes;
  const { state } = c;
  const terminals = terminalsOf(c, steady, tubes.tubes);
  const specialOf = new Int16Array(nSections);
  specials.forEach(({ section }, i) => (specialOf[section] = i + 1));
  const re = new Float64Array(nNodes * harmonics);
  const im = new Float64Array(nNodes * harmonics);
  const throatRe = new Float64Array(specials.length * harmonics);
  const throatIm = new Float64Array(specials.length * harmonics);
  const port: TwoPort[] = [];
  const chord = Float64Array.from(network.collaterals, (_, i) => {
    const edge = nSections + i;
    const drop = steady.pressure[from[edge]!]! - steady.pressure[to[edge]!]!;
    return Math.abs(drop) > 1e-9 ? steady.collateralFlow[i]! / drop : c.fresh[i]!;
  });

  for (let k = 1; k <= harmonics; k++) {
    const w = k * omega;
    diagonalRe.fill(1e-12);
    diagonalIm.fill(0);
    offRe.fill(0);
    offIm.fill(0);
    const tie = (edge: number, ar: number, ai: number, br: number, bi: number): void => {
      const f = from[edge]!;
      const t = to[edge]!;
      diagonalRe[f]! += ar;
      diagonalIm[f]! += ai;
      diagonalRe[t]! += ar;
      diagonalIm[t]! += ai;
      offRe[slot[edge]!]! += br;
      offIm[slot[edge]!]! += bi;
    };
    for (let e = 0, at = (k - 1) * nSections; e < nSections; e++, at++) {
      if (state[e] === GONE || specialOf[e]) continue;
      const ar = y11re[at]!;
      const ai = y11im[at]!;
      const f = from[e]!;
      const t = to[e]!;
      const s = slot[e]!;
      diagonalRe[f]! += ar;
      diagonalIm[f]! += ai;
      diagonalRe[t]! += ar;
      diagonalIm[t]! += ai;
      offRe[s]! += y12re[at]!;
      offIm[s]! += y12im[at]!;
    }
    specials.forEach(({ section, halves }) => {
      const half = halves[k - 1]!;
      let two: TwoPort;
      if (c.state[section] === STOPPED) two = { y11: stump(half), y12: { re: 0, im: 0 } };
      else {
        const series = {
          re: viscousOf(c, section) + c.turbulent[section]! * slope[section]!,
          im: w * c.inertia[section]!,
        };
        two = narrowedTube(half, series);
      }
      port.push(two);
      tie(section, two.y11.re, two.y11.im, two.y12.re, two.y12.im);
    });
    for (let i = 0; i < chord.length; i++) {
      const x = w * TAU;
      const scale = chord[i]! / (1 + x * x);
      tie(nSections + i, scale, -x * scale, -scale, x * scale);
    }
    for (let i = 0; i < terminals.length; i++) {
      const { proximal, distal, capacity } = terminals[i]!;
      // Z = R1 + R2/(1 + i w R2 C)
      const x = w * distal * capacity;
      const share = distal / (1 + x * x);
      const zr = proximal + share;
      const zi = -x * share;
      const scale = 1 / (zr * zr + zi * zi);
      const node = bedNode[i]!;
      diagonalRe[node]! += zr * scale;
      diagonalIm[node]! -= zi * scale;
    }
    rightRe.fill(0);
    rightIm.fill(0);
    rightRe[root] = inflow.re[k]! * steady.output;
    rightIm[root] = inflow.im[k]! * steady.output;
    solveComplex(elimination, system);
    re.set(rightRe, (k - 1) * nNodes);
    im.set(rightIm, (k - 1) * nNodes);
    specials.forEach(({ section, halves }, s) => {
      if (c.state[section] === STOPPED) return;
      const two = port[(k - 1) * specials.length + s]!;
      const { cosh, d } = halves[k - 1]!;
      const f = from[section]!;
      const t = to[section]!;
      const pr = rightRe[f]!;
      const pi = rightIm[f]!;
      const qr = two.y11.re * pr - two.y11.im * pi + two.y12.re * rightRe[t]! - two.y12.im * rightIm[t]!;
      const qi = two.y11.re * pi + two.y11.im * pr + two.y12.re * rightIm[t]! + two.y12.im * rightRe[t]!;
      throatRe[s * harmonics + k - 1] = cosh.re * qr - cosh.im * qi - (d.re * pr - d.im * pi);
      throatIm[s * harmonics + k - 1] = cosh.re * qi + cosh.im * qr - (d.re * pi + d.im * pr);
    });
  }
  return { tubes, re, im, specials, throatRe, throatIm, specialOf, port };
}

/** The viscous part of a section's narrowings: its resistance less that of the open tube. */
function viscousOf(c: Circulation, section: number): number {
  return Math.max(0, c.linear[section]! - c.tube[section]!);
}
