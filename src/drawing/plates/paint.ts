import type { Paint, PaintTable } from '../paint.js';

const RIM: Paint = { stroke: 'body-edge', width: 1.6, join: 'round' };
const INK: Paint = { fill: 'body-edge', stroke: 'body-edge', width: 0.3, join: 'round' };

/** The parts of a plate, by their kinds. What is dashed has the width of its artery. */
export const PLATE_PAINT = {
  '.p-shade': { ...RIM, fill: 'body-edge' },
  '.p-body': { ...RIM, fill: 'body' },
  '.p-tone': { fill: 'body-edge' },
  '.p-nail': { fill: 'paper', fillOpacity: 0.6, stroke: 'body-edge', width: 1, join: 'round' },
  '.p-line': INK,
  '.p-over': INK,
  '.p-behind': { fill: 'none', stroke: 'deep' },
  '.p-behind-hollow': { fill: 'none', stroke: 'mute' },
  '.p-behind-inside': { fill: 'none', stroke: 'body' },
  '.p-deep': { fill: 'deep' },
  '.p-faint': { fill: 'deep', fillOpacity: 0.62 },
  '.p-near': { fill: 'vessel' },
  '.p-thinning': { fill: 'vessel' },
  '.p-hollow': { fill: 'body', stroke: 'mute', width: 1.5, join: 'round', rimFirst: true },
  '.p-casing': { fill: 'body' },
} as const satisfies PaintTable;

/** How far the shade lies to the right of the body and below it, in px. */
export const SHADE: readonly [x: number, y: number] = [0.5, 0.6];

/** What a caption says of a plate, and its name, in px. */
export const CAPTION_PAINT = {
  '.captions': { fill: 'ink-2', type: [400, 14] },
  '.captions .title': { fill: 'ink', type: [600, 16] },
} as const satisfies PaintTable;

/** Length of a dash of an artery behind bone, and of the gap after it, as shares of its width. */
export const DASH = { length: 0.75, gap: 0.42 } as const;

/** Of an artery behind bone without a pulse, the share of its width that is between its two edges. */
export const INSIDE = 0.74;
