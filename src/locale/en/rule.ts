import {
  isPulseSite,
  type LimbKey,
  limbKey,
  pieceFromKey,
  type PieceKey,
  type Place,
  vesselKey,
} from '../../anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../../examination/index.js';
import type { LimbRule, RuleContradiction, RuleLesion, RuleReading } from '../../localisation/rule.js';
import { anatomy } from './anatomy.js';
import { examination as words } from './examination.js';
import { list, sentence } from './phrases.js';

const felt: Record<Grade, string> = {
  absent: 'felt for and not there',
  reduced: 'felt but reduced',
  normal: 'felt',
  bounding: 'felt, bounding',
};

function twins(places: readonly Place[]): string {
  const [first] = places;
  if (!first || places.length === 1) return first ? anatomy.place(first) : '';
  const end = first.site === 'radial' || first.site === 'ulnar' ? 'wrist' : 'foot';
  return `both ${anatomy.sides[first.side]} ${end} pulses`;
}

/** Arteries named once each, in order; both parts of one artery are the artery. */
function pieces(keys: readonly PieceKey[]): string[] {
  const whole = (key: PieceKey): boolean => {
    const own = pieceFromKey(key);
    return !!own && keys.filter((k) => vesselKey(pieceFromKey(k) ?? own) === vesselKey(own)).length > 1;
  };
  return [
    ...new Set(
      keys.map((key) => {
        const own = pieceFromKey(key);
        return own && whole(key) ? anatomy.vessel(own) : anatomy.piece(key);
      }),
    ),
  ];
}

const KIND = { block: 'block', narrowing: 'narrowing' } as const;

function bothSides(lesion: RuleLesion, limb: LimbKey): boolean {
  const [side, kind] = limb.split(' ') as [string, string];
  const other = `${side === 'right' ? 'left' : 'right'} ${kind}`;
  return lesion.sharedWith.includes(other as LimbKey);
}

/** "block between left femoral and left popliteal". */
function lesion(one: RuleLesion, limb: LimbKey): string {
  const kind = KIND[one.kind];
  if (one.singleArtery) return `${kind} of the ${list(pieces(one.pieces), 'or')} artery alone`;
  if (bothSides(one, limb) && one.below[0]) {
    const site = anatomy.sites[one.below[0].site];
    return `${kind} above both ${site} pulses: at ${list(sharedNames(one), 'or')}, or on both sides`;
  }
  if (!one.above) return `${kind} above ${one.below.length > 1 ? '' : 'the '}${twins(one.below)}`;
  return `${kind} between ${anatomy.place(one.above)} and ${twins(one.below)}`;
}

function sharedNames(one: RuleLesion): string[] {
  return pieces(one.sharedPieces).map((name) => `the ${name}`);
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

function reasons(examination: Examination, rule: LimbRule): string[] {
  return rule.lesions.map((one) => {
    const seen = [one.above, one.witness, ...one.below].filter((place) => place !== undefined);
    const parts = seen.map((place) => finding(examination, place));
    const bounds =
      one.above || one.witness ? '' : ' No pulse above it is recorded, so the trunk is the upper bound.';
    const open = one.unstated.length
      ? ` ${sentence(list(one.unstated.map((place) => silence(examination, place))))}, so the stretch is wider than it need be.`
      : '';
    const where = one.pieces.length ? ` In between: ${list(pieces(one.pieces))}.` : '';
    return `${sentence(list(parts))}.${bounds}${where}${open}`;
  });
}

/** A limb's answer in one sentence, without full stop; empty where nothing was examined. */
function lead(rule: LimbRule): string {
  const key = limbKey(rule.limb);
  const limb = sentence(anatomy.limbs[key]);
  switch (rule.outcome) {
    case 'nothing':
      return '';
    case 'normal':
      return `${limb}: every pulse felt`;
    case 'felt-as-far':
      return `${limb}: felt as far as ${twins(rule.feltTo)}`;
    case 'lesion': {
      const parts = rule.lesions.map((one, i) => `${i ? 'a ' : ''}${lesion(one, key)}`);
      return sentence(list(parts, ', and').replace(' , and', ', and'));
    }
  }
}

function contradiction({ weaker, stronger }: RuleContradiction): string {
  return `${sentence(anatomy.place(stronger))} is felt more strongly than ${anatomy.place(weaker)} above it: one of the two was felt wrongly, or collaterals fill it. Feel both again.`;
}

/** The answer for the whole body, one sentence a limb that has something to say. */
function leads(reading: RuleReading): string[] {
  const all = Object.values(reading);
  const lesions = all.filter((rule) => rule.outcome === 'lesion');
  if (lesions.length) return [...new Set(lesions.map(lead))];
  if (all.every((rule) => rule.outcome === 'normal')) return ['Every pulse felt is normal'];
  const partial = all.filter((rule) => rule.outcome !== 'nothing');
  return partial.map(lead);
}

export const rule = {
  nothing: 'Nothing examined yet',
  nothingMore: 'No pulse has been recorded, so nothing is said about any artery.',
  heading: 'Bedside rule',
  checkAgain: 'Check again',
  lead,
  leads,
  lesion,
  reasons,
  contradiction,
  finding,
  pieces,
  unstated: (examination: Examination, places: readonly Place[]) =>
    places.filter((place) => isPulseSite(place.site)).map((place) => silence(examination, place)),
};
