import { describe, expect, it } from 'vitest';
import { type Place, placeKey } from '../../../src/anatomy/index.js';
import {
  type BodyView,
  earlierSpots,
  GLYPH_SIZE,
  isPlateView,
  type Layout,
  layOut,
  VIEWS,
} from '../../../src/drawing/index.js';
import { en } from '../../../src/locale/index.js';

const cases = [278, 318, 358, 412, 638, 766, 818, 1022, 1531, 3400].flatMap((width) =>
  VIEWS.filter((view): view is BodyView => !isPlateView(view))
    .filter((view) => view !== 'whole' || width > 600)
    .map((view) => [view, width] as const),
);
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
  it.each(cases)('of %s at %i px lie on no site and on no other, and close to their own', (view, width) => {
    const layout = layOut(view, width, 860, text);
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
      expect(spot.far / layout.glyphScale, spot.key).toBeLessThan(40);
    });
  });
});
