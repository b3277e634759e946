import { type FontaineStage, type Pressures, type RutherfordCategory } from '../examination/index.js';
import { beyond, type Limit, mmHgAt, numeratorOf, type PressureSettings } from '../pressures/index.js';
import { type Derived, given, ground, type Ground, type MissingCode, type NoteCode } from './derived.js';
import type { LimbFindings } from './findings.js';
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
  /** Whether resting pressures in the range of rest pain raise a limb whose symptoms say less. */
  readonly upgrade: boolean;
}
export const DEFAULT_CHRONIC_SETTINGS: ChronicSettings = { fontaineAt200: 'IIb', upgrade: true };

/** A stage by symptoms that the pressures may have raised. */
export interface ChronicStage<T extends string | number> extends Derived<T> {
  /** What the symptoms alone say, where the pressures said more. */
  readonly bySymptoms?: readonly T[];
  /** Whether the pressures printed beside the category are met. */
  readonly objective?: 'met' | 'not-met' | 'not-measured';
}

/** What the symptoms and wounds alone leave open. */
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

export function objectiveOf(
  side: LimbFindings['side'],
  pressures: Pressures,
  settings: PressureSettings,
): Objective {
  const ankle = numeratorOf(pressures, 'ankle', side, settings.ankle).numerator?.mmHg;
  const toe = mmHgAt(pressures.toe, side);
  const met = (limits: { ankle: Limit; toe: Limit }): Ground[] => [
    ...given(
      ankle !== undefined && beyond(ankle, limits.ankle),
      ground('ankle-pressure', { mmHg: ankle, limit: limits.ankle.value }),
    ),
    ...given(
      toe !== undefined && beyond(toe, limits.toe),
      ground('toe-pressure', { mmHg: toe, limit: limits.toe.value }),
    ),
  ];
  return {
    restPain: met(RUTHERFORD_PRESSURES.restPain),
    tissueLoss: met(RUTHERFORD_PRESSURES.tissueLoss),
    measured: ankle !== undefined || toe !== undefined,
  };
}
