import { type LimbKey, pieceAbove, pieceFromKey, type PieceKey } from '../anatomy/index.js';
import {
  type LimbRule,
  type NetworkReading,
  type Reading,
  type Whereabouts,
  whereaboutsOf,
} from '../localisation/index.js';
import { type LesionMark, singleWay } from './flow.js';
import { drawnLength } from './vessels.js';

type Read = NetworkReading & { status: 'read' };

/** Least probability of a lesion that is drawn. */
const LEAST_SHOWN = 0.3;

/** Pieces among which a probability is divided in proportion to `share`. */
function divided(
  keys: readonly PieceKey[],
  probability: number,
  share: (key: PieceKey) => number,
): LesionMark['pieces'] {
  const total = keys.reduce((sum, key) => sum + share(key), 0) || 1;
  return keys.flatMap((key) => {
    const piece = pieceFromKey(key);
    return piece ? [{ piece, weight: (probability * share(key)) / total }] : [];
  });
}

/** The stretch of the rule where no probability is at hand: all of it alike. */
function byRule(rule: LimbRule, limb: LimbKey): LesionMark[] {
  return rule.lesions.flatMap((lesion): LesionMark[] => {
    const below = lesion.below[0];
    if (!below) return [];
    const way = singleWay(lesion.pieces, pieceAbove(below));
    const own = way.filter((key) => !key.startsWith('midline'));
    const length = (key: PieceKey): number => drawnLength(pieceFromKey(key)!);
    return [{ limb, kind: lesion.kind, pieces: divided(own.length ? own : way, 0, length) }];
  });
}

function markOf({ limb, above, below, pieces, probability, pulse }: Whereabouts): LesionMark {
  return {
    limb,
    kind: pulse === 'absent' ? 'block' : 'narrowing',
    strength: probability,
    pieces: pieces.flatMap(({ piece: key, weight }) => {
      const piece = pieceFromKey(key);
      return piece ? [{ piece, weight }] : [];
    }),
    between: { ...(above && { above }), below },
  };
}

/** What the network says of a limb: where its pulse is lost, and the lesions beside that. */
function byNetwork(network: Read, limb: LimbKey): LesionMark[] {
  const first = whereaboutsOf(network, limb);
  if (!first) return [];
  const beside = (network.detail[limb]?.further ?? []).map(({ pieces, state, probability }): LesionMark => ({
    limb,
    kind: state === 'blocked' ? 'block' : 'narrowing',
    strength: probability,
    pieces: divided(pieces, probability, (key) => network.pieces[key].narrowed + network.pieces[key].blocked),
    further: true,
  }));
  return [markOf(first), ...beside].filter(({ strength = 1 }) => strength >= LEAST_SHOWN);
}

/**
 * The marks that a reading puts on the arteries: on each limb the stretch on which the network holds its pulse to be lost,
 * and likely lesions beside it; without probabilities the stretches of the rule.
 */
export function marksOf({ rule, network }: Reading): LesionMark[] {
  return (Object.entries(rule) as [LimbKey, LimbRule][]).flatMap(([limb, limbRule]) =>
    network.status === 'read' ? byNetwork(network, limb) : byRule(limbRule, limb),
  );
}
