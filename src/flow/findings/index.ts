import { placeKey, SIDES, type Side } from '../../anatomy/index.js';
import type { Bruit } from '../../examination/index.js';
import type { Simulation } from '../simulate.js';
import { heardAt, type Jet, jetsOf } from './bruits.js';
import { type HandReading, readHand } from './hand.js';
import { type PostureReading, readPosture } from './posture.js';
import { type CuffReadings, readCuffs } from './pressures.js';
import { readSites, type SiteReading } from './pulses.js';
import { limit } from './rules.js';
import { readVertebral, type StealReading } from './steal.js';
import { type DelayReading, readDelays } from './timing.js';
import { readWalking, type WalkReading } from './walking.js';

export * from './bruits.js';
export * from './hand.js';
export * from './posture.js';
export * from './pressures.js';
export * from './pulses.js';
export * from './rules.js';
export * from './steal.js';
export * from './timing.js';
export * from './walking.js';

/** All that a perfect examiner would find in a patient at rest. */
export interface Findings {
  readonly sites: readonly SiteReading[];
  readonly jets: readonly Jet[];
  /** Bruits by listening place (`side site`); places that are not named are silent. */
  readonly bruits: ReadonlyMap<string, Bruit>;
  /** Pulse places (`side site`) with a thrill. */
  readonly thrills: ReadonlySet<string>;
  readonly cuffs: CuffReadings;
  readonly delays: DelayReading;
  readonly posture: Readonly<Record<Side, PostureReading>>;
  readonly hands: Readonly<Record<Side, HandReading>>;
  readonly walking: Readonly<Record<Side, WalkReading>>;
  readonly vertebral: Readonly<Record<Side, StealReading>>;
}

/** Applies every rule of {@link RULES} to a simulated patient. */
export function findingsOf(simulation: Simulation): Findings {
  const sites = readSites(simulation);
  const jets = jetsOf(simulation);
  const bruits = new Map<string, Bruit>();
  const thrills = new Set<string>();
  for (const jet of jets) {
    if (jet.sound === 'none') continue;
    for (const place of heardAt(jet)) {
      const key = placeKey(place);
      if (bruits.get(key) !== 'continuous') bruits.set(key, jet.sound);
      if (jet.peak >= limit('thrillJet')) thrills.add(key);
    }
  }
  const both = <T>(read: (simulation: Simulation, side: Side) => T): Record<Side, T> => {
    const [right, left] = SIDES.map((side) => read(simulation, side)) as [T, T];
    return { right, left };
  };
  return {
    sites,
    jets,
    bruits,
    thrills,
    cuffs: readCuffs(simulation, sites),
    delays: readDelays(sites),
    posture: both(readPosture),
    hands: both(readHand),
    walking: readWalking(simulation),
    vertebral: both(readVertebral),
  };
}
