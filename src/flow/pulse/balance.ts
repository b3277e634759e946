import { type Circulation, OPEN } from '../mean/circulation.js';
import { type Pulsation, solveSteady, type Steady } from '../mean/steady.js';
import type { Inflow } from './heart.js';
import { addWave, basisOf } from './basis.js';
import { solveWaves, specialsOf, type Tubes, type Waves } from './waves.js';

/** A circulation's mean and pulse, and how the search for them went. */
export interface Beating {
  readonly steady: Steady;
  readonly waves: Waves;
  /** Newton steps of all passes together. */
  readonly newtonSteps: number;
  readonly passes: number;
  /** Greatest imbalance of mean flow at a node, ml/s. */
  readonly residual: number;
  /** How far the last pass still moved a narrowing, as a share. */
  readonly moved: number;
  readonly converged: boolean;
}

const MOST_PASSES = 10;
/** A narrowing whose flow and resistance move less than this share is settled. */
const SETTLED = 0.01;

/**
 * Harmonic balance: the narrowings' Q|Q| is averaged over the beat that it makes itself. Each pass takes the flow in every throat,
 * works out what its pulse adds to the mean drop and what resistance it offers to the pulse, and solves both again.
 * A narrowing linearised about its mean flow alone errs by several mmHg.
 */
export function beat(c: Circulation, tubes: Tubes, inflow: Inflow, start?: Float64Array): Beating {
  const specials = specialsOf(c, tubes);
  const open = specials.flatMap(({ section }, at) => (c.state[section] === OPEN ? [{ section, at }] : []));
  let steady = solveSteady(c, start);
  let newtonSteps = steady.steps;
  const slope = new Float64Array(c.state.length);
  for (const { section } of open) slope[section] = 2 * Math.abs(steady.sectionFlow[section]!);
  let waves = solveWaves(c, steady, tubes, inflow, specials, slope);
  let passes = 1;
  let moved = 0;
  if (open.length) {
    const pulsation: Pulsation = {
      known: new Uint8Array(c.state.length),
      absolute: new Float64Array(c.state.length),
      square: new Float64Array(c.state.length),
      mean: new Float64Array(c.state.length),
    };
    const basis = basisOf(tubes.harmonics);
    const { samples } = basis;
    const trace = new Float64Array(samples);
    const last: [used: number, found: number][] = [];
    do {
      moved = 0;
      const before = open.map(({ section }) => [steady.sectionFlow[section]!, slope[section]!] as const);
      for (const { section, at } of open) {
        const mean = steady.sectionFlow[section]!;
        trace.fill(mean);
        for (let k = 0; k < tubes.harmonics; k++) {
          const i = at * tubes.harmonics + k;
          addWave(trace, basis, k, waves.throatRe[i]!, waves.throatIm[i]!);
        }
        let absolute = 0;
        let square = 0;
        let product = 0;
        let variance = 0;
        for (const q of trace) {
          const size = Math.abs(q);
          absolute += size;
          square += q * size;
          product += q * size * (q - mean);
          variance += (q - mean) ** 2;
        }
        pulsation.known[section] = 1;
        pulsation.absolute[section] = absolute / samples;
        pulsation.square[section] = square / samples;
        pulsation.mean[section] = mean;
        const found = variance > 1e-18 ? product / variance : 2 * Math.abs(mean);
        // A stiffer narrowing damps its own pulse: the pass swings about the answer. The secant takes it there at once.
        const used = slope[section]!;
        const [lastUsed, lastFound] = last[at] ?? [used, found];
        const ratio = last[at] && used !== lastUsed ? (found - lastFound) / (used - lastUsed) : -0.45;
        last[at] = [used, found];
        slope[section] = Math.max(0, used + (found - used) / (1 - Math.min(0.5, Math.max(-1, ratio))));
      }
      steady = solveSteady(c, steady.pressure, pulsation);
      newtonSteps += steady.steps;
      waves = solveWaves(c, steady, tubes, inflow, specials, slope);
      passes++;
      open.forEach(({ section }, i) => {
        const [q, g] = before[i]!;
        const scale = Math.max(slope[section]!, 1e-6);
        moved = Math.max(
          moved,
          Math.abs(steady.sectionFlow[section]! - q) / scale,
          Math.abs(slope[section]! - g) / scale,
        );
      });
    } while (moved > SETTLED && passes < MOST_PASSES);
  }
  return {
    steady,
    waves,
    newtonSteps,
    passes,
    residual: steady.residual,
    moved,
    converged: steady.converged && moved <= 5 * SETTLED,
  };
}
