import {
  type Level,
  levelOf,
  type Limb,
  type LimbKey,
  limbKey,
  LIMBS,
  type Piece,
  pieceAbove,
  type PieceKey,
  piecesTo,
  type Place,
  PULSE_PLACES,
  type PulseSiteId,
  stationsOf,
} from '../anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../examination/index.js';

type PulsePlace = Place<PulseSiteId>;

/** How much of a pulse a grade stands for; bounding counts as full. */
const STRENGTH: Record<Grade, number> = { absent: 0, reduced: 1, normal: 2, bounding: 2 };
const FULL = 2;

/** A stretch of artery in which, by the bedside rule, something is wrong. */
export interface RuleLesion {
  /** A pulse that is not there means a block, one that is weaker than above it a narrowing. */
  readonly kind: 'block' | 'narrowing';
  /** The last pulse of the limb felt above; missing when none of them was stated. */
  readonly above?: PulsePlace;
  /** A pulse outside the limb's own way that shows how far down the trunk is open, where it bounds more closely than `above`. */
  readonly witness?: PulsePlace;
  /** The first pulses that are weaker or not there: one, or the twins of foot or wrist. */
  readonly below: readonly PulsePlace[];
  /** The pieces of artery between the bounds, proximal first. */
  readonly pieces: readonly PieceKey[];
  readonly levels: readonly Level[];
  /** Sites between the bounds (and the twin of `below`) that carry no grade, so that the bounds are wider than need be. */
  readonly unstated: readonly PulsePlace[];
  /** Set when the twin pulse shows the shared artery open, so that this artery alone is meant. */
  readonly singleArtery?: true;
  /** Other limbs that one lesion in the shared pieces would explain as well. */
  readonly sharedWith: readonly LimbKey[];
  readonly sharedPieces: readonly PieceKey[];
}

/** A pulse felt more strongly than one above it: felt wrongly, or fed by collaterals. */
export interface RuleContradiction {
  readonly weaker: PulsePlace;
  readonly stronger: PulsePlace;
}

export interface LimbRule {
  readonly limb: Limb;
  /** `nothing`: no pulse graded. `normal`: all graded, none weaker than above. `felt-as-far`: normal so far, sites remain. */
  readonly outcome: 'nothing' | 'normal' | 'felt-as-far' | 'lesion';
  /** The most distal pulses graded when nothing is wrong so far. */
  readonly feltTo: readonly PulsePlace[];
  readonly lesions: readonly RuleLesion[];
  readonly contradictions: readonly RuleContradiction[];
  /** Every site of the limb without a grade. */
  readonly unstated: readonly PulsePlace[];
}

/** The bedside rule's answer for every limb; plain data, words are made by the locale. */
export type RuleReading = Readonly<Record<LimbKey, LimbRule>>;

type Draft = Omit<RuleLesion, 'sharedWith' | 'sharedPieces'>;

function strengthAt(examination: Examination, place: Place): number | undefined {
  const grade = pulseAt(examination, place)?.grade;
  return grade && STRENGTH[grade];
}

/** The places anywhere in the body whose pulse is stronger than `limit`, save those fed through `below`. */
function openPlaces(examination: Examination, below: readonly PulsePlace[], limit: number): PulsePlace[] {
  const gates = below.map((place) => pieceAbove(place));
  return PULSE_PLACES.filter((place) => {
    if ((strengthAt(examination, place) ?? -1) <= limit) return false;
    const way = piecesTo(pieceAbove(place));
    return !gates.some((gate) => way.includes(gate));
  });
}

function lesion(
  examination: Examination,
  { kind: limbKind }: Limb,
  found: Pick<Draft, 'kind' | 'above' | 'below' | 'unstated' | 'singleArtery'>,
): Draft {
  const limit = found.kind === 'block' ? STRENGTH.absent : STRENGTH.reduced;
  const open = openPlaces(examination, found.below, limit);
  const ways = found.below.map((place) => piecesTo(pieceAbove(place)));
  const openPieces = new Set<Piece>();
  let witness: PulsePlace | undefined;
  let deepest = found.above ? piecesTo(pieceAbove(found.above)).length : 0;
  for (const place of open) {
    const way = piecesTo(pieceAbove(place));
    for (const piece of way) openPieces.add(piece);
    const depth = Math.max(...ways.map((own) => own.filter((piece) => way.includes(piece)).length));
    if (depth > deepest) {
      deepest = depth;
      witness = place;
    }
  }
  const aboveWay = found.above ? piecesTo(pieceAbove(found.above)) : [];
  const between = [...new Set(ways.flat())].filter(
    (piece) => !openPieces.has(piece) && !aboveWay.includes(piece),
  );
  return {
    ...found,
    ...(witness && { witness }),
    pieces: between.map((piece) => piece.key),
    levels: [...new Set(between.map((piece) => levelOf(piece.artery, limbKind)))],
  };
}

function readLimb(examination: Examination, limb: Limb): Omit<LimbRule, 'lesions'> & { lesions: Draft[] } {
  const lesions: Draft[] = [];
  const contradictions: RuleContradiction[] = [];
  const unstated: PulsePlace[] = [];
  let pending: PulsePlace[] = [];
  let running = FULL;
  let above: PulsePlace | undefined;
  let last: readonly PulsePlace[] = [];

  const add = (strength: number, below: PulsePlace[], more: PulsePlace[], single = false): void => {
    lesions.push(
      lesion(examination, limb, {
        kind: strength === STRENGTH.absent ? 'block' : 'narrowing',
        ...(above && { above }),
        below,
        unstated: [...pending, ...more],
        ...(single && { singleArtery: true as const }),
      }),
    );
  };

  for (const station of stationsOf(limb)) {
    const stated = station.filter((place) => strengthAt(examination, place) !== undefined);
    const blank = station.filter((place) => !stated.includes(place));
    unstated.push(...blank);
    if (stated.length === 0) {
      pending.push(...blank);
      continue;
    }
    const strengths = stated.map((place) => strengthAt(examination, place) as number);
    const strongest = Math.max(...strengths);
    if (strongest < running) add(strongest, stated, blank);
    if (strongest > running && above) {
      const stronger = stated[strengths.indexOf(strongest)] as PulsePlace;
      contradictions.push({ weaker: above, stronger });
    }
    const weaker = stated.filter((_, i) => (strengths[i] as number) < strongest);
    for (const place of weaker) add(strengthAt(examination, place) as number, [place], [], true);
    running = strongest;
    above = stated.find((_, i) => strengths[i] === strongest);
    last = stated;
    pending = [];
  }

  const outcome =
    last.length === 0 ? 'nothing' : lesions.length ? 'lesion' : unstated.length ? 'felt-as-far' : 'normal';
  return { limb, outcome, feltTo: lesions.length ? [] : last, lesions, contradictions, unstated };
}

/** The other limbs whose first lesion has pieces in common with this one, and those pieces. */
function shared(draft: Draft, limb: Limb, all: ReturnType<typeof readLimb>[]) {
  const sharedWith: LimbKey[] = [];
  let sharedPieces: readonly PieceKey[] = [];
  for (const other of all) {
    const first = other.lesions[0];
    if (!first || limbKey(other.limb) === limbKey(limb)) continue;
    const common = draft.pieces.filter((piece) => first.pieces.includes(piece));
    if (common.length === 0) continue;
    sharedWith.push(limbKey(other.limb));
    sharedPieces = sharedPieces.length ? sharedPieces.filter((piece) => common.includes(piece)) : common;
  }
  return { sharedWith, sharedPieces };
}

/**
 * Reads an examination by the bedside rule: in each limb, from the trunk outward, the block lies between the last pulse
 * felt and the first that is not; a step to a weaker pulse marks a narrowing. A pulse felt elsewhere shows the arteries
 * above it open; a twin felt at foot or wrist leaves the other artery alone. Sites without a grade widen the interval.
 * Common practice, no source.
 */
export function readByRule(examination: Examination): RuleReading {
  const drafts = LIMBS.map((limb) => readLimb(examination, limb));
  return Object.fromEntries(
    drafts.map((draft) => [
      limbKey(draft.limb),
      {
        ...draft,
        lesions: draft.lesions.map((one, i) => ({
          ...one,
          ...(i === 0 ? shared(one, draft.limb, drafts) : { sharedWith: [], sharedPieces: [] }),
        })),
      },
    ]),
  ) as unknown as RuleReading;
}

/** Whether any pulse has been graded at all. */
export function anythingGraded(examination: Examination): boolean {
  return PULSE_PLACES.some((place) => strengthAt(examination, place) !== undefined);
}
