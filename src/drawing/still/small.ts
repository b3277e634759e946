import { type Place, placeKey, type Side, SIDES } from '../../anatomy/index.js';
import type { Point } from '../geometry.js';
import { type GlyphKind, GLYPHS, MARKS, type MarkKind, NUMERAL_SHIFT, NUMERALS } from '../glyphs.js';
import type { Layout } from '../layout.js';
import { GLYPH_PAINT } from '../paint.js';
import type { SiteViews } from '../site-view.js';
import { PathWriter } from '../path-writer.js';
import { positionOf } from '../healthy.js';
import { type BodyView, type Crop, cropOf, placesIn, type View } from '../views.js';
import { glyphPaint, shifted } from './glyph.js';
import { type Ink, painted, type Painted } from './ink.js';
import { group, pathOf, tag, tenth } from './xml.js';

/** Room around a small picture, in px. */
const PAD = 2;
/** Size of the glyphs of a small picture to the figure, and its limits; 1 is the size on a map. */
const GLYPH = { perScale: 2.2, least: 0.34, most: 1 };
/** From this size of the glyphs their numerals can be read. */
const READABLE = 0.6;
/** Least size of the letters of the sides, in px. */
const LEAST_LETTER = 9;

const LAYOUTS = new Map<string, SmallLayout>();
/** Pictures of a page are mostly of one view and width. */
const MOST_KEPT = 24;

/** A view without names, as large as its width allows; the latest are kept. */
export function smallLayout(view: BodyView, width: number): SmallLayout {
  const key = `${view} ${width}`;
  let layout = LAYOUTS.get(key);
  if (!layout) {
    if (LAYOUTS.size >= MOST_KEPT) LAYOUTS.clear();
    LAYOUTS.set(key, (layout = laidOut(view, width)));
  }
  return layout;
}

function laidOut(view: BodyView, width: number): SmallLayout {
  const sides = SIDES.filter((side) => !view.includes('-') || view.startsWith(side));
  const corners = sides.map((side): Corner => ({ side, right: side === 'left' }));
  const at = (place: Place): Point => {
    const { x, y } = positionOf(place);
    return [x, y];
  };
  return fitted(view, width, cropOf(view), at, corners);
}

/** The upper corner in which the letter of a side stands. */
export interface Corner {
  readonly side: Side;
  readonly right: boolean;
}

/** A layout of a small picture. */
export type SmallLayout = Layout & { readonly letterSize: number };

/**
 * What is shown of a drawing, as large as a width allows.
 * @param at where a place lies, in units of the drawing
 */
export function fitted(
  view: View,
  width: number,
  crop: Crop,
  at: (place: Place) => Point,
  corners: readonly Corner[],
): SmallLayout {
  const scale = (width - 2 * PAD) / crop.width;
  const height = Math.round(crop.height * scale + 2 * PAD);
  const [offsetX, offsetY] = [PAD - crop.x * scale, PAD - crop.y * scale];
  const size = Math.max(LEAST_LETTER, Math.min(22, 40 * scale));
  return {
    view,
    width,
    height,
    scale,
    glyphScale: Math.min(GLYPH.most, Math.max(GLYPH.least, scale * GLYPH.perScale)),
    offsetX,
    offsetY,
    naming: 'codes',
    sites: placesIn(view).map((place) => {
      const [x, y] = at(place);
      return { place, x: x * scale + offsetX, y: y * scale + offsetY };
    }),
    labels: [],
    findings: new Map(),
    letters: corners.map(({ side, right }) => ({ side, x: right ? width - size : size, y: size * 1.2 })),
    letterSize: size,
  };
}

/** A glyph that is a disc: drawn as the round end of a line without length, which takes a dozen bytes. */
const DISC = 5.6;
/** The same for the square of an absent pulse, whose round corners would not be seen. */
const SQUARE = 17;

/**
 * The glyphs of all sites, each kind as one path a paint. Sites to listen at only show what was heard there, and sites not
 * examined a ring without dashes, which would not be seen.
 */
export function smallGlyphs(layout: Layout, sites: SiteViews, ink: Ink): string {
  const { glyphScale: g } = layout;
  const paths = new Map<string, { paint: Painted; d: string; x: number; y: number }>();
  const add = (key: string, paint: Painted, d: string, x = 0, y = 0): void => {
    const found = paths.get(key);
    if (found) Object.assign(found, { d: found.d + d, x, y });
    else paths.set(key, { paint, d, x, y });
  };
  const over: (() => void)[] = [];
  const dot = (width: number, stroke: string, cap: 'round' | 'square' = 'round'): Painted => ({
    stroke,
    'stroke-width': tenth(width),
    'stroke-linecap': cap,
  });
  for (const { place, x, y } of layout.sites) {
    const site = sites.get(placeKey(place));
    if (!site) continue;
    const { kind, numeral, marks } = site.shown;
    const [cx, cy] = [Math.round(x / g), Math.round(y / g)];
    /** A line without length; its way from the last one takes fewer bytes than its place. */
    const addDot = (key: string, paint: Painted): void => {
      const last = paths.get(key);
      const [dx, dy] = [cx - (last?.x ?? 0), cy - (last?.y ?? 0)];
      add(key, paint, `${last ? 'm' : 'M'}${dx}${dy < 0 ? '' : ' '}${dy}h0`, cx, cy);
    };
    const moved = (d: string): string => shifted(d, cx - 12, cy - 12);
    if (kind === 'not-examined') {
      addDot('ring', dot(2 * DISC + 1.7, ink.colour('mute')));
      addDot('hole', dot(2 * DISC - 1.7, ink.colour('paper')));
    } else if (kind !== 'listen') {
      const [shape, second] = GLYPHS[kind];
      addDot('halo', dot(25.5, ink.colour('body')));
      if (kind === 'absent' && g < READABLE)
        over.push(() => addDot(kind, dot(SQUARE, ink.colour('gone'), 'square')));
      else over.push(() => add(`${kind} ${shape.paint}`, glyphPaint(ink, shape.paint, kind), moved(shape.d)));
      if (second) over.push(() => add(`${kind} 2`, glyphPaint(ink, second.paint, kind), moved(second.d)));
      const digit = g >= READABLE && numeral !== null && NUMERALS[numeral];
      if (digit)
        over.push(() => {
          const d = shifted(digit, cx - 12, cy - 12 + (NUMERAL_SHIFT[kind as GlyphKind] ?? 0));
          add(`${kind} numeral`, glyphPaint(ink, 'numeral', kind), d);
        });
    }
    for (const mark of marks)
      over.push(() => add('mark', painted(ink, [GLYPH_PAINT['.mark']]), moved(MARKS[mark as MarkKind])));
  }
  for (const draw of over) draw();
  const scale = Number(g.toFixed(3));
  return group(
    { transform: scale === 1 ? undefined : `scale(${scale})`, fill: 'none' },
    [...paths.values()].map(({ paint, d }) => pathOf(d, paint)).join(''),
  );
}

/** A ground of one colour. */
export const paperText = (width: number, height: number, ink: Ink): string =>
  tag('rect', { width, height, fill: ink.colour('paper') });

/** Size of a dot, and of the ring in the corner, of a picture that is too small for glyphs, in px. */
const DOT = { absent: 2.8, other: 3 };
const RING = { r: 2.5, width: 1.3 };

/**
 * What stands for the sites of a picture that is too small for glyphs: a dot at each that is not as usual, square where the pulse is
 * absent; a ring in the corner unless every pulse was stated.
 */
export function tinySigns(layout: Layout, sites: SiteViews, ink: Ink): string {
  const [absent, other] = [new PathWriter(), new PathWriter()];
  let unstated = false;
  for (const { place, x, y } of layout.sites) {
    const site = sites.get(placeKey(place));
    if (site?.shown.kind === 'not-examined') unstated = true;
    if (site?.weight !== 'loud') continue;
    const path = site.shown.kind === 'absent' ? absent : other;
    path.moveTo(x, y);
    path.lineTo(x, y);
  }
  const { r, width } = RING;
  const at = layout.width - r - width;
  const dot = (path: PathWriter, size: number, colour: string, cap: 'round' | 'square'): string =>
    pathOf(path.toString(), { stroke: colour, 'stroke-width': size, 'stroke-linecap': cap });
  return [
    dot(other, DOT.other + 1.6, ink.colour('weak-edge'), 'round'),
    dot(other, DOT.other, ink.colour('weak'), 'round'),
    dot(absent, DOT.absent, ink.colour('gone'), 'square'),
    unstated
      ? tag('circle', {
          ...{ cx: tenth(at), cy: r + width, r, fill: ink.colour('paper') },
          ...{ stroke: ink.colour('mute'), 'stroke-width': width },
        })
      : '',
  ].join('');
}
