import { REASONS, type Sided } from './common.js';
import type { Method } from './method.js';

/** The highest pressure a cuff is read at, in mmHg. Common practice, no source. */
export const HIGHEST_PRESSURE = 300;
/** The lowest pressure that can be read, in mmHg; below it there is no signal, which is 0. Common practice, no source. */
export const LOWEST_PRESSURE = 1;

/**
 * Why a place has no number: the artery stayed open under the fully inflated cuff, or nobody could measure.
 */
export const NO_PRESSURE = ['incompressible', ...REASONS] as const;
export type NoPressure = (typeof NO_PRESSURE)[number];

/** A systolic pressure in mmHg from `LOWEST_PRESSURE` on, 0 where no signal could be heard, or why there is none. */
export type Pressure = number | NoPressure;

/** Where a cuff is put or a signal taken, from the arm outward, then from the thigh outward. */
export const PRESSURE_SITES = [
  'brachial',
  'radial',
  'ulnar',
  'finger',
  'high-thigh',
  'low-thigh',
  'calf',
  'dorsalis-pedis',
  'posterior-tibial',
  'toe',
] as const;
export type PressureSite = (typeof PRESSURE_SITES)[number];

/** Units in which pressures are shown and entered; the record always holds mmHg. */
export const PRESSURE_UNITS = ['mmHg', 'kPa'] as const;
export type PressureUnit = (typeof PRESSURE_UNITS)[number];

/** Shape of the volume curve at the ankle, from normal to flat. Common practice, no source. */
export const VOLUME_CURVES = ['normal', 'notch-lost', 'rounded', 'flat'] as const;
export type VolumeCurve = (typeof VOLUME_CURVES)[number];

/** Pressures after a walk, in mmHg. */
export interface ExercisePressures {
  readonly brachial?: Sided<Pressure>;
  readonly 'dorsalis-pedis'?: Sided<Pressure>;
  readonly 'posterior-tibial'?: Sided<Pressure>;
  /** Whether the whole walk was done. Missing: not said. */
  readonly completed?: boolean;
  /** Length of the walk in minutes, up to 60. */
  readonly minutes?: number;
  /** What ended the walk early. */
  readonly note?: string;
}

/** Systolic pressures of one visit in mmHg, lying and at rest unless said otherwise. A place left out was not measured. */
export interface Pressures extends Readonly<Partial<Record<PressureSite, Sided<Pressure>>>> {
  /** Unit shown and entered; the numbers here are mmHg all the same. */
  readonly unit?: PressureUnit;
  /** Transcutaneous oxygen pressure of the foot, in mmHg. */
  readonly tcpo2?: Sided<number>;
  /** Shape of the volume curve at the ankle. Missing: not taken. */
  readonly volumeCurve?: Sided<VolumeCurve>;
  readonly afterExercise?: ExercisePressures;
  /** The examiner's own words. */
  readonly note?: string;
}

/** The pressures of a visit and the methods and limits they are read by, as one form control edits them together. */
export interface PressuresPart extends Pressures {
  /** Stands in the record beside the pressures, not among them. */
  readonly method?: Method;
}
