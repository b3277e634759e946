import type { Laterality, Side } from './sides.js';

/*
 * The parts of the body that are drawn larger, each on a plate of its own. Names and boxes are part of the record's form, since marks on
 * the skin are kept in coordinates of the plate on which they were made.
 */

export const PLATE_NAMES = ['hand', 'foot', 'sole', 'knee', 'legs-behind'] as const;
export type PlateName = (typeof PLATE_NAMES)[number];

/** Views that are plates. */
export const PLATE_VIEWS = [
  'right-hand',
  'left-hand',
  'right-foot',
  'left-foot',
  'right-sole',
  'left-sole',
  'right-knee',
  'left-knee',
  'legs-behind',
] as const;
export type PlateView = (typeof PLATE_VIEWS)[number];

/** Width and height of each plate in its own units. */
export const PLATE_BOXES: Readonly<Record<PlateName, readonly [width: number, height: number]>> = {
  hand: [1000, 1000],
  foot: [1000, 800],
  sole: [1000, 1000],
  knee: [1000, 1000],
  'legs-behind': [988, 1490],
};

export function isPlateView(view: string): view is PlateView {
  return (PLATE_VIEWS as readonly string[]).includes(view);
}

/** The plate of a view, and the side it is of; `midline` for one that shows both. */
export function plateOf(view: PlateView): { readonly name: PlateName; readonly side: Laterality } {
  if (view === 'legs-behind') return { name: view, side: 'midline' };
  const [side, name] = view.split('-') as [Side, PlateName];
  return { name, side };
}
