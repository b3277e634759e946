import { type Place, placeKey, PULSE_PLACES, type PulseSiteId } from '../../anatomy/index.js';
import type { DopplerSignal, Grade } from '../../examination/index.js';
import { GONE, OPEN } from '../mean/circulation.js';
import type { Beating } from '../pulse/balance.js';
import { extremes, flowTrace, halfRise, pressureTrace } from '../pulse/traces.js';
import type { Simulation } from '../simulate.js';
import type { Network } from '../tree/network.js';
import { limit } from './rules.js';

/** What is computed at a place where a pulse is felt. Pressures in mmHg, velocities in cm/s, time in s. */
export interface SiteReading {
  readonly place: Place<PulseSiteId>;
  readonly systolic: number;
  readonly diastolic: number;
  readonly mean: number;
  readonly pulsePressure: number;
  /** Share of the same patient's pulse pressure without lesions. */
  readonly share: number;
  readonly halfRise: number;
  readonly peakVelocity: number;
  readonly leastVelocity: number;
  readonly meanVelocity: number;
  /** Whether the artery is closed where one feels. */
  readonly inBlock: boolean;
  readonly grade: Grade;
  readonly doppler: DopplerSignal;
  /** What a cuff with a Doppler probe reads here; 0 where there is no signal. */
  readonly cuff: number;
}

/** The section through which blood comes to a place, and the one by which it leaves. */
interface Around {
  readonly node: number;
  readonly entering: number;
  readonly leaving: number;
}
const around = new WeakMap<Network, ReadonlyMap<string, Around>>();
export function sitesOf(network: Network): ReadonlyMap<string, Around> {
  let map = around.get(network);
  if (!map) {
    const { sections, nodeOf } = network;
    map = new Map(
      PULSE_PLACES.map((place) => {
        const key = placeKey(place);
        return [
          key,
          {
            node: nodeOf.get(key)!,
            entering: sections.findIndex(({ to, onlyIn }) => to === key && !onlyIn),
            leaving: sections.findIndex(({ from, onlyIn }) => from === key && !onlyIn),
          },
        ];
      }),
    );
    around.set(network, map);
  }
  return map;
}

/** One period of the velocity in cm/s at a pulse place. */
export function velocityAt({ circulation, network, beating }: Simulation, place: Place): Float64Array {
  const { entering, leaving } = sitesOf(network).get(placeKey(place))!;
  const open = circulation.state[entering] === OPEN;
  const section = open ? entering : leaving;
  const trace = flowTrace(circulation, beating, section, open ? 'distal' : 'proximal');
  const { radii } = network.sections[section]!;
  const area = Math.PI * (open ? radii[1] : radii[0]) ** 2;
  for (let i = 0; i < trace.length; i++) trace[i]! /= area;
  return trace;
}

/** One period of the pressure in mmHg at a pulse place. */
export function pressureAt({ network, beating }: Simulation, place: Place): Float64Array {
  return pressureTrace(beating, sitesOf(network).get(placeKey(place))!.node);
}

/** Strength of a pulse from its pressure, beside the same patient's without lesions. */
export function gradeOf(site: PulseSiteId, pulsePressure: number, share: number): Grade {
  const deep = site === 'popliteal' ? limit('deepFactor') : 1;
  if (share < deep * limit('absentShare') || pulsePressure < deep * limit('absentPulse')) return 'absent';
  if (share < limit('reducedShare') || pulsePressure < limit('reducedPulse')) return 'reduced';
  return share > limit('boundingShare') ? 'bounding' : 'normal';
}

/** The name of a Doppler signal from its velocity in cm/s over one period. */
export function signalOf(velocity: Float64Array, pulsePressure: number): DopplerSignal {
  const n = velocity.length;
  let top = 0;
  let size = 0;
  for (let i = 0; i < n; i++) {
    size = Math.max(size, Math.abs(velocity[i]!));
    if (velocity[i]! > velocity[top]!) top = i;
  }
  if (size < limit('noSignalVelocity') && pulsePressure < limit('noSignalPulse')) return 'absent';
  const peak = Math.max(velocity[top]!, 1e-9);
  let reversed = false;
  for (let i = 0; i < n; i++) {
    const v = velocity[(top + i) % n]!;
    if (v < -limit('reversal') * peak) reversed = true;
    // The foot of the next upstroke is no further wave.
    else if (reversed && i < 0.85 * n && v > limit('secondForward') * peak) return 'triphasic';
  }
  return reversed ? 'biphasic' : 'monophasic';
}

const soundPulses = new WeakMap<Beating, Map<number, number>>();
function soundPulse({ sound }: Simulation, node: number): number {
  let kept = soundPulses.get(sound);
  if (!kept) soundPulses.set(sound, (kept = new Map()));
  let pulse = kept.get(node);
  if (pulse === undefined) {
    const { low, high } = extremes(pressureTrace(sound, node));
    kept.set(node, (pulse = high - low));
  }
  return pulse;
}

/** The same patient's pulse pressure without lesions, mmHg. */
export function soundPulseAt(simulation: Simulation, place: Place): number {
  return soundPulse(simulation, sitesOf(simulation.network).get(placeKey(place))!.node);
}

export function readSite(simulation: Simulation, place: Place<PulseSiteId>): SiteReading {
  const { circulation, network, inflow } = simulation;
  const { node, entering, leaving } = sitesOf(network).get(placeKey(place))!;
  const trace = pressureAt(simulation, place);
  const { low, high, mean } = extremes(trace);
  const pulsePressure = high - low;
  const share = pulsePressure / soundPulse(simulation, node);
  const velocity = velocityAt(simulation, place);
  const speeds = extremes(velocity);
  const inBlock = circulation.state[entering] === GONE && circulation.state[leaving] === GONE;
  const doppler = inBlock ? 'absent' : signalOf(velocity, pulsePressure);
  return {
    place,
    systolic: high,
    diastolic: low,
    mean,
    pulsePressure,
    share,
    halfRise: halfRise(trace, inflow.period),
    peakVelocity: speeds.high,
    leastVelocity: speeds.low,
    meanVelocity: speeds.mean,
    inBlock,
    grade: inBlock ? 'absent' : gradeOf(place.site, pulsePressure, share),
    doppler,
    cuff: doppler === 'absent' ? 0 : high,
  };
}

/** Every place where a pulse is felt, in the order of examination. */
export function readSites(simulation: Simulation): SiteReading[] {
  return PULSE_PLACES.map((place) => readSite(simulation, place));
}
