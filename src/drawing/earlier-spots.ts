import { type PlaceKey, placeKey } from '../anatomy/index.js';
import { GLYPH_SIZE } from './glyphs.js';
import type { Layout } from './layout.js';

/** Half the width of a site's glyph, and of the smaller one of an earlier record beside it, in px at the usual size. */
const SITE_GLYPH = GLYPH_SIZE.map / 2;
const EARLIER_GLYPH = 8;
const AIR = 1;
/** Where the smaller glyph stands if nothing is in the way: to the left and a little below. */
const USUAL = { x: -21, y: 11 };
const TURNS = 24;
const DISTANCES = [1, 1.25, 1.6] as const;
/** What may stand about a glyph: the sign of a bruit and that of a thrill. */
const MARKS = [
  { x: 17, y: -13, r: 6 },
  { x: 0, y: 19, r: 6 },
] as const;

interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** The places to try about a site, those nearest to the usual one first. */
const OFFSETS: readonly Disc[] = DISTANCES.flatMap((far) =>
  Array.from({ length: TURNS }, (_, i) => {
    const turn = ((i % 2 ? 1 : -1) * Math.ceil(i / 2) * 2 * Math.PI) / TURNS;
    const [cos, sin] = [far * Math.cos(turn), far * Math.sin(turn)];
    return { x: USUAL.x * cos - USUAL.y * sin, y: USUAL.x * sin + USUAL.y * cos, r: EARLIER_GLYPH };
  }),
);

const gap = (a: Disc, b: Disc): number => Math.hypot(a.x - b.x, a.y - b.y) - a.r - b.r;

function spotsIn({ sites, glyphScale }: Layout): ReadonlyMap<PlaceKey, string> {
  // Everything is compared at the usual size of a glyph.
  const middles = sites.map(({ place, x, y }) => ({ place, x: x / glyphScale, y: y / glyphScale }));
  const about = (x: number, y: number, { r, ...offset }: Disc): Disc => ({
    x: x + offset.x,
    y: y + offset.y,
    r,
  });
  const glyphs = middles.map(({ x, y }): Disc => ({ x, y, r: SITE_GLYPH }));
  const marks = middles.flatMap(({ x, y }) => MARKS.map((mark) => about(x, y, mark)));
  const taken: Disc[] = [];
  return new Map(
    middles.map(({ place, x, y }) => {
      const room = (offset: Disc, things: readonly Disc[]): number =>
        Math.min(...things.map((thing) => gap(about(x, y, offset), thing)));
      const free = OFFSETS.filter((offset) => room(offset, [...glyphs, ...taken]) >= AIR);
      const best =
        free.find((offset) => room(offset, marks) >= 0) ??
        free[0] ??
        OFFSETS.reduce((a, b) => (room(b, glyphs) > room(a, glyphs) ? b : a));
      taken.push(about(x, y, best));
      const corner = (middle: number): string => (middle - EARLIER_GLYPH).toFixed(1);
      return [placeKey(place), `translate(${corner(best.x)} ${corner(best.y)}) scale(.67)`] as const;
    }),
  );
}

const known = new WeakMap<Layout, ReadonlyMap<PlaceKey, string>>();

/**
 * Where the glyph of an earlier record stands beside each site, as an SVG transform about the site’s middle: clear of the other sites and
 * of their earlier glyphs, and of signs where it can be. It follows from the layout alone, so that nothing moves while one records.
 */
export function earlierSpots(layout: Layout): ReadonlyMap<PlaceKey, string> {
  const spots = known.get(layout) ?? spotsIn(layout);
  known.set(layout, spots);
  return spots;
}
