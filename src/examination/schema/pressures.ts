import * as z from 'zod/mini';
import {
  type ExercisePressures,
  HIGHEST_PRESSURE,
  LOWEST_PRESSURE,
  NO_PRESSURE,
  type Pressure,
  PRESSURE_SITES,
  PRESSURE_UNITS,
  type Pressures,
  type PressureSite,
  type PressuresPart,
  VOLUME_CURVES,
} from '../types/pressures.js';
import { type Fields, object, rule, type RuleParams, sided, textSchema } from './common.js';
import { oneOf, upTo } from './measures.js';
import { methodSchema } from './method.js';

function isPressure(value: unknown): boolean {
  if (typeof value === 'string') return (NO_PRESSURE as readonly string[]).includes(value);
  if (typeof value !== 'number') return false;
  return value === 0 || (value >= LOWEST_PRESSURE && value <= HIGHEST_PRESSURE);
}

/** A systolic pressure in mmHg, 0 where no signal could be heard, or why there is none. */
export const pressureSchema: z.ZodMiniType<Pressure> = z.custom<Pressure>(isPressure, {
  params: {
    expected: { code: 'pressure', least: LOWEST_PRESSURE, most: HIGHEST_PRESSURE, words: NO_PRESSURE },
    alone: true,
  } satisfies RuleParams,
});

const sides = z.optional(sided(pressureSchema));
const sites = Object.fromEntries(PRESSURE_SITES.map((site) => [site, sides])) as Record<
  PressureSite,
  typeof sides
>;

const exerciseSchema = object<ExercisePressures>({
  brachial: sides,
  'dorsalis-pedis': sides,
  'posterior-tibial': sides,
  completed: z.optional(z.boolean()),
  minutes: z.optional(upTo(60)),
  note: z.optional(textSchema),
});

const fields: Fields<Pressures> = {
  unit: oneOf(PRESSURE_UNITS),
  ...sites,
  tcpo2: z.optional(sided(upTo(HIGHEST_PRESSURE))),
  volumeCurve: z.optional(sided(z.enum(VOLUME_CURVES))),
  afterExercise: z.optional(exerciseSchema),
  note: z.optional(textSchema),
};

const ARMS = ['brachial'] as const;
const isOneArmAboveZero = ({ brachial }: Pressures): boolean => brachial?.right !== 0 || brachial.left !== 0;

export const pressuresSchema: z.ZodMiniType<Pressures> = object<Pressures>(
  fields,
  rule('one-arm-above-zero', ARMS, isOneArmAboveZero),
);

export const pressuresPartSchema: z.ZodMiniType<PressuresPart> = object<PressuresPart>(
  { ...fields, method: z.optional(methodSchema) },
  rule('one-arm-above-zero', ARMS, isOneArmAboveZero),
);
