import {
  feedingPiece,
  fedPieces,
  type LimbKey,
  type LimbKind,
  type Piece,
  pieceAbove,
  pieceFromKey,
  type PieceKey,
  piecesTo,
  type Place,
  type PulseSiteId,
  type Side,
  stationsOf,
} from '../anatomy/index.js';
import type { NetworkReading } from './network/index.js';

type Read = NetworkReading & { status: 'read' };

/** A piece of a stretch, and the probability that the pulse is lost or weakened in it. */
export interface WeightedPiece {
  readonly piece: PieceKey;
  readonly weight: number;
}

/** The stretch on which a limb loses its pulse, from one pulse site to the next ones. */
export interface Whereabouts {
  readonly limb: LimbKey;
  /** Pulse site at its upper end; missing where the artery comes from the trunk without one. */
  readonly above?: Place<PulseSiteId>;
  /** Pulse sites at its lower end: several where the stretch goes on into branches. */
  readonly below: readonly Place<PulseSiteId>[];
  /** Inflow first; weights sum to `probability`. */
  readonly pieces: readonly WeightedPiece[];
  readonly probability: number;
  readonly pulse: 'absent' | 'reduced';
}

const placeAt = ({ endsAt, side }: Piece): Place<PulseSiteId> =>
  ({ site: endsAt, side }) as Place<PulseSiteId>;

/** The pieces above that share the pulse site above with this one. */
function upToSite(top: Piece): { readonly pieces: Piece[]; readonly above?: Place<PulseSiteId> } {
  const pieces: Piece[] = [];
  let at = feedingPiece(top);
  for (; at && !at.endsAt; at = feedingPiece(at)) pieces.unshift(at);
  if (at) return { pieces, above: placeAt(at) };
  // No finding points to a trunk without a pulse site of its own.
  return { pieces: pieces.filter(({ side }) => side !== 'midline') };
}

/** The pieces on the ways of a limb that share the pulse site below with one of these. */
function downToSites(inside: readonly Piece[], ways: readonly (readonly Piece[])[]): Piece[] {
  const pieces = new Set<Piece>();
  const leaves = inside.filter((piece) => !fedPieces(piece).some((next) => inside.includes(next)));
  for (const leaf of leaves) {
    for (const way of ways) {
      const at = way.indexOf(leaf);
      if (at < 0) continue;
      for (let i = at; !way[i]?.endsAt && way[i + 1]; i++) pieces.add(way[i + 1] as Piece);
    }
  }
  return [...pieces];
}

/** Weight of pieces beyond the network's own stretch: what is left of each entry, divided as its pieces are diseased. */
function weightOf(network: Read, limb: LimbKey): (piece: Piece) => number {
  const { entries, stretch } = network.limbs[limb].occluded;
  const known = new Map(stretch.pieces.map(({ piece, weight }) => [piece, weight]));
  const ill = (key: PieceKey): number => network.pieces[key].narrowed + network.pieces[key].blocked;
  return ({ key }) => {
    const own = known.get(key);
    if (own !== undefined) return own;
    let sum = 0;
    for (const { pieces, probability } of entries) {
      if (!pieces.includes(key)) continue;
      const told = pieces.reduce((total, piece) => total + (known.get(piece) ?? 0), 0);
      const open = pieces
        .filter((piece) => !known.has(piece))
        .reduce((total, piece) => total + ill(piece), 0);
      if (open > 0) sum += (Math.max(0, probability - told) * ill(key)) / open;
    }
    return sum;
  };
}

/**
 * Where a limb loses its pulse, as a hand can check it: the network's stretch, carried on to the pulse sites that bound it.
 * Undefined where nothing was found on the limb or its pulses are more likely normal.
 */
export function whereaboutsOf(network: Read, limb: LimbKey): Whereabouts | undefined {
  const own = network.limbs[limb];
  // What lies behind a headline is worked out when it is asked for.
  const headline = own.examined ? own.headline : undefined;
  if (!headline) return undefined;
  const { occluded } = own;
  const inside = occluded.stretch.pieces.flatMap(({ piece }) => pieceFromKey(piece) ?? []);
  const [top] = inside;
  if (!top) return undefined;
  const [side, kind] = limb.split(' ') as [Side, LimbKind];
  const ends = stationsOf({ side, kind }).at(-1) ?? [];
  const ways = ends.map((place) => piecesTo(pieceAbove(place)));
  const { pieces: before, above } = upToSite(top);
  const all = [...before, ...inside, ...downToSites(inside, ways)];
  const weight = weightOf(network, limb);
  const pieces = all.map((piece) => ({ piece: piece.key, weight: weight(piece) }));
  const last = all.filter((piece) => !fedPieces(piece).some((next) => all.includes(next)));
  return {
    limb,
    ...(above && { above }),
    below: last.filter(({ endsAt }) => endsAt).map(placeAt),
    pieces,
    probability: Math.min(
      1 - occluded.open,
      pieces.reduce((sum, one) => sum + one.weight, 0),
    ),
    pulse: headline.pulse,
  };
}
