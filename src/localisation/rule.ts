import {
  levelOf,
  type Limb,
  type LimbKey,
  limbKey,
  LIMBS,
  type Piece,
  pieceAbove,
  type Place,
  placeKey,
  PULSE_PLACES,
  stationsOf,
} from '../anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../examination/index.js';
import { numberOf, passes, together, WAYS_TO } from './ways.js';
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

/** Strength by number of the place, `NaN` where it was not graded. */
function strengthsOf(examination: Examination): Float64Array {
  return Float64Array.from(PULSE_PLACES, (place) => strengthAt(examination, place) ?? NaN);
}

/** The numbers of the places anywhere in the body whose pulse is stronger than `limit`, save those fed through `below`. */
function openPlaces(strengths: Float64Array, below: readonly number[], limit: number): number[] {
  const open: number[] = [];
  for (let i = 0; i < strengths.length; i++) {
    if (strengths[i]! > limit && !below.some((gate) => passes(i, gate))) open.push(i);
  }
  return open;
}

/** The open place that shows most of the ways to these places open, beyond `depth`; of equals the one nearest to the heart. */
function closestWitness(
  open: readonly number[],
  below: readonly number[],
  depth: number,
): PulsePlace | undefined {
  let best = -1;
  let most = depth;
  for (const i of open) {
    let shown = 0;
    for (const own of below) shown = Math.max(shown, together(i, own));
    const nearer = best >= 0 && shown === most && WAYS_TO[i]!.length < WAYS_TO[best]!.length;
    if (!(shown > most || nearer)) continue;
    best = i;
    most = shown;
  }
  return PULSE_PLACES[best];
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

function lesion(strengths: Float64Array, { kind: limbKind }: Limb, found: Found): Draft {
  const { kind, above, below } = found;
  const ends = below.map(numberOf);
  const open = openPlaces(strengths, ends, STRENGTH_BEYOND[kind]);
  const felt = above ? numberOf(above) : -1;
  const witness = closestWitness(open, ends, felt < 0 ? 0 : WAYS_TO[felt]!.length);
  const between = new Set<Piece>();
  for (const end of ends) {
    let shown = felt < 0 ? 0 : together(end, felt);
    for (const i of open) shown = Math.max(shown, together(end, i));
    for (const piece of WAYS_TO[end]!.slice(shown)) between.add(piece);
  }
  return {
    kind,
    ...(above && { above }),
    ...(witness && { witness }),
    below,
    pieces: Array.from(between, (piece) => piece.key),
    levels: [...new Set(Array.from(between, (piece) => levelOf(piece.artery, limbKind)))],
    unstated: [...found.passed.filter((place) => between.has(pieceAbove(place))), ...found.blank],
    ...(found.single && { singleArtery: true as const }),
  };
}

/** Walks one limb from the trunk outward. */
function readLimb(strengths: Float64Array, limb: Limb): DraftLimb {
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
    lesions.push(lesion(strengths, limb, { kind, above, below, passed, blank, single }));
  };

  for (const station of stationsOf(limb)) {
    const stated = station.filter((place) => strengths[numberOf(place)]! >= 0);
    const blank = station.filter((place) => !stated.includes(place));
    unstated.push(...blank);
    if (stated.length === 0) {
      passed.push(...blank);
      continue;
    }
    const found = stated.map((place) => strengths[numberOf(place)]!);
    const strongest = Math.max(...found);
    const leader = stated[found.indexOf(strongest)] as PulsePlace;
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
      const strength = found[i]!;
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
  const strengths = strengthsOf(examination);
  const drafts = LIMBS.map((limb) => readLimb(strengths, limb));
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
