import type { Overrule } from '../examination/index.js';
import type { Ground } from '../triage/index.js';

/** What a stage can be short of. */
export const MISSING_CODES = [
  'onset',
  'symptom',
  'severity',
  'distance',
  'exercise',
  'same-artery',
  'pressures',
  'toe',
  'disease',
  'sensation',
  'movement',
  'arterial',
  'venous',
  'ulcer',
  'ulcerPlace',
  'ulcerCause',
  'gangrene',
  'gangreneExtent',
  'infection',
  'rednessCm',
  'deepInfection',
  'systemic',
  'wound',
  'ischaemia',
] as const;
export type MissingCode = (typeof MISSING_CODES)[number];

/** What can weaken or complete a stage. */
export const NOTE_CODES = [
  'acute-limb',
  'no-single-class',
  'fixed-mottling',
  'described-for-leg',
  'old-deficit',
  'pressures-not-met',
  'pressures-of-rest-pain',
  'disease-not-shown',
  'disease-untested',
  'other-causes',
  'at-200',
  'toe-decides',
  'incompressible',
  'one-incompressible',
  'both-arms',
  'not-atherosclerotic',
  'diabetes-ankle',
  'diabetes-unasked',
  'worse-counts',
  'at-70',
  'one-sign-only',
] as const;
export type NoteCode = (typeof NOTE_CODES)[number];

/** A stage worked out from the record, and what the clinician set against it. */
export interface Derived<T extends string | number> {
  /** The stage, where the findings leave only one. */
  readonly stage?: T;
  /** Every stage the findings leave open, mildest first; empty where they speak of none. */
  readonly candidates: readonly T[];
  readonly grounds: readonly Ground[];
  /** What would narrow the candidates down. */
  readonly missing: readonly MissingCode[];
  /** What weakens or completes it. */
  readonly notes: readonly NoteCode[];
  readonly overrule?: Overrule<T>;
}

/** The stage that counts: the clinician's, else the derived one. */
export function finalStage<T extends string | number>(derived: Derived<T>): T | undefined {
  return derived.overrule?.stage ?? derived.stage;
}

/** A stage from its candidates: the only one, or none while several are open. */
export function derive<T extends string | number>(
  candidates: readonly T[],
  parts: {
    grounds?: readonly Ground[];
    missing?: readonly MissingCode[];
    notes?: readonly NoteCode[];
    overrule?: Overrule<T> | undefined;
  } = {},
): Derived<T> {
  const { grounds = [], missing = [], notes = [], overrule } = parts;
  const [only, ...others] = candidates;
  return {
    ...(only !== undefined && others.length === 0 && { stage: only }),
    candidates,
    grounds,
    missing,
    notes,
    ...(overrule && { overrule }),
  };
}
