import { SIDES, type Side } from '../anatomy/index.js';
import type { Pressures } from '../examination/index.js';
import { indexOf } from './indices.js';
import type { PressureSettings } from './settings.js';

/** A change of the ankle index between two visits from which on it is real. Source: reporting standards, Rutherford 1997 (from memory). */
export const REAL_CHANGE = {
  value: 0.15,
  source:
    'Rutherford RB et al., J Vasc Surg 1997;26:517-538, doi:10.1016/S0741-5214(97)70045-4 (from memory)',
} as const;

/** How the ankle index of one leg changed between two visits. */
export interface IndexChange {
  readonly side: Side;
  readonly before: number;
  readonly value: number;
  /** Negative where the index fell. */
  readonly by: number;
  /** Larger than what two measurements differ by anyway. */
  readonly real: boolean;
  readonly limit: number;
}

/**
 * How the ankle index of each leg changed since an earlier visit, where it was worked out both times and could be compressed. A fall
 * below a graft is what its surveillance watches for.
 * @param earlier the pressures of the visit before, in mmHg
 * @param limit the change from which on it is real
 */
export function indexChanges(
  earlier: Pressures,
  pressures: Pressures,
  settings: PressureSettings,
  limit: number = REAL_CHANGE.value,
): IndexChange[] {
  return SIDES.flatMap((side): IndexChange[] => {
    const [before, now] = [earlier, pressures].map((one) => indexOf('ankle', side, one, settings));
    if (before?.value === undefined || now?.value === undefined) return [];
    if (before.band === 'incompressible' || now.band === 'incompressible') return [];
    const by = Math.round((now.value - before.value) * 100) / 100;
    return [{ side, before: before.value, value: now.value, by, real: Math.abs(by) >= limit, limit }];
  });
}
