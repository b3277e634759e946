import { type Place, siteDefinition } from '../../anatomy/index.js';

/** A part of the body that fits on a narrow screen. */
export type Half = 'right-arm' | 'left-arm' | 'legs';
export type Part = Half | 'arms';

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

/** The parts to choose from at a width. */
export function partsAt(width: number): readonly Part[] {
  return width >= BOTH_ARMS ? ['arms', 'legs'] : ['right-arm', 'left-arm', 'legs'];
}

/** The part that shows a half at a width. */
export function partShown(half: Half, width: number): Part {
  return half !== 'legs' && width >= BOTH_ARMS ? 'arms' : half;
}

/** The half that a part stands for. */
export function halfIn(part: Part): Half {
  return part === 'arms' ? 'right-arm' : part;
}

/** The half of the body that shows a place. */
export function halfWith({ site, side }: Place): Half {
  const { region } = siteDefinition(site);
  return side !== 'midline' && (region === 'head' || region === 'arm') ? `${side}-arm` : 'legs';
}
