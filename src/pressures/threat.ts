import type { Side } from '../anatomy/index.js';
import type { Pressures } from '../examination/index.js';
import { indexOf, mmHgAt, numeratorOf } from './indices.js';
import type { PressureSettings } from './settings.js';
import { beyond, type Limit, THREAT_CRITERIA } from './tables.js';

/** One absolute pressure or index beyond a limit for a threatened limb. */
export interface Threat {
  readonly side: Side;
  readonly measure: 'ankle' | 'toe' | 'tcpo2' | 'index';
  /** mmHg, or the ankle index. */
  readonly value: number;
  readonly limit: number;
  readonly inclusive: boolean;
}

/**
 * Which absolute pressures of a leg support a threatened limb. A stiff artery's ankle pressure says nothing and is left out.
 * @param tissueLoss whether the limb has an ulcer or gangrene, for which most sources set higher limits
 */
export function limbThreats(
  pressures: Pressures,
  side: Side,
  tissueLoss: boolean,
  settings: PressureSettings,
): Threat[] {
  const criterion = THREAT_CRITERIA[settings.threat];
  const limits: Partial<Record<Threat['measure'], Limit>> = tissueLoss
    ? criterion.tissueLoss
    : criterion.restPain;
  const index = indexOf('ankle', side, pressures, settings);
  const stiff = index?.band === 'incompressible';
  const values: Record<Threat['measure'], number | undefined> = {
    ankle: stiff ? undefined : numeratorOf(pressures, 'ankle', side, settings.ankle).numerator?.mmHg,
    index: stiff ? undefined : index?.value,
    toe: mmHgAt(pressures.toe, side),
    tcpo2: pressures.tcpo2?.[side],
  };
  return (['ankle', 'toe', 'tcpo2', 'index'] as const).flatMap((measure): Threat[] => {
    const value = values[measure];
    const limit = limits[measure];
    if (value === undefined || !limit || !beyond(value, limit)) return [];
    return [{ side, measure, value, limit: limit.value, inclusive: limit.inclusive }];
  });
}
