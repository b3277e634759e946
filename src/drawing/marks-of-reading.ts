import { type LimbKey, type Piece, pieceAbove, pieceFromKey, type PieceKey } from '../anatomy/index.js';
import {
  blamedIn,
  type LimbRule,
  type NetworkReading,
  type Occlusion,
  type Reading,
  supportOf,
} from '../localisation/index.js';
import { clearMiddleOf, type LesionMark, middleOf, singleWay } from './flow.js';

type Read = NetworkReading & { status: 'read' };

/** The piece of a stretch with the highest probability of disease. */
function likeliest(keys: readonly PieceKey[], network: Read): Piece | undefined {
  let best: PieceKey | undefined;
  let most = -1;
  for (const key of keys) {
    const { narrowed, blocked } = network.pieces[key];
    if (narrowed + blocked > most) {
      most = narrowed + blocked;
      best = key;
    }
  }
  return best && pieceFromKey(best);
}

function ruleLesions(rule: LimbRule, limb: LimbKey, network: Read | undefined): LesionMark[] {
  return rule.lesions.flatMap((lesion, i): LesionMark[] => {
    const below = lesion.below[0];
    if (!below) return [];
    const way = singleWay(lesion.pieces, pieceAbove(below));
    const likely = network && likeliest(way, network);
    const spot = (likely && clearMiddleOf([likely.key])) ?? middleOf(way);
    if (!spot) return [];
    const reading = network?.limbs[limb];
    const strength = network && reading && supportOf(lesion, i, network, reading);
    return [{ ...spot, kind: lesion.kind, limb, ...(strength !== undefined && { strength }) }];
  });
}

/** A mark for what the network blames where the rule shows no lesion there. */
function ownAnswer(answer: Occlusion, limb: LimbKey, network: Read): LesionMark[] {
  const piece = likeliest(answer.pieces, network);
  const spot = piece && middleOf([piece.key]);
  if (!piece || !spot) return [];
  const { narrowed, blocked } = network.pieces[piece.key];
  const kind = blocked > narrowed ? 'block' : 'narrowing';
  return [{ ...spot, kind, limb, strength: blamedIn(network.limbs[limb], answer.pieces) }];
}

/**
 * The marks that a reading puts on the arteries: every lesion of the rule, at the piece where the network most expects it
 * and as strong as the network holds it likely, and what the network blames where the rule is silent.
 */
export function marksOf({ rule, network }: Reading): LesionMark[] {
  const read = network.status === 'read' ? network : undefined;
  return (Object.entries(rule) as [LimbKey, LimbRule][]).flatMap(([limb, limbRule]) => {
    const marks = ruleLesions(limbRule, limb, read);
    const first = read?.limbs[limb].examined ? read.limbs[limb].headline : undefined;
    if (!read || !first) return marks;
    const covered = limbRule.lesions.some((lesion) =>
      first.pieces.some((piece) => lesion.pieces.includes(piece)),
    );
    return covered ? marks : [...marks, ...ownAnswer(first, limb, read)];
  });
}
