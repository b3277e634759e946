import { PULSE_PLACES, SIDES } from '../../anatomy/index.js';
import { type Examination, type LimbHistory, type LimbInspection, pulseAt } from '../../examination/index.js';
import type { OnsetSign, Tables } from './types.js';

const STRENGTH = { absent: 0, reduced: 1, normal: 2, bounding: 2 } as const;

/** Below this, in hours, trouble counts as acute: under 14 days (ESVS 2020). */
const ACUTE_HOURS = 336;

interface Limb {
  readonly told: (LimbHistory & { readonly suddenPain?: unknown }) | undefined;
  readonly seen: LimbInspection | undefined;
}

function limbsOf({ history, inspection }: Examination): Limb[] {
  return SIDES.flatMap((side) =>
    (['leg', 'arm'] as const).map((kind) => ({
      told: history?.[kind]?.[side],
      seen: inspection?.[kind]?.[side] as LimbInspection | undefined,
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
    if (told?.onset === 'sudden' || told?.suddenPain === true) signs.add('sudden');
    if (told?.onset === 'gradual') signs.add('gradual');
    if (told?.hours !== undefined) signs.add(told.hours < ACUTE_HOURS ? 'days' : 'weeks');
    if (told?.symptom === 'claudication') signs.add('claudication');
    if (seen?.movement === 'weak' || seen?.movement === 'paralysed') signs.add('deficit');
    if (seen?.sensation && seen.sensation !== 'normal') signs.add('deficit');
    if ((seen?.ulcer && seen.ulcer !== 'none') || (seen?.gangrene && seen.gangrene !== 'none')) {
      signs.add('wound');
    }
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
