import { AXIS, type Place, type PlaceKey, placeKey, type Side, SIDES } from '../anatomy/index.js';
import { findingLines, type PlacedFinding } from './finding-lines.js';
import {
  type LabelSize,
  leastHeight,
  NAME_LINE,
  type PlacedLabel,
  type PlacedSite,
  placeLabels,
  sideOf,
} from './labels.js';
import { doorRooms } from './plates/door-places.js';
import type { PlacedDigits } from './plates/digits.js';
import type { PlateCaption } from './plates/plate.js';
import type { PreparedPlate } from './plates/prepared.js';
import { positionOf } from './healthy.js';
import { type BodyView, cropOf, placesIn, type View } from './views.js';

/** The texts of a label, by available space. */
export interface LabelText {
  readonly name: string;
  readonly code: string;
  /** What was found, where the glyph alone does not say it. */
  readonly finding?: string;
}

/** A view laid out in px: the figure scaled and moved, sites, labels, and the letters of the sides. */
export interface Layout {
  readonly view: View;
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  /** How much larger than usual the glyphs are drawn, so that they keep up with an enlarged figure. */
  readonly glyphScale: number;
  readonly offsetX: number;
  readonly offsetY: number;
  readonly naming: 'names' | 'codes';
  readonly sites: readonly PlacedSite[];
  readonly labels: readonly PlacedLabel[];
  /** What was found, in the lines that stand below a site's name or beyond it. */
  readonly findings: ReadonlyMap<PlaceKey, PlacedFinding>;
  readonly letters: readonly { readonly side: Side; readonly x: number; readonly y: number }[];
  /** The plate that is shown instead of a part of the whole figure. */
  readonly plate?: PreparedPlate;
  /** Where the fingers or toes of a plate are marked. */
  readonly digits?: PlacedDigits | undefined;
  /** What a plate shows, in words of the locale. */
  readonly captions?: readonly {
    readonly word: PlateCaption | 'title';
    readonly x: number;
    readonly y: number;
  }[];
}

/** Sizes of type in px. Widths are estimated from the count of letters, generously, so that text never touches. */
export const LABEL_TYPE = { size: 14, finding: 13, perLetter: 7.5, perCodeLetter: 11 } as const;
const PAD = 8;
/** How much taller the figure is than the space given to it, in px. */
export const OVER_HEIGHT = 2 * PAD;
/** Glyphs grow with an enlarged figure up to this factor. */
export const LARGEST_GLYPH = 1.5;
/** Farthest label lane and farthest finger from the axis on the whole figure, in figure units. */
const LANE = 330;
const FINGERS = 552;
/** Of a view of one side, how far beyond the lane its letter stands, in figure units. */
const LETTER_OUT = 20;
/** Below this scale names are too large to stand between arm and trunk. */
const LEAST_HUGGING = 0.5;
/** Codes replace names when names would shrink the figure below this share of its size without labels; one limb alone may shrink more. */
const LEAST_SHARE = 0.7;
const LEAST_SHARE_ALONE = 0.64;

/** Room between the labels at the edge of a crop and what is drawn, in px. */
const LANE_GAP = 24;
/**
 * Least distance of two sites in px: that of two targets of the least size, 24 px, that don't overlap; of full size, 44 px, where few are
 * nearer and by so little that none leaves its artery.
 */
const LEAST_APART = 25;
const FULLY_APART = 44.1;
const FULL_SCALE = 0.51;

export function textWidth(text: string): number {
  return text.length * LABEL_TYPE.perLetter;
}

/** Width of what was found, in smaller type. */
export function findingWidth(text: string): number {
  return (textWidth(text) * LABEL_TYPE.finding) / LABEL_TYPE.size;
}

/** Room that a label's name takes, in px. */
export function labelSize(text: Omit<LabelText, 'finding'>, naming: Layout['naming']): LabelSize {
  const width = naming === 'codes' ? text.code.length * LABEL_TYPE.perCodeLetter : textWidth(text.name);
  return { width, height: NAME_LINE };
}

/**
 * Separates sites that are too close together for a fingertip on a small drawing, each moved as little as possible; at the
 * usual size nothing moves.
 */
function apart(sites: readonly PlacedSite[], least: number): PlacedSite[] {
  const spots = sites.map(({ place, x, y }) => ({ place, x, y }));
  for (let round = 0; round < 60; round++) {
    const moves = spots.map(() => ({ x: 0, y: 0 }));
    let still = true;
    spots.forEach((a, i) => {
      for (let k = i + 1; k < spots.length; k++) {
        const b = spots[k] as PlacedSite;
        // Most sites are far from each other.
        if (Math.abs(b.x - a.x) >= least || Math.abs(b.y - a.y) >= least) continue;
        const distance = Math.hypot(b.x - a.x, b.y - a.y) || 1;
        if (distance >= least - 0.01) continue;
        still = false;
        const share = (least - distance) / 2 / distance;
        for (const [n, sign] of [
          [i, -1],
          [k, 1],
        ] as const) {
          const move = moves[n] as { x: number; y: number };
          move.x += sign * (b.x - a.x) * share;
          move.y += sign * (b.y - a.y) * share;
        }
      }
    });
    if (still) break;
    // Applied simultaneously, so that mirrored sites stay mirrored.
    spots.forEach((spot, i) => {
      spot.x += moves[i]?.x ?? 0;
      spot.y += moves[i]?.y ?? 0;
    });
  }
  return spots;
}

const NOTHING_FOUND: Layout['findings'] = new Map();

/**
 * Lays a view out in a width. Neither size nor sites nor names depend on what was found, so that nothing moves while
 * findings are recorded.
 * @param width of the container in px
 * @param maxHeight greatest height of the figure in px
 */
export function layOut(
  view: BodyView,
  width: number,
  maxHeight: number,
  labelOf: (place: Place) => LabelText,
): Layout {
  return withFindings(layOutNames(view, width, maxHeight, labelOf), (place) => labelOf(place).finding ?? '');
}

/** The same layout where nothing was found, else with what was found below the names or beyond them. */
export function withFindings(named: Layout, findingOf: (place: Place) => string): Layout {
  const { view, labels, sites, width, height, naming } = named;
  if (naming === 'codes' || !labels.some(({ place }) => findingOf(place))) return named;
  const kept = view === 'whole' ? doorRooms(named) : [];
  return {
    ...named,
    findings: findingLines(labels, sites, { width, height, findingWidth, findingOf, kept }),
  };
}

/** What {@link layOut} does for sites at which nothing was found. */
export function layOutNames(
  view: BodyView,
  width: number,
  maxHeight: number,
  labelOf: (place: Place) => Omit<LabelText, 'finding'>,
): Layout {
  const crop = cropOf(view);
  const places = placesIn(view);
  const whole = view === 'whole';
  const [only] = SIDES.filter((side) => view.startsWith(`${side}-`));
  const leastShare = only ? LEAST_SHARE_ALONE : LEAST_SHARE;
  const bare = Math.min(maxHeight / crop.height, (width - 2 * PAD) / (whole ? 2 * FINGERS : crop.width));

  // What lies inward of the axis on the view of one side.
  const inward = only ? (only === 'left' ? AXIS - crop.x : crop.x + crop.width - AXIS) : LANE;
  const outward = crop.width - inward;
  const texts = new Map(places.map((place) => [place, labelOf(place)]));
  const textAt = (place: Place) => texts.get(place) as Omit<LabelText, 'finding'>;
  const longestOf = (naming: Layout['naming']): number =>
    Math.max(0, ...places.map((place) => labelSize(textAt(place), naming).width));
  const longest = { names: longestOf('names'), codes: longestOf('codes') };
  /** The scale at which names stand close to the body, or undefined where they would shrink it too much. */
  const hugging = ((): number | undefined => {
    const beside = longest.names + PAD;
    const room = only ? width - 2 * PAD : width / 2;
    const shown = only ? crop.width : crop.width / 2;
    const scale = Math.min(bare, (room - beside) / (LANE + (only ? inward : 0)), room / shown);
    return scale >= bare * leastShare && scale >= LEAST_HUGGING ? scale : undefined;
  })();
  const hugs = whole || hugging !== undefined;

  const scaleFor = (naming: Layout['naming']): number => {
    const room = longest[naming];
    if (whole) return Math.min(bare, (width / 2 - room - PAD) / LANE);
    if (hugging !== undefined) return hugging;
    const lanes = only ? 1 : 2;
    return Math.min(bare, (width - lanes * (room + LANE_GAP) - 2 * PAD) / crop.width);
  };
  const named = scaleFor('names');
  const naming = named >= bare * leastShare ? 'names' : 'codes';
  const scale = Math.max(0.1, naming === 'names' ? named : scaleFor('codes'));

  const onOneSide = Math.max(...SIDES.map((side) => places.filter((p) => sideOf(p, only) === side).length));
  const drawnHeight = crop.height * scale + OVER_HEIGHT;
  const height = Math.round(whole ? drawnHeight : Math.max(drawnHeight, leastHeight(onOneSide)));
  const drawn = crop.width * scale;
  const free = width - drawn;
  // Of one side, limb and names together stand in the middle.
  const past = hugs ? Math.max(0, LANE * scale + longest.names - outward * scale) : free;
  // At the edge names keep off the toes and the hand.
  const names = longest[naming] + LANE_GAP + PAD;
  const beside = hugs
    ? Math.max(0, free - past) / 2
    : Math.min(PAD * 4, free / 2, Math.max(PAD, free - names));
  const left = only ? (only === 'left' ? beside : free - beside) : free / 2;
  const offsetX = left - crop.x * scale;
  const offsetY = (height - crop.height * scale) / 2 - crop.y * scale;
  const sites = apart(
    places.map((place) => {
      const { x, y } = positionOf(place);
      return { place, x: x * scale + offsetX, y: y * scale + offsetY };
    }),
    scale < FULL_SCALE ? LEAST_APART : FULLY_APART,
  );
  const labels = placeLabels(
    sites,
    {
      scale,
      offsetX,
      offsetY,
      width,
      height,
      lanes: hugs ? 'body' : 'edges',
      findings: naming === 'names',
      only,
    },
    (place) => labelSize(textAt(place), naming),
  );
  return {
    view,
    width,
    height,
    scale,
    glyphScale: Math.min(LARGEST_GLYPH, Math.max(1, scale)),
    offsetX,
    offsetY,
    naming,
    sites,
    labels,
    findings: NOTHING_FOUND,
    letters: letters(view, width, offsetX, scale, hugs),
  };
}

function letters(
  view: View,
  width: number,
  offsetX: number,
  scale: number,
  hugs: boolean,
): Layout['letters'] {
  const y = 30;
  const middle = offsetX + AXIS * scale;
  const lane = (LANE + LETTER_OUT) * scale;
  if (view.startsWith('right')) return [{ side: 'right', x: hugs ? Math.max(20, middle - lane) : 20, y }];
  if (view.startsWith('left'))
    return [{ side: 'left', x: hugs ? Math.min(width - 20, middle + lane) : width - 20, y }];
  const reach = hugs ? Math.min(middle - 20, Math.max(380 * scale, 120)) : middle - 20;
  return [
    { side: 'right', x: middle - reach, y },
    { side: 'left', x: middle + reach, y },
  ];
}

/** The site nearest to a point, within a reach in px. */
export function nearestSite(layout: Layout, x: number, y: number, reach: number): PlacedSite | undefined {
  let best: PlacedSite | undefined;
  let least = reach;
  for (const site of layout.sites) {
    const distance = Math.hypot(site.x - x, site.y - y);
    if (distance <= least) {
      least = distance;
      best = site;
    }
  }
  return best;
}

/** The site of a layout by its key. */
export function siteIn(layout: Layout, key: PlaceKey): PlacedSite | undefined {
  return layout.sites.find((site) => placeKey(site.place) === key);
}
