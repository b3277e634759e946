import {
  feedingPiece,
  piecesOf,
  type Place,
  placeKey,
  PLACES,
  siteDefinition,
  vesselOf,
} from '../anatomy/index.js';
import { positionOf } from './vessels.js';

export type Direction = 'up' | 'down' | 'left' | 'right' | 'next' | 'previous';

/** Sites that lie beside each other on one height of the body and are travelled as one row. */
const ROWS: readonly (readonly string[])[] = [
  ['carotid', 'subclavian'],
  ['radial', 'ulnar'],
  ['abdominal-aorta', 'renal'],
  ['posterior-tibial', 'dorsalis-pedis'],
];

/** A key of the artery piece a place lies on and how far along the tree that is. */
function upstream(place: Place): Place | undefined {
  const pieces = piecesOf(vesselOf(place));
  const { at } = siteDefinition(place.site);
  const own = pieces.find((piece) => at <= piece.to) ?? pieces.at(-1);
  const before = (other: Place, limit: number): boolean => siteDefinition(other.site).at < limit;
  for (let piece = own, limit = at; piece; piece = feedingPiece(piece), limit = 2) {
    const key = piece;
    const here = PLACES.filter((other) => {
      const vessel = vesselOf(other);
      return (
        vessel.artery === key.artery && vessel.side === key.side && other !== place && before(other, limit)
      );
    }).sort((a, b) => siteDefinition(b.site).at - siteDefinition(a.site).at);
    if (here[0]) return here[0];
  }
  return undefined;
}

const PARENTS = new Map(PLACES.map((place) => [placeKey(place), upstream(place)]));

function row(place: Place, shown: readonly Place[]): Place[] {
  const sites = ROWS.find((r) => r.includes(place.site)) ?? [place.site];
  return shown.filter((p) => sites.includes(p.site)).sort((a, b) => positionOf(a).x - positionOf(b).x);
}

/** The nearest shown ancestor of a place. */
function parentShown(place: Place, shown: readonly Place[]): Place | undefined {
  let up = PARENTS.get(placeKey(place));
  while (up && !shown.includes(up)) up = PARENTS.get(placeKey(up));
  return up;
}

/** The places fed first from the heart; they are each other's way through it. */
function roots(shown: readonly Place[]): Place[] {
  return shown.filter((place) => !parentShown(place, shown));
}

/**
 * Where an arrow key leads from a place: up towards the heart and through it to the next artery that leaves it, down away from
 * it, left and right along the row and over to the other side; next and previous follow the order of examination.
 * @param shown the places in view, in the order of examination
 */
export function travel(from: Place, direction: Direction, shown: readonly Place[]): Place | undefined {
  const at = shown.indexOf(from);
  switch (direction) {
    case 'next':
      return shown[at + 1];
    case 'previous':
      return shown[at - 1];
    case 'left':
    case 'right': {
      const line = row(from, shown);
      return line[line.indexOf(from) + (direction === 'left' ? -1 : 1)];
    }
    case 'up': {
      const parent = parentShown(from, shown);
      if (parent) return parent;
      const all = roots(shown);
      return all.length > 1 ? all[(all.indexOf(from) + 1) % all.length] : undefined;
    }
    case 'down':
      return shown.find((place) => parentShown(place, shown) === from);
  }
}
