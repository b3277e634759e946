import { SIDES, type Side } from '../../anatomy/index.js';
import type { Pressure, PressureSite } from '../../examination/index.js';
import { HIGHEST_PRESSURE } from '../../examination/types/pressures.js';
import { extremes, pressureTrace } from '../pulse/traces.js';
import type { Simulation } from '../simulate.js';
import { climbOf } from '../setup.js';
import { limit } from './rules.js';
import type { SiteReading } from './pulses.js';

export type CuffReadings = Partial<Record<PressureSite, Partial<Record<Side, number | 'incompressible'>>>>;

/** Systolic pressures in mmHg at every cuff; 0 where no signal is heard beyond it. */
export function readCuffs(
  { network, beating, patient }: Simulation,
  sites: readonly SiteReading[],
): CuffReadings {
  const out: CuffReadings = {};
  const systolic = (node: string): number => extremes(pressureTrace(beating, network.nodeOf.get(node)!)).high;
  for (const side of SIDES) {
    const at = (site: string): SiteReading =>
      sites.find(({ place }) => place.site === site && place.side === side)!;
    const put = (site: PressureSite, value: number): void => {
      const whole = Math.max(0, Math.round(value));
      (out[site] ??= {})[side] = whole >= HIGHEST_PRESSURE ? 'incompressible' : whole;
    };
    put('brachial', at('brachial').cuff);
    put('radial', at('radial').cuff);
    put('ulnar', at('ulnar').cuff);
    const palm = systolic(`${side} superficial arch`);
    put('finger', palm * limit('finger'));
    put('high-thigh', systolic(`${side} femoral fork`) * limit('thighCuff'));
    put('low-thigh', systolic(`${side} above knee`));
    put('calf', systolic(`${side} below knee`));
    const stiff = patient.incompressible[side] ?? 0;
    // A raised foot lies above the heart by so much blood.
    const climb = climbOf(patient.raised[side] ?? 0);
    for (const site of ['dorsalis-pedis', 'posterior-tibial'] as const) {
      const { cuff } = at(site);
      put(site, cuff > 0 ? cuff + stiff - climb : 0);
    }
    put('toe', systolic(`${side} sole`) * limit('toe') - climb);
  }
  return out;
}

/** Ankle index of a side: the higher ankle pressure over the higher arm pressure, two decimals; `undefined` without a number. */
export function ankleIndex(cuffs: CuffReadings, side: Side): number | undefined {
  const number = (value: Pressure | undefined): number => (typeof value === 'number' ? value : NaN);
  const arm = Math.max(number(cuffs.brachial?.right), number(cuffs.brachial?.left));
  const ankle = Math.max(number(cuffs['dorsalis-pedis']?.[side]), number(cuffs['posterior-tibial']?.[side]));
  const index = ankle / arm;
  return Number.isFinite(index) ? Math.round(100 * index) / 100 : undefined;
}
