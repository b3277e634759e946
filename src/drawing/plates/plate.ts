import {
  type ArteryId,
  isPlateView,
  PLATE_NAMES,
  PLATE_VIEWS,
  type PlateName,
  plateOf,
  type PlateView,
  type Side,
  type SiteId,
} from '../../anatomy/index.js';

/** The parts of the body drawn larger than on the whole figure, each on a plate of its own. */
export { isPlateView, PLATE_NAMES, PLATE_VIEWS, type PlateName, plateOf, type PlateView };

/** How deep an artery lies on a plate; one behind bone or on the far side is dashed. */
export type PlateDepth = 'near' | 'deep' | 'behind';

/** A course on a plate: of an artery of the tree, or of a branch that the record does not know. */
export interface PlateArtery {
  readonly id: string;
  readonly depth: PlateDepth;
  /** Knots of its course, inflow first, as "x y x y". */
  readonly points: string;
  /** The artery of the tree that it shows. */
  readonly artery?: ArteryId;
  /** Which part of that artery: pairs of a share of the course and a share of the artery, rising. */
  readonly span?: readonly (readonly [course: number, artery: number])[];
  /** A branch: the artery of the tree that feeds it, and where along it. */
  readonly source?: readonly [artery: ArteryId, at: number];
  /** Inner radius of a branch at its origin and its end in millimetres (from memory of adult means). */
  readonly mm?: readonly [origin: number, end: number];
  /** One of the small branches that stand back. */
  readonly faint?: true;
  /** On the far side of the limb. */
  readonly far?: true;
  /** Has no casing where it crosses a deeper artery, since it springs from one. */
  readonly bare?: true;
  /** The side on which a mark stands beside it; by default 1, to the right of its way. */
  readonly ridge?: -1;
  /** The courses against which its fork is rounded. */
  readonly fillet?: readonly string[];
}

/** A landmark, drawn as a line that swells in its middle. */
export interface PlateLine {
  readonly points: string;
  readonly weight: number;
  /** Drawn over the arteries: a tendon or muscle in front of them. */
  readonly over?: true;
  /** The sites that are found by it, as their technique says: it stands out while one of them is open. */
  readonly helps?: readonly SiteId[];
}

/** A plane of second tone: one closed contour, or open ones chained so that their corners stay corners. */
export interface PlateTone {
  readonly segments: readonly string[];
  readonly closed: boolean;
  readonly strength: number;
}

export interface PlateSite {
  readonly site: SiteId;
  /** The course it lies on. */
  readonly on: string;
  /** The side of the plate on which its name stands. */
  readonly name: 'left' | 'right';
}

/**
 * A plate as data, our own drawing, in its own units (its box: `PLATE_BOXES`): nothing is traced. Coordinates are of the given side of the
 * body; the other is the mirror image.
 */
export interface Plate {
  readonly name: PlateName;
  readonly given: Side;
  /** Both limbs on one plate, the other beside the given one. */
  readonly pair?: true;
  readonly unitsPerMm: number;
  /** How much wider than on the whole figure arteries of the same calibre are drawn; see `drawnRadius`. */
  readonly factor: number;
  readonly outlines: readonly string[];
  readonly tones: readonly PlateTone[];
  readonly nails: readonly string[];
  readonly lines: readonly PlateLine[];
  readonly arteries: readonly PlateArtery[];
  readonly sites: readonly PlateSite[];
  /** Where thumb to little finger, or great to little toe, are marked, as "x y x y". */
  readonly digits?: string;
  /** Where words stand that say what is seen: the middle of their line; one past the box stands in a row below the drawing. */
  readonly captions: readonly { readonly word: PlateCaption; readonly x: number; readonly y: number }[];
}

/** What a caption on a plate says. */
export const PLATE_CAPTIONS = ['dorsum', 'medial-side', 'medial', 'lateral'] as const;
export type PlateCaption = (typeof PLATE_CAPTIONS)[number];

/** The sites on each plate, known before its data are fetched. */
export const SITES_ON: Readonly<Record<PlateName, readonly SiteId[]>> = {
  hand: ['radial', 'ulnar'],
  foot: ['posterior-tibial', 'dorsalis-pedis'],
  sole: [],
  knee: ['adductor-canal', 'popliteal'],
  'legs-behind': ['popliteal', 'posterior-tibial'],
};
