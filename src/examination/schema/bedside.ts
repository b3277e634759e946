import * as z from 'zod/mini';
import {
  type AnyTestResult,
  type ArmStressResult,
  type ArteryRelease,
  BARBEAU_CLASSES,
  type Bedside,
  type ColdProvocationResult,
  type ColourReturnResult,
  type DependentRuborResult,
  type ElevationResult,
  HAND_ARCH_METHODS,
  type HandArchResult,
  LONGEST_SECONDS,
  OUTLET_SYMPTOMS,
  type OutletPosition,
  type OutletResult,
  type ScaleneResult,
  STOP_REASONS,
  type VenousFillingResult,
} from '../types/bedside.js';
import { GRADES } from '../types/pulses.js';
import { type Fields, object, reasonSchema, type Rule, rule, sided, textSchema } from './common.js';
import { anyOf, oneOf, upTo, yes } from './measures.js';

const seconds = z.optional(upTo(LONGEST_SECONDS));
const grade = oneOf(GRADES);

/** What every test result holds besides its own measurements. */
const every: Fields<AnyTestResult> = {
  notDone: z.optional(reasonSchema),
  limit: seconds,
  note: z.optional(textSchema),
};

const position: Fields<OutletPosition> = {
  before: grade,
  during: grade,
  symptoms: anyOf(OUTLET_SYMPTOMS),
  seconds,
};
const positionSchema = z.optional(object<OutletPosition>(position));
const answer = z.optional(z.boolean());
const release = z.optional(object<ArteryRelease>({ seconds, returned: answer }));
const barbeau = oneOf(BARBEAU_CLASSES);

/** A result on each side. */
function results<T extends AnyTestResult>(fields: Fields<T>, ...rules: readonly Rule<T>[]) {
  return z.optional(sided(object<T>(fields, ...rules)));
}

const onePosition = results<OutletResult>({ ...every, ...position });

/** The timed and positional tests, leg before arm, each side on its own. */
export const bedsideFields: Fields<Bedside> = {
  elevation: results<ElevationResult>({ ...every, pallor: answer, angle: z.optional(upTo(90)), seconds }),
  'colour-return': results<ColourReturnResult>({ ...every, seconds, returned: answer }),
  'dependent-rubor': results<DependentRuborResult>({ ...every, rubor: answer, seconds }),
  'venous-filling': results<VenousFillingResult>({
    ...every,
    seconds,
    filled: answer,
    incompetentVeins: yes,
  }),
  'hand-arch': results<HandArchResult>({
    ...every,
    method: oneOf(HAND_ARCH_METHODS),
    radial: release,
    ulnar: release,
    barbeau,
    barbeauReverse: barbeau,
  }),
  'cold-provocation': results<ColdProvocationResult>(
    {
      ...every,
      white: seconds,
      blue: seconds,
      red: seconds,
      noChange: yes,
      rewarm: z.optional(upTo(120)),
      water: z.optional(upTo(40)),
      immersed: seconds,
    },
    rule(
      'colours-or-no-change',
      ['noChange', 'white', 'blue', 'red'],
      (c) => !c.noChange || (c.white === undefined && c.blue === undefined && c.red === undefined),
    ),
  ),
  scalene: results<ScaleneResult>({
    ...every,
    toward: positionSchema,
    away: positionSchema,
    traction: positionSchema,
  }),
  hyperabduction: onePosition,
  costoclavicular: onePosition,
  'arm-stress': results<ArmStressResult>({
    ...every,
    before: grade,
    during: grade,
    seconds,
    stopped: oneOf(STOP_REASONS),
    felt: z.optional(
      object<NonNullable<ArmStressResult['felt']>>({
        heaviness: seconds,
        tingling: seconds,
        pain: seconds,
        fatigue: seconds,
      }),
    ),
    nothingFelt: yes,
  }),
};

export const bedsideSchema: z.ZodMiniType<Bedside> = object<Bedside>(bedsideFields);
