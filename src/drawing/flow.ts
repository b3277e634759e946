import {
  ARTERIES,
  feedingPiece,
  type LimbKey,
  type Piece,
  PIECES,
  type PieceKey,
  piecesOf,
} from '../anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../examination/index.js';
import type { Whereabouts } from '../localisation/index.js';

/** The flow drawn in a stretch of artery. */
export type Flow = 'full' | 'reduced' | 'none';

/** A lesion as it is drawn: the stretch it lies on, what kind, and how probable (0 to 1; missing when nothing gives a number). */
export interface LesionMark {
  readonly limb: LimbKey;
  readonly kind: 'block' | 'narrowing';
  /** Inflow first; how the probability is divided among them. */
  readonly pieces: readonly { readonly piece: Piece; readonly weight: number }[];
  readonly strength?: number;
  /** The pulse sites between which it lies. */
  readonly between?: Pick<Whereabouts, 'above' | 'below'>;
  /** A lesion beside the one that takes the pulse away. */
  readonly further?: boolean;
}

export interface DrawnFlow {
  readonly piece: Piece;
  readonly from: number;
  readonly to: number;
  readonly flow: Flow;
  /** Share of its width that still carries flow at both ends, on a stretch where a lesion may lie. */
  readonly width?: readonly [from: number, to: number];
}

const FLOW_OF: Record<Grade, Flow> = { absent: 'none', reduced: 'reduced', normal: 'full', bounding: 'full' };
const RANK: Record<Flow, number> = { none: 0, reduced: 1, full: 2 };

/** The pieces on the path to one end; for a lesion above several pulses, the path to the first. */
export function singleWay(keys: readonly PieceKey[], end: Piece): PieceKey[] {
  const way = new Set<string>();
  for (let at: Piece | undefined = end; at; at = feedingPiece(at)) way.add(at.key);
  return keys.filter((key) => way.has(key));
}

/** The flow felt at the pulse site at the end of a piece, if it was graded. */
function feltFlow(examination: Examination, piece: Piece): Flow | undefined {
  if (!piece.endsAt) return undefined;
  const grade = pulseAt(examination, { site: piece.endsAt, side: piece.side })?.grade;
  return grade && FLOW_OF[grade];
}

/** Share of an artery's width that a narrowing leaves. */
export const REDUCED_WIDTH = 0.5;

/** What a mark does to one of its pieces. */
interface Crossing {
  readonly mark: LesionMark;
  /** Probability, of the way through this piece, that the lesion lies above its beginning and above its end. */
  readonly before: number;
  readonly after: number;
}

function crossingsOf(marks: readonly LesionMark[]): Map<Piece, Crossing> {
  const crossings = new Map<Piece, Crossing>();
  const blocksFirst = [...marks].sort((a, b) => Number(b.kind === 'block') - Number(a.kind === 'block'));
  for (const mark of blocksFirst) {
    const reached = new Map<Piece, number>();
    const ahead = new Map<Piece, number>();
    for (const { piece, weight } of mark.pieces) {
      const feeder = feedingPiece(piece);
      reached.set(piece, ((feeder && reached.get(feeder)) ?? 0) + weight);
    }
    for (const { piece, weight } of [...mark.pieces].reverse()) {
      const feeder = feedingPiece(piece);
      if (feeder) ahead.set(feeder, Math.max(ahead.get(feeder) ?? 0, weight + (ahead.get(piece) ?? 0)));
    }
    for (const { piece, weight } of mark.pieces) {
      const to = reached.get(piece) ?? 0;
      const all = to + (ahead.get(piece) ?? 0) || 1;
      if (!crossings.has(piece)) crossings.set(piece, { mark, before: (to - weight) / all, after: to / all });
    }
  }
  return crossings;
}

const lesser = (a: Flow, b: Flow): Flow => (RANK[a] < RANK[b] ? a : b);

/**
 * The flow of every piece, inflow to run-off: along a mark thinner as the lesion more likely lies above, beyond it what it
 * leaves through, at a graded site what is felt there, elsewhere what comes in. An arch that another artery joins fills from
 * the better of the two.
 */
export function drawnFlow(examination: Examination, marks: readonly LesionMark[]): DrawnFlow[] {
  const out = new Map<Piece, Flow>();
  /** Flow on a mark's way as it was above the mark. */
  const above = new Map<Piece, Flow>();
  const crossings = crossingsOf(marks);
  const drawn: DrawnFlow[] = [];
  for (const piece of PIECES) {
    const feeder = feedingPiece(piece);
    const felt = feltFlow(examination, piece);
    const crossing = crossings.get(piece);
    const whole = { piece, from: piece.from, to: piece.to };
    const sameMark = feeder && crossing && crossings.get(feeder)?.mark === crossing.mark;
    const incoming: Flow = (feeder && ((sameMark && above.get(feeder)) || out.get(feeder))) ?? 'full';
    if (!crossing) {
      const flow = felt ?? incoming;
      drawn.push({ ...whole, flow });
      out.set(piece, flow);
      continue;
    }
    const through = lesser(incoming, crossing.mark.kind === 'block' ? 'none' : 'reduced');
    const flow = felt ?? through;
    // What is felt at its end decides; a flow that is gone already cannot thin.
    const thins = flow === through && RANK[through] < RANK[incoming];
    const left = (share: number): number => {
      const most = incoming === 'reduced' ? REDUCED_WIDTH : 1;
      return most * (1 - share * (through === 'none' ? 1 : 1 - REDUCED_WIDTH));
    };
    drawn.push({
      ...whole,
      flow,
      ...(thins && { width: [left(crossing.before), left(crossing.after)] as const }),
    });
    above.set(piece, felt && RANK[felt] > RANK[through] ? felt : incoming);
    out.set(piece, felt ?? (crossing.after >= 0.5 ? through : incoming));
  }
  return drawn.map((stretch) => {
    const joiner = ARTERIES[stretch.piece.artery].joinedBy;
    if (!joiner || stretch.flow === 'full') return stretch;
    const last = piecesOf({ artery: joiner, side: stretch.piece.side }).at(-1);
    const joining = last && out.get(last);
    if (!joining || RANK[joining] <= RANK[stretch.flow]) return stretch;
    const { piece, from, to } = stretch;
    return { piece, from, to, flow: joining };
  });
}
