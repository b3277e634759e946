import * as z from 'zod/mini';
import { reasonSchema, rule, sided, textSchema } from './common.js';
import { anyOf, oneOf, upTo, yes } from './measures.js';

export const SKIN_COLOURS = ['normal', 'pale', 'red', 'blue', 'mottled', 'fixed-mottled'] as const;
export const TEMPERATURES = ['warm', 'cool', 'cold'] as const;
/** Where the skin changes from warm to cool, proximal first. */
export const LEG_LEVELS = ['groin', 'mid-thigh', 'knee', 'mid-calf', 'ankle', 'forefoot', 'toes'] as const;
export const ARM_LEVELS = [
  'shoulder',
  'mid-arm',
  'elbow',
  'mid-forearm',
  'wrist',
  'hand',
  'fingers',
] as const;
export const HAIR_STATES = ['normal', 'sparse', 'absent'] as const;
export const NAIL_STATES = ['normal', 'thickened', 'brittle'] as const;
export const MUSCLE_STATES = ['normal', 'wasted', 'tender', 'tense'] as const;
export const OEDEMA_KINDS = ['none', 'pitting', 'firm'] as const;
export const LYMPH_NODES = ['none', 'enlarged', 'tender'] as const;

/** Depth of the worst ulcer. `deep` exposes bone, joint or tendon; `extensive` is deep and wide. */
export const ULCER_DEPTHS = ['none', 'shallow', 'deep', 'extensive'] as const;
export type UlcerDepth = (typeof ULCER_DEPTHS)[number];
/** Where the worst ulcer lies. A hand or arm ulcer is `digits` or `other`. */
export const ULCER_PLACES = ['digits', 'forefoot', 'midfoot', 'heel', 'ankle', 'shin', 'other'] as const;
export type UlcerPlace = (typeof ULCER_PLACES)[number];

export const GANGRENE = ['none', 'dry', 'wet'] as const;
export type Gangrene = (typeof GANGRENE)[number];
/** How far gangrene reaches, from the tips inward. `forefoot` and beyond mean the hand and beyond on an arm. */
export const GANGRENE_EXTENTS = ['digits', 'forefoot', 'midfoot', 'heel', 'above-foot'] as const;
export type GangreneExtent = (typeof GANGRENE_EXTENTS)[number];

/** Local signs of infection. */
export const INFECTION_SIGNS = ['swelling', 'redness', 'tenderness', 'warmth', 'pus'] as const;
export type InfectionSign = (typeof INFECTION_SIGNS)[number];
/** Signs that infection has reached the whole body. */
export const SYSTEMIC_SIGNS = ['temperature', 'heart-rate', 'breathing', 'white-cells'] as const;
export type SystemicSign = (typeof SYSTEMIC_SIGNS)[number];

/** Power of the limb's small and large muscles, as the acute classes use it. */
export const MOVEMENTS = ['normal', 'weak', 'paralysed'] as const;
export type Movement = (typeof MOVEMENTS)[number];
/** Feeling, as the acute classes use it: lost in the toes or fingers only, beyond them, or altogether. */
export const SENSATIONS = ['normal', 'digits', 'beyond-digits', 'lost'] as const;
export type Sensation = (typeof SENSATIONS)[number];
export const VENOUS_SIGNALS = ['audible', 'inaudible'] as const;
export type VenousSignal = (typeof VENOUS_SIGNALS)[number];

function limbInspection<const L extends readonly [string, ...string[]]>(levels: L) {
  return z
    .strictObject({
      couldNotExamine: z.optional(reasonSchema),
      colour: oneOf(SKIN_COLOURS),
      temperature: oneOf(TEMPERATURES),
      temperatureLevel: oneOf(levels),
      hair: oneOf(HAIR_STATES),
      nails: oneOf(NAIL_STATES),
      muscle: oneOf(MUSCLE_STATES),
      oedema: oneOf(OEDEMA_KINDS),
      ulcer: oneOf(ULCER_DEPTHS),
      ulcerPlace: oneOf(ULCER_PLACES),
      gangrene: oneOf(GANGRENE),
      gangreneExtent: oneOf(GANGRENE_EXTENTS),
      infection: anyOf(INFECTION_SIGNS),
      /** How far redness reaches from the edge of the ulcer, in cm. */
      rednessCm: z.optional(upTo(50)),
      /** Infection deeper than skin and the tissue under it: abscess, bone, joint, fascia. */
      deepInfection: yes,
      systemic: anyOf(SYSTEMIC_SIGNS),
      /** Capillary refill in seconds. */
      refill: z.optional(upTo(60)),
      movement: oneOf(MOVEMENTS),
      sensation: oneOf(SENSATIONS),
      /** Venous signal of the hand-held Doppler at the ankle or wrist. */
      venousDoppler: oneOf(VENOUS_SIGNALS),
      lymphNodes: oneOf(LYMPH_NODES),
      note: z.optional(textSchema),
    })
    .check(
      rule(
        (f) => !f.ulcerPlace || (f.ulcer !== undefined && f.ulcer !== 'none'),
        'ulcerPlace',
        'a place only with an ulcer',
      ),
      rule(
        (f) => !f.gangreneExtent || (f.gangrene !== undefined && f.gangrene !== 'none'),
        'gangreneExtent',
        'an extent only with gangrene',
      ),
      rule(
        (f) => f.rednessCm === undefined || f.infection?.includes('redness') === true,
        'rednessCm',
        'a reach of redness only with redness',
      ),
      rule(
        (f) => !f.temperatureLevel || (f.temperature !== undefined && f.temperature !== 'warm'),
        'temperatureLevel',
        'a level only where the limb is cool or cold',
      ),
    );
}

/** What is seen and touched, limb by limb; nothing is compulsory. */
export const inspectionSchema = z.strictObject({
  leg: z.optional(sided(limbInspection(LEG_LEVELS))),
  arm: z.optional(sided(limbInspection(ARM_LEVELS))),
});
export type Inspection = z.infer<typeof inspectionSchema>;
export type LegInspection = NonNullable<NonNullable<Inspection['leg']>['right']>;
export type ArmInspection = NonNullable<NonNullable<Inspection['arm']>['right']>;
/** What both kinds of limb have in common. */
export type LimbInspection = Omit<LegInspection, 'temperatureLevel'>;
