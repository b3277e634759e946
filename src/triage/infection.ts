import type { InfectionSign, WifiGrade } from '../examination/index.js';
import type { Case, Raised } from './flag.js';
import { given, type Ground } from './ground.js';
import type { LimbState } from './limb.js';
import type { InspectionFacts } from './record.js';
import { type TriageSettings } from './settings.js';
import { TRIAGE_SOURCES } from './sources.js';

/** Signs of the systemic inflammatory response, printed with units beside each tick. */
export const SIRS_LIMITS = {
  temperature: { above: 38, below: 36, unit: '°C' },
  'heart-rate': { above: 90, unit: '/min' },
  breathing: { above: 20, unit: '/min', paco2Below: 4.3, paco2Unit: 'kPa' },
  'white-cells': { above: 12, below: 4, unit: '10⁹/L', bandsAbove: 10 },
  source: TRIAGE_SOURCES.infection,
} as const;

/** What of an infection is open. */
export interface InfectionReading {
  readonly grades: readonly WifiGrade[];
  readonly signs: readonly InfectionSign[];
  readonly infected: boolean | undefined;
  /** Deeper than the skin, or suspected so. */
  readonly deep: boolean | undefined;
  /** Redness reaches as far as moderate; unknown where its reach was not measured. */
  readonly wide: boolean | undefined;
  readonly missing: readonly ('infection' | 'rednessCm' | 'systemic' | 'deepInfection')[];
}

function isWide(cm: number, { infection: { moderateFrom, atModerate } }: TriageSettings): boolean {
  return cm > moderateFrom || (cm === moderateFrom && atModerate === 'moderate');
}

/**
 * Grades of infection that the record leaves open: 0 none, 1 mild, 2 moderate, 3 severe. Sources: IDSA/IWGDF 2012, IWGDF/IDSA
 * 2023. What was not stated is open, never no.
 */
export function infectionReading(
  { infection, rednessCm, deepInfection, probeToBone, systemic }: InspectionFacts,
  settings: TriageSettings,
): InfectionReading {
  const { signs: enough, rednessOver, systemic: severe } = settings.infection;
  const deep = deepInfection === true || probeToBone === true ? true : deepInfection;
  const narrow = rednessCm !== undefined && rednessCm <= rednessOver;
  const signs = (infection ?? []).filter((sign) => sign !== 'redness' || !narrow);
  const wide =
    rednessCm !== undefined
      ? isWide(rednessCm, settings)
      : infection === undefined || signs.includes('redness')
        ? undefined
        : false;
  const base = { signs, deep, wide };
  if (infection === undefined && !deep) {
    return { ...base, grades: [0, 1, 2, 3], infected: undefined, missing: ['infection'] };
  }
  if (signs.length < enough && !deep) return { ...base, grades: [0], infected: false, missing: [] };
  const body = systemic?.length;
  if (body !== undefined && body >= severe) return { ...base, grades: [3], infected: true, missing: [] };
  const grades: WifiGrade[] = deep || wide ? [2] : deep === false && wide === false ? [1] : [1, 2];
  return {
    ...base,
    grades: body === undefined ? [...grades, 3] : grades,
    infected: true,
    missing: [
      ...given(!deep && wide === undefined, 'rednessCm' as const),
      ...given(deep === undefined && !wide, 'deepInfection' as const),
      ...given(body === undefined, 'systemic' as const),
    ],
  };
}

/** Flags of infection and wet gangrene. Sources: IDSA/IWGDF 2012, IWGDF/IDSA 2023; wet gangrene: common practice. */
export function infectionFlags({ limbs, settings }: Case): Raised[] {
  return limbs.flatMap((state: LimbState): Raised[] => {
    const { limb, facts } = state;
    const { gangrene, gangreneExtent, infection, systemic, rednessCm } = facts.inspection;
    const { deep, wide } = infectionReading(facts.inspection, settings);
    const local = (infection?.length ?? 0) > 0 || deep === true;
    const severe = local && (systemic?.length ?? 0) >= settings.infection.systemic;
    const reach: Ground[] = [
      ...given(infection?.length, { code: 'infection-signs', signs: infection ?? [] } as const),
      ...given(facts.inspection.deepInfection, { code: 'deep-infection' } as const),
      ...given(facts.inspection.probeToBone, { code: 'probe-to-bone' } as const),
      ...given(rednessCm !== undefined, { code: 'redness', cm: rednessCm ?? 0 } as const),
    ];
    return [
      ...given(gangrene === 'wet', {
        code: 'wet-gangrene',
        urgency: 'now',
        limb,
        because: [{ code: 'gangrene', kind: 'wet', extent: gangreneExtent }],
      } as const),
      ...given(severe, {
        code: 'spreading-infection',
        urgency: 'now',
        limb,
        because: [{ code: 'systemic', signs: systemic ?? [] }, ...reach],
      } as const),
      ...given(!severe && (deep || wide), {
        code: 'deep-infection',
        urgency: 'today',
        limb,
        because: reach,
      } as const),
    ];
  });
}
