import type { PieceKey, Place, PulseSiteId } from '../../anatomy/index.js';
import type { Grade } from '../../examination/index.js';
import { readSites } from '../findings/pulses.js';
import { limit } from '../findings/rules.js';
import { GONE, STOPPED } from '../mean/circulation.js';
import { type Patient, patientOf, type PatientInput } from '../patient.js';
import { simulate, type Simulation } from '../simulate.js';
import { extremes, halfRise, pressureTrace } from './traces.js';

/** A stretch of artery that the pulse runs through. */
export interface WaveStretch {
  readonly piece: PieceKey;
  /** Ends of the stretch as fractions of its piece. */
  readonly from: number;
  readonly to: number;
  /** When the pulse has half risen at both ends, in s after it has at the valve of the heart. */
  readonly arrives: readonly [number, number];
  /** How strong it is at both ends: 1 is the sound pulse, 0 one that no finger feels. */
  readonly strength: readonly [number, number];
}

/** One beat of the heart: when it begins, in s, and how strong it is beside the strongest. */
export interface WaveBeat {
  readonly at: number;
  readonly strength: number;
}

/** How the pulse runs through a patient's arteries, beat by beat. */
export interface PulseWave {
  /** After so many s the rhythm repeats. */
  readonly period: number;
  readonly beats: readonly WaveBeat[];
  /** Inflow first. */
  readonly stretches: readonly WaveStretch[];
  /** In the order of examination. */
  readonly sites: readonly WaveSite[];
  /** When the last stretch is reached, s. */
  readonly last: number;
}

/** The pulse at a site: when it arrives, in s, and what is felt of it. */
export interface WaveSite {
  readonly place: Place<PulseSiteId>;
  readonly arrives: number;
  readonly grade: Grade;
}

/** A pulse pressure in mmHg from which a pulse is drawn in full. Rule of thumb. */
const FULL = 30;

interface AtNode {
  readonly arrives: number;
  readonly strength: number;
}

/** When the pressure at the valve has half risen, s. */
const atValve = ({ network, beating, inflow }: Simulation): number =>
  halfRise(pressureTrace(beating, network.nodeOf.get(network.root)!), inflow.period);

/** Time of half rise and strength at a node, both from the computed pressure. */
function nodeReader(simulation: Simulation): (name: string) => AtNode {
  const { network, beating, sound, inflow } = simulation;
  const { period } = inflow;
  const root = atValve(simulation);
  const known = new Map<string, AtNode>();
  return (name) => {
    let found = known.get(name);
    if (!found) {
      const node = network.nodeOf.get(name)!;
      const trace = pressureTrace(beating, node);
      const swing = ({ low, high }: { readonly low: number; readonly high: number }): number => high - low;
      const pulse = swing(extremes(trace));
      const share = pulse / swing(extremes(pressureTrace(sound, node)));
      const felt = share >= limit('absentShare') && pulse >= limit('absentPulse');
      const strength = felt ? Math.min(1, share, pulse / FULL) : 0;
      known.set(name, (found = { arrives: Math.max(0, halfRise(trace, period) - root), strength }));
    }
    return found;
  };
}

/** The regular patient behind an irregular one: when the wave arrives is asked of one beat, not of a run of unequal ones. */
const regular = (patient: Patient): Patient => ({ ...patient, rhythm: 'regular' });

/** The beats of a patient's rhythm, each as strong as its pulse at the valve. */
function beatsOf({ inflow, beating, network }: Simulation): WaveBeat[] {
  const trace = pressureTrace(beating, network.nodeOf.get(network.root)!);
  const { onsets, period } = inflow;
  const at = (time: number): number =>
    trace[Math.round(((((time % period) + period) % period) / period) * trace.length) % trace.length]!;
  const swings = onsets.map((onset, i) => {
    const end = onsets[i + 1] ?? period;
    let high = -Infinity;
    for (let k = 0; k <= 32; k++) high = Math.max(high, at(onset + ((end - onset) * k) / 32));
    return Math.max(0, high - at(onset));
  });
  const most = Math.max(...swings, 1e-9);
  return onsets.map((onset, i) => ({ at: onset, strength: swings[i]! / most }));
}

/**
 * How the pulse runs: for every stretch of artery when it arrives and how strong. Beyond a narrowing it is weaker and later as computed;
 * in a block it stops, and beyond goes on only where collaterals bring a pulse that is felt.
 */
export function pulseWave(input: PatientInput): PulseWave {
  const patient = patientOf(input);
  const simulation = simulate(regular(patient));
  const run = patient.rhythm === 'regular' ? simulation : simulate(patient);
  const read = nodeReader(simulation);
  const { network, circulation } = simulation;
  const lengths = new Map<PieceKey, number>();
  for (const { piece, length, onlyIn } of network.sections)
    if (piece && !onlyIn) lengths.set(piece, (lengths.get(piece) ?? 0) + length);
  const walked = new Map<PieceKey, number>();
  const stretches: WaveStretch[] = [];
  network.sections.forEach(({ piece, length, from, to, onlyIn }, i) => {
    if (!piece || onlyIn) return;
    const before = walked.get(piece) ?? 0;
    const all = lengths.get(piece)!;
    walked.set(piece, before + length);
    const [a, b] = [read(from), read(to)];
    const put = (start: number, end: number, first: number, last: number): void => {
      const time = (share: number): number => a.arrives + (b.arrives - a.arrives) * share;
      stretches.push({
        piece,
        from: (before + start * length) / all,
        to: (before + end * length) / all,
        arrives: [time(start), time(end)],
        strength: [first, last],
      });
    };
    const state = circulation.state[i];
    if (state === GONE) put(0, 1, 0, 0);
    else if (state === STOPPED) {
      put(0, 0.5, a.strength, a.strength);
      // Beyond a closed point the artery fills from its far end, if at all.
      put(0.5, 1, b.strength, b.strength);
      const behind = stretches.at(-1)!;
      stretches[stretches.length - 1] = { ...behind, arrives: [b.arrives, b.arrives] };
    } else if (b.strength > 0 && a.strength === 0) put(0, 1, b.strength, b.strength);
    else put(0, 1, a.strength, b.strength);
  });
  return {
    period: run.inflow.period,
    beats: beatsOf(run),
    stretches,
    sites: readSites(simulation).map(({ place, halfRise: half, grade }) => ({
      place,
      arrives: Math.max(0, half - atValve(simulation)),
      grade,
    })),
    last: Math.max(...stretches.map(({ arrives }) => Math.max(...arrives))),
  };
}

/** How strong the pulse of a patient is at a point of a stretch at a time, from 0 to 1; the time counts from the start of the rhythm, in s. */
export function strengthAt(wave: PulseWave, stretch: WaveStretch, share: number, time: number): number {
  const { arrives, strength } = stretch;
  const felt = strength[0] + (strength[1] - strength[0]) * share;
  if (felt <= 0) return 0;
  const late = arrives[0] + (arrives[1] - arrives[0]) * share;
  const { period, beats } = wave;
  let most = 0;
  for (const beat of beats) {
    const since = (((time - beat.at - late) % period) + period) % period;
    most = Math.max(most, beat.strength * shapeOf(since));
  }
  return felt * most;
}

/** The rise and fall of the drawn pulse, s. Rule of thumb: as long as a finger feels it lift. */
export const RISE = 0.03;
export const FALL = 0.16;

/** Height of the drawn pulse so long after it arrived, from 0 to 1. */
export function shapeOf(since: number): number {
  if (since < 0 || since > RISE + FALL) return 0;
  return since < RISE ? since / RISE : 1 - (since - RISE) / FALL;
}
