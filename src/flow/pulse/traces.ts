import type { Circulation } from '../mean/circulation.js';
import { OPEN, STOPPED } from '../mean/circulation.js';
import { addWave, basisOf } from './basis.js';
import type { Beating } from './balance.js';

/** One period of pressure, in mmHg, at evenly spaced times. */
export function pressureTrace(beating: Beating, node: number): Float64Array {
  const { waves, steady } = beating;
  const { harmonics } = waves.tubes;
  const nNodes = steady.pressure.length;
  const basis = basisOf(harmonics);
  const trace = new Float64Array(basis.samples).fill(steady.pressure[node]!);
  for (let k = 0; k < harmonics; k++) {
    addWave(trace, basis, k, waves.re[k * nNodes + node]!, waves.im[k * nNodes + node]!);
  }
  return trace;
}

/** One period of flow in ml/s at an end of a section, positive away from its proximal end. */
export function flowTrace(
  c: Circulation,
  beating: Beating,
  section: number,
  end: 'proximal' | 'distal',
): Float64Array {
  const { waves, steady } = beating;
  const { harmonics, y11re, y11im, y12re, y12im } = waves.tubes;
  const { from, to } = c.network;
  const nNodes = steady.pressure.length;
  const nSections = c.state.length;
  const basis = basisOf(harmonics);
  const trace = new Float64Array(basis.samples).fill(steady.sectionFlow[section]!);
  const state = c.state[section];
  if (state !== OPEN && state !== STOPPED) return trace;
  const own = end === 'proximal' ? from[section]! : to[section]!;
  const other = end === 'proximal' ? to[section]! : from[section]!;
  const sign = end === 'proximal' ? 1 : -1;
  const special = waves.specialOf[section]! - 1;
  for (let k = 0; k < harmonics; k++) {
    const at = k * nSections + section;
    const port = special >= 0 ? waves.port[k * waves.specials.length + special]! : undefined;
    const ar = port ? port.y11.re : y11re[at]!;
    const ai = port ? port.y11.im : y11im[at]!;
    const br = port ? port.y12.re : y12re[at]!;
    const bi = port ? port.y12.im : y12im[at]!;
    const pr = waves.re[k * nNodes + own]!;
    const pi = waves.im[k * nNodes + own]!;
    const sr = waves.re[k * nNodes + other]!;
    const si = waves.im[k * nNodes + other]!;
    const qr = sign * (ar * pr - ai * pi + br * sr - bi * si);
    const qi = sign * (ar * pi + ai * pr + br * si + bi * sr);
    addWave(trace, basis, k, qr, qi);
  }
  return trace;
}

/** One period of flow in ml/s in the throat of a narrowed section; `undefined` where the section has none. */
export function throatTrace(beating: Beating, section: number): Float64Array | undefined {
  const { waves, steady } = beating;
  const special = waves.specialOf[section]! - 1;
  if (special < 0) return undefined;
  const { harmonics } = waves.tubes;
  const basis = basisOf(harmonics);
  const trace = new Float64Array(basis.samples).fill(steady.sectionFlow[section]!);
  for (let k = 0; k < harmonics; k++) {
    const at = special * harmonics + k;
    addWave(trace, basis, k, waves.throatRe[at]!, waves.throatIm[at]!);
  }
  return trace;
}

/** Least, greatest and mean of a trace. */
export function extremes(trace: Float64Array): { low: number; high: number; mean: number } {
  let low = Infinity;
  let high = -Infinity;
  let sum = 0;
  for (const value of trace) {
    if (value < low) low = value;
    if (value > high) high = value;
    sum += value;
  }
  return { low, high, mean: sum / trace.length };
}

/**
 * When the pressure has risen half way from the foot of the wave to its peak, in s from the start of the trace.
 * @param period length of the trace, s
 */
export function halfRise(trace: Float64Array, period: number): number {
  const n = trace.length;
  let top = 0;
  for (let i = 1; i < n; i++) if (trace[i]! > trace[top]!) top = i;
  const at = (i: number): number => trace[((i % n) + n) % n]!;
  // The foot: the lowest point in the half period before the peak.
  let foot = top;
  for (let i = top; i > top - n / 2; i--) if (at(i) < at(foot)) foot = i;
  const half = (at(foot) + at(top)) / 2;
  let i = foot;
  while (i < top && at(i + 1) < half) i++;
  const rise = at(i + 1) - at(i);
  const share = rise > 0 ? (half - at(i)) / rise : 0;
  const time = ((i + share) * period) / n;
  return time < -0.1 * period ? time + period : time;
}
