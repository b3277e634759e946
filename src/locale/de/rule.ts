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
import type { RuleWords } from '../en/rule.js';
import { anatomy, atName, pulseName, withArticle } from './anatomy.js';
import { examination as words } from './examination.js';
import { list, sentence } from './phrases.js';

const felt: Record<Grade, string> = {
  absent: 'nicht tastbar',
  reduced: 'abgeschwächt tastbar',
  normal: 'tastbar',
  bounding: 'hebend tastbar',
};

/** What to keep in mind when this pulse is not there and nothing else is wrong at its level. */
const remarks: Partial<Record<SiteId, string>> = {
  // Absent in 15 of 547 young healthy people on one side or both. Robertson GS et al., Ann R Coll Surg Engl 1990;72:99-100.
  'dorsalis-pedis': 'Manche Gesunde haben keinen Dorsalis-pedis-Puls.',
  // Absent in 1 of 547, same source.
  'posterior-tibial': 'Einige wenige Gesunde haben keinen Tibialis-posterior-Puls.',
  // Common practice, no source.
  'abdominal-aorta':
    'Eine nicht tastbare Bauchaorta sagt für sich genommen wenig: Sie liegt oft zu tief für die Hand.',
};

const KINDS: Record<RuleLesion['kind'], { word: string; article: string; doubtful: string; each: string }> = {
  block: { word: 'Verschluss', article: 'ein', doubtful: 'fraglicher', each: 'einer' },
  narrowing: { word: 'Stenose', article: 'eine', doubtful: 'fragliche', each: 'eine' },
};

function endOf({ site }: Place): string {
  return site === 'radial' || site === 'ulnar' ? 'Handgelenkspulse' : 'Fußpulse';
}

type Form = 'and' | 'above' | 'to';

/**
 * One place, or the twins of wrist or foot, as it stands after "und" (between), "oberhalb" or "bis": "Poplitea links",
 * "der Poplitea links", "zur Poplitea links"; "den Fußpulsen links", "der Fußpulse links", "zu den Fußpulsen links".
 */
function spot(places: readonly Place[], form: Form): string {
  const [first] = places;
  if (!first) return '';
  if (places.length === 1) {
    const name = anatomy.place(first);
    return form === 'and' ? name : form === 'to' ? `zur ${name}` : withArticle(name, 'genitive');
  }
  const side = anatomy.sides[first.side];
  const ends = endOf(first);
  return form === 'above' ? `der ${ends} ${side}` : `${form === 'to' ? 'zu ' : ''}den ${ends}n ${side}`;
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
    return arteries.has('aortic-arch') ? 'in der Aorta' : 'in der Aorta jenseits des Bogens';
  }
  return list(pieces(keys).map(atName), 'oder');
}

/** "Verschluss oberhalb beider Femoralispulse: an der Aortenbifurkation, oder je einer auf jeder Seite"; empty where not shared. */
function sharedLesion(one: RuleLesion, limb: LimbKey): string {
  const all = limbsExplained(one, limb);
  const [a, b] = all.map(({ below }) => below);
  if (!a?.[0] || !b || a[0].side === 'midline') return '';
  const sites = (places: readonly Place[]) => places.map((place) => place.site).join();
  const pair = all.length === 2 && sites(a) === sites(b);
  const { word, each } = KINDS[one.kind];
  const pulses = !pair
    ? list(all.map(({ below }) => spot(below, 'above')))
    : a.length > 1
      ? `der ${endOf(a[0])} beider Seiten`
      : `beider ${pulseName(a[0].site)}e`;
  const otherwise = pair
    ? `je ${each} auf jeder Seite`
    : all.length === 2
      ? `je ${each} oberhalb von beiden`
      : `mehr als ${each}`;
  return `${word} oberhalb ${pulses}: ${inShared(one.sharedPieces)}, oder ${otherwise}`;
}

function where(one: RuleLesion, limb: LimbKey, alone: boolean): string {
  const { word } = KINDS[one.kind];
  if (one.singleArtery) {
    const arteries = pieces(one.pieces).map((name) => withArticle(name, 'genitive'));
    return `${word} ${alone ? 'allein ' : ''}${list(arteries, 'oder')}`;
  }
  const common = sharedLesion(one, limb);
  if (common) return common;
  if (!one.above) return `${word} oberhalb ${spot(one.below, 'above')}`;
  return `${word} zwischen ${anatomy.place(one.above)} und ${spot(one.below, 'and')}`;
}

/** "Verschluss zwischen Femoralis links und Poplitea links", with what speaks against it beyond. */
function lesion(one: RuleLesion, limb: LimbKey, alone = true, because = true): string {
  const said = where(one, limb, alone);
  if (!one.contradictedBy) return said;
  const beyond = anatomy.place(one.contradictedBy);
  if (one.refilled) return because ? `${said}, jenseits davon ${beyond} schwach tastbar` : said;
  return `${KINDS[one.kind].doubtful} ${said}${because ? `, denn jenseits davon ist ${beyond} voll tastbar` : ''}`;
}

/** Each lesion of a limb in words; an artery stands alone only where its twin is as strong as the pulse above. */
function lesions(rule: LimbRule): { kind: RuleLesion['kind']; text: string }[] {
  const { limb, lesions: all } = rule;
  return all.map((one, i) => ({
    kind: one.kind,
    text: lesion(one, limbKey(limb), standsAlone(one, rule), !sameDoubt(one, all[i + 1])),
  }));
}

/** "Stenose …; dazu ein Verschluss …". */
function joined(parts: readonly { kind: RuleLesion['kind']; text: string }[]): string {
  const [first, ...more] = parts;
  const rest = more.map(({ kind, text }) => `${KINDS[kind].article} ${text}`);
  return sentence(`${first?.text ?? ''}${rest.length ? `; dazu ${list(rest)}` : ''}`);
}

/** The finding at a place as the rule reads it: "Poplitea links nicht tastbar". */
function finding(examination: Examination, place: Place): string {
  const grade = pulseAt(examination, place)?.grade;
  return `${anatomy.place(place)} ${grade ? felt[grade] : words.notExamined}`;
}

/** Why a site between the bounds says nothing. */
function silence(examination: Examination, place: Place): string {
  const reason = pulseAt(examination, place)?.couldNotExamine;
  return `${anatomy.place(place)} ${reason ? `${words.couldNotExamine} (${words.reasons[reason]})` : words.notExamined}`;
}

/** What lies between the bounds. */
function stretch(one: RuleLesion): string {
  if (!one.above && !one.witness) {
    return `Näher am Herzen ist kein Puls getastet: Die Strecke reicht vom Herzen bis ${spot(one.below, 'to')}.`;
  }
  return one.singleArtery ? '' : `Dazwischen: ${list(pieces(one.pieces))}.`;
}

function reason(examination: Examination, one: RuleLesion): string {
  const seen = [one.above, one.witness, ...one.below].filter((place) => place !== undefined);
  const [only] = one.below;
  const remark = one.kind === 'block' && one.below.length === 1 && only && remarks[only.site];
  return [
    `${sentence(seen.map((place) => finding(examination, place)).join(', '))}.`,
    stretch(one),
    one.unstated.length
      ? `${sentence(list(one.unstated.map((place) => silence(examination, place))))}; deshalb ist die Strecke weiter als nötig.`
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
      return `${limb}: alle Pulse tastbar, keiner abgeschwächt`;
    case 'felt-as-far': {
      const count = rule.unstated.length;
      return `${limb}: tastbar bis ${spot(rule.feltTo, 'to')}; ${count} ${count === 1 ? 'Stelle' : 'Stellen'} ohne Grad`;
    }
    case 'lesion':
      return joined(lesions(rule));
  }
}

function contradiction({ weaker, stronger }: RuleContradiction): string {
  return `${sentence(anatomy.place(stronger))} ist kräftiger tastbar als ${anatomy.place(weaker)} darüber: Entweder wurde eine der beiden falsch getastet, oder Kollateralen füllen die untere. Beide noch einmal tasten.`;
}

/** One sentence for the whole body where every pulse is equally poor, without full stop; else empty. */
function everywhere(reading: RuleReading): string {
  switch (sameEverywhere(reading)) {
    case 'block':
      return 'Nirgends, wo getastet wurde, ist ein Puls vorhanden: erst den Kreislauf versorgen, dann einen Verschluss suchen';
    case 'narrowing':
      return 'Jeder getastete Puls ist abgeschwächt: geringer Fluss oder Kälte erklärt das eher als viele Stenosen';
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
  const fresh = (rule: LimbRule) => (_: unknown, i: number) => {
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
    return [`Alle ${PULSE_PLACES.length} Pulse tastbar, keiner abgeschwächt: kein Verschluss erkennbar`];
  }
  const trunkOnly = (rule: LimbRule) => rule.feltTo.every((place) => place.side === 'midline');
  const limbs = all.filter((rule) => rule.outcome !== 'nothing' && !trunkOnly(rule)).map(lead);
  return limbs.length
    ? limbs
    : all.some((rule) => rule.feltTo.length)
      ? ['Bauchaorta tastbar, jenseits davon nichts bewertet']
      : [];
}

export const rule: RuleWords = {
  nothing: 'Noch nichts untersucht',
  nothingMore: 'Es ist kein Puls erfasst, daher keine Aussage über eine Arterie.',
  heading: 'Regel am Krankenbett',
  checkAgain: 'Noch einmal prüfen',
  lead,
  leads,
  everywhere,
  lesion,
  reasons: (examination, { lesions: all }) => all.map((one) => reason(examination, one)),
  contradiction,
  finding,
  pieces,
  unstated: (examination, places) =>
    places.filter((place) => isPulseSite(place.site)).map((place) => silence(examination, place)),
};
