import {
  levelOf,
  type Limb,
  type LimbKey,
  limbKey,
  LIMBS,
  type Piece,
  pieceAbove,
  piecesTo,
  type Place,
  placeKey,
  PULSE_PLACES,
  stationsOf,
} from '../anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../examination/index.js';
import type { LimbRule, PulsePlace, RuleContradiction, RuleLesion, RuleReading } from './rule-types.js';

export type { LimbRule, PulsePlace, RuleContradiction, RuleLesion, RuleReading } from './rule-types.js';

/** How much of a pulse a grade stands for; bounding counts as full. */
const STRENGTH: Record<Grade, number> = { absent: 0, reduced: 1, normal: 2, bounding: 2 };
const FULL = 2;
const STRENGTH_BEYOND: Record<RuleLesion['kind'], number> = { block: 0, narrowing: 1 };

type Draft = Omit<RuleLesion, 'sharedWith' | 'sharedBelow' | 'sharedPieces'>;
type DraftLimb = Omit<LimbRule, 'lesions'> & { readonly lesions: readonly Draft[] };

function strengthAt(examination: Examination, place: Place): number | undefined {
  const grade = pulseAt(examination, place)?.grade;
  return grade && STRENGTH[grade];
}

function wayTo(place: PulsePlace): readonly Piece[] {
  return piecesTo(pieceAbove(place));
}

/** The places anywhere in the body whose pulse is stronger than `limit`, save those fed through `below`. */
function openPlaces(examination: Examination, below: readonly PulsePlace[], limit: number): PulsePlace[] {
  const gates = below.map((place) => pieceAbove(place));
  return PULSE_PLACES.filter((place) => {
    if ((strengthAt(examination, place) ?? -1) <= limit) return false;
    const way = wayTo(place);
    return !gates.some((gate) => way.includes(gate));
  });
}

/** The open place that shows most of these ways open, beyond `depth`; of equals the one nearest to the heart. */
function closestWitness(
  open: readonly PulsePlace[],
  ways: readonly (readonly Piece[])[],
  depth: number,
): PulsePlace | undefined {
  let best: { place: PulsePlace; depth: number; length: number } | undefined;
  for (const place of open) {
    const way = wayTo(place);
    const shown = Math.max(...ways.map((own) => own.filter((piece) => way.includes(piece)).length));
    if (shown <= depth) continue;
    if (!best || shown > best.depth || (shown === best.depth && way.length < best.length)) {
      best = { place, depth: shown, length: way.length };
    }
  }
  return best?.place;
}

interface Found {
  readonly kind: RuleLesion['kind'];
  readonly above: PulsePlace | undefined;
  readonly below: readonly PulsePlace[];
  /** Sites without a grade on the way. */
  readonly passed: readonly PulsePlace[];
  /** Ungraded sites of the same station. */
  readonly blank: readonly PulsePlace[];
  readonly single: boolean;
}

function lesion(examination: Examination, { kind: limbKind }: Limb, found: Found): Draft {
  const { kind, above, below } = found;
  const open = openPlaces(examination, below, STRENGTH_BEYOND[kind]);
  const ways = below.map(wayTo);
  const aboveWay = above ? wayTo(above) : [];
  const openPieces = new Set([...aboveWay, ...open.flatMap(wayTo)]);
  const witness = closestWitness(open, ways, aboveWay.length);
  const between = [...new Set(ways.flat())].filter((piece) => !openPieces.has(piece));
  return {
    kind,
    ...(above && { above }),
    ...(witness && { witness }),
    below,
    pieces: between.map((piece) => piece.key),
    levels: [...new Set(between.map((piece) => levelOf(piece.artery, limbKind)))],
    unstated: [...found.passed.filter((place) => between.includes(pieceAbove(place))), ...found.blank],
    ...(found.single && { singleArtery: true as const }),
  };
}

/** Walks one limb from the trunk outward. */
function readLimb(examination: Examination, limb: Limb): DraftLimb {
  let lesions: Draft[] = [];
  const contradictions: RuleContradiction[] = [];
  const unstated: PulsePlace[] = [];
  let passed: PulsePlace[] = [];
  let running = FULL;
  let last: PulsePlace | undefined;
  let feltTo: readonly PulsePlace[] = [];

  const add = (
    strength: number,
    below: readonly PulsePlace[],
    blank: readonly PulsePlace[],
    single = false,
  ): void => {
    const kind = strength === STRENGTH.absent ? 'block' : 'narrowing';
    const above = running > strength ? last : undefined;
    lesions.push(lesion(examination, limb, { kind, above, below, passed, blank, single }));
  };

  for (const station of stationsOf(limb)) {
    const stated = station.filter((place) => strengthAt(examination, place) !== undefined);
    const blank = station.filter((place) => !stated.includes(place));
    unstated.push(...blank);
    if (stated.length === 0) {
      passed.push(...blank);
      continue;
    }
    const strengths = stated.map((place) => strengthAt(examination, place) as number);
    const strongest = Math.max(...strengths);
    const leader = stated[strengths.indexOf(strongest)] as PulsePlace;
    if (strongest < running) add(strongest, stated, blank);
    if (strongest > running && last) {
      contradictions.push({ weaker: last, stronger: leader });
      lesions = lesions.map((one) =>
        one.contradictedBy || STRENGTH_BEYOND[one.kind] >= strongest
          ? one
          : { ...one, contradictedBy: leader, ...(strongest < FULL && { refilled: true as const }) },
      );
    }
    for (const [i, place] of stated.entries()) {
      const strength = strengths[i] as number;
      if (strength < strongest) add(strength, [place], [], true);
    }
    running = strongest;
    last = leader;
    feltTo = stated;
    passed = [];
  }

  const outcome = !last ? 'nothing' : lesions.length ? 'lesion' : unstated.length ? 'felt-as-far' : 'normal';
  return { limb, outcome, feltTo: lesions.length ? [] : feltTo, lesions, contradictions, unstated };
}

/** The limbs whose first lesion shares most pieces with this one; one lesion there would explain them all. */
function shared(
  draft: Draft,
  limb: Limb,
  all: readonly DraftLimb[],
): Pick<RuleLesion, 'sharedWith' | 'sharedBelow' | 'sharedPieces'> {
  const partners = all.flatMap((other) => {
    const first = other.lesions[0];
    if (!first || other.limb === limb) return [];
    const common = draft.pieces.filter((piece) => first.pieces.includes(piece));
    return common.length ? [{ limb: other.limb, below: first.below, common }] : [];
  });
  const most = Math.max(0, ...partners.map((partner) => partner.common.length));
  const nearest = partners.filter((partner) => partner.common.length === most);
  return {
    sharedWith: nearest.map((partner) => limbKey(partner.limb)),
    sharedBelow: nearest.map((partner) => partner.below),
    sharedPieces: nearest[0]?.common ?? [],
  };
}

/**
 * Reads an examination by the bedside rule: in each limb, from the trunk outward, the block lies between the last pulse
 * felt and the first that is not; a step to a weaker pulse marks a narrowing. A pulse felt elsewhere shows the arteries
 * above it open; another pulse felt at the same foot or wrist leaves a single artery. Ungraded sites widen the interval.
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
          ...(i === 0
            ? shared(one, draft.limb, drafts)
            : { sharedWith: [], sharedBelow: [], sharedPieces: [] }),
        })),
      },
    ]),
  ) as unknown as RuleReading;
}

/** A limb with its first weak pulses. */
export interface ExplainedLimb {
  readonly limb: LimbKey;
  readonly below: readonly PulsePlace[];
}

/** The limbs that one lesion would explain, each with its first weak pulses, in the fixed order of limbs. */
export function limbsExplained(one: RuleLesion, limb: LimbKey): ExplainedLimb[] {
  const order = LIMBS.map(limbKey);
  return [
    { limb, below: one.below },
    ...one.sharedWith.map((key, i) => ({ limb: key, below: one.sharedBelow[i] ?? [] })),
  ].sort((a, b) => order.indexOf(a.limb) - order.indexOf(b.limb));
}

/** Whether only this artery is diseased: no lesion above the whole station includes it. */
export function standsAlone(one: RuleLesion, { lesions }: LimbRule): boolean {
  const weak = lesions.filter((other) => !other.singleArtery).flatMap((other) => other.below.map(placeKey));
  return !one.below.some((place) => weak.includes(placeKey(place)));
}

/** Whether one pulse felt beyond puts two lesions of a limb in the same doubt, so that the reason need be told once only. */
export function sameDoubt(one: RuleLesion, other: RuleLesion | undefined): boolean {
  const [a, b] = [one.contradictedBy, other?.contradictedBy];
  return !!a && !!b && placeKey(a) === placeKey(b) && one.refilled === other?.refilled;
}

/**
 * Whether the same is wrong wherever anyone felt, in arms or neck and legs, right and left: then low flow or no circulation
 * explains it before many lesions do. `undefined` when a pulse anywhere is better or worse than the others.
 */
export function sameEverywhere(reading: RuleReading): RuleLesion['kind'] | undefined {
  const graded = Object.values(reading).filter((rule) => rule.outcome !== 'nothing');
  const kind = graded[0]?.lesions[0]?.kind;
  const alike = graded.every(({ lesions, contradictions }) => {
    const [first] = lesions;
    return lesions.length === 1 && contradictions.length === 0 && first?.kind === kind && !first?.witness;
  });
  if (!alike) return undefined;
  const sides = new Set(graded.flatMap((rule) => rule.lesions[0]?.below.map((place) => place.side)));
  const legs = graded.some((rule) => rule.limb.kind === 'leg');
  const others = graded.some((rule) => rule.limb.kind !== 'leg');
  return sides.has('right') && sides.has('left') && legs && others ? kind : undefined;
}

/** Whether any pulse has been graded at all. */
export function anythingGraded(examination: Examination): boolean {
  return PULSE_PLACES.some((place) => strengthAt(examination, place) !== undefined);
}
