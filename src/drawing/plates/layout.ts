import { type Place, placeKey, type Side, SIDES } from '../../anatomy/index.js';
import { findingLines } from '../finding-lines.js';
import { type Point, sampleAt, type Spline } from '../geometry.js';
import { NAME_LINE, type PlacedLabel, type PlacedSite } from '../labels.js';
import {
  findingWidth,
  LABEL_TYPE,
  type LabelText,
  LARGEST_GLYPH,
  type Layout,
  OVER_HEIGHT,
  textWidth,
} from '../layout.js';
import { type Crop, placesIn } from '../views.js';
import { placeDigits } from './digits.js';
import type { PreparedPlate } from './prepared.js';

const PAD = 8;
/** Room above the drawing for the letter of the side and the name of the plate, in px. */
const HEAD = 40;
/** Room below the drawing for captions that stand there, and their line in it, in px. */
const BELOW = { room: 22, line: 16 } as const;
/** Room between the skin and a name beside it, in px. */
const BESIDE = 14;
/** How far above and below a name the skin must stand back from it, in px. */
const CLEAR = 16;
/** Glyphs have their usual size up to this scale, and grow with it beyond. */
const USUAL_SCALE = 0.65;
/** Codes replace names where names would shrink the plate below this share of its size without. */
const LEAST_SHARE = 0.7;
/** Distance between points of the skin at which it is looked at, in units of the plate. */
const STEP = 6;

interface Span {
  readonly from: number;
  readonly to: number;
}

const SKINS = new WeakMap<PreparedPlate, Point[][]>();

/** The skin of a plate as points, one list a contour, within the box of the plate; computed once. */
function skinOf(plate: PreparedPlate): Point[][] {
  const skin = SKINS.get(plate) ?? sampledSkin(plate);
  SKINS.set(plate, skin);
  return skin;
}

function sampledSkin({ outlines, size }: PreparedPlate): Point[][] {
  const sampled = (spline: Spline): Point[] => {
    const count = Math.ceil(spline.length / STEP);
    return Array.from({ length: count }, (_, i): Point => {
      const { x, y } = sampleAt(spline, i / count);
      return [x, y];
    }).filter(([, y]) => y >= 0 && y <= size[1]);
  };
  return outlines.map(sampled);
}

/** Where contours lie between two heights, from left to right. */
function skinBetween(skin: readonly Point[][], top: number, bottom: number): Span[] {
  return skin
    .map((contour) => contour.filter(([, y]) => y >= top && y <= bottom).map(([x]) => x))
    .filter((xs) => xs.length > 0)
    .map((xs) => ({ from: Math.min(...xs), to: Math.max(...xs) }));
}

/** Where a name can stand beside a site: the skin it clears, and what stands on its other side, in units of the plate. */
interface Berth {
  readonly place: Place;
  readonly at: Point;
  readonly side: Side;
  readonly edge: number;
  readonly next: number | undefined;
}

function berthOf(plate: PreparedPlate, place: Place, skin: readonly Point[][], clear: number): Berth {
  const [x, y] = plate.positionOf(place) as Point;
  const given = plate.plate.sites.find(({ site }) => site === place.site)?.name ?? 'right';
  const flipped = plate.plate.pair ? place.side !== plate.plate.given : plate.mirrored;
  const side = flipped === (given === 'left') ? 'right' : 'left';
  const spans = skinBetween(skin, y - clear, y + clear);
  const own = spans.find(({ from, to }) => from <= x && to >= x) ?? { from: x, to: x };
  const [edge, others] =
    side === 'right'
      ? [own.to, spans.map(({ from }) => from).filter((from) => from > own.to)]
      : [own.from, spans.map(({ to }) => to).filter((to) => to < own.from)];
  const next = others.length ? (side === 'right' ? Math.min(...others) : Math.max(...others)) : undefined;
  return { place, at: [x, y], side, edge, next };
}

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
}

/** The skin's extent from left to right, and how far down it reaches. */
function extentOf(skin: readonly Point[][]): Extent {
  const [xs, ys] = [skin.flat().map(([x]) => x), skin.flat().map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.max(...ys) };
}

const CROPS = new WeakMap<PreparedPlate, Crop>();

/** What a small picture shows of a plate: from side to side of the skin, and down to its end; computed once. */
export function cropOfPlate(plate: PreparedPlate): Crop {
  const crop = CROPS.get(plate) ?? cropAround(plate);
  CROPS.set(plate, crop);
  return crop;
}

function cropAround(plate: PreparedPlate): Crop {
  const { left, right, bottom } = extentOf(skinOf(plate));
  return { x: left, y: 0, width: right - left, height: Math.min(plate.size[1], bottom + 8) };
}

/** Shares of the largest possible scale that are tried, largest first. */
const SHARES = Array.from({ length: 30 }, (_, i) => 1 - i * 0.025);

/**
 * Lays a plate out in a width: the limb in the middle, each name level with its site beside the skin. Neither sizes nor places
 * depend on what was found.
 * @param width of the container in px
 * @param maxHeight greatest height of the drawing in px
 */
export function layOutPlate(
  plate: PreparedPlate,
  width: number,
  maxHeight: number,
  labelOf: (place: Place) => LabelText,
): Layout {
  const { view } = plate;
  const skin = skinOf(plate);
  const { left, right, bottom } = extentOf(skin);
  const across = right - left;
  const deep = Math.min(plate.size[1], bottom + 8);
  const foot = plate.plate.captions.some(({ y }) => y > plate.size[1]) ? BELOW.room : 0;
  const bare = Math.min((maxHeight + OVER_HEIGHT - HEAD - foot) / deep, (width - 2 * PAD) / across);
  const places = placesIn(view);
  const berths = (scale: number): Berth[] =>
    places.map((place) => berthOf(plate, place, skin, CLEAR / scale));
  const wide = (place: Place, naming: Layout['naming']): number => {
    const { name, code } = labelOf(place);
    return naming === 'names' ? textWidth(name) : code.length * LABEL_TYPE.perCodeLetter;
  };
  /** Room that names need beyond the skin at both sides, in px; `undefined` where one meets other skin. */
  const needed = (scale: number, naming: Layout['naming']): Record<Side, number> | undefined => {
    const need: Record<Side, number> = { left: PAD, right: PAD };
    for (const { place, side, edge, next } of berths(scale)) {
      const reach = wide(place, naming) + BESIDE;
      if (next === undefined) {
        const inset = (side === 'right' ? right - edge : edge - left) * scale;
        need[side] = Math.max(need[side], reach - inset + PAD);
      } else if (Math.abs(next - edge) * scale < reach + PAD) return undefined;
    }
    return need;
  };
  const fits = (naming: Layout['naming'], least: number): number | undefined =>
    SHARES.filter((share) => share >= least)
      .map((share) => share * bare)
      .find((scale) => {
        const need = needed(scale, naming);
        return need && across * scale + need.left + need.right <= width;
      });
  const named = fits('names', LEAST_SHARE);
  const naming = named === undefined ? 'codes' : 'names';
  const scale = named ?? fits('codes', 0) ?? bare * 0.5;
  const need = needed(scale, naming) ?? { left: PAD, right: PAD };
  const middle = (width - across * scale) / 2;
  const offsetX = Math.min(Math.max(middle, need.left), width - across * scale - need.right) - left * scale;
  const height = Math.round(deep * scale + HEAD + PAD + foot);
  const offsetY = HEAD;
  const px = ([x, y]: Point): Point => [x * scale + offsetX, y * scale + offsetY];
  const stands = berths(scale);
  const sites = stands.map(({ place, at }): PlacedSite => {
    const [x, y] = px(at);
    return { place, x, y };
  });
  const labels = stands.map(({ place, at, side, edge }): PlacedLabel => {
    const [x, y] = px(at);
    const out = side === 'right' ? BESIDE : -BESIDE;
    const [lx] = px([edge, 0]);
    return {
      key: placeKey(place),
      place,
      x: lx + out,
      y,
      anchor: side === 'right' ? 'start' : 'end',
      width: wide(place, naming),
      leader: [
        [x, y],
        [lx + out * 0.7, y],
      ],
    };
  });
  const glyphScale = Math.min(LARGEST_GLYPH, Math.max(1, scale / USUAL_SCALE));
  return {
    view,
    width,
    height,
    scale,
    glyphScale,
    offsetX,
    offsetY,
    naming,
    sites,
    labels,
    findings: findingLines(labels, sites, {
      width,
      height,
      findingWidth,
      findingOf: (place) => (naming === 'names' ? (labelOf(place).finding ?? '') : ''),
    }),
    letters: lettersOf(plate, width),
    plate,
    digits: placeDigits(plate, px, glyphScale),
    captions: captionsOf(plate, px, width, deep * scale + HEAD + BELOW.line),
  };
}

/** Least distance of the middle of a caption from the edge, in px. */
const CAPTION = 44;
const LETTER_Y = 30;
const LETTER_X = 20;

/** The letters of the sides: of a plate that shows both from behind, the left one is on the left. */
function lettersOf({ view, plate: { pair } }: PreparedPlate, width: number): Layout['letters'] {
  if (!pair) return [{ side: view.startsWith('right') ? 'right' : 'left', x: LETTER_X, y: LETTER_Y }];
  const [first, second] = [...SIDES].sort((a) => (a === 'left' ? -1 : 1)) as [Side, Side];
  return [
    { side: first, x: LETTER_X, y: LETTER_Y },
    { side: second, x: width - LETTER_X, y: LETTER_Y },
  ];
}

/** @param below where the captions below the drawing stand, in px */
function captionsOf(
  plate: PreparedPlate,
  px: (point: Point) => Point,
  width: number,
  below: number,
): Layout['captions'] {
  const { size } = plate;
  const { captions } = plate.plate;
  return [
    { word: 'title', x: LETTER_X + NAME_LINE, y: LETTER_Y - 2 },
    ...captions.map(({ word, x, y }) => {
      const [at, down] = px([plate.mirrored ? size[0] - x : x, y]);
      return { word, x: Math.min(width - CAPTION, Math.max(CAPTION, at)), y: y > size[1] ? below : down };
    }),
  ];
}
