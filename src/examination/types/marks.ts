import type { MarkForm, PlateView } from '../../anatomy/index.js';

/** What a mark on the skin shows, worst first; `cyanosis` is blue discolouration, `cold` says that all below the line is cold. */
export const MARK_KINDS = [
  'ulcer',
  'gangrene',
  'pallor',
  'redness',
  'cyanosis',
  'cold',
  'scar',
  'amputation',
] as const;
/** What a mark on the skin shows. */
export type MarkKind = (typeof MARK_KINDS)[number];

/** How each kind lies on the skin: over an area, along a line, or across the limb. */
export const MARK_FORMS: Readonly<Record<MarkKind, MarkForm>> = {
  ulcer: 'area',
  gangrene: 'area',
  pallor: 'area',
  redness: 'area',
  cyanosis: 'area',
  cold: 'across',
  scar: 'along',
  amputation: 'across',
};

/** Most marks of one record, and most points of one mark. */
export const MOST_MARKS = 60;
export const MOST_POINTS = 200;
/** Longest id of a mark. */
export const LONGEST_ID = 40;

/** Fewest points of a mark: an area has three corners, a line two ends. */
export function fewestPoints(kind: MarkKind): number {
  return MARK_FORMS[kind] === 'area' ? 3 : 2;
}

/** Where a mark was drawn on a plate, the larger drawing of a hand, foot, sole, knee or of both legs from behind. */
export interface MarkOnPlate {
  /** The plate, by the name of its view. */
  readonly plate: PlateView;
  /** As the points of a mark, in units of the plate's box (see `PLATE_BOXES`), as the plate shows that side. */
  readonly points: readonly (readonly [number, number])[];
}

/** Something drawn on the skin of the figure, or on a plate. */
export interface Mark {
  /** Tells the marks of a record apart. */
  readonly id: string;
  readonly kind: MarkKind;
  /**
   * Corners of an area, or points along a line, as [x, y] in units of the figure's box (see `FIGURE_WIDTH`), with at most one
   * decimal; x grows toward the patient's left. Of a mark drawn on a plate, where it lies on the figure.
   */
  readonly points: readonly (readonly [number, number])[];
  /** Where it was drawn, if not on the whole figure; it names the place more exactly than `points`. */
  readonly on?: MarkOnPlate;
  /** The examiner's own words. */
  readonly note?: string;
}
