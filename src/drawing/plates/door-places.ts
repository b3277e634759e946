import { PLATE_VIEWS, type PlateName, plateOf, type PlateView } from '../../anatomy/index.js';
import type { Box } from '../box.js';
import { AXIS } from '../figure.js';

/** Height of a button, and what its edges take beside the words, in px. */
export const DOOR = { height: 44, beside: 40 } as const;
/** Half the width that is kept clear for a button, in px: as wide as the words of the languages that ship. */
const halfOf = (name: PlateName): number => (name === 'hand' ? 38 : 43);

/**
 * Where the buttons stand on the whole figure, of the patient's left, in figure units: beside hand, knee and foot; that of the hand
 * beyond what stands below the name of the ulnar pulse.
 */
const AT: Readonly<Record<PlateName, readonly [x: number, y: number]>> = {
  hand: [1222, 818],
  knee: [990, 1126],
  foot: [990, 1262],
  sole: [1124, 1262],
  'legs-behind': [AXIS, 1240],
};

/** Room between a button and the edge of the drawing, in px. */
const EDGE = 3;

/** A whole figure laid out. */
interface Frame {
  readonly scale: number;
  readonly offsetX: number;
  readonly offsetY: number;
  readonly width: number;
}

/** The middle of the button of a plate, in px, within the drawing. */
export function doorAt(
  view: PlateView,
  { scale, offsetX, offsetY, width }: Frame,
): readonly [number, number] {
  const { name, side } = plateOf(view);
  const [x, y] = AT[name];
  const reach = Math.min((x - AXIS) * scale, width / 2 - halfOf(name) - EDGE);
  return [AXIS * scale + offsetX + (side === 'right' ? -reach : reach), y * scale + offsetY];
}

/** The room that is kept for the buttons beside a whole figure, in px. */
export function doorRooms(frame: Frame): readonly Box[] {
  return PLATE_VIEWS.map((view) => {
    const [x, y] = doorAt(view, frame);
    const [half, high] = [halfOf(plateOf(view).name), DOOR.height / 2];
    return { left: x - half, right: x + half, top: y - high, bottom: y + high };
  });
}
