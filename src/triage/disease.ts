import { type Side } from '../anatomy/index.js';
import { type Examination, pulseAt, type VolumeCurve } from '../examination/index.js';
import { armsDoubt, indexOf, mmHgAt, type PressureSettings } from '../pressures/index.js';
import { END_SITES, type LimbFacts } from './facts.js';
import { hasGraftAt } from './grafts.js';
import { given, type Ground } from './ground.js';
import { contextOf } from './record.js';
import type { TriageSettings } from './settings.js';
import { TRIAGE_SOURCES } from './sources.js';

/** Whether arterial disease of a leg is proven, probable by the pulses, shown not to be there, or not tested. */
export const DISEASE_STATES = ['proven', 'probable', 'untested', 'not-shown'] as const;
export type DiseaseState = (typeof DISEASE_STATES)[number];

/** Volume curves at the ankle that prove disease; one that only lost its notch may be one of stiff arteries. Common practice, no source. */
const DISEASED_CURVES: readonly (VolumeCurve | undefined)[] = ['rounded', 'flat'];

/** Of the limits in `TriageSettings.disease`. */
export const DISEASE_SOURCE = `${TRIAGE_SOURCES.guideline2016}; ${TRIAGE_SOURCES.iwgdf2019}; monophasic rule: common practice`;

export interface Disease {
  readonly state: DiseaseState;
  readonly because: readonly Ground[];
}

/** The ankle pressure that counts by the settings, of those that a cuff could close, and whether any ankle artery cannot be closed. */
export function ankleOf(
  { pressures = {} }: Pick<Examination, 'pressures'>,
  side: Side,
  settings: PressureSettings,
) {
  const sites = END_SITES.leg;
  const values = sites.flatMap((site) => {
    const mmHg = mmHgAt(pressures[site], side);
    return mmHg === undefined ? [] : [{ site, mmHg }];
  });
  const incompressible = sites.some((site) => pressures[site]?.[side] === 'incompressible');
  const sorted = [...values].sort((a, b) => b.mmHg - a.mmHg);
  const chosen = settings.ankle === 'lower' ? sorted.at(-1) : sorted[0];
  return { ...(chosen && { chosen }), incompressible };
}

/** Arterial disease of a leg, by what was measured, else by the pulses. */
export function diseaseOf(
  examination: Examination,
  facts: LimbFacts,
  settings: PressureSettings,
  { disease: limits, armsDoubt: doubt, poorFrom }: TriageSettings,
): Disease {
  const { side, flow, ends } = facts;
  const { pressures = {} } = examination;
  const index = indexOf('ankle', side, pressures, settings)?.value;
  const toeIndex = indexOf('toe', side, pressures, settings)?.value;
  const ankle = ankleOf(examination, side, settings).chosen?.mmHg;
  const toe = mmHgAt(pressures.toe, side);
  const tcpo2 = pressures.tcpo2?.[side];
  const curve = pressures.volumeCurve?.[side];
  const signals = END_SITES.leg.flatMap((site) => pulseAt(examination, { site, side })?.doppler ?? []);
  const poor =
    signals.length > 0 && signals.every((signal) => signal === 'monophasic' || signal === 'absent');
  const graft = hasGraftAt(examination, { kind: 'leg', side });
  const because: Ground[] = [
    ...(index !== undefined && index <= limits.ankleIndexTo
      ? [{ code: 'ankle-index', value: index, limit: limits.ankleIndexTo } as const]
      : []),
    ...(toeIndex !== undefined && toeIndex <= limits.toeIndexTo
      ? [{ code: 'toe-index', value: toeIndex, limit: limits.toeIndexTo } as const]
      : []),
    ...(ankle !== undefined && ankle < limits.ankleBelow
      ? [{ code: 'ankle-pressure', mmHg: ankle, limit: limits.ankleBelow } as const]
      : []),
    ...(toe !== undefined && toe < limits.toeBelow
      ? [{ code: 'toe-pressure', mmHg: toe, limit: limits.toeBelow } as const]
      : []),
    ...(tcpo2 !== undefined && tcpo2 < limits.tcpo2Below ? [{ code: 'tcpo2', mmHg: tcpo2 } as const] : []),
    ...(curve && DISEASED_CURVES.includes(curve) ? [{ code: 'volume-curve', shape: curve } as const] : []),
    ...given(poor && flow.silent, { code: 'arterial', value: 'inaudible' } as const),
  ];
  if (because.length || poor || graft) return { state: 'proven', because };
  if (flow.points >= poorFrom.disease) {
    const absent = ends.filter(({ state }) => state === 'absent').map(({ key }) => key);
    return {
      state: 'probable',
      because: given(absent.length, { code: 'pulses-absent', places: absent } as const),
    };
  }
  // An index divided by arms that may be obstructed themselves excludes nothing.
  const doubted = armsDoubt(examination, settings, doubt).length > 0;
  const byIndex =
    !doubted &&
    index !== undefined &&
    index >= limits.normalIndexFrom &&
    index <= limits.normalIndexTo &&
    contextOf(examination).diabetes === false;
  const byToe =
    !doubted && toe !== undefined && toe >= limits.normalToeFrom && (toeIndex ?? 0) > limits.toeIndexTo;
  const shown = flow.bothEndsNormal && (curve === undefined || curve === 'normal') && (byIndex || byToe);
  return { state: shown ? 'not-shown' : 'untested', because: [] };
}
