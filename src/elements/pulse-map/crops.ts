import { type Place, siteDefinition } from '../../anatomy/index.js';

/** What of the body is shown where not all of it fits. */
export type Crop = 'right-arm' | 'left-arm' | 'arms' | 'legs';
/** What of it fits on the narrowest screen. */
export type NarrowCrop = Exclude<Crop, 'arms'>;

/** Below this width of the element not the whole body is shown and the chooser is a sheet, in px. */
export const NARROW = 640;
/** Below this width even the arms are shown one at a time, or their sites would lie too close together, in px. */
const BOTH_ARMS = 560;

/**
 * From this width of the element on the reading stands beside the figure, in px. Where the screen is as high as a wall, it
 * grows with the figure, and so do the tools.
 */
export const COLUMNS = [
  { from: 1180, high: 0, grow: 1 },
  { from: 2400, high: 1300, grow: 1.3 },
  { from: 3200, high: 1900, grow: 1.8 },
] as const;
/** Width of the reading beside the figure before it grows, in px. */
export const READING_WIDTH = 388;

function columnAt(width: number): (typeof COLUMNS)[number] | undefined {
  return COLUMNS.findLast(({ from, high }) => width >= from && window.innerHeight >= high);
}

/** Room that the reading takes beside the figure at a width; none where it stands below. */
export function readingRoom(width: number): number {
  const column = columnAt(width);
  return column ? Math.ceil(READING_WIDTH * column.grow) + 1 : 0;
}

/** Height of what else of an element of this width wants to be seen on the same screen as its figure, in px. */
export function aroundFigure(width: number): number {
  return 130 * (columnAt(width)?.grow ?? 1);
}

/** The crops to choose from at a width. */
export function cropsAt(width: number): readonly Crop[] {
  return width >= BOTH_ARMS ? ['arms', 'legs'] : ['right-arm', 'left-arm', 'legs'];
}

/** The crop that shows a narrow one at a width. */
export function cropShown(crop: NarrowCrop, width: number): Crop {
  return crop !== 'legs' && width >= BOTH_ARMS ? 'arms' : crop;
}

/** The narrow crop to remember for one that was chosen. */
export function narrowCrop(crop: Crop): NarrowCrop {
  return crop === 'arms' ? 'right-arm' : crop;
}

/** The narrow crop that shows a place. */
export function cropWith({ site, side }: Place): NarrowCrop {
  const { region } = siteDefinition(site);
  return side !== 'midline' && (region === 'head' || region === 'arm') ? `${side}-arm` : 'legs';
}
