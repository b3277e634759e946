import {
  AXIS,
  type Place,
  type PlaceKey,
  placeKey,
  type Region,
  type Side,
  siteDefinition,
  type SiteId,
  type SiteLabel,
} from '../anatomy/index.js';
import { linesCross } from './crossing.js';
import type { Point } from './geometry.js';

/** The size of a label's text in px, as measured or estimated by who draws it. */
export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

export interface PlacedSite {
  readonly place: Place;
  readonly x: number;
  readonly y: number;
}

export interface PlacedLabel {
  readonly key: PlaceKey;
  readonly place: Place;
  /** The edge of the text nearest to the site, and the middle of its first line, in px. */
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'end';
  /** Room that the name takes, in px. */
  readonly width: number;
  readonly leader: readonly Point[];
}

type Group = NonNullable<SiteLabel['group']>;
type Hint = SiteLabel & Required<Pick<SiteLabel, 'group' | 'lane'>>;

const WHOLE_LANE = 930;
/** Default label positions of a region on the whole figure: close to the body, or between arm and trunk. */
const WHOLE_HINTS: Readonly<Record<Region, Hint>> = {
  head: { group: 'upper', lane: WHOLE_LANE },
  arm: { group: 'upper', lane: WHOLE_LANE },
  trunk: { group: 'inner', lane: 752 },
  leg: { group: 'lower', lane: WHOLE_LANE },
};

function wholeHint(site: SiteId): Hint {
  const { region, label } = siteDefinition(site);
  return { ...WHOLE_HINTS[region], ...label };
}

/** Vertical limits of each group on the whole figure, in figure units, so that no label covers a hand. */
const WHOLE_BOUNDS: Readonly<Record<Group, readonly [top: number, bottom: number]>> = {
  upper: [0, 528],
  inner: [508, 862],
  lower: [730, 1500],
};

export interface LabelFrame {
  /** Figure units to px. */
  readonly scale: number;
  readonly offsetX: number;
  readonly offsetY: number;
  readonly width: number;
  readonly height: number;
  /** Whether labels hug the body (whole figure) or stand at the frame's edges (crops). */
  readonly lanes: 'body' | 'edges';
  /** Whether findings stand below the names. */
  readonly findings: boolean;
  /** The one side shown, whose lane then takes the midline too. */
  readonly only?: Side | undefined;
}

const GAP = 4;
const BEND = 16;
const CLEAR = 8;
/** Room for the letters of the sides above the lanes. */
export const LETTERS = 44;
/** Height of a name, and of the line kept free below it for what was found, in px. */
export const NAME_LINE = 20;
const FINDING_LINE = 18;
/** Horizontal offset of a label at its site, so that its leader stays visible. */
const ASIDE = 20;

/** Minimum height of a frame in which the names of one side fit. */
export function leastHeight(labels: number): number {
  return LETTERS + labels * (NAME_LINE + GAP) + CLEAR;
}

/** Moves labels of one lane apart, keeping their order and moving each as little as the others allow. */
export function spread(
  wanted: readonly { y: number; height: number }[],
  top: number,
  bottom: number,
): number[] {
  // Pool neighbours that would overlap and centre each pool on the mean of what its members want.
  const pools: { sum: number; count: number; height: number; members: number[] }[] = [];
  wanted.forEach(({ y, height }, i) => {
    pools.push({ sum: y, count: 1, height: height + GAP, members: [i] });
    for (;;) {
      const b = pools.at(-1);
      const a = pools.at(-2);
      if (!a || !b || a.sum / a.count + a.height / 2 <= b.sum / b.count - b.height / 2) break;
      pools.splice(-2, 2, {
        sum: a.sum + b.sum,
        count: a.count + b.count,
        height: a.height + b.height,
        members: [...a.members, ...b.members],
      });
    }
  });
  const result: number[] = [];
  let floor = top;
  for (const pool of pools) {
    let y = Math.max(pool.sum / pool.count - pool.height / 2, floor);
    for (const i of pool.members) {
      const height = (wanted[i]?.height ?? 0) + GAP;
      result[i] = y + height / 2;
      y += height;
    }
    floor = y;
  }
  let ceiling = bottom;
  for (let i = wanted.length - 1; i >= 0; i--) {
    const height = (wanted[i]?.height ?? 0) + GAP;
    result[i] = Math.min(result[i] as number, ceiling - height / 2);
    ceiling = (result[i] as number) - height / 2;
  }
  return result;
}

interface Wanted extends PlacedSite {
  readonly wantedY: number;
  readonly labelX: number;
  readonly width: number;
  readonly anchor: 'start' | 'end';
  /** Whether its leader is vertical. */
  readonly upright: boolean;
  /** Lines to keep free below it. */
  readonly lines: number;
}

/** A midline site is labelled on the patient's left, where the arch leaves more room, unless only one side is shown. */
export function sideOf({ side }: Place, only: Side | undefined): Side {
  return side === 'midline' ? (only ?? 'left') : side;
}

/**
 * Places the names of the sites shown, without overlap and with leaders that keep the order of their sites. Positions
 * do not depend on findings, so nothing moves while they are recorded.
 */
export function placeLabels(
  sites: readonly PlacedSite[],
  frame: LabelFrame,
  sizeOf: (place: Place) => LabelSize,
): PlacedLabel[] {
  const middle = frame.offsetX + AXIS * frame.scale;
  const groups = new Map<string, { bounds: readonly [number, number]; labels: Wanted[] }>();
  const whole = frame.lanes === 'body';
  for (const site of sites) {
    const { place, x, y } = site;
    const side = sideOf(place, frame.only);
    const sign = side === 'left' ? 1 : -1;
    const {
      group,
      lane,
      rise = 0,
      lines = 1,
    } = whole ? wholeHint(place.site) : { group: 'edge' as const, lane: 0 };
    const { width } = sizeOf(place);
    const wanted: Wanted = {
      ...site,
      width,
      wantedY: y - rise * frame.scale,
      labelX:
        typeof lane === 'string'
          ? x - sign * ASIDE
          : whole
            ? middle + sign * (lane - AXIS) * frame.scale
            : sign > 0
              ? frame.width - CLEAR - width
              : CLEAR + width,
      anchor: sign > 0 ? 'start' : 'end',
      upright: typeof lane === 'string',
      lines,
    };
    const key = `${side} ${group}`;
    const found = groups.get(key) ?? { bounds: boundsOf(group as Group, frame), labels: [] };
    found.labels.push(wanted);
    groups.set(key, found);
  }
  return [...groups.values()].flatMap(({ bounds, labels }) => lineUp(labels, bounds, frame));
}

function boundsOf(group: Group | 'edge', { scale, offsetY, height }: LabelFrame): readonly [number, number] {
  if (group === 'edge') return [LETTERS, height - CLEAR];
  const [top, bottom] = WHOLE_BOUNDS[group];
  return [Math.max(LETTERS, top * scale + offsetY), Math.min(height - CLEAR, bottom * scale + offsetY)];
}

/** Stacks the labels of one group, with the lines they ask for free below if all fit, else one, else none. */
function lineUp(
  labels: Wanted[],
  [top, bottom]: readonly [number, number],
  frame: LabelFrame,
): PlacedLabel[] {
  const sorted = labels.sort((a, b) => a.wantedY - b.wantedY);
  const most = frame.findings ? Math.max(...sorted.map(({ lines }) => lines)) : 0;
  const belowOf = ({ lines }: Wanted, limit: number): number => FINDING_LINE * Math.min(lines, limit);
  const high = (limit: number): number =>
    sorted.reduce((sum, one) => sum + NAME_LINE + GAP + belowOf(one, limit), 0);
  let limit = most;
  while (limit > 0 && high(limit) > bottom - top) limit--;
  const ys = spread(
    sorted.map((one) => ({
      y: one.wantedY + belowOf(one, limit) / 2,
      height: NAME_LINE + belowOf(one, limit),
    })),
    top,
    bottom,
  );
  // At the edge of a crop all names are aligned with the longest.
  const outer = (sorted[0]?.anchor === 'start' ? Math.min : Math.max)(...sorted.map(({ labelX }) => labelX));
  const stand = (one: Wanted, i: number): PlacedLabel => {
    const { place, x, y, labelX, width, anchor, upright } = one;
    const ly = (ys[i] as number) - belowOf(one, limit) / 2;
    const lx = frame.lanes === 'body' ? labelX : outer;
    const sign = anchor === 'start' ? 1 : -1;
    const line: readonly Point[] = upright
      ? [
          [x, y],
          [x, ly < y ? ly + CLEAR + 4 : ly - CLEAR - 4],
        ]
      : leader(x, y, lx - sign * CLEAR, ly);
    return { key: placeKey(place), place, x: lx, y: ly, anchor, width, leader: line };
  };
  // Two labels whose leaders cross swap places; a few rounds resolve all crossings.
  let placed = sorted.map(stand);
  for (let round = 0; round < sorted.length ** 2; round++) {
    const [i, k] = crossing(placed);
    if (i === undefined || k === undefined) break;
    [sorted[i], sorted[k]] = [sorted[k] as Wanted, sorted[i] as Wanted];
    placed = sorted.map(stand);
  }
  return placed;
}

/** The first two labels whose lines cross. */
function crossing(labels: readonly PlacedLabel[]): readonly [number, number] | readonly [] {
  for (const [i, one] of labels.entries()) {
    const k = labels.findIndex((other, at) => at > i && linesCross(one.leader, other.leader));
    if (k >= 0) return [i, k];
  }
  return [];
}

/** A leader that leaves its site at 45 degrees, then runs level to the label. */
function leader(x: number, y: number, endX: number, endY: number): Point[] {
  const sign = Math.sign(endX - x);
  const run = Math.min(Math.abs(endY - y), Math.max(0, Math.abs(endX - x) - BEND));
  return [
    [x, y],
    [x + sign * run, endY],
    [endX, endY],
  ];
}
