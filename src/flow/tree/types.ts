import type { ArteryId, Laterality, PieceKey, Side } from '../../anatomy/index.js';

/**
 * `elastic` arteries (aorta and its large branches) stiffen much with age, `muscular` ones little.
 */
export type Wall = 'elastic' | 'muscular';

/** Names by which a lesion's place inside a long piece is chosen. */
export const SPOTS = [
  'origin',
  'beyond-vertebral',
  'before-left-carotid',
  'before-left-subclavian',
  'isthmus',
  'mid',
  'lower',
  'upper',
  'adductor-canal',
  'coeliac',
  'renal',
] as const;
export type Spot = (typeof SPOTS)[number];

/** A stretch of artery between two nodes: a tapered tube. Lengths and radii in cm. */
export interface Section {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly length: number;
  /** Inner radius at the proximal and at the distal end. */
  readonly radii: readonly [number, number];
  readonly wall: Wall;
  /** The piece of the product's tree it belongs to; none for arteries the map does not draw. */
  readonly piece?: PieceKey;
  /** Where in its piece it lies, for pieces of several sections. */
  readonly spot?: Spot;
  /** The section of its piece in which a lesion sits unless told otherwise. */
  readonly seat?: true;
  /** Open only in people with this variant. */
  readonly onlyIn?: Variant;
}

/** Variants of normal anatomy. */
export const VARIANTS = [
  'no-dorsalis-pedis',
  'incomplete-deep-palmar-arch',
  'incomplete-superficial-palmar-arch',
  'incomplete-plantar-arch',
  'no-anterior-communicating',
  'no-posterior-communicating',
  'high-brachial-division',
] as const;
export type Variant = (typeof VARIANTS)[number];

export type BedKind = 'brain' | 'kidney' | 'gut' | 'heart' | 'muscle' | 'skin' | 'trunk';
/** Which muscles a bed stands for when the patient walks or works with the arms. */
export type Effort = 'calf' | 'thigh' | 'buttock' | 'forearm' | 'upper-arm';

/** A terminal bed: the small vessels an artery ends in. */
export interface Bed {
  readonly id: string;
  readonly node: string;
  /** Flow of a resting adult in ml/min. */
  readonly flow: number;
  /** Greatest conductance over the resting one. */
  readonly reserve: number;
  readonly kind: BedKind;
  readonly region: 'head' | 'trunk' | 'arm' | 'leg';
  readonly side: Laterality;
  readonly effort?: Effort;
  /** How far down the raised limb it lies, as a share of the limb's length. */
  readonly along?: number;
  /** `true` where the artery ends in the bed, `false` where the bed is a side branch. */
  readonly ends: boolean;
  /** The bed that colour of the palm is judged by. */
  readonly hand?: true;
}

/** A path by which blood gets round a block. */
export interface Collateral {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** Its anatomical name. */
  readonly route: string;
  readonly side: Laterality;
  /** Conductance when fresh and when developed, ml/min per mmHg. */
  readonly fresh: number;
  readonly developed: number;
}

export type Sided<T> = (side: Side) => T;
export const key = (side: Laterality, artery: ArteryId, stretch?: 'proximal' | 'distal'): PieceKey =>
  stretch ? `${side} ${artery} ${stretch}` : `${side} ${artery}`;
