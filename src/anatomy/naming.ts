/*
 * How a mark on the skin is named by what it covers, alike on the whole figure and on the plates.
 */

/** How a mark lies on the skin: over an area, along a line, or across a limb at one level. */
export type MarkForm = 'area' | 'along' | 'across';

/** A region is named when it holds at least SHARE of the mark, or the mark covers at least COVERED of it. */
export const SHARE = 0.2;
export const COVERED = 0.5;
/** A mark that covers more of a long region than this is not assigned to a third. */
export const ONE_THIRD = 0.6;
/** The share of a region that a mark made from a list covers. */
export const SHAPE = 0.62;
export const THIRDS = ['upper', 'mid', 'lower'] as const;

/** From this many of a row on, fingers or toes are named together. */
const TOGETHER = 3;
/** A digit counts among those of its row when it holds at least this much of what an even share would be. */
const EVEN = 0.5;

/**
 * Whether fingers or toes of one row are named together: three or more hold about as much of the mark as each other. So a line across
 * all toes is "toes", and an ulcer of the great toe that touches its neighbours is not.
 */
export function namedTogether(row: readonly { readonly count: number }[]): boolean {
  const even = row.reduce((sum, { count }) => sum + count, 0) / row.length;
  return row.filter(({ count }) => count >= EVEN * even).length >= TOGETHER;
}

/** To a tenth of a unit, as marks are kept. */
export const tenth = (value: number): number => Math.round(value * 10) / 10;
