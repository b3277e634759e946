import { type Box, boxOfLine } from './box.js';
import { type Place, type PlaceKey, placeKey } from '../anatomy/index.js';
import type { PlacedLabel, PlacedSite } from './labels.js';

/** Distance of the lines, from the name to the first and from each to the next, in px. */
export const FINDING_STEP = 16;
const MOST_LINES = 4;
/** Half the box that a glyph with its marks may take, in px. */
const GLYPH = 20;
const AIR = 3;
/** Room between a name and a finding on its line, in px. */
const ASIDE = 8;
/** What stands for phrases left out, and what is between phrases. */
const CUT = '…';
const BETWEEN = ', ';

/** One line of what was found: the edge of its text nearest to the site, and its middle, in px. */
export interface FindingLine {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** What was found at a site, as far as there is room. */
export interface PlacedFinding {
  readonly lines: readonly FindingLine[];
  /** Whether nothing of it is left out. */
  readonly full: boolean;
}

export interface FindingFrame {
  readonly width: number;
  readonly height: number;
  /** Width of what was found in px, in its own type. */
  findingWidth(text: string): number;
  findingOf(place: Place): string;
  /** What else no line may cover, such as buttons. */
  readonly kept?: readonly Box[];
}

const lineBox = (line: Pick<PlacedLabel, 'x' | 'y' | 'anchor'>, width: number): Box =>
  boxOfLine(line, width, FINDING_STEP);

/** The line of a label at a row: on that of the name, row 0, beyond the name. */
function lineAt({ x, y, anchor, width }: PlacedLabel, row: number) {
  const past = row ? 0 : width + ASIDE;
  return { x: anchor === 'start' ? x + past : x - past, y: y + row * FINDING_STEP, anchor };
}

/** Maximum length of a line before it meets something or the edge of the frame, in px. */
function room(line: ReturnType<typeof lineAt>, taken: readonly Box[], frame: FindingFrame): number {
  const { top, bottom } = lineBox(line, 0);
  if (bottom > frame.height - AIR) return 0;
  const start = line.anchor === 'start';
  let free = (start ? frame.width - line.x : line.x) - AIR;
  for (const box of taken) {
    if (box.top >= bottom || box.bottom <= top) continue;
    const [near, far] = start
      ? [box.left - line.x, box.right - line.x]
      : [line.x - box.right, line.x - box.left];
    if (far > 0) free = Math.min(free, near - AIR);
  }
  return free;
}

/** Breaks a text into lines from a row on; nothing where it does not fit. */
function fill(
  label: PlacedLabel,
  text: string,
  from: number,
  taken: readonly Box[],
  frame: FindingFrame,
): FindingLine[] | undefined {
  const words = text.split(' ');
  const lines: FindingLine[] = [];
  for (let at = 0, row = from; at < words.length; row++) {
    if (row >= from + MOST_LINES) return undefined;
    const line = lineAt(label, row);
    const free = room(line, taken, frame);
    let said = '';
    while (at < words.length && frame.findingWidth(`${said} ${words[at]}`.trim()) <= free)
      said = `${said} ${words[at++]}`.trim();
    if (!said) return undefined;
    lines.push({ text: said, x: line.x, y: line.y });
  }
  return lines;
}

/** As many phrases of a finding as fit: below the name, else from its line on, else below it across the label's own leader. */
function placed(
  label: PlacedLabel,
  finding: string,
  taken: readonly Box[],
  leaders: readonly (Box | undefined)[],
  own: number,
  frame: FindingFrame,
): PlacedFinding {
  const phrases = finding.split(BETWEEN);
  const across = [...taken, ...leaders.filter((box, i): box is Box => box !== undefined && i !== own)];
  const leader = leaders[own];
  const clear = leader ? [...across, leader] : across;
  for (let count = phrases.length; count >= 0; count--) {
    const full = count === phrases.length;
    const text = phrases.slice(0, count).join(BETWEEN) + (full ? '' : CUT);
    const lines =
      fill(label, text, 1, clear, frame) ??
      fill(label, text, 0, clear, frame) ??
      (leader && fill(label, text, 1, across, frame));
    if (lines) return { lines, full };
  }
  return { lines: [], full: false };
}

/** The sites at which something found has no room, so that it is to be said elsewhere. */
export const untoldIn = (findings: ReadonlyMap<PlaceKey, PlacedFinding>): PlaceKey[] =>
  [...findings].flatMap(([key, { full }]) => (full ? [] : [key]));

/** A leader that stands upright at its site, as a thin box. */
function uprightBox({ leader: [from, to] }: PlacedLabel): Box | undefined {
  if (!from || !to || from[0] !== to[0]) return undefined;
  const [left, right] = [from[0] - AIR, from[0] + AIR];
  return { left, right, top: Math.min(from[1], to[1]), bottom: Math.max(from[1], to[1]) };
}

/**
 * Breaks what was found at each site into lines below its name, or beyond it, in the space that names and sites leave. Phrases that
 * do not fit are left out, and it is said that they are; nothing else moves.
 */
export function findingLines(
  labels: readonly PlacedLabel[],
  sites: readonly PlacedSite[],
  frame: FindingFrame,
): ReadonlyMap<PlaceKey, PlacedFinding> {
  const taken: Box[] = [
    ...(frame.kept ?? []),
    ...sites.map(({ x, y }) => ({ left: x - GLYPH, right: x + GLYPH, top: y - GLYPH, bottom: y + GLYPH })),
    ...labels.map((label) => lineBox(label, label.width)),
  ];
  const leaders = labels.map(uprightBox);
  const result = new Map<PlaceKey, PlacedFinding>();
  for (const [own, label] of labels.entries()) {
    const finding = frame.findingOf(label.place);
    if (!finding) continue;
    const found = placed(label, finding, taken, leaders, own, frame);
    for (const { text, x, y } of found.lines)
      taken.push(lineBox({ x, y, anchor: label.anchor }, frame.findingWidth(text)));
    result.set(placeKey(label.place), found);
  }
  return result;
}
