import type { FontaineStage, Mechanism, RutherfordCategory } from '../examination/index.js';
import { beyond, type Limit, mmHgAt } from '../pressures/index.js';
import { ankleOf, type DiseaseState, type Ground } from '../triage/index.js';
import { given } from '../triage/ground.js';
import { type Derived, type MissingCode, type NoteCode } from './derived.js';
import type { LegFindings } from './findings.js';
import { STAGING_SOURCES } from './sources.js';

/** Which Rutherford categories each Fontaine stage stands for. Source: TASC II, from memory. */
export const FONTAINE_TO_RUTHERFORD: Readonly<Record<FontaineStage, readonly RutherfordCategory[]>> = {
  I: [0],
  IIa: [1],
  IIb: [2, 3],
  III: [4],
  IV: [5, 6],
};

/** The Fontaine stage a Rutherford category stands for. */
export function fontaineOf(category: RutherfordCategory): FontaineStage {
  const stages = Object.keys(FONTAINE_TO_RUTHERFORD) as FontaineStage[];
  return stages.find((stage) => FONTAINE_TO_RUTHERFORD[stage].includes(category)) as FontaineStage;
}

const under = (value: number): Limit => ({ value, side: 'below', inclusive: false });

/**
 * Pressures printed beside the categories, in mmHg: after the standard walk (5 min at 2 mph and 12%), and at rest.
 */
export const RUTHERFORD_PRESSURES = {
  walkedAbove: 50,
  fallAtLeast: 20,
  notWalkedBelow: under(50),
  restPain: { ankle: under(40), toe: under(30) },
  tissueLoss: { ankle: under(60), toe: under(40) },
  source: STAGING_SOURCES.rutherford1997,
} as const;

export interface ChronicSettings {
  /** The stage given to exactly 200 m, which the sources leave open. */
  readonly fontaineAt200: 'IIa' | 'IIb';
}
export const DEFAULT_CHRONIC_SETTINGS: ChronicSettings = { fontaineAt200: 'IIb' };

/** A stage by symptoms and wounds; what the pressures say stands beside it and never moves it. */
export interface ChronicStage<T extends string | number> extends Derived<T> {
  /** Pressures in the range of rest pain, told beside a stage that says less. */
  readonly beside: readonly Ground[];
  /** Whether the pressures printed beside a threatening category are met. */
  readonly objective?: 'met' | 'not-met' | 'not-measured';
  /** Whether arterial disease is proven; a threatened limb needs that. */
  readonly disease: DiseaseState;
}

/** What the symptoms and wounds leave open. */
export interface BySymptoms<T> {
  readonly candidates: readonly T[];
  readonly grounds: readonly Ground[];
  readonly missing: readonly MissingCode[];
  readonly notes?: readonly NoteCode[];
}

/** Which of the pressures printed beside the categories a leg meets. */
export interface Objective {
  readonly restPain: readonly Ground[];
  readonly tissueLoss: readonly Ground[];
  readonly measured: boolean;
}

export function objectiveOf({ examination, side, pressures }: LegFindings): Objective {
  const ankle = ankleOf(examination, side, pressures).chosen?.mmHg;
  const toe = mmHgAt(examination.pressures?.toe, side);
  const met = (limits: { ankle: Limit; toe: Limit }): Ground[] => [
    ...(ankle !== undefined && beyond(ankle, limits.ankle)
      ? [{ code: 'ankle-pressure', mmHg: ankle, limit: limits.ankle.value } as const]
      : []),
    ...(toe !== undefined && beyond(toe, limits.toe)
      ? [{ code: 'toe-pressure', mmHg: toe, limit: limits.toe.value } as const]
      : []),
  ];
  return {
    restPain: met(RUTHERFORD_PRESSURES.restPain),
    tissueLoss: met(RUTHERFORD_PRESSURES.tissueLoss),
    measured: ankle !== undefined || toe !== undefined,
  };
}

/** Diseases that a threatened limb is not defined for. Sources: Mills 2014; Global Vascular Guidelines 2019 (both from memory). */
const OTHER_DISEASES = ['vasculitis', 'buerger', 'vasospasm'] as const;
export type OtherDisease = (typeof OTHER_DISEASES)[number];

export const isNotAtherosclerotic = (mechanism: Mechanism | undefined): mechanism is OtherDisease =>
  (OTHER_DISEASES as readonly (Mechanism | undefined)[]).includes(mechanism);

/** What wounds not looked at, or of open cause, leave missing. */
export function woundsMissing({ facts, wounds, tissueLoss, disease }: LegFindings): MissingCode[] {
  const { inspection } = facts;
  return [
    ...given(inspection.ulcer === undefined && tissueLoss !== 'yes', 'ulcer' as const),
    ...given(inspection.gangrene === undefined && tissueLoss !== 'yes', 'gangrene' as const),
    ...given(wounds.ulcer && tissueLoss === 'open' && !inspection.ulcerCause, 'ulcerCause' as const),
    ...given(wounds.ulcer && tissueLoss === 'open' && disease.state === 'untested', 'disease' as const),
  ];
}

/** What disease that is not shown, or not of atherosclerosis, says of a stage of limb threat. */
export function diseaseNotes({ disease, examination }: LegFindings, threatening: boolean): NoteCode[] {
  if (!threatening) return [];
  return [
    ...given(isNotAtherosclerotic(examination.context?.mechanism), 'not-atherosclerotic' as const),
    ...given(disease.state === 'not-shown', 'disease-not-shown' as const),
    ...given(disease.state === 'untested', 'disease-untested' as const),
  ];
}

/** Whether nothing at all was said of symptom and wounds. */
export function isSilent({ facts: { history, inspection }, wounds }: LegFindings): boolean {
  return (
    history.symptom === undefined &&
    inspection.ulcer === undefined &&
    inspection.gangrene === undefined &&
    !wounds.ulcer &&
    !wounds.gangrene
  );
}
