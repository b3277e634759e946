import {
  type Pressures,
  type UlcerDepth,
  WIFI_GRADES,
  type WifiGrade,
  type WifiStage,
} from '../examination/index.js';
import { indexOf, mmHgAt, numeratorOf, type PressureSettings, pressureSettings } from '../pressures/index.js';
import { type Derived, derive, finalStage, given, ground, type Ground } from './derived.js';
import type { LimbFindings } from './findings.js';
import { INFECTION_BOUNDS } from './infection.js';
import { STAGING_SOURCES } from './sources.js';

export const WIFI_RISKS = ['very-low', 'low', 'moderate', 'high'] as const;
export type WifiRisk = (typeof WIFI_RISKS)[number];

/*
 * Both tables, one row of four letters (infection 0 to 3) for each wound and ischaemia grade: wound 0 with ischaemia 0 to 3,
 * then wound 1, and so on. V very low, L low, M moderate, H high. From memory of the printed tables.
 */
const AMPUTATION =
  'VVLM VLMH LLMH LMMH  VVLM VLMH LMHH MMHH  LLMH MMHH MHHH HHHH  MMHH HHHH HHHH HHHH'.replaceAll(' ', '');
const BENEFIT =
  'VVVV VLLM LLMM MHHH  VVVV LMMM MHHH HHHH  VVVV MMHH HHHH HHHH  VVVV MMMH HHHH HHHH'.replaceAll(' ', '');
export const WIFI_TABLES_SOURCE = `${STAGING_SOURCES.mills2014}, tables 4 and 5 (from memory)`;

function cell(table: string, wound: WifiGrade, ischaemia: WifiGrade, infection: WifiGrade): number {
  return 'VLMH'.indexOf(table.charAt(16 * wound + 4 * ischaemia + infection));
}

/** Risk of amputation within a year, and the stage that is named after it. */
export function amputationRisk(
  wound: WifiGrade,
  ischaemia: WifiGrade,
  infection: WifiGrade,
): { risk: WifiRisk; stage: WifiStage } {
  const at = cell(AMPUTATION, wound, ischaemia, infection);
  return { risk: WIFI_RISKS[at] as WifiRisk, stage: (at + 1) as WifiStage };
}

/** Likelihood of benefit from, and need for, restoring blood flow once infection is controlled. */
export function revascularisationBenefit(
  wound: WifiGrade,
  ischaemia: WifiGrade,
  infection: WifiGrade,
): WifiRisk {
  return WIFI_RISKS[cell(BENEFIT, wound, ischaemia, infection)] as WifiRisk;
}

/** Lowest value of ischaemia grades 0, 1 and 2. */
export const ISCHAEMIA_BOUNDS = {
  index: [0.8, 0.6, 0.4],
  /** Grade 0 lies above 100 mmHg; 70 mmHg is printed in grades 1 and 2. */
  ankle: [100, 70, 50],
  toe: [60, 40, 30],
  /** Above this index the toe or the oxygen pressure is used instead. */
  stiffAbove: 1.3,
  source: `${STAGING_SOURCES.mills2014}; stiff arteries and conflict rule from memory`,
} as const;

export interface WifiSettings {
  /** Grade of an ankle pressure of exactly 70 mmHg, printed in two rows. */
  readonly ischaemiaAt70: 1 | 2;
}
export const DEFAULT_WIFI_SETTINGS: WifiSettings = { ischaemiaAt70: 2 };

/** What wound, ischaemia and infection come to. */
export interface WifiReading {
  readonly applies: boolean;
  /** Why the scheme is not meant for this limb. */
  readonly excluded?: string;
  readonly wound: Derived<WifiGrade>;
  readonly ischaemia: Derived<WifiGrade>;
  readonly infection: Derived<WifiGrade>;
  readonly stage: Derived<WifiStage>;
  readonly risk?: WifiRisk;
  readonly benefit?: WifiRisk;
}

/** Grade of each depth of ulcer, and of the same at the heel; depth counts more than size. */
const ULCER_GRADES = {
  none: { grade: 0, heel: 0 },
  shallow: { grade: 1, heel: 2 },
  deep: { grade: 2, heel: 3 },
  extensive: { grade: 3, heel: 3 },
} as const satisfies Record<UlcerDepth, { grade: WifiGrade; heel: WifiGrade }>;

/** Grade of the wound. Gangrene of digits is grade 2, beyond them grade 3. */
export function woundGrade({ inspection }: LimbFindings): Derived<WifiGrade> {
  const { ulcer, ulcerPlace, gangrene, gangreneExtent } = inspection;
  if (ulcer === undefined && gangrene === undefined) {
    return derive<WifiGrade>([], { missing: ['ulcer', 'gangrene'] });
  }
  const byUlcer = ulcer === undefined ? 0 : ULCER_GRADES[ulcer][ulcerPlace === 'heel' ? 'heel' : 'grade'];
  const dead = gangrene !== undefined && gangrene !== 'none';
  const byGangrene = !dead ? 0 : gangreneExtent && gangreneExtent !== 'digits' ? 3 : 2;
  const grade = Math.max(byUlcer, byGangrene) as WifiGrade;
  const reachOpen = dead && !gangreneExtent && grade < 3;
  const placeOpen = (ulcer === 'shallow' || ulcer === 'deep') && !ulcerPlace;
  return derive(reachOpen ? WIFI_GRADES.slice(grade) : [grade], {
    grounds: [
      ...given(ulcer, ground('ulcer', { value: ulcer, place: ulcerPlace })),
      ...given(gangrene, ground('gangrene', { value: gangrene, extent: gangreneExtent })),
    ],
    missing: [
      ...given(ulcer === undefined, 'ulcer'),
      ...given(placeOpen, 'ulcerPlace'),
      ...given(gangrene === undefined, 'gangrene'),
      ...given(reachOpen, 'gangreneExtent'),
    ],
  });
}

function byBounds(value: number, bounds: readonly number[]): WifiGrade {
  const at = bounds.findIndex((bound) => value >= bound);
  return (at === -1 ? 3 : at) as WifiGrade;
}

function ankleGrade(mmHg: number, at70: 1 | 2): WifiGrade {
  const [none, mild, moderate] = ISCHAEMIA_BOUNDS.ankle;
  if (mmHg > none) return 0;
  if (mmHg === mild) return at70;
  if (mmHg > mild) return 1;
  return mmHg >= moderate ? 2 : 3;
}

/**
 * Grade of ischaemia. The toe pressure decides; without it the oxygen pressure; else the worse of ankle index and ankle
 * pressure, unless the arteries are too stiff for either.
 */
export function ischaemiaGrade(
  { side }: LimbFindings,
  pressures: Pressures = {},
  settings: WifiSettings = DEFAULT_WIFI_SETTINGS,
  pressureChoice?: Partial<PressureSettings>,
): Derived<WifiGrade> {
  const chosen = pressureSettings(pressureChoice);
  const toe = mmHgAt(pressures.toe, side);
  const index = indexOf('ankle', side, pressures, chosen);
  const ankle = numeratorOf(pressures, 'ankle', side, chosen.ankle).numerator?.mmHg;
  const stiff =
    index?.band === 'incompressible' ||
    (index?.value !== undefined && index.value > ISCHAEMIA_BOUNDS.stiffAbove);
  const byIndex = index?.value === undefined ? undefined : byBounds(index.value, ISCHAEMIA_BOUNDS.index);
  const byAnkle = ankle === undefined ? undefined : ankleGrade(ankle, settings.ischaemiaAt70);
  if (toe !== undefined) {
    const grade = byBounds(toe, ISCHAEMIA_BOUNDS.toe);
    const differs = !stiff && byIndex !== undefined && byIndex !== grade;
    return derive<WifiGrade>([grade], {
      grounds: [ground('toe-pressure', { mmHg: toe })],
      notes: given(differs, 'toe-decides'),
    });
  }
  const tcpo2 = pressures.tcpo2?.[side];
  if (tcpo2 !== undefined) {
    return derive<WifiGrade>([byBounds(tcpo2, ISCHAEMIA_BOUNDS.toe)], {
      grounds: [ground('tcpo2', { mmHg: tcpo2 })],
    });
  }
  if (stiff) return derive<WifiGrade>([], { missing: ['toe'], notes: ['stiff-arteries'] });
  const grades = [byIndex, byAnkle].filter((grade) => grade !== undefined);
  if (!grades.length) return derive<WifiGrade>([], { missing: ['pressures'] });
  const at70 = ankle === ISCHAEMIA_BOUNDS.ankle[1];
  return derive<WifiGrade>([Math.max(...grades) as WifiGrade], {
    grounds: [
      ...given(index?.value !== undefined, ground('ankle-index', { value: index?.value })),
      ...given(ankle !== undefined, ground('ankle-pressure', { mmHg: ankle })),
    ],
    notes: [...given(new Set(grades).size > 1, 'worse-counts'), ...given(at70, 'at-70')],
  });
}

/** Grade of infection of the foot, by local signs, reach and depth, and signs of the whole body. */
export function infectionGrade({ inspection }: LimbFindings): Derived<WifiGrade> {
  const { infection, rednessCm, deepInfection, systemic } = inspection;
  if (infection === undefined && !deepInfection) return derive<WifiGrade>([], { missing: ['infection'] });
  const narrow = rednessCm !== undefined && rednessCm <= INFECTION_BOUNDS.rednessOver;
  const signs = (infection ?? []).filter((sign) => sign !== 'redness' || !narrow);
  const grounds: Ground[] = [
    signs.length ? ground('infection-signs', { signs: signs.join(' ') }) : ground('no-infection-signs'),
    ...given(rednessCm !== undefined, ground('redness', { cm: rednessCm })),
    ...given(deepInfection, ground('deep-infection')),
    ...given(systemic?.length, ground('systemic', { signs: systemic?.join(' ') })),
  ];
  const infected = signs.length >= INFECTION_BOUNDS.signs || deepInfection === true;
  if (!infected) {
    return derive<WifiGrade>([0], { grounds, notes: given(signs.length, 'one-sign-only') });
  }
  const missing = given(systemic === undefined, 'systemic');
  if ((systemic?.length ?? 0) >= INFECTION_BOUNDS.systemicSigns) return derive<WifiGrade>([3], { grounds });
  const wide = rednessCm !== undefined && rednessCm > INFECTION_BOUNDS.moderateOver;
  if (deepInfection || wide) return derive<WifiGrade>([2], { grounds, missing });
  if (rednessCm === undefined && signs.includes('redness')) {
    return derive<WifiGrade>([1, 2], { grounds, missing: ['rednessCm', ...missing] });
  }
  return derive<WifiGrade>([1], { grounds, missing });
}

/** The grades that are open: the clinician's own, else the derived candidates, else all. */
function open(derived: Derived<WifiGrade>): readonly WifiGrade[] {
  const final = finalStage(derived);
  if (final !== undefined) return [final];
  return derived.candidates.length ? derived.candidates : WIFI_GRADES;
}

/** Puts three grades together. While a grade is open the stage is every stage the open grades allow. */
export function combineWifi(
  wound: Derived<WifiGrade>,
  ischaemia: Derived<WifiGrade>,
  infection: Derived<WifiGrade>,
): Pick<WifiReading, 'stage' | 'risk' | 'benefit'> {
  const parts = { wound, ischaemia, infection };
  const missing = (Object.keys(parts) as (keyof typeof parts)[]).filter(
    (part) => finalStage(parts[part]) === undefined,
  );
  if (missing.length === 3) return { stage: derive<WifiStage>([], { missing }) };
  const stages = new Set<WifiStage>();
  for (const w of open(wound))
    for (const i of open(ischaemia))
      for (const f of open(infection)) stages.add(amputationRisk(w, i, f).stage);
  const grounds = (Object.keys(parts) as (keyof typeof parts)[]).flatMap((part): Ground[] => {
    const grade = finalStage(parts[part]);
    return grade === undefined ? [] : [ground(part, { grade })];
  });
  const stage = derive([...stages].sort(), { grounds, missing });
  const [w, i, f] = [finalStage(wound), finalStage(ischaemia), finalStage(infection)];
  if (w === undefined || i === undefined || f === undefined) return { stage };
  return { stage, risk: amputationRisk(w, i, f).risk, benefit: revascularisationBenefit(w, i, f) };
}
