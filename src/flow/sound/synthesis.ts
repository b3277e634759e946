import { chanceOf, type Chance } from '../generate/chance.js';

/** Samples a second of everything that is made here. */
export const SAMPLE_RATE = 16_000;

/** A band-pass filter of second order whose frequency may move with every sample (state-variable form). */
export function bandPass(): (input: number, frequency: number, quality: number) => number {
  let low = 0;
  let band = 0;
  return (input, frequency, quality) => {
    const g = Math.tan((Math.PI * Math.min(frequency, 0.45 * SAMPLE_RATE)) / SAMPLE_RATE);
    const k = 1 / quality;
    const a = 1 / (1 + g * (g + k));
    const v1 = a * (band + g * (input - low));
    const v2 = low + g * v1;
    band = 2 * v1 - band;
    low = 2 * v2 - low;
    return k * v1;
  };
}

/** A value of a trace that repeats, between its samples in proportion; `at` in periods. */
function valueAt(trace: ArrayLike<number>, at: number): number {
  const n = trace.length;
  const x = (at - Math.floor(at)) * n;
  const i = Math.floor(x);
  const share = x - i;
  return trace[i % n]! * (1 - share) + trace[(i + 1) % n]! * share;
}

const noise = (chance: Chance): number => 2 * chance() - 1;

/** How a sound is made: its length in s, and what decides its noise. */
export interface SoundOptions {
  readonly seconds?: number;
  readonly seed?: number;
}

/** Speed of sound in tissue, cm/s, and the probe of a vascular examination: 8 MHz at 60 degrees (usual practice, no source). */
const PROBE = { speed: 154_000, hertz: 8e6, cosine: 0.5 };

/** Doppler shift in Hz of blood that moves at a velocity in cm/s: 2 f v cos(angle)/c. */
export const dopplerShift = (velocity: number): number =>
  (2 * PROBE.hertz * PROBE.cosine * Math.abs(velocity)) / PROBE.speed;

/** The examiner turns the gain up until the fastest blood is well heard, but no further than for this velocity, cm/s. Rule of thumb. */
const LEAST_GAIN = 4;
const GAIN = 4;

/**
 * What a hand-held Doppler lets one hear: noise in a band about the shift of the velocity, as loud as blood moves. Backward flow is
 * heard as a second, lower sound. Silent where nothing moves.
 * @param velocity one period, cm/s
 * @param period its length, s
 * @returns samples from -1 to 1 at {@link SAMPLE_RATE}
 */
export function dopplerSound(
  velocity: ArrayLike<number>,
  period: number,
  options: SoundOptions = {},
): Float32Array {
  const { seconds = 3, seed = 1 } = options;
  const chance = chanceOf(seed);
  const ahead = bandPass();
  const back = bandPass();
  let full = LEAST_GAIN;
  for (let i = 0; i < velocity.length; i++) full = Math.max(full, Math.abs(velocity[i]!));
  const out = new Float32Array(Math.round(seconds * SAMPLE_RATE));
  for (let i = 0; i < out.length; i++) {
    const v = valueAt(velocity, i / SAMPLE_RATE / period);
    const white = noise(chance);
    // Blood at the wall is slow: the band is wide and lies below the shift of the fastest.
    const centre = Math.max(60, 0.75 * dopplerShift(v));
    const loud = (Math.abs(v) / full) ** 0.8;
    // As many cells scatter at any speed: a low band is as strong as a high one.
    const level = GAIN * loud * Math.sqrt(700 / centre);
    out[i] = Math.tanh(level * (v >= 0 ? ahead(white, centre, 1.6) : back(white, 0.8 * centre, 2.5)));
  }
  return out;
}

/** Pitch of a bruit: the Strouhal number of a jet about 0.2, of its speed over its width; cut where skin lets little through. Rule of thumb. */
const STROUHAL = 0.2;
const PITCH = { least: 80, most: 900 };

/**
 * What a stethoscope lets one hear over a narrowing: noise whose pitch and loudness rise with the jet; only while it runs fast enough.
 * @param jet one period of the jet's velocity, m/s
 * @param width diameter of the throat, cm
 * @param period length of the period, s
 * @param threshold velocity in m/s below which the flow is quiet
 * @returns samples from -1 to 1 at {@link SAMPLE_RATE}
 */
export function bruitSound(
  jet: ArrayLike<number>,
  width: number,
  period: number,
  threshold: number,
  options: SoundOptions = {},
): Float32Array {
  const { seconds = 3, seed = 1 } = options;
  const chance = chanceOf(seed);
  const filter = bandPass();
  const out = new Float32Array(Math.round(seconds * SAMPLE_RATE));
  for (let i = 0; i < out.length; i++) {
    const v = Math.abs(valueAt(jet, i / SAMPLE_RATE / period));
    const white = noise(chance);
    const pitch = Math.min(PITCH.most, Math.max(PITCH.least, (STROUHAL * v * 100) / width));
    const over = Math.max(0, v - threshold);
    // Power of turbulence rises steeply with the jet; a soft limit stands for the ear.
    out[i] = Math.tanh(0.9 * over ** 1.5 * filter(white, pitch, 1.2));
  }
  return out;
}
