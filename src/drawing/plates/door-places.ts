import { AXIS, PLATE_VIEWS, type PlateName, plateOf, type PlateView } from '../../anatomy/index.js';
import type { Box } from '../box.js';
import type { PlacedLabel } from '../labels.js';

/** Height of a button, and what its edges take beside the words, in px. */
export const DOOR = { height: 44, beside: 40 } as const;
/** Half the width that is kept clear for a button, in px: as wide as the words of the languages that ship. */
const halfOf = (name: PlateName): number => (name === 'hand' ? 38 : 43);

/** Where the buttons stand on the whole figure, of the patient's left, in figure units: beside hand, knee and foot. */
const AT: Readonly<Record<PlateName, readonly [x: number, y: number]>> = {
  hand: [1222, 556],
  knee: [990, 1132],
  foot: [990, 1250],
  sole: [1124, 1250],
  'legs-behind': [AXIS, 1205],
};
/**
 * Farthest finger: the button of the hand stands beyond it where there is room, else above the thumb. Below the hand stands what was
 * found at the ulnar pulse.
 */
const FINGERS = 1152;
const BESIDE_HAND = 740;
/** The ulnar pulse, in figure units from the axis, and how far beyond it an earlier record's grade of it reaches, in px. */
const ULNAR = 400;
const ULNAR_GRADE = 90;
/** Distance of the buttons of foot and sole, in px. */
const APART = 82;

/** Room between a button and the edge of the drawing, in px. */
const EDGE = 3;

/**
 * Below this scale names stand so close together beside the legs that the buttons of knee, foot and sole stand beyond them, one above the
 * other around this height, in figure units; between them and the names, where the drawing is wide enough, what was found.
 */
const LEAST_BESIDE = 0.52;
const STACK: Readonly<Partial<Record<PlateName, number>>> = { knee: -1, foot: 0, sole: 1 };
const STACK_AT = 1250;
const STEP = DOOR.height + 6;
const FINDINGS = 130;

/** A whole figure laid out. */
interface Frame {
  readonly scale: number;
  readonly offsetX: number;
  readonly offsetY: number;
  readonly width: number;
  readonly labels: readonly Pick<PlacedLabel, 'x' | 'anchor' | 'width'>[];
}

/** How far names reach from the axis, in px. */
function reachOf({ scale, offsetX, labels }: Frame): number {
  const middle = AXIS * scale + offsetX;
  return Math.max(
    ...labels.map(({ x, anchor, width }) => width + (anchor === 'start' ? x - middle : middle - x)),
  );
}

/** The middle of the button of a plate, in px, within the drawing. */
export function doorAt(view: PlateView, frame: Frame): readonly [number, number] {
  const { scale, offsetX, offsetY, width } = frame;
  const { name, side } = plateOf(view);
  const [half, most] = [halfOf(name), width / 2 - halfOf(name) - EDGE];
  const row = scale < LEAST_BESIDE ? STACK[name] : undefined;
  if (row !== undefined) {
    const reach = Math.min(most, reachOf(frame) + FINDINGS + half);
    return [
      AXIS * scale + offsetX + (side === 'right' ? -reach : reach),
      STACK_AT * scale + offsetY + row * STEP,
    ];
  }
  const beyond = (FINGERS - AXIS) * scale + half + EDGE;
  const besideHand = name === 'hand' && beyond <= most;
  const y = besideHand ? BESIDE_HAND : AT[name][1];
  const wanted = besideHand
    ? Math.max(beyond, ULNAR * scale + ULNAR_GRADE + half)
    : (AT[name][0] - AXIS) * scale;
  const past = name === 'sole' ? (AT.foot[0] - AXIS) * scale + APART : 0;
  const reach = Math.min(Math.max(wanted, past), most);
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
