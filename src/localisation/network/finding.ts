import {
  type Limb,
  type LimbKey,
  type ListeningSiteId,
  type Place,
  pieceAbove,
  piecesOf,
  type PulseSiteId,
  type Side,
  SIDES,
  siteDefinition,
  type Vessel,
  vesselOf,
} from '../../anatomy/index.js';
import type {
  ARM_LEVELS,
  ArmClaudication,
  Bruit,
  Context,
  DopplerSignal,
  Grade,
  LEG_LEVELS,
  LegClaudication,
  RevascularisedArtery,
  VertebralFlow,
} from '../../examination/index.js';
import { type Likelihood, tempered } from './likelihoods.js';
import type { Factor } from './columns.js';
import { indexOf, piecesOfStretch } from './tree.js';
import type { StretchKey, Tables } from './types.js';

/**
 * Pressures the network can use, as plain ratios to the higher arm pressure: by pulse place (`left posterior-tibial`,
 * `right brachial`), or for a whole ankle where the artery is not known.
 */
export interface PressureEvidence {
  readonly at?: Readonly<Record<string, number>>;
  readonly ankle?: { readonly right?: number; readonly left?: number };
  readonly toe?: { readonly right?: number; readonly left?: number };
  readonly finger?: { readonly right?: number; readonly left?: number };
  /** Ankle arteries that stayed open under the full cuff, by pulse place. */
  readonly incompressible?: readonly string[];
  /** Whether the ankle pressure of a leg fell after exercise beyond the limits. */
  readonly fallsAfterExercise?: { readonly right?: boolean; readonly left?: boolean };
}

/** Where skin turns cold, on a leg or an arm. */
export type SkinLevel = (typeof LEG_LEVELS)[number] | (typeof ARM_LEVELS)[number];

export type Muscle = LegClaudication | ArmClaudication;

/** What is felt while an arm works that draws blood from the neck or the heart. */
export type StealSymptom = 'dizzy' | 'chest-pain';

/** What a finding is, for words and for weighing. */
export type FindingId =
  | { readonly kind: 'pulse'; readonly place: Place<PulseSiteId>; readonly grade: Grade }
  | { readonly kind: 'doppler'; readonly place: Place<PulseSiteId>; readonly signal: DopplerSignal }
  | { readonly kind: 'thrill'; readonly place: Place<PulseSiteId> }
  | { readonly kind: 'bruit'; readonly place: Place<ListeningSiteId>; readonly bruit: Bruit }
  | { readonly kind: 'index'; readonly place: Place<PulseSiteId>; readonly value: number }
  | { readonly kind: 'ankle-index'; readonly side: Side; readonly value: number }
  | { readonly kind: 'digit-index'; readonly limb: Limb; readonly value: number }
  | { readonly kind: 'incompressible'; readonly place: Place<PulseSiteId> }
  | { readonly kind: 'exercise'; readonly side: Side; readonly falls: boolean }
  | {
      readonly kind: 'skin';
      readonly limb: Limb;
      readonly temperature: 'warm' | 'cool' | 'cold';
      readonly level?: SkinLevel;
    }
  | { readonly kind: 'wound' | 'numbness'; readonly limb: Limb }
  | {
      readonly kind: 'hand-arch';
      readonly side: Side;
      /** The artery that was let go. */
      readonly artery: 'radial' | 'ulnar';
      readonly fills: boolean;
    }
  | { readonly kind: 'pain'; readonly limb: Limb; readonly muscle: Muscle }
  | {
      readonly kind: 'graft-pulse';
      readonly vessel: Vessel;
      readonly pulse: NonNullable<RevascularisedArtery['graftPulse']>;
    }
  | { readonly kind: 'vertebral'; readonly side: Side; readonly flow: VertebralFlow }
  | { readonly kind: 'steal'; readonly side: Side; readonly symptom: StealSymptom }
  | {
      readonly kind: 'delay';
      readonly of: 'radio-radial' | 'radio-femoral';
      readonly side: Side | 'both' | 'none';
    };

/** A finding with its likelihoods at the pieces it depends on, and the limbs it was made on. */
export interface Finding {
  readonly id: FindingId;
  readonly factors: readonly Factor[];
  readonly limbs: readonly LimbKey[];
}

export const pulsePiece = (place: Place<PulseSiteId>): number => indexOf(pieceAbove(place).key);
export const beyond = (place: Place): number => indexOf(piecesOf(vesselOf(place)).at(-1)!.key);
export const heardPiece = (place: Place<ListeningSiteId>, tables: Tables): number =>
  piecesOfStretch(tables.sound.heardAt[place.site], place.side === 'midline' ? undefined : place.side)[0]!;
export const stretchPiece = (key: StretchKey, side: Side): number => piecesOfStretch(key, side)[0]!;

/** The limbs a place belongs to; what is found at the midline is found on both legs. */
export function limbsAt({ site, side }: Place): LimbKey[] {
  const { region } = siteDefinition(site);
  const kind = region === 'trunk' ? 'leg' : region;
  return side === 'midline' ? SIDES.map((s) => `${s} ${kind}` as const) : [`${side} ${kind}`];
}

/** Whether a pulse at a place says nothing about the arteries above it: never there, or the artery was taken. */
export function isMute(place: Place<PulseSiteId>, context: Context | undefined): boolean {
  if (place.side === 'midline') return false;
  if (place.site === 'radial') return context?.radialHarvested?.includes(place.side) ?? false;
  return (context?.absentFromBirth?.[place.side] as string[] | undefined)?.includes(place.site) ?? false;
}

/** The last pieces above the pulses of foot or hand, over which a finding of the whole of it is spread. */
function endPieces({ kind, side }: Limb): readonly number[] {
  return kind === 'leg'
    ? [stretchPiece('dorsalis-pedis proximal', side), stretchPiece('posterior-tibial proximal', side)]
    : [stretchPiece('radial proximal', side), stretchPiece('ulnar proximal', side)];
}

/** A finding of the whole foot or hand: half of its weight on each of the two arteries. */
export function acrossEnd(limb: Limb, likelihood: Likelihood): Factor[] {
  const half = tempered(likelihood, 0.5);
  return endPieces(limb).map((piece) => ({ piece, ...half }));
}
