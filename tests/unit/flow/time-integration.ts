import type { Narrowing } from '../../../src/flow/mean/laws.js';
import type { Tube } from '../../../src/flow/pulse/tube.js';
import { DENSITY, VISCOSITY } from '../../../src/flow/units.js';

/*
 * A second way to the pulse, for one artery with a narrowing: a chain of lumps (resistance, inertia, compliance) stepped through
 * time beat after beat until it repeats. It shares no solver with the library: no harmonics, no admittances, no elimination.
 */

interface Windkessel {
  readonly proximal: number;
  readonly distal: number;
  readonly capacity: number;
  readonly venous: number;
}

interface Chain {
  /** Tube before the narrowing's own tube, then the halves of that tube. */
  readonly first: Tube;
  readonly half: Tube;
  readonly narrowing: Narrowing;
  /** The bed at the root, beside the chain, and the one at its end. */
  readonly side: Windkessel;
  readonly end: Windkessel;
  /** Inflow in ml/s at a time in s, and its period. */
  readonly inflow: (time: number) => number;
  readonly period: number;
  readonly start: number;
}

interface Lump {
  readonly resistance: number;
  readonly inertia: number;
  readonly turbulent: number;
  readonly capacity: number;
}

function lumpsOf(tube: Tube, length: number, size: number): Lump[] {
  const count = Math.max(2, Math.round(length / size));
  const dx = length / count;
  const lump = {
    resistance: ((8 * Math.PI * VISCOSITY) / tube.area ** 2) * dx,
    inertia: (DENSITY / tube.area) * dx,
    turbulent: 0,
    capacity: (tube.area / (DENSITY * tube.speed ** 2)) * dx,
  };
  return Array.from({ length: count }, () => lump);
}

/** Beats until it repeats, and length of a lump in cm. */
const [BEATS, SIZE] = [14, 0.5];

/** Pressures over one settled beat: where the second tube begins, and at the end; flow in the throat. */
export function integrate(chain: Chain, samples: number, perBeat: number) {
  const { first, half, narrowing, side, end, inflow, period } = chain;
  const before = [...lumpsOf(first, first.length, SIZE)];
  const joint = before.length;
  before.push(...lumpsOf(half, half.length, SIZE));
  const throat = before.length;
  const lumps: Lump[] = [
    ...before,
    {
      resistance: narrowing.viscous,
      inertia: narrowing.inertia,
      turbulent: narrowing.turbulent,
      capacity: 0,
    },
    ...lumpsOf(half, half.length, SIZE),
  ];
  // Node i lies before lump i; compliance of a lump is shared between its ends.
  const n = lumps.length + 1;
  const capacity = new Float64Array(n);
  lumps.forEach((lump, i) => {
    capacity[i]! += lump.capacity / 2;
    capacity[i + 1]! += lump.capacity / 2;
  });
  const p = new Float64Array(n).fill(chain.start);
  const q = new Float64Array(lumps.length);
  let sideStore = chain.start;
  let endStore = chain.start;
  const dt = period / perBeat;
  const out = { joint: [] as number[], end: [] as number[], throat: [] as number[] };
  const every = perBeat / samples;
  for (let step = 0; step < BEATS * perBeat; step++) {
    const last = step >= (BEATS - 1) * perBeat;
    if (last && step % every === 0) {
      out.joint.push(p[joint]!);
      out.end.push(p[n - 1]!);
      out.throat.push(q[throat]!);
    }
    for (let i = 0; i < lumps.length; i++) {
      const { resistance, inertia, turbulent } = lumps[i]!;
      // The loss is taken at the new flow, which keeps a tight throat stable.
      const loss = resistance + turbulent * Math.abs(q[i]!);
      q[i] = (q[i]! + (dt / inertia) * (p[i]! - p[i + 1]!)) / (1 + (dt / inertia) * loss);
    }
    const toSide = (p[0]! - sideStore) / side.proximal;
    const toEnd = (p[n - 1]! - endStore) / end.proximal;
    sideStore += (dt * (toSide - (sideStore - side.venous) / side.distal)) / side.capacity;
    endStore += (dt * (toEnd - (endStore - end.venous) / end.distal)) / end.capacity;
    const source = inflow(((step % perBeat) + 0.5) * dt);
    for (let i = 0; i < n; i++) {
      const net = (i > 0 ? q[i - 1]! : source - toSide) - (i < n - 1 ? q[i]! : toEnd);
      p[i]! += (dt * net) / capacity[i]!;
    }
  }
  return out;
}
