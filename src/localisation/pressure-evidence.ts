import { SIDES } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import {
  cuffRatios,
  DEFAULT_PRESSURE_SETTINGS,
  denominatorOf,
  exerciseReadings,
  methodOf,
  mmHgAt,
  ratio,
} from '../pressures/index.js';
import type { PressureEvidence } from './network/index.js';

/** Places where a cuff's reading belongs to one artery. */
const SITES = ['radial', 'ulnar', 'dorsalis-pedis', 'posterior-tibial'] as const;

/**
 * The pressures of a record as the network takes them: each over the higher arm pressure, cuffs on thigh and calf included. An arm speaks for itself only
 * where both were measured. Places without a number say nothing, but for arteries that stayed open under the full cuff. The network's tables
 * are made for the higher arm, whatever the record's method; what counts as a fall on exercise is by that method.
 */
export function pressureEvidenceOf(examination: Examination): PressureEvidence {
  const { pressures } = examination;
  const higher = denominatorOf(pressures?.brachial, 'higher').denominator?.mmHg;
  if (!pressures || !higher) return {};
  const at: Record<string, number> = {};
  const incompressible: string[] = [];
  const toe: { right?: number; left?: number } = {};
  const finger: { right?: number; left?: number } = {};
  for (const side of SIDES) {
    for (const site of SITES) {
      const mmHg = mmHgAt(pressures[site], side);
      if (mmHg !== undefined) at[`${side} ${site}`] = ratio(mmHg, higher);
      if (pressures[site]?.[side] === 'incompressible') incompressible.push(`${side} ${site}`);
    }
    for (const [site, value] of Object.entries(cuffRatios(pressures, side, DEFAULT_PRESSURE_SETTINGS))) {
      at[`${side} ${site}`] = value;
    }
    const [onToe, onFinger] = [mmHgAt(pressures.toe, side), mmHgAt(pressures.finger, side)];
    if (onToe !== undefined) toe[side] = ratio(onToe, higher);
    if (onFinger !== undefined) finger[side] = ratio(onFinger, higher);
    const [own, other] = [side, side === 'right' ? 'left' : 'right'].map((s) =>
      mmHgAt(pressures.brachial, s as typeof side),
    );
    if (own !== undefined && other !== undefined) at[`${side} brachial`] = ratio(own, higher);
  }
  const fallsAfterExercise = Object.fromEntries(
    exerciseReadings(pressures, methodOf(examination)).flatMap(({ side, code }) =>
      code === 'incomplete' ? [] : [[side, code === 'abnormal']],
    ),
  );
  return {
    at,
    ...(incompressible.length > 0 && { incompressible }),
    ...(Object.keys(toe).length > 0 && { toe }),
    ...(Object.keys(finger).length > 0 && { finger }),
    ...(Object.keys(fallsAfterExercise).length > 0 && { fallsAfterExercise }),
  };
}
