import { type Side } from '../../anatomy/index.js';
import type { LegClaudication } from '../../examination/index.js';
import { type Circulation, copyForTest } from '../mean/circulation.js';
import { solveSteady } from '../mean/steady.js';
import { work } from '../setup.js';
import type { Simulation } from '../simulate.js';
import type { Effort, Bed } from '../tree/types.js';
import { limit } from './rules.js';

export const WALKS = ['no-limit', 'far', 'short', 'few-steps'] as const;
export type Walk = (typeof WALKS)[number];

/** How far a leg walks, and the highest muscles that fall short. */
export interface WalkReading {
  readonly walk: Walk;
  /** Flow of the calf at work over the sound one. */
  readonly share: number;
  readonly where: LegClaudication;
}

export function walkOf(share: number): Walk {
  if (share >= limit('walkFree')) return 'no-limit';
  if (share >= limit('walkFar')) return 'far';
  return share >= limit('walkShort') ? 'short' : 'few-steps';
}

/** Imbalance in ml/s that moves a share by less than a thousandth. */
const ENOUGH = 1e-4;

function working(c: Circulation, start: Float64Array): Float64Array {
  const at = copyForTest(c);
  work(at, 'walked', limit('walkEffort'));
  return solveSteady(at, start, undefined, ENOUGH).bedFlow;
}

const soundAtWork = new WeakMap<object, Float64Array>();

/** Walking on the flat, both legs at once. */
export function readWalking(simulation: Simulation): Record<Side, WalkReading> {
  const { circulation, soundCirculation, beating, sound, network } = simulation;
  let whole = soundAtWork.get(sound);
  if (!whole) soundAtWork.set(sound, (whole = working(soundCirculation, sound.steady.pressure)));
  const actual = working(circulation, beating.steady.pressure);
  const shareOf = (side: Side, effort: Effort): number => {
    const of = (flows: Float64Array): number =>
      network.beds.reduce(
        (sum: number, bed: Bed, i) => (bed.side === side && bed.effort === effort ? sum + flows[i]! : sum),
        0,
      );
    return of(actual) / of(whole);
  };
  const read = (side: Side): WalkReading => {
    const calf = shareOf(side, 'calf');
    const short = (effort: Effort): boolean => shareOf(side, effort) < limit('walkFar');
    const where: LegClaudication = short('buttock')
      ? 'buttock'
      : short('thigh')
        ? 'thigh'
        : calf < limit('walkFree')
          ? 'calf-upper'
          : 'none';
    return { walk: walkOf(calf), share: calf, where };
  };
  return { right: read('right'), left: read('left') };
}
