import { describe, expect, it } from 'vitest';
import { type Place, placeKey } from '../../../src/anatomy/index.js';
import {
  type BodyView,
  earlierSpots,
  GLYPH_SIZE,
  isPlateView,
  type Layout,
  layOut,
  NAME_LINE,
  VIEWS,
} from '../../../src/drawing/index.js';
import { en } from '../../../src/locale/index.js';

const cases = [278, 318, 358, 412, 638, 766, 818, 1022, 1531, 3400].flatMap((width) =>
  VIEWS.filter((view): view is BodyView => !isPlateView(view))
    .filter((view) => view !== 'whole' || width > 600)
    .map((view) => [view, width, 860] as const),
);
/** Where the drawing is enlarged, it is laid out the smallest for its width. */
const enlarged = [['whole', 1250, 780] as const];
const text = ({ site }: Place) => ({
  name: en.map.siteShort(site),
  code: en.anatomy.codes[site],
  finding: '',
});

/** Middle and radius of the earlier glyph of each site, read back from its transform. */
function discs(layout: Layout) {
  const spots = earlierSpots(layout);
  return layout.sites.map(({ place, x, y }) => {
    const [dx, dy, scale] = spots
      .get(placeKey(place))!
      .match(/-?[\d.]+/g)!
      .map(Number) as [number, number, number];
    const r = (GLYPH_SIZE.map / 2) * scale;
    const [cx, cy] = [(dx + r) * layout.glyphScale, (dy + r) * layout.glyphScale];
    return { key: placeKey(place), x: x + cx, y: y + cy, r: r * layout.glyphScale, far: Math.hypot(cx, cy) };
  });
}

describe('earlierSpots', () => {
  it.each([...cases, ...enlarged])(
    'of %s at %i by %i px lie on no site, no name and no other, and close to their own',
    (view, width, height) => {
      const layout = layOut(view, width, height, text);
      const site = (GLYPH_SIZE.map / 2) * layout.glyphScale;
      const spots = discs(layout);
      expect(spots.length).toBeGreaterThan(5);
      spots.forEach((spot, i) => {
        for (const { place, x, y } of layout.sites)
          expect(
            Math.hypot(spot.x - x, spot.y - y),
            `${spot.key} on ${placeKey(place)}`,
          ).toBeGreaterThanOrEqual(spot.r + site - 0.2);
        for (const other of spots.slice(i + 1))
          expect(
            Math.hypot(spot.x - other.x, spot.y - other.y),
            `${spot.key} on ${other.key}`,
          ).toBeGreaterThanOrEqual(spot.r + other.r - 0.2);
        for (const { key, x, y, anchor, width: wide } of layout.labels) {
          const left = anchor === 'start' ? x : x - wide;
          const aside = Math.max(left - spot.x, 0, spot.x - left - wide);
          const down = Math.max(0, Math.abs(spot.y - y) - NAME_LINE / 2);
          expect(Math.hypot(aside, down), `${spot.key} on the name of ${key}`).toBeGreaterThanOrEqual(
            spot.r - 0.2,
          );
        }
        expect(spot.far / layout.glyphScale, spot.key).toBeLessThan(40);
      });
    },
  );
});
