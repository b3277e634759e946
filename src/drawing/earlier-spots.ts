import { type PlaceKey, placeKey } from '../anatomy/index.js';
import { boxOfLine } from './box.js';
import { GLYPH_SIZE } from './glyphs.js';
import { NAME_LINE } from './labels.js';
import type { Layout } from './layout.js';

/** Half the width of a site's glyph, and of the smaller one of an earlier record beside it, in px at the usual size. */
const SITE = GLYPH_SIZE.map / 2;
const EARLIER = 8;
/** Where the smaller glyph stands if nothing is in the way, as an angle and a distance: to the left and a little below. */
const USUAL = [2.66, 23.7] as const;
const TURNS = 24;
const FARTHER = 3;

interface EarlierGlyphs {
  readonly spots: ReadonlyMap<PlaceKey, string>;
  /** Middles and radius in px. */
  readonly discs: readonly { readonly x: number; readonly y: number; readonly r: number }[];
}

const known = new WeakMap<Layout, EarlierGlyphs>();

/**
 * Where the glyph of an earlier record stands beside each site, as an SVG transform about the site’s middle: clear of the other sites, of
 * their earlier glyphs and of every name. It follows from the layout alone, so that nothing moves while one records.
 */
export function earlierSpots(layout: Layout): ReadonlyMap<PlaceKey, string> {
  return earlierGlyphs(layout).spots;
}

/** The same with their discs. */
export function earlierGlyphs(layout: Layout): EarlierGlyphs {
  const before = known.get(layout);
  if (before) return before;
  const spots = new Map<PlaceKey, string>();
  // Everything is compared at the usual size of a glyph.
  const middles = layout.sites.map(({ x, y }) => [x / layout.glyphScale, y / layout.glyphScale, SITE]);
  const taken = [...middles];
  const names = layout.labels.map((label) => {
    const { left, top, right, bottom } = boxOfLine(label, label.width, NAME_LINE);
    return [left, top, right, bottom].map((px) => px / layout.glyphScale);
  });
  const onName = (x: number, y: number): boolean =>
    names.some(
      ([left, top, right, bottom]) =>
        Math.hypot(Math.max(left! - x, 0, x - right!), Math.max(top! - y, 0, y - bottom!)) < EARLIER + 1,
    );
  layout.sites.forEach(({ place }, site) => {
    const [x, y] = middles[site] as [number, number];
    for (let i = 0; i < 9 * TURNS; i++) {
      const angle = USUAL[0] + (((i % 2 || -1) * ((i + 1) >> 1)) % TURNS) * (Math.PI / TURNS) * 2;
      const distance = USUAL[1] + FARTHER * Math.floor(i / TURNS);
      const [dx, dy] = [distance * Math.cos(angle), distance * Math.sin(angle)];
      if (taken.some(([a, b, r]) => Math.hypot(x + dx - a!, y + dy - b!) < r! + EARLIER + 1)) continue;
      if (onName(x + dx, y + dy)) continue;
      taken.push([x + dx, y + dy, EARLIER]);
      spots.set(
        placeKey(place),
        `translate(${(dx - EARLIER).toFixed(1)} ${(dy - EARLIER).toFixed(1)}) scale(.67)`,
      );
      break;
    }
  });
  const by = layout.glyphScale;
  const discs = taken.slice(middles.length).map(([x, y, r]) => ({ x: x! * by, y: y! * by, r: r! * by }));
  const placed = { spots, discs };
  known.set(layout, placed);
  return placed;
}
