/*
 * What the left ventricle ejects, as Fourier coefficients. The shape is our own: a skewed half sine of ejection and a short
 * reversal while the valve closes; no heart is modelled behind it.
 */

/** Length of ejection at 60 beats a minute, s; it follows the root of the beat's length (Bazett's rule). */
const EJECTION = 0.31;
/** Where in ejection the flow is greatest, as a share of its length. */
const PEAK = 0.36;
/** The reversal at closure: its length over the ejection's, its height over the peak. Rules of thumb. */
const REVERSAL = { length: 0.16, height: 0.08 };

const SKEW = Math.log(0.5) / Math.log(PEAK);

/** Ejected flow, of arbitrary height, at a time after the start of a beat of this length, in s. */
function ejection(time: number, beat: number): number {
  const systole = EJECTION * Math.sqrt(beat);
  if (time < systole) return Math.sin(Math.PI * (time / systole) ** SKEW);
  const after = (time - systole) / (REVERSAL.length * systole);
  return after < 1 ? -REVERSAL.height * Math.sin(Math.PI * after) : 0;
}

/** One beat of a rhythm: its length in s and its stroke over the mean stroke. */
export interface Beat {
  readonly length: number;
  readonly stroke: number;
}

/** A repeating inflow: its period in s, and by harmonic the coefficients with the mean scaled to 1. */
export interface Inflow {
  readonly period: number;
  readonly harmonics: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** When each beat begins, s. */
  readonly onsets: readonly number[];
}

/**
 * The Fourier coefficients of a run of beats that repeats: flow(t) = mean (1 + sum of Re(c_k e^(2 pi i k t / period))).
 * @param beats at least one
 * @param perBeat harmonics for each beat; the whole run has that many times its beats
 */
export function inflowOf(beats: readonly Beat[], perBeat: number): Inflow {
  const period = beats.reduce((sum, { length }) => sum + length, 0);
  const harmonics = perBeat * beats.length;
  const re = new Float64Array(harmonics + 1);
  const im = new Float64Array(harmonics + 1);
  const onsets: number[] = [];
  let onset = 0;
  let total = 0;
  for (const { length, stroke } of beats) {
    onsets.push(onset);
    const samples = 160;
    const span = Math.min(length, EJECTION * Math.sqrt(length) * (1 + REVERSAL.length));
    const step = span / samples;
    let volume = 0;
    for (let i = 0; i < samples; i++) volume += ejection((i + 0.5) * step, length) * step;
    const scale = stroke / volume;
    for (let i = 0; i < samples; i++) {
      const time = (i + 0.5) * step;
      const part = ejection(time, length) * step * scale;
      total += part;
      const angle = (-2 * Math.PI * (onset + time)) / period;
      const cos = Math.cos(angle);
      const sin = Math.sin(angle);
      let cr = cos;
      let ci = sin;
      for (let k = 1; k <= harmonics; k++) {
        re[k]! += part * cr;
        im[k]! += part * ci;
        const next = cr * cos - ci * sin;
        ci = cr * sin + ci * cos;
        cr = next;
      }
    }
    onset += length;
  }
  for (let k = 1; k <= harmonics; k++) {
    re[k]! *= 2 / total;
    im[k]! *= 2 / total;
  }
  re[0] = 1;
  return { period, harmonics, re, im, onsets };
}

/**
 * A run of beats as atrial fibrillation gives them: lengths scattered about the mean, each stroke by the time the ventricle had to fill.
 * @param rate mean beats a minute
 * @param chance numbers from 0 to 1, called once a beat
 */
export function fibrillation(rate: number, count: number, chance: () => number): Beat[] {
  const mean = 60 / rate;
  // Coefficient of variation of the beat's length about 0.24; rule of thumb. Never shorter than 0.32 s.
  const lengths = Array.from({ length: count }, () =>
    Math.max(0.32, mean * (1 + 0.24 * Math.sqrt(3) * (2 * chance() - 1))),
  );
  const filled = (time: number): number => 1 - Math.exp(-Math.max(0, time - 0.25) / 0.25);
  return lengths.map((length, i) => ({
    length,
    stroke: filled(lengths[(i + count - 1) % count]!) / filled(mean),
  }));
}
