import type { Piece } from '../anatomy/index.js';
import type { Spline } from './geometry.js';

/** A stretch of a drawn course that shows a piece of the arterial tree, or part of it. */
export interface Strand {
  readonly spline: Spline;
  /** Shares of the course between which it lies, in the direction of flow. */
  readonly from: number;
  readonly to: number;
  /** How much of the piece it shows. */
  readonly share: number;
  /** Half the drawn width of the artery at a share of the course. */
  radius(at: number): number;
  /** The side on which a mark stands: 1 to the right of the way, -1 to its left. Missing where the mark itself decides. */
  readonly side?: 1 | -1;
}

/** Sizes of a ridge, in the units of its drawing. */
export interface RidgeSizes {
  /** Area of one percent. */
  readonly area: number;
  readonly least: number;
  readonly most: number;
  /** Length over which weights are smoothed, since nothing tells where on its piece a lesion lies. */
  readonly smooth: number;
}

/** A drawing of arteries: the whole figure or a plate, in its own units. */
export interface Chart {
  /** Distance between points of a ridge's line, in units of the drawing; close ones unless told otherwise. */
  readonly step?: number;
  /** Where a piece is drawn, inflow first; nothing where it lies outside the drawing. */
  strandsOf(piece: Piece): readonly Strand[];
  readonly ridge: RidgeSizes;
}
