import { type Place, siteDefinition } from '../../anatomy/index.js';
import { LOW } from '../common/low-window.js';

/** A part of the body, shown where not all of it fits. */
export type Crop = 'right-arm' | 'left-arm' | 'arms' | 'legs';
/** A part that fits on the narrowest screen. */
export type NarrowCrop = Exclude<Crop, 'arms'>;

/** Below this width of the element, in px, only part of the body is shown and the chooser is a sheet at the bottom. */
export const NARROW = 640;
/** Below this width, in px, the arms are shown one at a time, because their sites would be too close together. */
const BOTH_ARMS = 560;

/**
 * From these widths of the element, in px, the reading is beside the figure; on a projector and on larger screens it is
 * scaled up with the figure and the tools.
 */
export const COLUMNS = [
  { from: 1180, high: 0, grow: 1 },
  { from: 1800, high: 1000, grow: 1.2 },
  { from: 2400, high: 1300, grow: 1.5 },
  { from: 3200, high: 1900, grow: 2.1 },
] as const;
/** Height of the window in px; 0 on a server, which has none. */
export const windowHeight = (): number => globalThis.innerHeight ?? 0;

/** Unscaled width of the reading beside the figure, in px. */
export const READING_WIDTH = 388;

function columnAt(width: number): (typeof COLUMNS)[number] | undefined {
  return COLUMNS.findLast(({ from, high }) => width >= from && windowHeight() >= high);
}

/** Width taken by the reading beside the figure, in px; 0 where it is below. */
export function readingRoom(width: number): number {
  const column = columnAt(width);
  return column ? Math.ceil(READING_WIDTH * column.grow) + 1 : 0;
}

/** Height of everything that should be on the same screen as the figure, in px. */
export function aroundFigure(width: number): number {
  const low = width >= NARROW && windowHeight() < LOW;
  return low ? 100 : 130 * (columnAt(width)?.grow ?? 1);
}

/** Height of the bar that a form around keeps over the map while its page is scrolled, in px. */
export function barHeight(element: HTMLElement): number {
  return Number.parseFloat(globalThis.getComputedStyle?.(element).getPropertyValue('--_tabs') ?? '') || 0;
}

/** Height of the red flags that stand over the tools, in px; 0 before they are rendered. */
export function flagsHeight({ renderRoot }: { readonly renderRoot?: ParentNode }): number {
  return renderRoot?.querySelector<HTMLElement>('limb-flags')?.offsetHeight ?? 0;
}

/** The crops to choose from at a width. */
export function cropsAt(width: number): readonly Crop[] {
  return width >= BOTH_ARMS ? ['arms', 'legs'] : ['right-arm', 'left-arm', 'legs'];
}

/** The crop that shows a narrow one at a width. */
export function cropShown(crop: NarrowCrop, width: number): Crop {
  return crop !== 'legs' && width >= BOTH_ARMS ? 'arms' : crop;
}

/** The narrow crop for a chosen one. */
export function narrowCrop(crop: Crop): NarrowCrop {
  return crop === 'arms' ? 'right-arm' : crop;
}

/** The narrow crop that shows a place. */
export function cropWith({ site, side }: Place): NarrowCrop {
  const { region } = siteDefinition(site);
  return side !== 'midline' && (region === 'head' || region === 'arm') ? `${side}-arm` : 'legs';
}
