import { placeKey, type Place } from '../../anatomy/index.js';
import { heardAt, type Jet, jetsOf, limit, velocityAt } from '../findings/index.js';
import { throatTrace } from '../pulse/traces.js';
import type { Simulation } from '../simulate.js';
import { bruitSound, dopplerSound, SAMPLE_RATE, type SoundOptions } from './synthesis.js';

/** The Doppler signal at a pulse place; silence where there is none. */
export function dopplerAt(simulation: Simulation, place: Place, options?: SoundOptions): Float32Array {
  return dopplerSound(velocityAt(simulation, place), simulation.inflow.period, options);
}

/** The bruit of one jet. Silence where it is too slow, or not disturbed enough, to be heard. */
export function bruitOfJet(simulation: Simulation, jet: Jet, options: SoundOptions = {}): Float32Array {
  const { circulation, beating, inflow } = simulation;
  const throat = circulation.throat[jet.section]!;
  const flow = throatTrace(beating, jet.section);
  if (!flow || jet.sound === 'none')
    return new Float32Array(Math.round((options.seconds ?? 3) * SAMPLE_RATE));
  for (let i = 0; i < flow.length; i++) flow[i]! /= throat * 100;
  return bruitSound(flow, 2 * Math.sqrt(throat / Math.PI), inflow.period, 0.6 * limit('bruitJet'), options);
}

/** What is heard at a listening place: the bruits of all jets that carry there, together. */
export function bruitAtPlace(simulation: Simulation, place: Place, options: SoundOptions = {}): Float32Array {
  const out = new Float32Array(Math.round((options.seconds ?? 3) * SAMPLE_RATE));
  for (const jet of jetsOf(simulation)) {
    if (!heardAt(jet).some((one) => placeKey(one) === placeKey(place))) continue;
    const sound = bruitOfJet(simulation, jet, options);
    for (let i = 0; i < out.length; i++) out[i]! += sound[i]!;
  }
  return out;
}

/**
 * A pulse as vibration: times in ms, vibrating and resting by turns, as `navigator.vibrate` takes them. Stronger pulses last longer;
 * an absent one is empty.
 * @param share pulse pressure over the sound one
 */
export function vibrationOf(period: number, share: number, grade: string, beats = 5): number[] {
  if (grade === 'absent') return [];
  const on = Math.round(Math.min(0.5 * period * 1000, 30 + 90 * Math.min(1.5, share)));
  return Array.from({ length: beats }, () => [on, Math.round(period * 1000) - on]).flat();
}
