import { placeKey, type Side } from '../../anatomy/index.js';
import type { Bruit } from '../../examination/index.js';
import type { Simulation } from '../simulate.js';
import { heardAt, type Jet, jetsOf } from './bruits.js';
import { type HandReading, readHand } from './hand.js';
import { type OutletReading, readOutlet } from './outlet.js';
import { type PostureReading, readPosture } from './posture.js';
import { type CuffReadings, readCuffs } from './pressures.js';
import { readSites, type SiteReading } from './pulses.js';
import { limit } from './rules.js';
import { readVertebral, type StealReading } from './steal.js';
import { type DelayReading, readDelays } from './timing.js';
import { readWalking, type WalkReading } from './walking.js';

export * from './beats.js';
export * from './bruits.js';
export * from './hand.js';
export * from './outlet.js';
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
  readonly outlet: Readonly<Record<Side, OutletReading>>;
  readonly walking: Readonly<Record<Side, WalkReading>>;
  readonly vertebral: Readonly<Record<Side, StealReading>>;
}

function heard(jets: readonly Jet[]): Pick<Findings, 'bruits' | 'thrills'> {
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
  return { bruits, thrills };
}

/** Applies the rules of {@link RULES} to a simulated patient; each group of findings when it is first asked for. */
export function findingsOf(simulation: Simulation): Findings {
  const once = <T>(read: () => T): (() => T) => {
    let kept: { value: T } | undefined;
    return () => (kept ??= { value: read() }).value;
  };
  const both = <T>(read: (simulation: Simulation, side: Side) => T): (() => Record<Side, T>) =>
    once(() => ({ right: read(simulation, 'right'), left: read(simulation, 'left') }));
  const sites = once(() => readSites(simulation));
  const jets = once(() => jetsOf(simulation));
  const sounds = once(() => heard(jets()));
  const groups: { readonly [K in keyof Findings]: () => Findings[K] } = {
    sites,
    jets,
    bruits: () => sounds().bruits,
    thrills: () => sounds().thrills,
    cuffs: once(() => readCuffs(simulation, sites())),
    delays: once(() => readDelays(sites())),
    posture: both(readPosture),
    hands: both(readHand),
    outlet: both(readOutlet),
    walking: once(() => readWalking(simulation)),
    vertebral: both(readVertebral),
  };
  const findings = {} as Findings;
  for (const [name, get] of Object.entries(groups))
    Object.defineProperty(findings, name, { get, enumerable: true });
  return findings;
}
