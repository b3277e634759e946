import type { Reason, Sided } from './common.js';

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
export const MUSCLE_STATES = ['normal', 'wasted', 'tender', 'tense', 'rigid'] as const;
export const OEDEMA_KINDS = ['none', 'pitting', 'firm'] as const;
/** Lymphoedema, or what makes it likely: nodes of the armpit or groin removed or irradiated. `none`: asked and looked for. */
export const LYMPHOEDEMA = ['none', 'nodes-removed', 'present'] as const;
/** Flow in the vertebral artery by Doppler: towards the head, to and fro, or backward into the arm. */
export const VERTEBRAL_FLOWS = ['forward', 'alternating', 'reversed'] as const;
export type VertebralFlow = (typeof VERTEBRAL_FLOWS)[number];
export const LYMPH_NODES = ['none', 'enlarged', 'tender'] as const;

/** Depth of the worst ulcer. `deep` exposes bone, joint or tendon; `extensive` is deep and wide. */
export const ULCER_DEPTHS = ['none', 'shallow', 'deep', 'extensive'] as const;
export type UlcerDepth = (typeof ULCER_DEPTHS)[number];
/** Where the worst ulcer lies. A hand or arm ulcer is `digits` or `other`. */
export const ULCER_PLACES = [
  'digits',
  'forefoot',
  'midfoot',
  'sole',
  'heel',
  'ankle',
  'shin',
  'back-of-leg',
  'other',
] as const;
export type UlcerPlace = (typeof ULCER_PLACES)[number];
/** What the examiner takes to be the cause of the ulcer; `unknown` was thought about and is open. */
export const ULCER_CAUSES = ['arterial', 'venous', 'neuropathic', 'mixed', 'other', 'unknown'] as const;
export type UlcerCause = (typeof ULCER_CAUSES)[number];

/** Digits from the thumb or great toe outward, and what is seen of one. */
export const DIGITS = ['first', 'second', 'third', 'fourth', 'fifth'] as const;
export type Digit = (typeof DIGITS)[number];
export const DIGIT_STATES = ['normal', 'pale', 'blue', 'ulcer', 'gangrene'] as const;
export type DigitState = (typeof DIGIT_STATES)[number];

/** Hard and soft signs of an injured artery, and the dislocations that go with one. */
export const INJURY_SIGNS = [
  'pulsatile-bleeding',
  'expanding-haematoma',
  'bleeding-at-scene',
  'stable-haematoma',
  'near-artery',
  'knee-dislocation',
  'elbow-dislocation-or-supracondylar',
] as const;
export type InjurySign = (typeof INJURY_SIGNS)[number];
/** Signs over a swelling at a puncture or a graft. */
export const FALSE_ANEURYSM_SIGNS = ['growing', 'painful', 'skin-thin', 'infected'] as const;
export type FalseAneurysmSign = (typeof FALSE_ANEURYSM_SIGNS)[number];

/** Signs that make a thrombosis of deep veins likelier. Source: Wells 2003 (from memory). */
export const THROMBOSIS_SIGNS = [
  'whole-limb-swollen',
  'calf-wider',
  'one-sided-pitting',
  'tender-along-veins',
  'surface-veins',
] as const;
export type ThrombosisSign = (typeof THROMBOSIS_SIGNS)[number];

/** A ten-gram filament on the sole. */
export const MONOFILAMENT = ['felt', 'reduced', 'not-felt'] as const;

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

/** What is seen and touched of any limb; nothing is compulsory, and what is missing was not looked at. */
export interface LimbInspection {
  /** Why the limb could not be looked at. */
  readonly couldNotExamine?: Reason;
  readonly colour?: (typeof SKIN_COLOURS)[number];
  /** Judged by the hand, against the other limb. */
  readonly temperature?: (typeof TEMPERATURES)[number];
  readonly hair?: (typeof HAIR_STATES)[number];
  readonly nails?: (typeof NAIL_STATES)[number];
  readonly muscle?: (typeof MUSCLE_STATES)[number];
  readonly oedema?: (typeof OEDEMA_KINDS)[number];
  /** The worst ulcer; `none` was looked for. */
  readonly ulcer?: UlcerDepth;
  /** Where the worst ulcer lies; only with an ulcer. */
  readonly ulcerPlace?: UlcerPlace;
  /** Why there is an ulcer; only with an ulcer. Missing: not said. */
  readonly ulcerCause?: UlcerCause;
  /** Longest diameter of the worst ulcer in mm, up to 500; only with an ulcer. */
  readonly ulcerSizeMm?: number;
  /** `none` was looked for. */
  readonly gangrene?: Gangrene;
  /** How far gangrene reaches; only with gangrene. */
  readonly gangreneExtent?: GangreneExtent;
  /** Local signs of infection, each at most once; an empty list was looked for and not there. */
  readonly infection?: readonly InfectionSign[];
  /** How far redness reaches from the edge of the ulcer, in cm, up to 50; only with redness. */
  readonly rednessCm?: number;
  /** Infection deeper than skin and the tissue under it: abscess, bone, joint, fascia. Missing: not said. */
  readonly deepInfection?: boolean;
  /** Whether a probe touches bone. Missing: not tried. */
  readonly probeToBone?: boolean;
  /** A hot swollen foot that may be a neuro-osteoarthropathy. Missing: not said. */
  readonly charcotSuspected?: boolean;
  /** Signs that infection has reached the whole body; an empty list was looked for and not there. */
  readonly systemic?: readonly SystemicSign[];
  /** Capillary refill in seconds, up to 60. */
  readonly refill?: number;
  readonly movement?: Movement;
  readonly sensation?: Sensation;
  /** Loss of power or feeling is old, unchanged and of another cause. Missing: not said. */
  readonly deficitKnown?: true;
  /** Pain on passive stretch of the muscle. Missing: not tried. */
  readonly stretchPain?: boolean;
  /** Pain out of proportion to what is seen. Missing: not said. */
  readonly painOutOfProportion?: boolean;
  /** Flow was restored lately. */
  readonly reperfused?: true;
  /** Signs of an injured artery, each at most once; an empty list was looked for and not there. */
  readonly injurySigns?: readonly InjurySign[];
  /** Signs over a swelling at a puncture or graft; an empty list was looked for and not there. */
  readonly falseAneurysmSigns?: readonly FalseAneurysmSign[];
  /** Signs of a thrombosis of deep veins, each at most once; an empty list was looked for and not there. */
  readonly thrombosisSigns?: readonly ThrombosisSign[];
  /** Fingers or toes one by one; one left out was not looked at. */
  readonly digits?: Readonly<Partial<Record<Digit, DigitState>>>;
  /** Venous signal of the hand-held Doppler at the ankle or wrist. Missing: not listened for. */
  readonly venousDoppler?: VenousSignal;
  readonly lymphNodes?: (typeof LYMPH_NODES)[number];
  /** Missing: not asked. */
  readonly lymphoedema?: (typeof LYMPHOEDEMA)[number];
  /** The examiner's own words. */
  readonly note?: string;
}

export interface LegInspection extends LimbInspection {
  /** Where the skin turns cool; only where the leg is cool or cold. */
  readonly temperatureLevel?: (typeof LEG_LEVELS)[number];
  readonly monofilament?: (typeof MONOFILAMENT)[number];
  /** Varicose veins. Missing: not looked for. */
  readonly varices?: boolean;
  /** Brown pigment of venous disease. Missing: not looked for. */
  readonly pigment?: boolean;
}

export interface ArmInspection extends LimbInspection {
  /** Where the skin turns cool; only where the arm is cool or cold. */
  readonly temperatureLevel?: (typeof ARM_LEVELS)[number];
  /** Direction of flow in the vertebral artery of this side by Doppler. Missing: not listened for. */
  readonly vertebralFlow?: VertebralFlow;
}

/** What is seen and touched, limb by limb; nothing is compulsory. */
export interface Inspection {
  readonly leg?: Sided<LegInspection>;
  readonly arm?: Sided<ArmInspection>;
}
