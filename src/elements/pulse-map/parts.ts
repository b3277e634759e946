import { type Place, siteDefinition } from '../../anatomy/index.js';

/** A part of the body that fits on a narrow screen. */
export type Half = 'right-arm' | 'left-arm' | 'legs';
export type Part = Half | 'arms';

/** Below this width of the element not the whole body is shown and the chooser is a sheet, in px. */
export const NARROW = 640;
/** Below this width even the arms are shown one at a time, or their sites would lie too close together, in px. */
const BOTH_ARMS = 560;

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
