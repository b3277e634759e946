import type {
  AcuteClass,
  AgeBand,
  Context,
  Examination,
  FontaineStage,
  LimbHistory,
  LimbInspection,
  RutherfordCategory,
} from '../examination/index.js';
import type { Side } from '../anatomy/index.js';

/*
 * What the tables read of a record. Fields of later forms stand here beside those of the first.
 */

export const INJURY_SIGNS = [
  'pulsatile-bleeding',
  'expanding-haematoma',
  'bleeding-at-scene',
  'stable-haematoma',
  'near-artery',
  'knee-dislocation',
  'elbow-dislocation-or-supracondylar',
] as const;
export type InjurySign = (typeof INJURY_SIGNS)[number];
export const FALSE_ANEURYSM_SIGNS = ['growing', 'painful', 'skin-thin', 'infected'] as const;
export type FalseAneurysmSign = (typeof FALSE_ANEURYSM_SIGNS)[number];
export const DIGITS = ['first', 'second', 'third', 'fourth', 'fifth'] as const;
export type Digit = (typeof DIGITS)[number];
export const DIGIT_STATES = ['normal', 'pale', 'blue', 'ulcer', 'gangrene'] as const;
export type DigitState = (typeof DIGIT_STATES)[number];
export const ULCER_CAUSES = ['arterial', 'venous', 'neuropathic', 'mixed', 'other', 'unknown'] as const;
export type UlcerCause = (typeof ULCER_CAUSES)[number];
export const ANEURYSM_PLACES = [
  'thoracic-aorta',
  'abdominal-aorta',
  'iliac',
  'femoral',
  'popliteal',
  'subclavian',
  'other',
] as const;
export type AneurysmPlace = (typeof ANEURYSM_PLACES)[number];
export const ACCESS_SIGNS = ['bleeding', 'thin-skin-or-ulcer', 'no-thrill'] as const;
export type AccessSign = (typeof ACCESS_SIGNS)[number];
export const DEVICES = ['arterial-line', 'radial-catheter', 'femoral-sheath'] as const;
export type Device = (typeof DEVICES)[number];
export const GRAFT_INFECTION_SIGNS = ['sinus', 'discharge', 'redness', 'exposed', 'bleeding'] as const;
export type GraftInfectionSign = (typeof GRAFT_INFECTION_SIGNS)[number];
export const SYMPTOMS_ELSEWHERE = [
  'abdominal-pain',
  'back-pain',
  'loin-pain',
  'collapse',
  'sudden-chest-or-back-pain',
  'passing-stroke',
  'passing-blindness',
  'deficit-now',
] as const;
export type SymptomElsewhere = (typeof SYMPTOMS_ELSEWHERE)[number];

export interface HistoryFacts extends Omit<LimbHistory, 'onset'> {
  onset?: 'sudden' | 'gradual' | 'unknown' | undefined;
  suddenPain?: true | undefined;
  newComplaint?: true | undefined;
  onsetAt?: string | undefined;
  coldFingers?: true | undefined;
}
export interface InspectionFacts extends Omit<
  Partial<LimbInspection>,
  'muscle' | 'ulcerPlace' | 'deepInfection'
> {
  muscle?: LimbInspection['muscle'] | 'rigid' | undefined;
  ulcerPlace?: LimbInspection['ulcerPlace'] | 'sole' | 'back-of-leg' | undefined;
  ulcerCause?: UlcerCause | undefined;
  deepInfection?: boolean | undefined;
  probeToBone?: boolean | undefined;
  charcotSuspected?: boolean | undefined;
  deficitKnown?: true | undefined;
  stretchPain?: boolean | undefined;
  painOutOfProportion?: boolean | undefined;
  reperfused?: true | undefined;
  injurySigns?: readonly InjurySign[] | undefined;
  falseAneurysmSigns?: readonly FalseAneurysmSign[] | undefined;
  digits?: Partial<Record<Digit, DigitState>> | undefined;
}
export interface GraftFacts {
  artery: NonNullable<Context['revascularisations']>[number]['artery'];
  side: NonNullable<Context['revascularisations']>[number]['side'];
  kind: string;
  graftPulse?: 'present' | 'absent' | undefined;
  infectionSigns?: readonly GraftInfectionSign[] | undefined;
}
export interface AccessFacts {
  side: Side;
  kind: string;
  signs?: readonly AccessSign[] | undefined;
}
export interface ContextFacts extends Omit<Context, 'revascularisations'> {
  ageBand?: AgeBand | undefined;
  revascularisations?: readonly GraftFacts[] | undefined;
  aneurysms?: readonly { place: AneurysmPlace; side?: Side | undefined }[] | undefined;
  access?: readonly AccessFacts[] | undefined;
  devices?: readonly { limb: 'leg' | 'arm'; side: Side; kind: Device }[] | undefined;
  coldInjury?:
    Partial<Record<'leg' | 'arm', Partial<Record<Side, { hours?: number | undefined }>>>> | undefined;
}
export interface OwnStages {
  acute?: AcuteClass | undefined;
  fontaine?: FontaineStage | undefined;
  rutherford?: RutherfordCategory | undefined;
}

export type StagedKind = 'leg' | 'arm';
export interface StagedLimb {
  readonly kind: StagedKind;
  readonly side: Side;
}

export function historyOf({ history }: Examination, { kind, side }: StagedLimb): HistoryFacts {
  return (history?.[kind]?.[side] ?? {}) as HistoryFacts;
}
export function inspectionOf({ inspection }: Examination, { kind, side }: StagedLimb): InspectionFacts {
  return (inspection?.[kind]?.[side] ?? {}) as InspectionFacts;
}
export function contextOf({ context }: Examination): ContextFacts {
  return (context ?? {}) as ContextFacts;
}
/** Symptoms away from the limbs; `undefined` when nobody asked, empty when all were denied. */
export function elsewhereOf({ history }: Examination): readonly SymptomElsewhere[] | undefined {
  return (history as { elsewhere?: SymptomElsewhere[] } | undefined)?.elsewhere;
}
export function inShock(examination: Examination): boolean {
  return (examination as { circulation?: { shock?: boolean } }).circulation?.shock === true;
}
/** The stages the clinician set for a limb. */
export function ownStagesOf({ staging }: Examination, { kind, side }: StagedLimb): OwnStages {
  const acute = staging?.[kind]?.[side]?.acute?.stage;
  const leg = kind === 'leg' ? staging?.leg?.[side] : undefined;
  return {
    ...(acute && { acute }),
    ...(leg?.fontaine && { fontaine: leg.fontaine.stage }),
    ...(leg?.rutherford && { rutherford: leg.rutherford.stage }),
  };
}
