import * as z from 'zod/mini';
import { REASONS, rule, sided, textSchema } from './common.js';
import { oneOf, upTo } from './measures.js';

/** The highest pressure a cuff is read at, in mmHg. Common practice, no source. */
export const HIGHEST_PRESSURE = 300;

/**
 * Why a place has no number: the artery stayed open under the fully inflated cuff, or nobody could measure.
 */
export const NO_PRESSURE = ['incompressible', ...REASONS] as const;
export type NoPressure = (typeof NO_PRESSURE)[number];

/** A systolic pressure in mmHg, 0 where no signal could be heard, or why there is none. */
export const pressureSchema = z.union([upTo(HIGHEST_PRESSURE), z.enum(NO_PRESSURE)], {
  error: `a number from 0 to ${HIGHEST_PRESSURE} in mmHg, or one of ${NO_PRESSURE.join(', ')}`,
});
export type Pressure = z.infer<typeof pressureSchema>;

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

const sides = z.optional(sided(pressureSchema));

const exerciseSchema = z.strictObject({
  brachial: sides,
  'dorsalis-pedis': sides,
  'posterior-tibial': sides,
  /** Whether the whole walk was done. */
  completed: z.optional(z.boolean()),
  /** Length of the walk, in minutes. */
  minutes: z.optional(upTo(60)),
  /** What ended the walk early. */
  note: z.optional(textSchema),
});

/** Systolic pressures of one visit, lying and at rest unless said otherwise. */
export const pressuresSchema = z
  .strictObject({
    unit: oneOf(PRESSURE_UNITS),
    brachial: sides,
    radial: sides,
    ulnar: sides,
    finger: sides,
    'high-thigh': sides,
    'low-thigh': sides,
    calf: sides,
    'dorsalis-pedis': sides,
    'posterior-tibial': sides,
    toe: sides,
    /** Transcutaneous oxygen pressure of the foot, in mmHg. */
    tcpo2: z.optional(sided(upTo(HIGHEST_PRESSURE))),
    afterExercise: z.optional(exerciseSchema),
    note: z.optional(textSchema),
  })
  .check(
    rule(
      (p) => p.brachial?.right !== 0 || p.brachial.left !== 0,
      'brachial',
      'a pressure above 0 in at least one arm',
    ),
  );
export type Pressures = z.infer<typeof pressuresSchema>;
