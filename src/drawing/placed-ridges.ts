import { earlierGlyphs } from './earlier-spots.js';
import type { Chart } from './chart.js';
import { type Box, boxOfLine, meet } from './box.js';
import type { LesionMark } from './flow.js';
import type { Point } from './geometry.js';
import { GLYPH_SIZE } from './glyphs.js';
import { NAME_LINE } from './labels.js';
import { type Layout, findingWidth } from './layout.js';
import { PathWriter } from './path-writer.js';
import { FIGURE_CHART, type Ridge, ridgesOf } from './ridge.js';
import { simplify } from './skin-marks.js';

/** Where the number of a mark stands, in px: the edge of its text next to the ridge, and the middle of its line. */
export interface NumberSpot {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'end';
}

/** A mark laid out in px. */
export interface PlacedRidges {
  readonly mark: LesionMark;
  /** Path data of the ridges, and of the feet at their ends. */
  readonly outline: string;
  readonly feet: string;
  /** Missing where no number is known, or the ridges lie outside the view. */
  readonly number?: NumberSpot;
}

/** Distance of a ridge's feet from a site, and of its number from the crest, in px. */
const CLEAR_OF_SITE = 19;
const NUMBER_GAP = 5;
/** How far a number moves away from its ridge, at most and at a time, where it would hide something there, in px. */
const AWAY = { most: 60, step: 11 };
/** Room that a number takes, in px. */
const NUMBER = { width: 36, height: 18 };

/** Where the names of sites stand, and what was found there. */
function labelBoxes({ labels, findings }: Layout): Box[] {
  return labels.flatMap((label) => [
    boxOfLine(label, label.width, NAME_LINE),
    ...(findings.get(label.key)?.lines ?? []).map((line) =>
      boxOfLine({ ...line, anchor: label.anchor }, findingWidth(line.text), NAME_LINE),
    ),
  ]);
}

/** The stretches of leaders that run level or upright, each as a thin box; a number would cut them. */
function leaderBoxes({ labels }: Layout): Box[] {
  return labels.flatMap(({ leader }) =>
    leader.slice(1).flatMap(([bx, by], i): Box[] => {
      const [ax, ay] = leader[i] as Point;
      if (ax !== bx && ay !== by) return [];
      return [
        {
          left: Math.min(ax, bx) - 1,
          right: Math.max(ax, bx) + 1,
          top: Math.min(ay, by) - 1,
          bottom: Math.max(ay, by) + 1,
        },
      ];
    }),
  );
}

/** Whether a box is farther than `least` from a point. */
function isClear({ left, right, top, bottom }: Box, x: number, y: number, least: number): boolean {
  const across = Math.max(left - x, 0, x - right);
  const along = Math.max(top - y, 0, y - bottom);
  return across > least || along > least || Math.hypot(across, along) > least;
}

const holds = ({ left, right, top, bottom }: Box, [x, y]: Point): boolean =>
  x >= left && x <= right && y >= top && y <= bottom;

/** The box around points. */
function boxAround(points: readonly Point[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Whether two boxes share a point, if only one of an edge. */
const touch = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

const number = (value: number): number => Math.round(value * 10) / 10;

const line = (points: readonly Point[]): string =>
  points.map(([x, y]) => `${number(x)} ${number(y)}`).join('L');

const weightOn = (mark: LesionMark, only: (key: string) => boolean = () => true): number =>
  mark.pieces.reduce((sum, { piece, weight }) => sum + (only(piece.key) ? weight : 0), 0);

/** Whether most of a mark lies on arteries that it shares with another: one lesion that takes the pulse of two limbs. */
function sharesMost(mark: LesionMark, other: LesionMark): boolean {
  const pieces = new Set<string>(other.pieces.map(({ piece }) => piece.key));
  return !mark.further && !other.further && weightOn(mark, (key) => pieces.has(key)) > weightOn(mark) / 2;
}

/** Which of two marks of one lesion is drawn whole: the likelier, else the first. */
const comesFirst = (all: readonly LesionMark[], i: number, k: number): boolean => {
  const [one, other] = [all[i]?.strength ?? 0, all[k]?.strength ?? 0];
  return one === other ? i < k : one > other;
};

/**
 * The marks with a lesion that two limbs share drawn once, with the number of the limb where it is likelier. Of the other limb's mark
 * stays what lies on arteries of its own, so that neither side goes without.
 */
function drawnOnce(marks: readonly LesionMark[]): LesionMark[] {
  return marks.flatMap((mark, i) => {
    const whole = marks.find(
      (other, k) => k !== i && comesFirst(marks, k, i) && sharesMost(mark, other) && sharesMost(other, mark),
    );
    if (!whole) return [mark];
    const drawn = new Set<string>(whole.pieces.map(({ piece }) => piece.key));
    const { strength: _, ...rest } = mark;
    const pieces = mark.pieces.filter(({ piece }) => !drawn.has(piece.key));
    return pieces.length ? [{ ...rest, pieces }] : [];
  });
}

/** Deviation of a ridge that is not seen in a small picture, in px. */
const TOLERANCE = 0.2;
/** Least height of the highest ridge that a small picture could have, and of its lowest part, in px: so it is seen at 24 px, too. */
const SMALL_RIDGE = { most: 4, least: 2 };
/** Distance between points of the line of a small ridge, in px, and the least in units of the drawing. */
const SMALL_STEP = { px: 1, least: 12 };

/** The drawing of a layout, with ridges that are large enough for its scale. */
function smallChart({ scale, plate }: Layout): Chart {
  const { ridge, strandsOf }: Chart = plate ?? FIGURE_CHART;
  const grown = Math.max(1, SMALL_RIDGE.most / (ridge.most * scale));
  return {
    strandsOf,
    step: Math.max(SMALL_STEP.least, Math.min(2 * SMALL_STEP.least, SMALL_STEP.px / scale)),
    ridge: {
      area: ridge.area * grown,
      least: Math.max(ridge.least, Math.min(ridge.most * grown, SMALL_RIDGE.least / scale)),
      most: ridge.most * grown,
      smooth: ridge.smooth,
    },
  };
}

/**
 * The ridges of all marks of a view in a small picture: of as few points as are seen there, large enough to be seen, and without numbers.
 * @param bare without sites to keep clear of, and without feet
 */
export function smallRidges(marks: readonly LesionMark[], layout: Layout, bare = false): PlacedRidges[] {
  const { scale, offsetX, offsetY, glyphScale } = layout;
  const px = ([x, y]: Point): Point => [x * scale + offsetX, y * scale + offsetY];
  const chart = smallChart(layout);
  return drawnOnce(marks).map((mark) => {
    const path = new PathWriter();
    const feet = new PathWriter();
    const draw = (points: readonly Point[], to: PathWriter): void =>
      points.forEach(([x, y], i) => (i ? to.lineTo(x, y) : to.moveTo(x, y)));
    for (const ridge of ridgesOf(mark, bare ? 0 : (CLEAR_OF_SITE * glyphScale) / scale, chart)) {
      draw(simplify(ridge.outline.map(px), TOLERANCE), path);
      path.closePath();
      if (!bare) for (const foot of ridge.feet) draw(foot.map(px), feet);
    }
    return { mark, outline: path.toString(), feet: feet.toString() };
  });
}

/** The ridges of a mark as they lie on the screen, without its number. */
interface DrawnRidges {
  readonly ridges: readonly Ridge[];
  /** Their points, and the box that holds them: most numbers come near none. */
  readonly paths: readonly { readonly points: readonly Point[]; readonly box: Box }[];
  readonly outline: string;
  readonly feet: string;
}

/** Of each mark its ridges as drawn last, and where. */
const DRAWN = new WeakMap<
  LesionMark,
  { readonly plate: Layout['plate']; readonly at: string; readonly drawn: DrawnRidges }
>();

/** Every act lays out anew what was found, which moves no ridge: they are drawn once for where the drawing lies. */
function drawnRidges(mark: LesionMark, layout: Layout): DrawnRidges {
  const { scale, offsetX, offsetY, glyphScale, plate } = layout;
  const at = [scale, offsetX, offsetY, glyphScale].join(' ');
  const known = DRAWN.get(mark);
  if (known?.at === at && known.plate === plate) return known.drawn;
  const px = ([x, y]: Point): Point => [x * scale + offsetX, y * scale + offsetY];
  const ridges = ridgesOf(mark, (CLEAR_OF_SITE * glyphScale) / scale, plate);
  const paths = ridges.map(({ outline }) => {
    const points = outline.map(px);
    return { points, box: boxAround(points) };
  });
  const drawn = {
    ridges,
    paths,
    outline: paths.map(({ points }) => `M${line(points)}Z`).join(''),
    feet: ridges.flatMap(({ feet }) => feet.map((foot) => `M${line(foot.map(px))}`)).join(''),
  };
  DRAWN.set(mark, { plate, at, drawn });
  return drawn;
}

/**
 * Ridges of all marks of a view, each with a place for its number that hides neither a site, nor a name or finding, nor another mark,
 * and where it can no leader.
 * @param earlier whether the glyphs of an earlier record stand beside the sites, which it does not hide either
 */
export function placeRidges(marks: readonly LesionMark[], layout: Layout, earlier = false): PlacedRidges[] {
  const { scale, offsetX, offsetY, width, height, glyphScale } = layout;
  const px = ([x, y]: Point): Point => [x * scale + offsetX, y * scale + offsetY];
  const all = drawnOnce(marks).map((mark) => ({ mark, ...drawnRidges(mark, layout) }));
  const taken = labelBoxes(layout);
  const leaders = leaderBoxes(layout);
  const disc = (GLYPH_SIZE.map / 2) * glyphScale;
  const before = earlier ? earlierGlyphs(layout).discs : [];
  const free = (spot: NumberSpot): boolean => {
    const box = boxOfLine(spot, NUMBER.width, NUMBER.height);
    return (
      box.left >= 0 &&
      box.right <= width &&
      box.top >= 0 &&
      box.bottom <= height &&
      layout.sites.every(({ x, y }) => isClear(box, x, y, disc)) &&
      before.every(({ x, y, r }) => isClear(box, x, y, r + 1)) &&
      !taken.some((other) => meet(box, other)) &&
      all.every(({ paths }) =>
        paths.every((path) => !touch(box, path.box) || !path.points.some((point) => holds(box, point))),
      )
    );
  };
  const spots = (ridges: readonly Ridge[], away = 0): NumberSpot[] =>
    ridges.flatMap(({ crest }) =>
      crest.map((point): NumberSpot => {
        const [x, y] = px([point.x, point.y]);
        const gap = NUMBER_GAP + away;
        // Beside a level ridge the number stands clear of it by its own height.
        const down = point.ny * (gap + (NUMBER.height / 2) * Math.abs(point.ny));
        return { x: x + point.nx * gap, y: y + down, anchor: point.nx >= 0 ? 'start' : 'end' };
      }),
    );
  const freeSpot = (ridges: readonly Ridge[]): NumberSpot | undefined => {
    let second: NumberSpot | undefined;
    for (let away = 0; away <= AWAY.most; away += AWAY.step) {
      for (const spot of spots(ridges, away)) {
        if (!free(spot)) continue;
        second ??= spot;
        const box = boxOfLine(spot, NUMBER.width, NUMBER.height);
        if (!leaders.some((other) => meet(box, other))) return spot;
      }
    }
    return second ?? spots(ridges).find(inside(width, height));
  };
  return all.map(({ mark, ridges, outline, feet }) => {
    const spot = mark.strength === undefined ? undefined : freeSpot(ridges);
    if (spot) taken.push(boxOfLine(spot, NUMBER.width, NUMBER.height));
    return { mark, outline, feet, ...(spot && { number: spot }) };
  });
}

const inside =
  (width: number, height: number) =>
  ({ x, y }: NumberSpot): boolean =>
    x >= 0 && x <= width && y >= 0 && y <= height;
