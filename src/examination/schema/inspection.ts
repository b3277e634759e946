import * as z from 'zod/mini';
import {
  ARM_LEVELS,
  type ArmInspection,
  DIGIT_STATES,
  FALSE_ANEURYSM_SIGNS,
  GANGRENE,
  GANGRENE_EXTENTS,
  HAIR_STATES,
  INFECTION_SIGNS,
  INJURY_SIGNS,
  type Inspection,
  LEG_LEVELS,
  type LegInspection,
  type LimbInspection,
  LYMPH_NODES,
  LYMPHOEDEMA,
  MONOFILAMENT,
  MOVEMENTS,
  MUSCLE_STATES,
  NAIL_STATES,
  OEDEMA_KINDS,
  SENSATIONS,
  SKIN_COLOURS,
  SYSTEMIC_SIGNS,
  TEMPERATURES,
  THROMBOSIS_SIGNS,
  ULCER_CAUSES,
  ULCER_DEPTHS,
  ULCER_PLACES,
  VENOUS_SIGNALS,
  VERTEBRAL_FLOWS,
} from '../types/inspection.js';
import { type Fields, object, reasonSchema, rule, sided, textSchema } from './common.js';
import { anyOf, oneOf, upTo, yes } from './measures.js';

const bool = z.optional(z.boolean());
const digits = object<NonNullable<LimbInspection['digits']>>({
  first: oneOf(DIGIT_STATES),
  second: oneOf(DIGIT_STATES),
  third: oneOf(DIGIT_STATES),
  fourth: oneOf(DIGIT_STATES),
  fifth: oneOf(DIGIT_STATES),
});

const either: Fields<LimbInspection> = {
  couldNotExamine: z.optional(reasonSchema),
  colour: oneOf(SKIN_COLOURS),
  temperature: oneOf(TEMPERATURES),
  hair: oneOf(HAIR_STATES),
  nails: oneOf(NAIL_STATES),
  muscle: oneOf(MUSCLE_STATES),
  oedema: oneOf(OEDEMA_KINDS),
  ulcer: oneOf(ULCER_DEPTHS),
  ulcerPlace: oneOf(ULCER_PLACES),
  ulcerCause: oneOf(ULCER_CAUSES),
  ulcerSizeMm: z.optional(upTo(500)),
  gangrene: oneOf(GANGRENE),
  gangreneExtent: oneOf(GANGRENE_EXTENTS),
  infection: anyOf(INFECTION_SIGNS),
  rednessCm: z.optional(upTo(50)),
  deepInfection: bool,
  probeToBone: bool,
  charcotSuspected: bool,
  systemic: anyOf(SYSTEMIC_SIGNS),
  refill: z.optional(upTo(60)),
  movement: oneOf(MOVEMENTS),
  sensation: oneOf(SENSATIONS),
  deficitKnown: yes,
  stretchPain: bool,
  painOutOfProportion: bool,
  reperfused: yes,
  injurySigns: anyOf(INJURY_SIGNS),
  falseAneurysmSigns: anyOf(FALSE_ANEURYSM_SIGNS),
  thrombosisSigns: anyOf(THROMBOSIS_SIGNS),
  digits: z.optional(digits),
  venousDoppler: oneOf(VENOUS_SIGNALS),
  lymphNodes: oneOf(LYMPH_NODES),
  lymphoedema: oneOf(LYMPHOEDEMA),
  note: z.optional(textSchema),
};

const there = (word: string | undefined): boolean => word !== undefined && word !== 'none';

const rules = [
  rule<LimbInspection>(
    'place-only-with-ulcer',
    ['ulcerPlace', 'ulcer'],
    (f) => !f.ulcerPlace || there(f.ulcer),
  ),
  rule<LimbInspection>(
    'cause-only-with-ulcer',
    ['ulcerCause', 'ulcer', 'digits'],
    (f) => !f.ulcerCause || there(f.ulcer) || Object.values(f.digits ?? {}).includes('ulcer'),
  ),
  rule<LimbInspection>(
    'size-only-with-ulcer',
    ['ulcerSizeMm', 'ulcer', 'digits'],
    (f) => f.ulcerSizeMm === undefined || there(f.ulcer) || Object.values(f.digits ?? {}).includes('ulcer'),
  ),
  rule<LimbInspection>(
    'extent-only-with-gangrene',
    ['gangreneExtent', 'gangrene'],
    (f) => !f.gangreneExtent || there(f.gangrene),
  ),
  rule<LimbInspection>(
    'reach-only-with-redness',
    ['rednessCm', 'infection'],
    (f) => f.rednessCm === undefined || f.infection?.includes('redness') === true,
  ),
  rule<LegInspection | ArmInspection>(
    'level-only-where-cool',
    ['temperatureLevel', 'temperature'],
    (f) => !f.temperatureLevel || (f.temperature !== undefined && f.temperature !== 'warm'),
  ),
];

/** What is seen and touched, limb by limb; nothing is compulsory. */
export const inspectionSchema: z.ZodMiniType<Inspection> = object<Inspection>({
  leg: z.optional(
    sided(
      object<LegInspection>(
        {
          ...either,
          temperatureLevel: oneOf(LEG_LEVELS),
          monofilament: oneOf(MONOFILAMENT),
          varices: bool,
          pigment: bool,
        },
        ...rules,
      ),
    ),
  ),
  arm: z.optional(
    sided(
      object<ArmInspection>(
        { ...either, temperatureLevel: oneOf(ARM_LEVELS), vertebralFlow: oneOf(VERTEBRAL_FLOWS) },
        ...rules,
      ),
    ),
  ),
});
