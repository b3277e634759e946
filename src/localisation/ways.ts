import { type Piece, pieceAbove, piecesTo, type Place, placeKey, PULSE_PLACES } from '../anatomy/index.js';

/*
 * The ways of the blood to the places where a pulse is felt, compared once for all. In a tree two ways run together from the
 * heart and never meet again, so that one number says which pieces they share.
 */

/** The pieces from the heart to each pulse place, in the order of `PULSE_PLACES`. */
export const WAYS_TO: readonly (readonly Piece[])[] = PULSE_PLACES.map((place) =>
  piecesTo(pieceAbove(place)),
);

const AT = new Map(PULSE_PLACES.map((place, i) => [placeKey(place), i]));

/** The number of a pulse place. */
export function numberOf(place: Place): number {
  return AT.get(placeKey(place)) as number;
}

const N = PULSE_PLACES.length;
const TOGETHER = Uint8Array.from({ length: N * N }, (_, k) => {
  const other = WAYS_TO[k % N]!;
  return WAYS_TO[Math.floor(k / N)]!.filter((piece) => other.includes(piece)).length;
});

/** How many pieces, from the heart on, the ways to two places share. */
export function together(one: number, other: number): number {
  return TOGETHER[one * N + other]!;
}

/** Whether the blood to a place passes another one. */
export function passes(place: number, gate: number): boolean {
  return together(place, gate) === WAYS_TO[gate]!.length;
}
