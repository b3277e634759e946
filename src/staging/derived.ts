import type { Overrule } from '../examination/index.js';

/** Findings a stage or a flag can rest on. */
export const GROUND_CODES = [
  'symptom',
  'severity',
  'distance',
  'hours',
  'sensation',
  'movement',
  'arterial',
  'venous',
  'colour',
  'temperature',
  'muscle',
  'ulcer',
  'gangrene',
  'infection-signs',
  'no-infection-signs',
  'redness',
  'deep-infection',
  'systemic',
  'pulse-absent',
  'expansile',
  'injury',
  'mechanism',
  'walk-completed',
  'walk-not-completed',
  'ankle-pressure',
  'ankle-index',
  'toe-pressure',
  'tcpo2',
  'ankle-threat',
  'toe-threat',
  'tcpo2-threat',
  'index-threat',
  'wound',
  'ischaemia',
  'infection',
] as const;
export type GroundCode = (typeof GROUND_CODES)[number];

/** What a stage or flag can be short of. */
export const MISSING_CODES = [
  'onset',
  'symptom',
  'severity',
  'distance',
  'exercise',
  'restingAnkle',
  'pressures',
  'toe',
  'sensation',
  'movement',
  'arterial',
  'venous',
  'ulcer',
  'ulcerPlace',
  'gangrene',
  'gangreneExtent',
  'infection',
  'rednessCm',
  'systemic',
  'wound',
  'ischaemia',
] as const;
export type MissingCode = (typeof MISSING_CODES)[number];

/** What can weaken or complete a stage. */
export const NOTE_CODES = [
  'no-single-class',
  'fixed-mottling',
  'described-for-leg',
  'pressures-not-met',
  'raised-by-pressures',
  'at-200',
  'toe-decides',
  'stiff-arteries',
  'worse-counts',
  'at-70',
  'one-sign-only',
] as const;
export type NoteCode = (typeof NOTE_CODES)[number];

/** One finding a stage or a flag rests on. */
export interface Ground {
  readonly code: GroundCode;
  readonly params?: Readonly<Record<string, string | number>>;
}

/** A ground with its parameters; those that are `undefined` are left out. */
export function ground(
  code: GroundCode,
  params: Readonly<Record<string, string | number | undefined>> = {},
): Ground {
  const entries = Object.entries(params).filter(([, value]) => value !== undefined);
  return entries.length
    ? { code, params: Object.fromEntries(entries) as Record<string, string | number> }
    : { code };
}

/** The items where a condition holds, else none. */
export function given<const T>(condition: unknown, ...items: readonly T[]): T[] {
  return condition ? [...items] : [];
}

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
