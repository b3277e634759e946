import { PULSE_PLACES, SIDES } from '../../anatomy/index.js';
import {
  type Examination,
  foundDeficit,
  foundGangrene,
  foundUlcer,
  type LimbHistory,
  type LimbInspection,
  pulseAt,
} from '../../examination/index.js';
import { DEFAULT_TRIAGE_SETTINGS, onsetHours } from '../../triage/index.js';
import type { OnsetSign, Tables } from './types.js';

const STRENGTH = { absent: 0, reduced: 1, normal: 2, bounding: 2 } as const;

interface Limb {
  readonly told: LimbHistory;
  readonly seen: LimbInspection;
}

function limbsOf({ history, inspection }: Examination): Limb[] {
  return SIDES.flatMap((side) =>
    (['leg', 'arm'] as const).map((kind) => ({
      told: history?.[kind]?.[side] ?? {},
      seen: inspection?.[kind]?.[side] ?? {},
    })),
  );
}

/** Signs of how the trouble began, each counted once for the patient. */
function signsOf(examination: Examination, earlier: Examination | undefined): Set<OnsetSign> {
  const signs = new Set<OnsetSign>();
  for (const place of earlier ? PULSE_PLACES : []) {
    const now = pulseAt(examination, place)?.grade;
    const before = pulseAt(earlier!, place)?.grade;
    if (!now || !before || STRENGTH[now] > 1) continue;
    signs.add(STRENGTH[before] > STRENGTH[now] ? 'newly-weak' : 'weak-as-before');
  }
  const { context, history } = examination;
  for (const { told, seen } of limbsOf(examination)) {
    if (told.onset === 'sudden' || told.suddenPain) signs.add('sudden');
    if (told.onset === 'gradual') signs.add('gradual');
    const hours = onsetHours(told, examination);
    if (hours !== undefined) signs.add(hours < DEFAULT_TRIAGE_SETTINGS.acuteUnderHours ? 'days' : 'weeks');
    if (told.symptom === 'claudication') signs.add('claudication');
    if (foundDeficit(seen) && !seen.deficitKnown) signs.add('deficit');
    if (foundUlcer(seen) || foundGangrene(seen)) signs.add('wound');
  }
  for (const side of SIDES) {
    const pain = [context?.legClaudication?.[side], context?.armClaudication?.[side]];
    if (pain.some((one) => one !== undefined && one !== 'none')) signs.add('claudication');
  }
  const mechanism = context?.mechanism;
  if (mechanism === 'embolic' || mechanism === 'injury' || mechanism === 'dissection') {
    signs.add('sudden-mechanism');
  }
  if (history?.rhythm === 'atrial-fibrillation' || history?.risks?.includes('earlier-embolus')) {
    signs.add('embolic-source');
  }
  return signs;
}

/**
 * How much of the acute figures counts. Where the record does not say, the prior and what else was found decide.
 * @param earlier an earlier record: a pulse newly weak dates the event, one that was weak before tells of old trouble
 */
export function acuteShare(
  examination: Examination,
  { onset }: Tables,
  earlier: Examination | undefined,
): number {
  if (examination.onset === 'acute') return 1;
  if (examination.onset === 'chronic') return 0;
  let odds = onset.unknown;
  for (const sign of signsOf(examination, earlier)) odds += onset.signs[sign];
  return 1 / (1 + Math.exp(-odds));
}
