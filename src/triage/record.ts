import type { Side } from '../anatomy/index.js';
import type {
  AcuteClass,
  ArmHistory,
  Context,
  Examination,
  FontaineStage,
  LimbInspection,
  RutherfordCategory,
  SymptomElsewhere,
} from '../examination/index.js';

/*
 * Where the tables find what they read of a record.
 */

export type StagedKind = 'leg' | 'arm';
/** One limb of the patient, for triage and stages. */
export interface StagedLimb {
  readonly kind: StagedKind;
  readonly side: Side;
}

/** What is told of a limb: an arm has all that a leg has. */
export type HistoryFacts = ArmHistory;
export type InspectionFacts = LimbInspection;

/** The stages the clinician set for a limb. */
export interface OwnStages {
  readonly acute?: AcuteClass;
  readonly fontaine?: FontaineStage;
  readonly rutherford?: RutherfordCategory;
}

export function historyOf({ history }: Examination, { kind, side }: StagedLimb): HistoryFacts {
  return history?.[kind]?.[side] ?? {};
}

export function inspectionOf({ inspection }: Examination, { kind, side }: StagedLimb): InspectionFacts {
  return inspection?.[kind]?.[side] ?? {};
}

/** Whether skin has a colour that too little blood gives it. */
export function isIschaemicColour({ colour }: InspectionFacts): boolean {
  return isBlue({ colour }) || colour === 'pale';
}

export function isBlue({ colour }: Pick<InspectionFacts, 'colour'>): boolean {
  return colour === 'blue' || colour === 'mottled' || colour === 'fixed-mottled';
}

export function contextOf({ context }: Examination): Context {
  return context ?? {};
}

/** Symptoms away from the limbs; `undefined` when nobody asked, empty when all were denied. */
export function elsewhereOf({ history }: Examination): readonly SymptomElsewhere[] | undefined {
  return history?.elsewhere;
}

export function inShock({ circulation }: Examination): boolean {
  return circulation?.shock === true;
}

export function ownStagesOf({ staging }: Examination, { kind, side }: StagedLimb): OwnStages {
  const acute = staging?.[kind]?.[side]?.acute?.stage;
  const leg = kind === 'leg' ? staging?.leg?.[side] : undefined;
  return {
    ...(acute && { acute }),
    ...(leg?.fontaine && { fontaine: leg.fontaine.stage }),
    ...(leg?.rutherford && { rutherford: leg.rutherford.stage }),
  };
}
