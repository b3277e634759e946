import type { Side } from '../../anatomy/index.js';
import type { Grade } from '../../examination/index.js';
import { type Circulation, close, copyForTest, copyOf, narrow, STOPPED } from '../mean/circulation.js';
import { narrowingOf } from '../mean/laws.js';
import { solveSteady } from '../mean/steady.js';
import { OUTLET_POSITIONS, type OutletPosition } from '../patient.js';
import { AS_GOOD_AS_BLOCKED, work } from '../setup.js';
import { inCirculation, type Simulation } from '../simulate.js';
import { limit } from './rules.js';
import { readSite } from './pulses.js';

/** The radial pulse as felt before and in each position; nothing where the position takes nothing away. */
export interface OutletReading {
  readonly before: Grade;
  readonly during: Readonly<Partial<Record<OutletPosition, Grade>>>;
  /** With the arms raised and the hands at work. */
  readonly stress?: {
    readonly during: Grade;
    /** Flow of the forearm at work over the same arm's without the position. */
    readonly share: number;
    /** Seconds until the arm tires, at most {@link limit} `armStress`. */
    readonly seconds: number;
  };
}

/** Where each position presses on the artery: between the scalenes, under the collar bone, under the small breast muscle. */
const PRESSED: Readonly<Record<OutletPosition, string>> = {
  scalene: 'subclavian to its pulse site',
  costoclavicular: 'subclavian to its end',
  hyperabduction: 'axillary to its pulse site',
};
/** Length of the pressed stretch, cm. Rule of thumb. */
const PRESSED_LENGTH = 0.7;
const ENOUGH = 1e-4;

function pressed(c: Circulation, side: Side, position: OutletPosition, percent: number): Circulation {
  const at = copyOf(c);
  const e = c.network.sectionOf.get(`${side} ${PRESSED[position]}`)!;
  const { radii } = c.network.sections[e]!;
  if (percent >= AS_GOOD_AS_BLOCKED) close(at, e, STOPPED);
  else if (percent > 0) {
    const radius = (radii[0] + radii[1]) / 2;
    narrow(at, e, narrowingOf(percent, PRESSED_LENGTH, radius), PRESSED_LENGTH);
  }
  return at;
}

/** Flow of a forearm at work, ml/s. */
function atWork(c: Circulation, side: Side, start: Float64Array): number {
  const at = copyForTest(c);
  work(at, 'arm-work', limit('armEffort'));
  const { bedFlow } = solveSteady(at, start, undefined, ENOUGH);
  return c.network.beds.reduce(
    (sum, bed, i) => (bed.side === side && bed.effort === 'forearm' ? sum + bedFlow[i]! : sum),
    0,
  );
}

/** The positions of an arm in which its artery is pressed, and the arm held up at work. */
export function readOutlet(simulation: Simulation, side: Side): OutletReading {
  const { beating, patient } = simulation;
  const circulation = copyOf(simulation.circulation);
  // Where nothing is diseased no collateral had reason to grow, and a minute is too short for it.
  if (patient.lesions.every(({ narrowing }) => narrowing <= 0)) circulation.gain.fill(0);
  const place = { site: 'radial', side } as const;
  const start = beating.steady.pressure;
  const narrowed = patient.outlet[side] ?? {};
  const pressedIn = (position: OutletPosition) =>
    pressed(circulation, side, position, narrowed[position] ?? 0);
  const during: Partial<Record<OutletPosition, Grade>> = {};
  for (const position of OUTLET_POSITIONS) {
    if (narrowed[position] === undefined) continue;
    during[position] = readSite(inCirculation(simulation, pressedIn(position)), place).grade;
  }
  const before = readSite(simulation, place).grade;
  // The arms are held as in hyperabduction.
  if (during.hyperabduction === undefined) return { before, during };
  const share =
    atWork(pressedIn('hyperabduction'), side, start) / Math.max(1e-9, atWork(circulation, side, start));
  const seconds = Math.round(limit('armStress') * Math.min(1, share / limit('armTires')));
  return { before, during, stress: { during: during.hyperabduction, share, seconds } };
}
