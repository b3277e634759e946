import { SIDES, type Side } from '../../anatomy/index.js';
import type { ARM_DELAYS, LEG_DELAYS } from '../../examination/index.js';
import { limit } from './rules.js';
import type { SiteReading } from './pulses.js';

/** Delays between pulses felt at once; `undefined` where one of them is not felt. */
export interface DelayReading {
  readonly radioRadial: (typeof ARM_DELAYS)[number] | undefined;
  readonly radioFemoral: Readonly<Record<Side, (typeof LEG_DELAYS)[number] | undefined>>;
}

/** Compares times of half rise: the foot of the wave hardly shifts beyond a narrowing, its rise does. */
export function readDelays(sites: readonly SiteReading[]): DelayReading {
  const rise = (site: string, side: Side): number | undefined => {
    const found = sites.find(({ place }) => place.site === site && place.side === side)!;
    return found.grade === 'absent' ? undefined : 1000 * found.halfRise;
  };
  const right = rise('radial', 'right');
  const left = rise('radial', 'left');
  const late = (side: Side): (typeof LEG_DELAYS)[number] | undefined => {
    const arm = rise('radial', side);
    const leg = rise('femoral', side);
    if (arm === undefined || leg === undefined) return undefined;
    return leg - arm >= limit('legDelay') ? 'delayed' : 'none';
  };
  const [rightLeg, leftLeg] = SIDES.map(late);
  return {
    radioRadial:
      right === undefined || left === undefined
        ? undefined
        : right - left >= limit('armDelay')
          ? 'right-later'
          : left - right >= limit('armDelay')
            ? 'left-later'
            : 'none',
    radioFemoral: { right: rightLeg, left: leftLeg },
  };
}
