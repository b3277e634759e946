import {
  isPulseSite,
  type LimbKey,
  limbKey,
  namedStretches,
  pieceFromKey,
  type PieceKey,
  type Place,
  PULSE_PLACES,
  type SiteId,
} from '../../anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../../examination/index.js';
import {
  type LimbRule,
  type RuleContradiction,
  type RuleLesion,
  type RuleReading,
  limbsExplained,
  sameDoubt,
  sameEverywhere,
  standsAlone,
} from '../../localisation/rule.js';
import { anatomy } from './anatomy.js';
import { examination as words } from './examination.js';
import { list, sentence } from './phrases.js';

const felt: Record<Grade, string> = {
  absent: 'felt for and not there',
  reduced: 'felt but reduced',
  normal: 'felt',
  bounding: 'felt, bounding',
};

/** What to keep in mind when this pulse is not there and nothing else is wrong at its level. */
const remarks: Partial<Record<SiteId, string>> = {
  // Absent in 15 of 547 young healthy people on one side or both. Robertson GS et al., Ann R Coll Surg Engl 1990;72:99-100.
  'dorsalis-pedis': 'Some healthy people have no dorsalis pedis pulse.',
  // Absent in 1 of 547, same source.
  'posterior-tibial': 'A few healthy people have no posterior tibial pulse.',
  // Common practice, no source.
  'abdominal-aorta': 'An aorta that cannot be felt says little by itself: it often lies out of reach.',
};

/** A place as it stands within a sentence. */
function at(place: Place): string {
  return place.side === 'midline' ? `the ${anatomy.place(place)}` : anatomy.place(place);
}

function endOf({ site }: Place): string {
  return site === 'radial' || site === 'ulnar' ? 'wrist' : 'foot';
}

/** One place, or the twins of wrist or foot. */
function spot(places: readonly Place[]): string {
  const [first] = places;
  if (!first || places.length === 1) return first ? at(first) : '';
  return `both ${anatomy.sides[first.side]} ${endOf(first)} pulses`;
}

/** Arteries named once each, in order; both parts of one artery are the artery. */
export function pieces(keys: readonly PieceKey[]): string[] {
  return namedStretches(keys).map((one) =>
    'vessel' in one ? anatomy.vessel(one.vessel) : anatomy.piece(one.piece.key),
  );
}

/** Where several limbs part; long stretches of the aorta in one word. */
function inShared(keys: readonly PieceKey[]): string {
  const arteries = new Set(keys.map((key) => pieceFromKey(key)?.artery));
  if (arteries.has('thoracic-aorta')) {
    return arteries.has('aortic-arch') ? 'in the aorta' : 'in the aorta beyond the arch';
  }
  return `at ${list(
    pieces(keys).map((name) => `the ${name}`),
    'or',
  )}`;
}

/** "block above both femoral pulses: at the aortic fork, or one on each side"; empty where no other limb shares the lesion. */
function sharedLesion(one: RuleLesion, limb: LimbKey): string {
  const all = limbsExplained(one, limb);
  const [a, b] = all.map(({ below }) => below);
  if (!a?.[0] || !b || a[0].side === 'midline') return '';
  const sites = (places: readonly Place[]) => places.map((place) => place.site).join();
  const pair = all.length === 2 && sites(a) === sites(b);
  const pulses = !pair
    ? list(all.map(({ below }) => spot(below)))
    : a.length > 1
      ? `the ${endOf(a[0])} pulses of both sides`
      : `both ${anatomy.sites[a[0].site]} pulses`;
  const otherwise = pair ? 'one on each side' : all.length === 2 ? 'one above each' : 'more than one';
  return `${one.kind} above ${pulses}: ${inShared(one.sharedPieces)}, or ${otherwise}`;
}

function where(one: RuleLesion, limb: LimbKey, alone: boolean): string {
  if (one.singleArtery) {
    return `${one.kind} of the ${list(pieces(one.pieces), 'or')} artery${alone ? ' alone' : ''}`;
  }
  const common = sharedLesion(one, limb);
  if (common) return common;
  if (!one.above) return `${one.kind} above ${spot(one.below)}`;
  return `${one.kind} between ${at(one.above)} and ${spot(one.below)}`;
}

/** "block between left femoral and left popliteal", with what speaks against it beyond. */
function lesion(one: RuleLesion, limb: LimbKey, alone = true, because = true): string {
  const said = where(one, limb, alone);
  if (!one.contradictedBy) return said;
  const beyond = at(one.contradictedBy);
  if (one.refilled) return because ? `${said}, with ${beyond} weakly felt beyond it` : said;
  return `doubtful ${said}${because ? `, since ${beyond} is felt in full beyond it` : ''}`;
}

/** Each lesion of a limb in words; an artery stands alone only where its twin is as strong as the pulse above. */
function lesions(rule: LimbRule): string[] {
  const { limb, lesions: all } = rule;
  return all.map((one, i) => lesion(one, limbKey(limb), standsAlone(one, rule), !sameDoubt(one, all[i + 1])));
}

/** "Narrowing …, and a block …". */
function joined(parts: readonly string[]): string {
  const [first = '', ...more] = parts;
  return sentence(
    [first, ...more.map((part, i) => `${i === more.length - 1 ? 'and ' : ''}a ${part}`)].join(', '),
  );
}

/** The finding at a place as the rule reads it: "left popliteal felt for and not there". */
function finding(examination: Examination, place: Place): string {
  const grade = pulseAt(examination, place)?.grade;
  return `${anatomy.place(place)} ${grade ? felt[grade] : words.notExamined}`;
}

/** Why a site between the bounds says nothing. */
function silence(examination: Examination, place: Place): string {
  const reason = pulseAt(examination, place)?.couldNotExamine;
  return `${anatomy.place(place)} ${reason ? `could not be examined (${words.reasons[reason]})` : 'not examined'}`;
}

/** What lies between the bounds. */
function stretch(one: RuleLesion): string {
  if (!one.above && !one.witness) {
    return `No pulse felt nearer to the heart: the stretch runs from the heart to ${spot(one.below)}.`;
  }
  return one.singleArtery ? '' : `In between: ${list(pieces(one.pieces))}.`;
}

function reason(examination: Examination, one: RuleLesion): string {
  const seen = [one.above, one.witness, ...one.below].filter((place) => place !== undefined);
  const [only] = one.below;
  const remark = one.kind === 'block' && one.below.length === 1 && only && remarks[only.site];
  return [
    `${sentence(seen.map((place) => finding(examination, place)).join(', '))}.`,
    stretch(one),
    one.unstated.length
      ? `${sentence(list(one.unstated.map((place) => silence(examination, place))))}, so the stretch is wider than it need be.`
      : '',
    remark || '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** A limb's answer in one sentence, without full stop; empty where nothing was examined. */
function lead(rule: LimbRule): string {
  const limb = sentence(anatomy.limbs[limbKey(rule.limb)]);
  switch (rule.outcome) {
    case 'nothing':
      return '';
    case 'normal':
      return `${limb}: every pulse felt, none reduced`;
    case 'felt-as-far': {
      const count = rule.unstated.length;
      return `${limb}: felt as far as ${spot(rule.feltTo)}; ${count} ${count === 1 ? 'site' : 'sites'} without a grade`;
    }
    case 'lesion':
      return joined(lesions(rule));
  }
}

function contradiction({ weaker, stronger }: RuleContradiction): string {
  return `${sentence(at(stronger))} is felt more strongly than ${at(weaker)} above it: one of the two was felt wrongly, or collaterals fill the lower one. Feel both again.`;
}

/** One sentence for the whole body where every pulse is equally poor, without full stop; else empty. */
function everywhere(reading: RuleReading): string {
  switch (sameEverywhere(reading)) {
    case 'block':
      return 'No pulse felt anywhere it was felt for: see to the circulation before looking for a block';
    case 'narrowing':
      return 'Every pulse felt is reduced: low flow or cold explains that before many narrowings do';
    default:
      return '';
  }
}

/** The answer for the whole body: one sentence a limb that has something to say, a lesion shared by limbs told once. */
function leads(reading: RuleReading): string[] {
  const common = everywhere(reading);
  if (common) return [common];
  const all = Object.values(reading);
  const told = new Set<string>();
  const fresh = (rule: LimbRule) => (_: string, i: number) => {
    const one = rule.lesions[i];
    const place = one && where(one, limbKey(rule.limb), true);
    return place !== undefined && !told.has(place) && told.add(place);
  };
  const found = all
    .map((rule) => lesions(rule).filter(fresh(rule)))
    .filter((parts) => parts.length)
    .map(joined);
  if (found.length) return found;
  if (all.every((rule) => rule.outcome === 'normal')) {
    return [`All ${PULSE_PLACES.length} pulses felt, none reduced: no block shown`];
  }
  const trunkOnly = (rule: LimbRule) => rule.feltTo.every((place) => place.side === 'midline');
  const limbs = all.filter((rule) => rule.outcome !== 'nothing' && !trunkOnly(rule)).map(lead);
  return limbs.length
    ? limbs
    : all.some((rule) => rule.feltTo.length)
      ? ['Abdominal aorta felt, nothing beyond it graded']
      : [];
}

export const rule = {
  nothing: 'Nothing examined yet',
  nothingMore: 'No pulse has been recorded, so nothing is said about any artery.',
  heading: 'Bedside rule',
  checkAgain: 'Check again',
  lead,
  leads,
  everywhere,
  lesion,
  reasons: (examination: Examination, { lesions: all }: LimbRule) =>
    all.map((one) => reason(examination, one)),
  contradiction,
  finding,
  pieces,
  unstated: (examination: Examination, places: readonly Place[]) =>
    places.filter((place) => isPulseSite(place.site)).map((place) => silence(examination, place)),
};
export type RuleWords = typeof rule;
