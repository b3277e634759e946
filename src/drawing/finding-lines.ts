import type { Box } from './box.js';
import { type Place, type PlaceKey, placeKey } from '../anatomy/index.js';
import type { PlacedLabel, PlacedSite } from './labels.js';

/** Distance of the lines, from the name to the first and from each to the next, in px. */
export const FINDING_STEP = 16;
const MOST_LINES = 4;
/** Half the box that a glyph with its marks may take, in px. */
const GLYPH = 20;
const AIR = 3;
const CUT = '…';

export interface FindingFrame {
  readonly width: number;
  readonly height: number;
  /** Width of a text in px. */
  textWidth(text: string): number;
  nameOf(place: Place): string;
  findingOf(place: Place): string;
  /** What else no line may cover, such as buttons. */
  readonly kept?: readonly Box[];
}

function lineBox({ x, y, anchor }: PlacedLabel, row: number, width: number): Box {
  const middle = y + row * FINDING_STEP;
  const [left, right] = anchor === 'start' ? [x, x + width] : [x - width, x];
  return { left, right, top: middle - FINDING_STEP / 2, bottom: middle + FINDING_STEP / 2 };
}

/** Maximum length of a line of a label before it meets something or the edge of the frame, in px. */
function room(label: PlacedLabel, row: number, taken: readonly Box[], frame: FindingFrame): number {
  const { top, bottom } = lineBox(label, row, 0);
  if (bottom > frame.height - AIR) return 0;
  const start = label.anchor === 'start';
  let free = (start ? frame.width - label.x : label.x) - AIR;
  for (const box of taken) {
    if (box.top >= bottom || box.bottom <= top) continue;
    const [near, far] = start
      ? [box.left - label.x, box.right - label.x]
      : [label.x - box.right, label.x - box.left];
    if (far > 0) free = Math.min(free, near - AIR);
  }
  return free;
}

/** Breaks a text into lines; an ellipsis marks what does not fit. */
function fill(
  label: PlacedLabel,
  words: readonly string[],
  taken: readonly Box[],
  frame: FindingFrame,
): string[] {
  const lines: string[] = [];
  let at = 0;
  while (at < words.length && lines.length < MOST_LINES) {
    const free = room(label, lines.length + 1, taken, frame);
    let line = '';
    while (at < words.length && frame.textWidth(`${line} ${words[at]}`.trim()) <= free) {
      line = `${line} ${words[at]}`.trim();
      at++;
    }
    if (!line) break;
    lines.push(line);
  }
  const last = lines.pop();
  if (last === undefined) return [];
  if (at >= words.length) return [...lines, last];
  const free = room(label, lines.length + 1, taken, frame);
  let cut = last;
  while (cut && frame.textWidth(cut + CUT) > free) cut = cut.slice(0, -1);
  return [...lines, cut.replace(/[ ,]+$/, '') + CUT];
}

/**
 * Breaks what was found at each site into lines below its name, in the space that names and sites leave. Text that does not
 * fit is truncated; nothing else moves.
 */
export function findingLines(
  labels: readonly PlacedLabel[],
  sites: readonly PlacedSite[],
  frame: FindingFrame,
): ReadonlyMap<PlaceKey, readonly string[]> {
  const taken: Box[] = [
    ...(frame.kept ?? []),
    ...sites.map(({ x, y }) => ({ left: x - GLYPH, right: x + GLYPH, top: y - GLYPH, bottom: y + GLYPH })),
    ...labels.map((label) => lineBox(label, 0, frame.textWidth(frame.nameOf(label.place)))),
  ];
  const result = new Map<PlaceKey, readonly string[]>();
  for (const label of labels) {
    const finding = frame.findingOf(label.place);
    if (!finding) continue;
    const lines = fill(label, finding.split(' '), taken, frame);
    lines.forEach((line, i) => taken.push(lineBox(label, i + 1, frame.textWidth(line))));
    result.set(placeKey(label.place), lines);
  }
  return result;
}
