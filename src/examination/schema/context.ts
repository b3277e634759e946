import * as z from 'zod/mini';
import { ARTERY_IDS, type ArteryId, LATERALITIES, SIDES } from '../../anatomy/index.js';
import { sided } from './common.js';

/** What is known, or firmly thought, to have caused the trouble. */
export const MECHANISMS = [
  'embolic',
  'thrombotic',
  'injury',
  'dissection',
  'vasculitis',
  'compression',
] as const;
export type Mechanism = (typeof MECHANISMS)[number];

/** Where a limb was injured or operated on, from the trunk outward. */
export const INJURY_PLACES = [
  'pelvis',
  'groin',
  'thigh',
  'knee',
  'lower-leg',
  'ankle-foot',
  'shoulder',
  'upper-arm',
  'elbow',
  'forearm',
  'wrist-hand',
] as const;
export type InjuryPlace = (typeof INJURY_PLACES)[number];

/** Age in bands, youngest first; the record needs no birth date. */
export const AGE_BANDS = ['under-20', '20-39', '40-59', '60-79', '80-over'] as const;
export type AgeBand = (typeof AGE_BANDS)[number];

export const SMOKING = ['never', 'past', 'current'] as const;
export type Smoking = (typeof SMOKING)[number];

/** Where walking hurts in a leg, or use tires an arm: the highest muscles that do. `none` means asked for and denied. */
export const LEG_CLAUDICATION = ['none', 'buttock', 'thigh', 'calf-upper', 'calf-lower', 'foot'] as const;
export type LegClaudication = (typeof LEG_CLAUDICATION)[number];
export const ARM_CLAUDICATION = ['none', 'arm'] as const;
export type ArmClaudication = (typeof ARM_CLAUDICATION)[number];

export const REVASCULARISATIONS = ['bypass', 'stent'] as const;
export type Revascularisation = (typeof REVASCULARISATIONS)[number];

/** Level of an amputation, least lost first. */
export const LEG_AMPUTATIONS = [
  'toes',
  'forefoot',
  'below-knee',
  'through-knee',
  'above-knee',
  'hip',
] as const;
export type LegAmputation = (typeof LEG_AMPUTATIONS)[number];
export const ARM_AMPUTATIONS = ['fingers', 'hand', 'below-elbow', 'above-elbow', 'shoulder'] as const;
export type ArmAmputation = (typeof ARM_AMPUTATIONS)[number];

/** Pulses a person may have been born without. */
export const BIRTH_ABSENT = ['dorsalis-pedis', 'posterior-tibial'] as const;
export type BirthAbsent = (typeof BIRTH_ABSENT)[number];

/** Most grafts and stents kept in one record. */
const MOST_REVASCULARISATIONS = 20;

/**
 * What is known about the patient before a pulse is felt. Every field may be missing: missing is "not known". How it began
 * is the record's `onset`.
 */
export const contextSchema = z.strictObject({
  ageBand: z.optional(z.enum(AGE_BANDS)),
  diabetes: z.optional(z.boolean()),
  smoking: z.optional(z.enum(SMOKING)),
  mechanism: z.optional(z.enum(MECHANISMS)),
  /** Where the injury, operation or puncture was. */
  injury: z.optional(sided(z.enum(INJURY_PLACES))),
  legClaudication: z.optional(sided(z.enum(LEG_CLAUDICATION))),
  armClaudication: z.optional(sided(z.enum(ARM_CLAUDICATION))),
  /** Arteries that carry a stent or that a bypass stands in for. */
  revascularisations: z.optional(
    z
      .array(
        z.strictObject({
          artery: z.enum(ARTERY_IDS as [ArteryId, ...ArteryId[]]),
          side: z.enum(LATERALITIES),
          kind: z.enum(REVASCULARISATIONS),
        }),
      )
      .check(z.maxLength(MOST_REVASCULARISATIONS)),
  ),
  legAmputation: z.optional(sided(z.enum(LEG_AMPUTATIONS))),
  armAmputation: z.optional(sided(z.enum(ARM_AMPUTATIONS))),
  /** Pulses known never to have been there. */
  absentFromBirth: z.optional(sided(z.array(z.enum(BIRTH_ABSENT)).check(z.maxLength(BIRTH_ABSENT.length)))),
  /** Sides on which the radial artery was taken as a graft. */
  radialHarvested: z.optional(z.array(z.enum(SIDES)).check(z.maxLength(SIDES.length))),
});
export type Context = z.infer<typeof contextSchema>;
