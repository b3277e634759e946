import { SIDES } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import { cuffRatios, DEFAULT_PRESSURE_SETTINGS, denominatorOf, mmHgAt, ratio } from '../pressures/index.js';
import type { PressureEvidence } from './network/index.js';

/** Places where a cuff's reading belongs to one artery. */
const SITES = ['radial', 'ulnar', 'dorsalis-pedis', 'posterior-tibial'] as const;

/**
 * The pressures of a record as the network takes them: each over the higher arm pressure, cuffs on thigh and calf included. An arm speaks for itself only
 * where both were measured. Stiff arteries and places without a number say nothing.
 */
export function pressureEvidenceOf({ pressures }: Examination): PressureEvidence {
  const higher = denominatorOf(pressures?.brachial, 'higher').denominator?.mmHg;
  if (!pressures || !higher) return {};
  const at: Record<string, number> = {};
  for (const side of SIDES) {
    for (const site of SITES) {
      const mmHg = mmHgAt(pressures[site], side);
      if (mmHg !== undefined) at[`${side} ${site}`] = ratio(mmHg, higher);
    }
    for (const [site, value] of Object.entries(cuffRatios(pressures, side, DEFAULT_PRESSURE_SETTINGS))) {
      at[`${side} ${site}`] = value;
    }
    const [own, other] = [side, side === 'right' ? 'left' : 'right'].map((s) =>
      mmHgAt(pressures.brachial, s as typeof side),
    );
    if (own !== undefined && other !== undefined) at[`${side} brachial`] = ratio(own, higher);
  }
  return { at };
}
