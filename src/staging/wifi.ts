import { WIFI_GRADES, type WifiGrade, type WifiStage } from '../examination/index.js';
import { armsDoubt, indexOf, mmHgAt } from '../pressures/index.js';
import { ankleOf, type Ground, infectionReading } from '../triage/index.js';
import { given } from '../triage/ground.js';
import { type Derived, derive, finalStage } from './derived.js';
import type { LegFindings } from './findings.js';
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

/** Limbs the scheme is not meant for. Source: Mills 2014; venous ulcers from memory. */
export const WIFI_EXCLUSIONS = [
  'amputated',
  'acute',
  'vasculitis',
  'buerger',
  'vasospasm',
  'injury',
  'venous-ulcer',
] as const;
export type WifiExclusion = (typeof WIFI_EXCLUSIONS)[number];

/** What wound, ischaemia and infection come to. */
export interface WifiReading {
  readonly applies: boolean;
  /** Why the scheme is not meant for this limb. */
  readonly excluded?: WifiExclusion;
  readonly wound: Derived<WifiGrade>;
  readonly ischaemia: Derived<WifiGrade>;
  readonly infection: Derived<WifiGrade>;
  readonly stage: Derived<WifiStage>;
  readonly risk?: WifiRisk;
  readonly benefit?: WifiRisk;
}

/** Grades that each depth of ulcer may be, by where it lies; depth counts more than size. A deep toe ulcer of the last phalanx alone is 1. */
function ulcerGrades({ facts: { inspection }, wounds }: LegFindings): readonly WifiGrade[] {
  const { ulcer, ulcerPlace } = inspection;
  if (ulcer === undefined) return wounds.ulcer ? [1, 2] : [0, 1, 2, 3];
  if (ulcer === 'none') return [0];
  if (ulcer === 'extensive') return [3];
  if (ulcer === 'shallow') return ulcerPlace === undefined ? [1, 2] : [ulcerPlace === 'heel' ? 2 : 1];
  if (ulcerPlace === undefined) return [1, 2, 3];
  if (ulcerPlace === 'heel') return [3];
  return ulcerPlace === 'digits' ? [1, 2] : [2];
}

/** Gangrene of digits is grade 2, beyond them grade 3. */
function gangreneGrades({ facts: { inspection }, wounds }: LegFindings): readonly WifiGrade[] {
  const { gangrene, gangreneExtent } = inspection;
  if (gangrene === undefined) return wounds.gangrene ? [2] : [0, 2, 3];
  if (gangrene === 'none') return [0];
  if (gangreneExtent === undefined) return [2, 3];
  return [gangreneExtent === 'digits' ? 2 : 3];
}

/** Grades of the wound that ulcer and gangrene leave open: what was not looked at is open, never none. */
export function woundGrade(findings: LegFindings): Derived<WifiGrade> {
  const { facts, wounds } = findings;
  const { ulcer, ulcerPlace, gangrene, gangreneExtent } = facts.inspection;
  const dead = gangrene !== undefined && gangrene !== 'none';
  if (ulcer === undefined && gangrene === undefined && !wounds.ulcer && !wounds.gangrene) {
    return derive<WifiGrade>([], { missing: ['ulcer', 'gangrene'] });
  }
  const pairs = ulcerGrades(findings).flatMap((u) => gangreneGrades(findings).map((g) => Math.max(u, g)));
  const candidates = WIFI_GRADES.filter((grade) => pairs.includes(grade));
  const open = candidates.length > 1;
  return derive<WifiGrade>(candidates, {
    grounds: [
      ...(ulcer ? [{ code: 'ulcer', depth: ulcer, place: ulcerPlace } as const] : []),
      ...(gangrene ? [{ code: 'gangrene', kind: gangrene, extent: gangreneExtent } as const] : []),
      ...wounds.because.filter(({ code }) => code === 'digits'),
    ],
    missing: [
      ...given(open && ulcer === undefined, 'ulcer' as const),
      ...given(
        open && (ulcer === 'shallow' || ulcer === 'deep') && ulcerPlace === undefined,
        'ulcerPlace' as const,
      ),
      ...given(open && gangrene === undefined, 'gangrene' as const),
      ...given(open && dead && !gangreneExtent, 'gangreneExtent' as const),
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
 * Grades of ischaemia that are open. The toe pressure decides; without it the oxygen pressure; else the worse of ankle index and ankle
 * pressure, which can only be too good where arteries are stiff: then every worse grade stays open.
 */
export function ischaemiaGrade(
  { side, examination, pressures: chosen, triage }: LegFindings,
  settings: WifiSettings = DEFAULT_WIFI_SETTINGS,
): Derived<WifiGrade> {
  const { pressures = {}, context } = examination;
  const toe = mmHgAt(pressures.toe, side);
  const index = indexOf('ankle', side, pressures, chosen);
  const { chosen: artery, incompressible } = ankleOf(examination, side, chosen);
  const ankle = artery?.mmHg;
  const stiff =
    (incompressible && ankle === undefined) ||
    (index?.value !== undefined && index.value > ISCHAEMIA_BOUNDS.stiffAbove);
  const byIndex = index?.value === undefined ? undefined : byBounds(index.value, ISCHAEMIA_BOUNDS.index);
  const byAnkle = ankle === undefined ? undefined : ankleGrade(ankle, settings.ischaemiaAt70);
  if (toe !== undefined) {
    const grade = byBounds(toe, ISCHAEMIA_BOUNDS.toe);
    const differs = !stiff && !incompressible && byIndex !== undefined && byIndex !== grade;
    return derive<WifiGrade>([grade], {
      grounds: [{ code: 'toe-pressure', mmHg: toe }],
      notes: given(differs, 'toe-decides' as const),
    });
  }
  const tcpo2 = pressures.tcpo2?.[side];
  if (tcpo2 !== undefined) {
    return derive<WifiGrade>([byBounds(tcpo2, ISCHAEMIA_BOUNDS.toe)], {
      grounds: [{ code: 'tcpo2', mmHg: tcpo2 }],
    });
  }
  if (stiff) return derive<WifiGrade>(WIFI_GRADES, { missing: ['toe'], notes: ['incompressible'] });
  const grades = [byIndex, byAnkle].filter((grade) => grade !== undefined);
  if (!grades.length) return derive<WifiGrade>([], { missing: ['pressures'] });
  const worse = Math.max(...grades) as WifiGrade;
  const diabetic = context?.diabetes === true;
  const tooGood = diabetic || incompressible;
  return derive<WifiGrade>(tooGood ? WIFI_GRADES.slice(worse) : [worse], {
    grounds: [
      ...(index?.value !== undefined ? [{ code: 'ankle-index', value: index.value } as const] : []),
      ...(ankle !== undefined ? [{ code: 'ankle-pressure', mmHg: ankle } as const] : []),
    ],
    missing: given(tooGood, 'toe' as const),
    notes: [
      ...given(new Set(grades).size > 1, 'worse-counts' as const),
      ...given(ankle === ISCHAEMIA_BOUNDS.ankle[1], 'at-70' as const),
      ...given(incompressible, 'one-incompressible' as const),
      ...given(
        index?.value !== undefined && armsDoubt(examination, chosen, triage.armsDoubt).length,
        'both-arms' as const,
      ),
      ...given(diabetic && !incompressible, 'diabetes-ankle' as const),
      // Unanswered is not "no": the grade stands, and it is said what it rests on.
      ...given(context?.diabetes === undefined && !incompressible && worse < 3, 'diabetes-unasked' as const),
    ],
  });
}

/** Grades of infection of the foot that are open, by local signs, reach and depth, and signs of the whole body. */
export function infectionGrade({ facts: { inspection }, triage }: LegFindings): Derived<WifiGrade> {
  const { rednessCm, systemic } = inspection;
  const { grades, signs, infected, deep, missing } = infectionReading(inspection, triage);
  if (infected === undefined) return derive<WifiGrade>([], { missing });
  const grounds: Ground[] = [
    signs.length ? { code: 'infection-signs', signs } : { code: 'no-infection-signs' },
    ...(rednessCm !== undefined ? [{ code: 'redness', cm: rednessCm } as const] : []),
    ...given(deep, { code: 'deep-infection' } as const),
    ...(systemic?.length ? [{ code: 'systemic', signs: systemic } as const] : []),
  ];
  return derive<WifiGrade>(grades, {
    grounds,
    missing,
    notes: given(!infected && signs.length, 'one-sign-only' as const),
  });
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
    return grade === undefined ? [] : [{ code: part, grade }];
  });
  // Every stage open says nothing of the limb.
  const all = stages.size === WIFI_RISKS.length;
  const stage = derive<WifiStage>(all ? [] : [...stages].sort(), { grounds, missing });
  const [w, i, f] = [finalStage(wound), finalStage(ischaemia), finalStage(infection)];
  if (w === undefined || i === undefined || f === undefined) return { stage };
  return { stage, risk: amputationRisk(w, i, f).risk, benefit: revascularisationBenefit(w, i, f) };
}
