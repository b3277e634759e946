import { type Place, placeKey, PLACES, placesUpstream, siteDefinition } from '../anatomy/index.js';
import { positionOf } from './healthy.js';

export type Direction = 'up' | 'down' | 'left' | 'right' | 'next' | 'previous';

/** What arrow-key navigation needs to know about places. */
export interface TravelChart<P> {
  /** The nearest place upstream, or undefined at a root. */
  upstream(place: P): P | undefined;
  /** Groups of a place; places that share one form a row. */
  groups(place: P): readonly string[];
  /** Horizontal position, from the reader's left to right. */
  x(place: P): number;
}

/** The nearest shown place upstream. */
function parentShown<P>(place: P, shown: readonly P[], { upstream }: TravelChart<P>): P | undefined {
  let up = upstream(place);
  while (up !== undefined && !shown.includes(up)) up = upstream(up);
  return up;
}

/** The row of a place, left to right: all places connected to it by shared groups or a shared parent. */
function rowOf<P>(place: P, shown: readonly P[], chart: TravelChart<P>): P[] {
  const beside = (one: P, other: P): boolean => {
    const parent = parentShown(one, shown, chart);
    if (parent !== undefined && parent === parentShown(other, shown, chart)) return true;
    const groups = chart.groups(one);
    return chart.groups(other).some((group) => groups.includes(group));
  };
  const row = new Set([place]);
  for (const one of row) for (const other of shown) if (!row.has(other) && beside(one, other)) row.add(other);
  return shown.filter((one) => row.has(one)).sort((a, b) => chart.x(a) - chart.x(b));
}

/**
 * Arrow-key navigation on a forest of places. Up leads to the nearest place upstream, and from a root to the next root; down
 * to the first place fed by this one; left and right along the row, which includes all places with the same parent. So the
 * arrows reach every place shown, whatever the chart.
 * @param shown the places in view, in the order of examination
 */
export function travelOn<P>(
  chart: TravelChart<P>,
  from: P,
  direction: Direction,
  shown: readonly P[],
): P | undefined {
  const at = shown.indexOf(from);
  const parentOf = (place: P): P | undefined => parentShown(place, shown, chart);
  switch (direction) {
    case 'next':
      return shown[at + 1];
    case 'previous':
      return shown[at - 1];
    case 'left':
    case 'right': {
      const row = rowOf(from, shown, chart);
      return row[row.indexOf(from) + (direction === 'left' ? -1 : 1)];
    }
    case 'up': {
      const parent = parentOf(from);
      if (parent !== undefined) return parent;
      const roots = shown.filter((place) => parentOf(place) === undefined);
      return roots.length > 1 ? roots[(roots.indexOf(from) + 1) % roots.length] : undefined;
    }
    case 'down':
      return shown.find((place) => parentOf(place) === from);
  }
}

const UPSTREAM = new Map(PLACES.map((place) => [placeKey(place), placesUpstream(place, PLACES).at(-1)]));

const FIGURE: TravelChart<Place> = {
  upstream: (place) => UPSTREAM.get(placeKey(place)),
  groups(place) {
    const { row } = siteDefinition(place.site);
    const fedBy = UPSTREAM.get(placeKey(place));
    // Uses the whole tree, so that wrist and foot are rows even when the artery above is out of view.
    return [
      `site ${place.site}`,
      ...(row ? [`row ${row}`] : []),
      ...(fedBy ? [`below ${placeKey(fedBy)}`] : []),
    ];
  },
  x: (place) => positionOf(place).x,
};

/**
 * Navigation on the figure (see `travelOn`); next and previous follow the order of examination.
 * @param across where a place lies from left to right, if not as on the whole figure
 */
export function travel(
  from: Place,
  direction: Direction,
  shown: readonly Place[],
  across?: (place: Place) => number | undefined,
): Place | undefined {
  const chart = across ? { ...FIGURE, x: (place: Place) => across(place) ?? FIGURE.x(place) } : FIGURE;
  return travelOn(chart, from, direction, shown);
}
