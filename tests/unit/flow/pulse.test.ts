import { describe, expect, it } from 'vitest';
import { soundCirculation, narrow } from '../../../src/flow/mean/circulation.js';
import { narrowingOf } from '../../../src/flow/mean/laws.js';
import { solveSteady } from '../../../src/flow/mean/steady.js';
import { beat } from '../../../src/flow/pulse/balance.js';
import { basisOf } from '../../../src/flow/pulse/basis.js';
import { inflowOf } from '../../../src/flow/pulse/heart.js';
import { extremes, pressureTrace, throatTrace } from '../../../src/flow/pulse/traces.js';
import {
  halfTube,
  idealImpedance,
  openTube,
  propagation,
  stump,
  type Tube,
  waveSpeed,
} from '../../../src/flow/pulse/tube.js';
import { admittancesOf, solveWaves, specialsOf } from '../../../src/flow/pulse/waves.js';
import { womersley } from '../../../src/flow/pulse/womersley.js';
import { networkOf } from '../../../src/flow/tree/network.js';
import { RESTING_DRIVE } from '../../../src/flow/units.js';
import { integrate } from './time-integration.js';

interface Complex {
  re: number;
  im: number;
}
const mul = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
const div = (a: Complex, b: Complex): Complex => {
  const s = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / s, im: (a.im * b.re - a.re * b.im) / s };
};

describe('womersley', () => {
  it('equals the power series of the Bessel functions', () => {
    // J0 and J1 by their defining series, z = i^(3/2) alpha, in powers of z²/4 = -i alpha²/4.
    const series = (alpha: number): Complex => {
      const w = { re: 0, im: alpha ** 2 / 4 };
      let t0: Complex = { re: 1, im: 0 };
      let t1: Complex = { re: 1, im: 0 };
      let j0 = t0;
      let j1 = t1;
      for (let m = 1; m < 80; m++) {
        t0 = mul(t0, { re: w.re / (m * m), im: w.im / (m * m) });
        t1 = mul(t1, { re: w.re / (m * (m + 1)), im: w.im / (m * (m + 1)) });
        j0 = add(j0, t0);
        j1 = add(j1, t1);
      }
      return div(j1, j0);
    };
    for (const alpha of [0.05, 0.3, 1, 2.5, 4, 7, 10, 13]) {
      const out = { re: 0, im: 0 };
      womersley(alpha, out);
      const expected = series(alpha);
      expect(out.re, `${alpha}`).toBeCloseTo(expected.re, 10);
      expect(out.im, `${alpha}`).toBeCloseTo(expected.im, 10);
    }
  });

  it('passes from the fraction to the asymptotic series without a step', () => {
    const [below, above] = [24.9999999, 25.0000001].map((alpha) => {
      const out = { re: 0, im: 0 };
      womersley(alpha, out);
      return out;
    }) as [Complex, Complex];
    expect(above.re).toBeCloseTo(below.re, 7);
    expect(above.im).toBeCloseTo(below.im, 7);
  });
});

const tube: Tube = { length: 20, radius: 0.3, area: Math.PI * 0.09, speed: 700, lag: 0.2 };

describe('a single tube', () => {
  const omega = 2 * Math.PI * 3;
  const z = { re: 0, im: 0 };
  const g = { re: 0, im: 0 };
  propagation(tube, omega, z, g);
  const zc = div(z, g);

  it('has the closed form of the input impedance, whatever it ends in', () => {
    const port = { y11: { re: 0, im: 0 }, y12: { re: 0, im: 0 } };
    openTube(tube, omega, port);
    const [x, y] = [g.re * tube.length, g.im * tube.length];
    const tanh = div(
      { re: Math.sinh(x) * Math.cos(y), im: Math.cosh(x) * Math.sin(y) },
      { re: Math.cosh(x) * Math.cos(y), im: Math.sinh(x) * Math.sin(y) },
    );
    for (const load of [{ re: 5, im: 0 }, { re: 0.4, im: -2 }, zc]) {
      // Zin = Zc (ZL + Zc tanh gL)/(Zc + ZL tanh gL)
      const expected = mul(zc, div(add(load, mul(zc, tanh)), add(zc, mul(load, tanh))));
      // From the two-port: Yin = y11 - y12²/(y11 + 1/ZL)
      const yl = div({ re: 1, im: 0 }, load);
      const back = div(mul(port.y12, port.y12), add(port.y11, yl));
      const actual = div({ re: 1, im: 0 }, { re: port.y11.re - back.re, im: port.y11.im - back.im });
      expect(actual.re).toBeCloseTo(expected.re, 9);
      expect(actual.im).toBeCloseTo(expected.im, 9);
    }
  });

  it('ending in its own impedance sends nothing back, closed it sends everything back', () => {
    const reflect = (load: Complex): Complex => div(add(load, { re: -zc.re, im: -zc.im }), add(load, zc));
    expect(Math.hypot(reflect(zc).re, reflect(zc).im)).toBeLessThan(1e-12);
    expect(reflect({ re: 1e9, im: 0 }).re).toBeCloseTo(1, 6);
    // A stump's admittance is tanh(gL)/Zc: the closed form with full reflection.
    const half = halfTube(tube, tube.length, omega);
    const [x, y] = [2 * g.re * tube.length, 2 * g.im * tube.length];
    const e2 = { re: Math.exp(-x) * Math.cos(y), im: -Math.exp(-x) * Math.sin(y) };
    const expected = div(div({ re: 1 - e2.re, im: -e2.im }, { re: 1 + e2.re, im: e2.im }), zc);
    expect(stump(half).re).toBeCloseTo(expected.re, 9);
    expect(stump(half).im).toBeCloseTo(expected.im, 9);
  });

  it('has the impedance of water hammer where viscosity no longer counts', () => {
    const fast = { re: 0, im: 0 };
    const constant = { re: 0, im: 0 };
    propagation({ ...tube, lag: 0 }, 2 * Math.PI * 400, fast, constant);
    expect(Math.hypot(div(fast, constant).re, div(fast, constant).im) / idealImpedance(tube)).toBeCloseTo(
      1,
      1,
    );
  });
});

describe('the heart', () => {
  const inflow = inflowOf([{ length: 0.86, stroke: 1 }], 12);
  it('ejects its mean and nothing else, with a short reversal at the end of systole', () => {
    const { samples, cos, sin } = basisOf(12);
    const trace = new Float64Array(samples).fill(1);
    for (let k = 0; k < 12; k++) {
      for (let i = 0; i < samples; i++) {
        trace[i]! += inflow.re[k + 1]! * cos[k * samples + i]! - inflow.im[k + 1]! * sin[k * samples + i]!;
      }
    }
    const { mean, high, low } = extremes(trace);
    expect(mean).toBeCloseTo(1, 10);
    expect(high).toBeGreaterThan(3.5);
    expect(low).toBeLessThan(0);
    expect(low).toBeGreaterThan(-0.8);
  });
});

/** One artery in two tubes, the second narrowed, a bed at either end. */
function chain(percent: number) {
  const section = (id: string, from: string, to: string, length: number) =>
    ({ id, from, to, length, radii: [0.3, 0.3], wall: 'muscular' }) as const;
  const bed = (node: string, flow: number) =>
    ({ id: node, node, flow, reserve: 5, kind: 'muscle', region: 'leg', side: 'right', ends: true }) as const;
  const network = networkOf({
    root: 'root',
    sections: [section('first', 'root', 'joint', 20), section('second', 'joint', 'end', 14)],
    collaterals: [],
    beds: [bed('root', 300), bed('end', 350)],
  });
  const c = soundCirculation(network, 95);
  const one = narrowingOf(percent, 2, 0.3);
  narrow(c, 1, one, 2);
  const inflow = inflowOf([{ length: 0.86, stroke: 1 }], 12);
  const speed = waveSpeed(0.3, 'muscular', 50, 95);
  const plain = (length: number): Tube => ({
    length,
    radius: 0.3,
    area: Math.PI * 0.09,
    speed,
    lag: 0,
    plain: true,
  });
  const tubes = admittancesOf([plain(20), plain(14)], inflow);
  return { network, c, one, inflow, plain, tubes };
}

describe('harmonic balance', () => {
  it.each([50, 65, 75])(
    'agrees with a time integration of a %i percent narrowing; the mean flow alone does not',
    (percent) => {
      const { network, c, one, inflow, plain, tubes } = chain(percent);
      const beating = beat(c, tubes, inflow);
      expect(beating.converged).toBe(true);
      const { steady } = beating;
      const kessel = (i: number) => {
        const resistance = (steady.pressure[network.bedNode[i]!]! - 5) / steady.bedFlow[i]!;
        const feed = network.bedFeed[i]!;
        const proximal = Math.min(0.2 * resistance, feed < 0 ? Infinity : idealImpedance(tubes.tubes[feed]!));
        const atRest = RESTING_DRIVE / c.resting[i]!;
        return { proximal, distal: resistance - proximal, capacity: 0.6 / atRest, venous: 5 };
      };
      const at = (time: number): number => {
        let sum = 1;
        for (let k = 1; k <= 12; k++) {
          const angle = (2 * Math.PI * k * time) / inflow.period;
          sum += inflow.re[k]! * Math.cos(angle) - inflow.im[k]! * Math.sin(angle);
        }
        return sum * steady.output;
      };
      const samples = 96;
      const perBeat = 9600;
      const table = Float64Array.from({ length: perBeat }, (_, i) =>
        at(((i + 0.5) * inflow.period) / perBeat),
      );
      const timed = integrate(
        {
          first: plain(20),
          half: plain(6),
          narrowing: one,
          side: kessel(0),
          end: kessel(1),
          inflow: (time) => table[Math.floor((time / inflow.period) * perBeat)]!,
          period: inflow.period,
          start: 92,
        },
        samples,
        perBeat,
      );
      const error = (trace: ArrayLike<number>, other: number[]) => {
        let worst = 0;
        let square = 0;
        for (let i = 0; i < samples; i++) {
          const d = trace[i]! - other[i]!;
          worst = Math.max(worst, Math.abs(d));
          square += d * d;
        }
        return { worst, rms: Math.sqrt(square / samples) };
      };
      const end = error(pressureTrace(beating, network.nodeOf.get('end')!), timed.end);
      const joint = error(pressureTrace(beating, network.nodeOf.get('joint')!), timed.joint);
      const high = Math.abs(
        extremes(pressureTrace(beating, network.nodeOf.get('end')!)).high - Math.max(...timed.end),
      );
      expect(end.rms).toBeLessThan(1.8);
      expect(joint.rms).toBeLessThan(1.8);
      expect(high).toBeLessThan(1);
      expect(error(throatTrace(beating, 1)!, timed.throat).rms / (steady.sectionFlow[1]! || 1)).toBeLessThan(
        0.15,
      );

      // The usual shortcut: the quadratic law made linear about the mean flow.
      const first = solveSteady(c);
      const slope = Float64Array.of(0, 2 * Math.abs(first.sectionFlow[1]!));
      const waves = solveWaves(c, first, tubes, inflow, specialsOf(c, tubes), slope);
      const naive = error(
        pressureTrace({ ...beating, steady: first, waves }, network.nodeOf.get('end')!),
        timed.end,
      );
      expect(naive.rms).toBeGreaterThan(2 * end.rms);
    },
  );
});
