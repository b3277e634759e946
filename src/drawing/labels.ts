import { type Laterality, type Place, type PlaceKey, placeKey, type SiteId } from '../anatomy/index.js';
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
  readonly leader: readonly Point[];
}

/** How a label is reached: along the lane of its side, or straight up or down where there is room above or below. */
type Hint =
  | {
      readonly lane: number;
      /** How far above its site the label stands, in figure units. */ readonly rise?: number;
    }
  | { readonly up: number }
  | { readonly down: number };

/**
 * Where labels stand on the whole figure, as figure units right of the axis (patient's left): beside head and legs close to
 * the body, between arm and trunk, or above and below the wrist.
 */
const WHOLE_HINTS: Partial<Record<SiteId, Hint>> = {
  brachial: { lane: 930, rise: 66 },
  radial: { up: 92 },
  ulnar: { down: 158 },
  femoral: { lane: 930, rise: -118 },
  'abdominal-aorta': { lane: 724 },
  renal: { lane: 724 },
  iliac: { lane: 790 },
};
const WHOLE_LANE = 930;

export interface LabelFrame {
  /** Figure units to px. */
  readonly scale: number;
  readonly offsetX: number;
  readonly offsetY: number;
  readonly width: number;
  readonly height: number;
  /** Whether labels hug the body (whole figure) or stand at the frame's edges (crops). */
  readonly lanes: 'body' | 'edges';
}

const GAP = 4;
const BEND = 16;
const CLEAR = 8;
/** Room for the letters of the sides above the lanes of a crop. */
const LETTERS = 44;

interface Wanted extends PlacedSite {
  readonly wantedY: number;
  readonly size: LabelSize;
  readonly lane: number;
  readonly anchor: 'start' | 'end';
}

/** A midline site is labelled on the patient's left, where the arch leaves more room. */
function sideOf({ side }: Place): Exclude<Laterality, 'midline'> {
  return side === 'midline' ? 'left' : side;
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

/** Places the labels of the sites shown, without overlap in a lane and with leaders that keep the order of their sites. */
export function placeLabels(
  sites: readonly PlacedSite[],
  frame: LabelFrame,
  sizeOf: (place: Place) => LabelSize,
): PlacedLabel[] {
  const middle = frame.offsetX + 600 * frame.scale;
  const labels: PlacedLabel[] = [];
  const lanes = new Map<string, Wanted[]>();
  for (const site of sites) {
    const { place, x, y } = site;
    const side = sideOf(place);
    const sign = side === 'left' ? 1 : -1;
    const anchor = sign > 0 ? 'start' : 'end';
    const size = sizeOf(place);
    const hint = frame.lanes === 'body' ? WHOLE_HINTS[place.site] : undefined;
    if (hint && 'up' in hint) {
      const ly = y - hint.up * frame.scale;
      labels.push(upright(place, x, y, ly, size, sign, -1));
      continue;
    }
    if (hint && 'down' in hint) {
      const ly = y + hint.down * frame.scale;
      labels.push(upright(place, x, y, ly, size, sign, 1));
      continue;
    }
    const unit = hint ? hint.lane : WHOLE_LANE;
    const edge = sign > 0 ? frame.width - CLEAR - size.width : CLEAR + size.width;
    const lane = frame.lanes === 'body' ? middle + sign * (unit - 600) * frame.scale : edge;
    const key = frame.lanes === 'body' ? `${side} ${unit}` : side;
    const wantedY = y - (hint?.rise ?? 0) * frame.scale;
    const wanted: Wanted = { ...site, wantedY, size, lane, anchor };
    lanes.set(key, [...(lanes.get(key) ?? []), wanted]);
  }
  for (const lane of lanes.values()) {
    lane.sort((a, b) => a.wantedY - b.wantedY);
    const outer = lane.reduce(
      (far, w) => (w.anchor === 'start' ? Math.min(far, w.lane) : Math.max(far, w.lane)),
      lane[0]?.lane ?? 0,
    );
    const ys = spread(
      lane.map(({ wantedY, size }) => ({ y: wantedY, height: size.height })),
      frame.lanes === 'edges' ? LETTERS : CLEAR,
      frame.height - CLEAR,
    );
    lane.forEach(({ place, x, y, anchor }, i) => {
      const ly = ys[i] as number;
      const sign = anchor === 'start' ? 1 : -1;
      const end = outer - sign * CLEAR;
      labels.push({
        key: placeKey(place),
        place,
        x: outer,
        y: ly,
        anchor,
        leader: leader(x, y, end, ly),
      });
    });
  }
  return labels;
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

function upright(
  place: Place,
  x: number,
  y: number,
  ly: number,
  size: LabelSize,
  sign: 1 | -1,
  way: 1 | -1,
): PlacedLabel {
  const near = way < 0 ? ly + size.height - CLEAR : ly - CLEAR - 4;
  return {
    key: placeKey(place),
    place,
    x: x - sign * 20,
    y: ly,
    anchor: sign > 0 ? 'start' : 'end',
    leader: [
      [x, y],
      [x, near],
    ],
  };
}
