import type { ArteryId, Laterality, Side } from '../../anatomy/index.js';
import type { Sided } from './common.js';

/** What is known, or firmly thought, to have caused the trouble. */
export const MECHANISMS = [
  'embolic',
  'thrombotic',
  'injury',
  'dissection',
  'vasculitis',
  'buerger',
  'vasospasm',
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

/** Where an aneurysm is known. */
export const ANEURYSM_PLACES = [
  'thoracic-aorta',
  'abdominal-aorta',
  'iliac',
  'femoral',
  'popliteal',
  'subclavian',
  'other',
] as const;
export type AneurysmPlace = (typeof ANEURYSM_PLACES)[number];

/** Access for dialysis, and what is wrong with it. */
export const ACCESS_KINDS = ['fistula', 'graft'] as const;
export const ACCESS_SIGNS = ['bleeding', 'thin-skin-or-ulcer', 'no-thrill'] as const;
export type AccessSign = (typeof ACCESS_SIGNS)[number];

/** Lines and catheters in an artery now or lately. */
export const ARTERIAL_DEVICES = ['arterial-line', 'radial-catheter', 'femoral-sheath'] as const;
export type ArterialDevice = (typeof ARTERIAL_DEVICES)[number];

/** Bypasses that leave the course of the artery they stand in for. */
export const GRAFT_ROUTES = ['axillo-femoral', 'cross-over'] as const;
export type GraftRoute = (typeof GRAFT_ROUTES)[number];

/** Signs of infection over a graft. */
export const GRAFT_INFECTION_SIGNS = ['sinus', 'discharge', 'redness', 'exposed', 'bleeding'] as const;
export type GraftInfectionSign = (typeof GRAFT_INFECTION_SIGNS)[number];
export const GRAFT_PULSES = ['present', 'absent'] as const;

/** Medicines that matter to the arteries. */
export const MEDICINES = ['antiplatelet', 'anticoagulant', 'statin'] as const;
export type Medicine = (typeof MEDICINES)[number];

/** Most entries of a list of aneurysms, accesses or devices. */
export const MOST_ENTRIES = 20;

/** A known aneurysm. */
export interface KnownAneurysm {
  readonly place: AneurysmPlace;
  /** The patient's side, where the artery is paired. */
  readonly side?: Side;
}

/** Dialysis access in an arm. */
export interface DialysisAccess {
  readonly side: Side;
  readonly kind: (typeof ACCESS_KINDS)[number];
  /** What is wrong with it; an empty list was looked for and not there. */
  readonly signs?: readonly AccessSign[];
}

/** A line or catheter in an artery of a limb. */
export interface PlacedDevice {
  readonly limb: 'leg' | 'arm';
  readonly side: Side;
  readonly kind: ArterialDevice;
}

/** A cold injury of hand or foot. */
export interface ColdInjury {
  /** Hours since, up to 10,000. Missing: not known. */
  readonly hours?: number;
}

/** Most grafts and stents kept in one record. */
export const MOST_REVASCULARISATIONS = 20;

/** An artery that carries a stent or that a bypass stands in for. */
export interface RevascularisedArtery {
  readonly artery: ArteryId;
  /** The patient's side, or the midline for the aorta. */
  readonly side: Laterality;
  readonly kind: Revascularisation;
  /** The way of a bypass that leaves the artery's own course; only of a bypass. Missing: not said. */
  readonly route?: GraftRoute;
  /** The graft's own pulse. Missing: not felt for. */
  readonly graftPulse?: (typeof GRAFT_PULSES)[number];
  /** Signs of infection over it; an empty list was looked for and not there. */
  readonly infectionSigns?: readonly GraftInfectionSign[];
}

/**
 * What is known about the patient before a pulse is felt. Every field may be missing: missing is "not known". How it began
 * is the record's `onset`.
 */
export interface Context {
  readonly ageBand?: AgeBand;
  /** `false` is known not to be diabetic. */
  readonly diabetes?: boolean;
  readonly smoking?: Smoking;
  /** What is known, or firmly thought, to have caused the trouble. */
  readonly mechanism?: Mechanism;
  /** Where the injury, operation or puncture was. */
  readonly injury?: Sided<InjuryPlace>;
  /** The highest muscles of the leg that hurt on walking; `none` was asked for and denied. */
  readonly legClaudication?: Sided<LegClaudication>;
  /** Whether use tires the arm; `none` was asked for and denied. */
  readonly armClaudication?: Sided<ArmClaudication>;
  /** Grafts and stents, at most `MOST_REVASCULARISATIONS`; an empty list says that there are none. */
  readonly revascularisations?: readonly RevascularisedArtery[];
  /** Known aneurysms; an empty list says that none is known. */
  readonly aneurysms?: readonly KnownAneurysm[];
  /** Access for dialysis; an empty list says that there is none. */
  readonly access?: readonly DialysisAccess[];
  /** Lines and catheters in an artery, now or lately; an empty list says that there are none. */
  readonly devices?: readonly PlacedDevice[];
  /** Frostbite, limb by limb. */
  readonly coldInjury?: { readonly leg?: Sided<ColdInjury>; readonly arm?: Sided<ColdInjury> };
  /** What the patient takes; an empty list: asked for, none of these. */
  readonly medicines?: readonly Medicine[];
  /** How much of the leg is lost. */
  readonly legAmputation?: Sided<LegAmputation>;
  /** How much of the arm is lost. */
  readonly armAmputation?: Sided<ArmAmputation>;
  /** Pulses known never to have been there. */
  readonly absentFromBirth?: Sided<readonly BirthAbsent[]>;
  /** The patient's sides on which the radial artery was taken as a graft. */
  readonly radialHarvested?: readonly Side[];
}
