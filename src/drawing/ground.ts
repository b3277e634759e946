import type { ArteryPaths } from './arteries.js';
import { silhouetteOf } from './healthy.js';
import type { Landmarks } from './landmarks.js';

/** One path of the ground, in tenths of a figure unit: its classes, and its data. */
export interface GroundPart {
  readonly name: string;
  readonly d: string;
}

/** How far the line of the body is heavier below and to the right, in tenths of a figure unit. */
const HEAVIER = { x: 6, y: 9 };

/** Path data with its one absolute point moved; all else in it is relative. */
function moved(d: string): string {
  return d.replace(/^M(-?\d+)[ ]?(-?\d+)/, (_, x, y) => `M${Number(x) + HEAVIER.x} ${Number(y) + HEAVIER.y}`);
}

/**
 * Body, landmarks and arteries in the order they are painted.
 * @param arms whether the arms are drawn
 * @param landmarks left out where they are not at hand
 */
export function groundParts(
  arteries: ArteryPaths,
  arms: boolean,
  landmarks?: Landmarks,
): readonly GroundPart[] {
  const { body, heart, kidneys, grooves } = silhouetteOf(arms);
  const { behind, deep, trunk, near, hollow, thinning } = arteries;
  const { form = '', named = '', over = '' } = landmarks ?? {};
  return [
    { name: 'rim', d: moved(body) },
    { name: 'body', d: body },
    { name: 'form', d: form },
    { name: 'hints', d: named },
    { name: 'organ', d: kidneys },
    { name: 'artery behind', d: behind },
    { name: 'artery deep', d: deep },
    { name: 'artery trunk', d: trunk },
    { name: 'heart', d: heart },
    { name: 'organ', d: heart },
    { name: 'form', d: grooves },
    { name: 'hollow', d: hollow },
    { name: 'artery thinning', d: thinning },
    { name: 'artery near', d: near },
    { name: 'hints over', d: over },
  ];
}
