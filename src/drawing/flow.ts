import {
  ARTERIES,
  feedingPiece,
  type LimbKey,
  type Piece,
  PIECES,
  type PieceKey,
  piecesOf,
  pieceFromKey,
  PLACES,
} from '../anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../examination/index.js';
import { sampleAt } from './geometry.js';
import { courseOf, drawnLength, positionOf } from './vessels.js';

/** The flow drawn in a stretch of artery. */
export type Flow = 'full' | 'reduced' | 'none';

/** A mark across an artery: where, what kind, and how strong (0 to 1; missing when nothing gives a number). */
export interface LesionMark {
  readonly piece: Piece;
  /** Fraction of the artery's length. */
  readonly at: number;
  readonly kind: 'block' | 'narrowing';
  readonly strength?: number;
  readonly limb: LimbKey;
}

export interface DrawnFlow {
  readonly piece: Piece;
  readonly from: number;
  readonly to: number;
  readonly flow: Flow;
}

const FLOW_OF: Record<Grade, Flow> = { absent: 'none', reduced: 'reduced', normal: 'full', bounding: 'full' };
const RANK: Record<Flow, number> = { none: 0, reduced: 1, full: 2 };

/**
 * The midpoint of a run of pieces, by drawn length. A run without an upper bound starts in the trunk; its mark stays in
 * the limb's own arteries, since no finding points to the trunk.
 */
export function middleOf(keys: readonly PieceKey[]): Spot | undefined {
  const spots = spotsOn(keys);
  return spots.find(clearOfSites) ?? spots[0];
}

/** The same, but only if the mark hides no site; a short piece may have no room for one. */
export function clearMiddleOf(keys: readonly PieceKey[]): Spot | undefined {
  return spotsOn(keys).find(clearOfSites);
}

function spotsOn(keys: readonly PieceKey[]): Spot[] {
  const all = keys.flatMap((key) => pieceFromKey(key) ?? []);
  const own = all.filter((piece) => piece.side !== 'midline');
  const run = own.length ? own : all;
  const lengths = run.map(drawnLength);
  const total = lengths.reduce((sum, length) => sum + length, 0);
  return SHARES.flatMap((share) => along(run, lengths, total * share) ?? []);
}

/** Positions along a run at which a mark is tried, the middle first. */
const SHARES = [0.5, 0.44, 0.56, 0.38, 0.62, 0.32, 0.68, 0.26, 0.74];
/** Least distance of a mark from a site, in figure units. */
const CLEAR_OF_SITE = 36;

export interface Spot {
  readonly piece: Piece;
  readonly at: number;
}

function along(run: readonly Piece[], lengths: readonly number[], distance: number): Spot | undefined {
  let rest = distance;
  for (const [i, piece] of run.entries()) {
    const length = lengths[i] as number;
    if (rest <= length) return { piece, at: piece.from + (piece.to - piece.from) * (rest / (length || 1)) };
    rest -= length;
  }
  return undefined;
}

function clearOfSites({ piece, at }: Spot): boolean {
  const { x, y } = sampleAt(courseOf(piece), at);
  return PLACES.every((place) => {
    const site = positionOf(place);
    return Math.hypot(site.x - x, site.y - y) >= CLEAR_OF_SITE;
  });
}

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

/**
 * The flow of every piece, inflow to run-off: from a mark onward what the mark leaves through, at a graded site what is
 * felt there, elsewhere what comes in. An arch that another artery joins fills from the better of the two.
 */
export function drawnFlow(examination: Examination, marks: readonly LesionMark[]): DrawnFlow[] {
  const out = new Map<string, Flow>();
  const drawn: DrawnFlow[] = [];
  for (const piece of PIECES) {
    const feeder = feedingPiece(piece);
    let flow: Flow = (feeder && out.get(feeder.key)) ?? 'full';
    const felt = feltFlow(examination, piece);
    const here = marks.filter((mark) => mark.piece.key === piece.key).sort((a, b) => a.at - b.at);
    let from = piece.from;
    for (const mark of here) {
      drawn.push({ piece, from, to: mark.at, flow });
      from = mark.at;
      const through: Flow = mark.kind === 'block' ? 'none' : 'reduced';
      if (RANK[through] < RANK[flow]) flow = through;
    }
    if (felt) flow = felt;
    drawn.push({ piece, from, to: piece.to, flow });
    out.set(piece.key, flow);
  }
  return drawn.map((stretch) => {
    const joiner = ARTERIES[stretch.piece.artery].joinedBy;
    if (!joiner || stretch.flow === 'full') return stretch;
    const last = piecesOf({ artery: joiner, side: stretch.piece.side }).at(-1);
    const joining = last && out.get(last.key);
    return joining && RANK[joining] > RANK[stretch.flow] ? { ...stretch, flow: joining } : stretch;
  });
}
