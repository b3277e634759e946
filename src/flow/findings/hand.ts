import type { Side } from '../../anatomy/index.js';
import { type Circulation, copyForTest } from '../mean/circulation.js';
import { solveSteady } from '../mean/steady.js';
import type { Beating } from '../pulse/balance.js';
import { press } from '../setup.js';
import type { Simulation } from '../simulate.js';
import type { Network } from '../tree/network.js';
import { RESTING_DRIVE } from '../units.js';
import { limit } from './rules.js';

/** Seconds until the emptied palm flushes when one artery is let go with the other held. */
export interface HandReading {
  readonly radial: number;
  readonly ulnar: number;
}

/** Imbalance in ml/s that moves a flush by less than a hundredth of a second. */
const ENOUGH = 1e-5;

const bedsOfHand = (network: Network, side: Side): number[] =>
  network.beds.flatMap(({ side: own, hand }, i) => (hand && own === side ? [i] : []));

/** Flows of both hand beds just after the hand was emptied. */
function flushing(c: Circulation, start: Float64Array, side: Side, held?: 'radial' | 'ulnar'): number[] {
  const hand = bedsOfHand(c.network, side);
  const at = copyForTest(c);
  if (held) press(at, held, side);
  for (const i of hand) {
    at.resting[i]! *= limit('handReserve');
    at.greatest[i] = at.resting[i]! / RESTING_DRIVE;
  }
  const { bedFlow } = solveSteady(at, start, undefined, ENOUGH);
  return hand.map((i) => bedFlow[i]!);
}

const soundFlows = new WeakMap<Beating, Partial<Record<Side, number[]>>>();

/** The hand-arch test of one hand. */
export function readHand(simulation: Simulation, side: Side): HandReading {
  const { circulation, soundCirculation, beating, sound } = simulation;
  let kept = soundFlows.get(sound);
  if (!kept) soundFlows.set(sound, (kept = {}));
  const open = (kept[side] ??= flushing(soundCirculation, sound.steady.pressure, side));
  const flush = (held: 'radial' | 'ulnar'): number => {
    const actual = flushing(circulation, beating.steady.pressure, side, held);
    const worst = Math.max(...open.map((q, i) => q / Math.max(actual[i]!, 1e-6)));
    return Math.min(limit('longestWait'), Math.round(10 * limit('handFlush') * worst) / 10);
  };
  return { radial: flush('ulnar'), ulnar: flush('radial') };
}
