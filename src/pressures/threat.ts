import type { Side } from '../anatomy/index.js';
import type { Pressures, PressureSite } from '../examination/index.js';
import { indexOf, mmHgAt } from './indices.js';
import type { PressureSettings } from './settings.js';
import { beyond, type Limit, THREAT_CRITERIA, type ThreatCriterion } from './tables.js';

/** One absolute pressure or index beyond a limit for a threatened limb. */
export interface Threat {
  readonly side: Side;
  readonly measure: 'ankle' | 'toe' | 'tcpo2' | 'index';
  /** mmHg, or the ankle index. */
  readonly value: number;
  readonly limit: number;
  readonly inclusive: boolean;
  /** The artery an ankle pressure was taken from. */
  readonly site?: PressureSite;
}

/** The ankle pressure over the compressible arteries: an incompressible one is ignored, the other counts. */
function compressibleAnkle(
  pressures: Pressures,
  side: Side,
  settings: PressureSettings,
): { readonly site: PressureSite; readonly mmHg: number } | undefined {
  const measured = (['dorsalis-pedis', 'posterior-tibial'] as const).flatMap((site) => {
    const mmHg = mmHgAt(pressures[site], side);
    return mmHg === undefined ? [] : [{ site, mmHg }];
  });
  const [first, second] = measured;
  if (!first || !second) return first;
  const secondHigher = second.mmHg > first.mmHg;
  return secondHigher === (settings.ankle === 'higher') ? second : first;
}

/**
 * Which absolute pressures of a leg support a threatened limb. An incompressible artery is ignored;
 * the other counts and is named. An index above the limit for incompressible arteries leaves out both.
 * @param tissueLoss whether the limb has an ulcer or gangrene; most sources set higher limits then
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
  const stiff = index?.value !== undefined && index.band === 'incompressible';
  const ankle = compressibleAnkle(pressures, side, settings);
  const values: Record<Threat['measure'], number | undefined> = {
    ankle: stiff ? undefined : ankle?.mmHg,
    index: stiff ? undefined : index?.value,
    toe: mmHgAt(pressures.toe, side),
    tcpo2: pressures.tcpo2?.[side],
  };
  return (['ankle', 'toe', 'tcpo2', 'index'] as const).flatMap((measure): Threat[] => {
    const value = values[measure];
    const limit = limits[measure];
    if (value === undefined || !limit || !beyond(value, limit)) return [];
    return [
      {
        side,
        measure,
        value,
        limit: limit.value,
        inclusive: limit.inclusive,
        ...(measure === 'ankle' && ankle && { site: ankle.site }),
      },
    ];
  });
}

/** Whether the volume curve at an ankle is flat, where that belongs to the criterion of limb threat in force. */
export function isFlatThreat(pressures: Pressures, side: Side, settings: PressureSettings): boolean {
  const criterion: ThreatCriterion = THREAT_CRITERIA[settings.threat];
  return criterion.flatCurve === true && pressures.volumeCurve?.[side] === 'flat';
}
