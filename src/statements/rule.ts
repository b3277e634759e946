import {
  limbKey,
  type LimbKey,
  type NamedStretch,
  namedStretches,
  pieceFromKey,
  type PieceKey,
  type PulseSiteId,
  PULSE_PLACES,
  type Side,
  siteDefinition,
} from '../anatomy/index.js';
import { type Examination, type Grade, isPulseLocked, pulseAt, type Reason } from '../examination/index.js';
import {
  type LimbRule,
  limbsExplained,
  type PulsePlace,
  type RuleLesion,
  type RuleReading,
  sameDoubt,
  sameEverywhere,
  standsAlone,
} from '../localisation/rule.js';
import type { SourceId } from '../localisation/network/sources.js';

/** Where the pulses of one limb are felt: one site, or every site at its end. */
export type Spot =
  | { readonly code: 'site'; readonly place: PulsePlace }
  | { readonly code: 'end'; readonly end: LimbEnd; readonly side: Side; readonly sites: number };

/** The end of a limb, where more than one pulse is felt. */
export type LimbEnd = 'wrist' | 'foot';

/** Where one lesion would have to lie to explain several limbs; long stretches of the aorta by one code. */
export type SharedStretch =
  | { readonly code: 'aorta' }
  | { readonly code: 'aorta-beyond-arch' }
  | { readonly code: 'arteries'; readonly arteries: readonly NamedStretch[] };

/** Where the rule places a lesion. */
export type LesionSite =
  /** In one artery of a pair, by itself (`alone`) or besides a lesion above both. */
  | { readonly code: 'artery'; readonly arteries: readonly NamedStretch[]; readonly alone: boolean }
  /** Above the same site of both sides; otherwise one lesion on each side. */
  | { readonly code: 'above-both-sites'; readonly site: PulseSiteId; readonly shared: SharedStretch }
  /** Above the ends of both limbs; otherwise one lesion on each side. */
  | { readonly code: 'above-both-ends'; readonly end: LimbEnd; readonly shared: SharedStretch }
  /** Above unlike sites of two or more limbs; otherwise one lesion above each of the two, or more than one. */
  | { readonly code: 'above-each'; readonly spots: readonly Spot[]; readonly shared: SharedStretch }
  | { readonly code: 'above'; readonly below: Spot }
  | { readonly code: 'between'; readonly above: PulsePlace; readonly below: Spot };

export interface LesionStatement {
  readonly kind: RuleLesion['kind'];
  readonly site: LesionSite;
  /** Set when a pulse beyond is felt in full. */
  readonly doubtful: boolean;
  /** The stronger pulse beyond. Missing where there is none, or where the next lesion gives the same reason. */
  readonly beyond?: { readonly place: PulsePlace; readonly felt: 'weakly' | 'in-full' };
}

/** The answer for a limb or for the whole body, one sentence. */
export type LeadStatement =
  /** No pulse was there anywhere it was felt for, in arms or neck and legs, right and left. */
  | { readonly code: 'no-pulse-anywhere' }
  | { readonly code: 'reduced-everywhere' }
  /** The lesions of one limb, at least one. */
  | { readonly code: 'lesions'; readonly lesions: readonly LesionStatement[] }
  /** Every pulse of the body is felt in full. */
  | { readonly code: 'all-felt'; readonly pulses: number }
  | { readonly code: 'limb-felt'; readonly limb: LimbKey }
  /** `ungraded`: how many sites of the limb carry no grade. */
  | { readonly code: 'limb-felt-to'; readonly limb: LimbKey; readonly to: Spot; readonly ungraded: number }
  | { readonly code: 'limb-ungraded'; readonly limb: LimbKey }
  | { readonly code: 'aorta-only' };

/** What was found at a site; without `grade` it was not examined. */
export interface FeltStatement {
  readonly place: PulsePlace;
  readonly grade?: Grade;
}

/** A site without a grade; without `reason` it was not examined. */
export interface SilentStatement {
  readonly place: PulsePlace;
  readonly reason?: Reason;
  /** It was examined, and recorded in a way this version does not know. */
  readonly locked?: true;
}

/** One sentence of why a lesion is placed where it is. */
export type ReasonStatement =
  | { readonly code: 'felt'; readonly sites: readonly FeltStatement[] }
  /** No pulse bounds the stretch above. */
  | { readonly code: 'from-heart'; readonly to: Spot }
  | { readonly code: 'in-between'; readonly arteries: readonly NamedStretch[] }
  /** The stretch is wider than need be, because these sites carry no grade. */
  | { readonly code: 'wide'; readonly sites: readonly SilentStatement[] }
  | { readonly code: 'may-be-missing'; readonly site: MissingSite }
  | { readonly code: 'often-out-of-reach' };

export type MissingSite = 'dorsalis-pedis' | 'posterior-tibial';

/** What to keep in mind when one pulse is not there and nothing else is wrong at its level, and where that is known from. */
export const REMARKS: Readonly<
  Partial<Record<PulseSiteId, { readonly remark: ReasonStatement; readonly source: SourceId }>>
> = {
  'dorsalis-pedis': {
    remark: { code: 'may-be-missing', site: 'dorsalis-pedis' },
    source: 'robertson',
  },
  'posterior-tibial': {
    remark: { code: 'may-be-missing', site: 'posterior-tibial' },
    source: 'robertson',
  },
  'abdominal-aorta': { remark: { code: 'often-out-of-reach' }, source: 'practice' },
};

function endOf(site: PulseSiteId): LimbEnd {
  return siteDefinition(site).region === 'arm' ? 'wrist' : 'foot';
}

function spot(places: readonly PulsePlace[]): Spot {
  const [first] = places;
  if (!first) throw new Error('spot: found no place, expected at least one');
  const { site, side } = first;
  return places.length === 1 || side === 'midline'
    ? { code: 'site', place: first }
    : { code: 'end', end: endOf(site), side, sites: places.length };
}

function sharedStretch(keys: readonly PieceKey[]): SharedStretch {
  const arteries = new Set(keys.map((key) => pieceFromKey(key)?.artery));
  if (!arteries.has('thoracic-aorta')) return { code: 'arteries', arteries: namedStretches(keys) };
  return { code: arteries.has('aortic-arch') ? 'aorta' : 'aorta-beyond-arch' };
}

/** Where a lesion lies that explains other limbs as well; undefined where it explains none. */
function sharedSite(one: RuleLesion, limb: LimbKey): LesionSite | undefined {
  const below = limbsExplained(one, limb).map((explained) => explained.below);
  const [first, second] = below;
  if (!first?.[0] || !second || first[0].side === 'midline') return undefined;
  const shared = sharedStretch(one.sharedPieces);
  const sites = (places: readonly PulsePlace[]): string => places.map((place) => place.site).join();
  if (below.length > 2 || sites(first) !== sites(second)) {
    return { code: 'above-each', spots: below.map(spot), shared };
  }
  const { site } = first[0];
  return first.length > 1
    ? { code: 'above-both-ends', end: endOf(site), shared }
    : { code: 'above-both-sites', site, shared };
}

function siteOf(one: RuleLesion, limb: LimbKey, alone: boolean): LesionSite {
  if (one.singleArtery) return { code: 'artery', arteries: namedStretches(one.pieces), alone };
  const shared = sharedSite(one, limb);
  if (shared) return shared;
  const below = spot(one.below);
  return one.above ? { code: 'between', above: one.above, below } : { code: 'above', below };
}

/** The lesions of a limb; a reason that two of them have in common is told with the last of them. */
export function lesionStatements(rule: LimbRule): LesionStatement[] {
  return rule.lesions.map((one, i) => {
    const { kind, contradictedBy: place, refilled } = one;
    const told = place && !sameDoubt(one, rule.lesions[i + 1]);
    return {
      kind,
      site: siteOf(one, limbKey(rule.limb), standsAlone(one, rule)),
      doubtful: place !== undefined && !refilled,
      ...(told && { beyond: { place, felt: refilled ? ('weakly' as const) : ('in-full' as const) } }),
    };
  });
}

/** What the bedside rule says first of one limb: a block, a narrowing, normal as far as felt, or nothing. */
export function limbLead(rule: LimbRule): LeadStatement {
  const limb = limbKey(rule.limb);
  switch (rule.outcome) {
    case 'nothing':
      return { code: 'limb-ungraded', limb };
    case 'normal':
      return { code: 'limb-felt', limb };
    case 'felt-as-far':
      return { code: 'limb-felt-to', limb, to: spot(rule.feltTo), ungraded: rule.unstated.length };
    case 'lesion':
      return { code: 'lesions', lesions: lesionStatements(rule) };
  }
}

/** The one answer where every pulse of the body is equally poor, else undefined. */
export function everywhereLead(reading: RuleReading): LeadStatement | undefined {
  const kind = sameEverywhere(reading);
  return kind && { code: kind === 'block' ? 'no-pulse-anywhere' : 'reduced-everywhere' };
}

/** The lesions of each limb that has any; one that several limbs share is told with the first of them only. */
function lesionLeads(rules: readonly LimbRule[]): LeadStatement[] {
  const told = new Set<string>();
  return rules.flatMap((rule): LeadStatement[] => {
    const lesions = lesionStatements(rule).filter(({ kind, site }) => {
      const key = JSON.stringify([kind, site.code === 'artery' ? { ...site, alone: true } : site]);
      return !told.has(key) && told.add(key);
    });
    return lesions.length ? [{ code: 'lesions', lesions }] : [];
  });
}

/**
 * The bedside rule's answer for the whole body, a sentence for each limb that has something to say: what is the same
 * everywhere, else every lesion once, else how far the pulses are felt. Empty where no pulse is graded.
 */
export function ruleLeads(reading: RuleReading): LeadStatement[] {
  const everywhere = everywhereLead(reading);
  if (everywhere) return [everywhere];
  const rules = Object.values(reading);
  const lesions = lesionLeads(rules);
  if (lesions.length) return lesions;
  if (rules.every(({ outcome }) => outcome === 'normal')) {
    return [{ code: 'all-felt', pulses: PULSE_PLACES.length }];
  }
  const beyondTrunk = rules.filter(({ feltTo }) => feltTo.some(({ side }) => side !== 'midline'));
  if (beyondTrunk.length) return beyondTrunk.map(limbLead);
  return rules.some(({ feltTo }) => feltTo.length) ? [{ code: 'aorta-only' }] : [];
}

/** What is recorded at a site, as the rule reads it. */
export function feltAt(examination: Examination, place: PulsePlace): FeltStatement {
  const grade = pulseAt(examination, place)?.grade;
  return { place, ...(grade && { grade }) };
}

/** Why a site says nothing. */
export function silenceAt(examination: Examination, place: PulsePlace): SilentStatement {
  const reason = pulseAt(examination, place)?.couldNotExamine;
  if (isPulseLocked(examination, place)) return { place, locked: true };
  return { place, ...(reason && { reason }) };
}

function remarkOn({ kind, below }: RuleLesion): ReasonStatement | undefined {
  const [only, ...more] = below;
  return kind === 'block' && only && !more.length ? REMARKS[only.site]?.remark : undefined;
}

/** Why a lesion is placed where it is, sentence by sentence. */
export function lesionReasons(examination: Examination, one: RuleLesion): ReasonStatement[] {
  const { above, witness, below, unstated } = one;
  const felt = [above, witness, ...below].filter((place) => place !== undefined);
  const remark = remarkOn(one);
  return [
    { code: 'felt', sites: felt.map((place) => feltAt(examination, place)) },
    ...(!above && !witness
      ? [{ code: 'from-heart' as const, to: spot(below) }]
      : one.singleArtery
        ? []
        : [{ code: 'in-between' as const, arteries: namedStretches(one.pieces) }]),
    ...(unstated.length
      ? [{ code: 'wide' as const, sites: unstated.map((place) => silenceAt(examination, place)) }]
      : []),
    ...(remark ? [remark] : []),
  ];
}
