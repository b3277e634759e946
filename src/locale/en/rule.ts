import type { Grade } from '../../examination/index.js';
import type { RuleContradiction } from '../../localisation/index.js';
import type {
  FeltStatement,
  LeadStatement,
  LesionSite,
  LesionStatement,
  LimbEnd,
  MissingSite,
  ReasonStatement,
  SharedStretch,
  SilentStatement,
  Spot,
} from '../../statements/index.js';
import { render, type Renderings } from '../render.js';
import { say, termsFrom } from '../terms.js';
import { anatomy } from './anatomy.js';
import { examination as words } from './examination.js';
import { list, paragraph, sentence } from './phrases.js';

const felt = termsFrom<Grade>({
  absent: { trade: 'absent', plain: 'not felt' },
  reduced: { trade: 'reduced', plain: 'weak' },
  normal: { trade: 'palpable', plain: 'felt' },
  bounding: { trade: 'bounding', plain: 'unusually strong' },
});

const kinds = termsFrom<LesionStatement['kind']>({
  block: { trade: 'occlusion', plain: 'blockage' },
  narrowing: { trade: 'stenosis', plain: 'narrowing' },
});
const article = (kind: LesionStatement['kind'], doubtful: boolean): string =>
  kind === 'block' && !doubtful ? say('an', 'a') : 'a';

const ends = termsFrom<LimbEnd>({ wrist: 'wrist', foot: { trade: 'pedal', plain: 'foot' } });

/** A place as it stands within a sentence. */
function at(place: FeltStatement['place']): string {
  return place.side === 'midline' ? `the ${anatomy.place(place)}` : anatomy.place(place);
}

const spots: Renderings<Spot> = {
  site: ({ place }) => at(place),
  end: ({ end, side, sites }) => `${sites === 2 ? 'both' : 'all'} ${anatomy.sides[side]} ${ends[end]} pulses`,
};
const spot = (where: Spot): string => render(spots, where);

const sharedStretches: Renderings<SharedStretch> = {
  aorta: 'in the aorta',
  'aorta-beyond-arch': 'in the aorta beyond the arch',
  arteries: ({ arteries }) =>
    `at ${list(
      anatomy.stretches(arteries).map((name) => `the ${name}`),
      'or',
    )}`,
};
const inShared = (shared: SharedStretch): string => render(sharedStretches, shared);

/** Where a lesion lies, as it stands after "occlusion" or "stenosis". */
const lesionSites: Renderings<LesionSite> = {
  artery: ({ arteries, alone }) =>
    `of the ${list(anatomy.stretches(arteries), 'or')}${say(' artery', '')}${alone ? ' alone' : ''}`,
  'above-both-sites': ({ site, shared }) =>
    `above both ${anatomy.sites[site]} pulses: ${inShared(shared)}, or one on each side`,
  'above-both-ends': ({ end, shared }) =>
    `above the ${ends[end]} pulses of both sides: ${inShared(shared)}, or one on each side`,
  'above-each': ({ spots: each, shared }) =>
    `above ${list(each.map(spot))}: ${inShared(shared)}, or ${each.length === 2 ? 'one above each' : 'more than one'}`,
  above: ({ below }) => `above ${spot(below)}`,
  between: ({ above, below }) => `between ${at(above)} and ${spot(below)}`,
};

/** "occlusion between left femoral and left popliteal", with what speaks against it beyond. */
function lesion({ kind, site, doubtful, beyond }: LesionStatement): string {
  const because = {
    weakly: (name: string) => `, with ${name} ${say('weakly palpable distally', 'weakly felt beyond it')}`,
    'in-full': (name: string) =>
      `, since ${name} is ${say('fully palpable distally', 'felt in full beyond it')}`,
  };
  const more = beyond ? because[beyond.felt](at(beyond.place)) : '';
  return `${doubtful ? 'doubtful ' : ''}${kinds[kind]} ${render(lesionSites, site)}${more}`;
}

/** "Stenosis …, and an occlusion …". */
function lesions(all: readonly LesionStatement[]): string {
  const further = (one: LesionStatement, i: number): string =>
    `, ${i === all.length - 2 ? 'and ' : ''}${article(one.kind, one.doubtful)} ${lesion(one)}`;
  return sentence(`${all.slice(0, 1).map(lesion).join('')}${all.slice(1).map(further).join('')}`);
}

const limb = (key: keyof typeof anatomy.limbs): string => sentence(anatomy.limbs[key]);

const palpable = (): string => say('palpable, none reduced', 'felt, none weak');
/** A normal reading is where reassurance goes wrong. The lead brings its own full stop. */
const NOT_EXCLUDED = (): string =>
  say('A palpable pulse does not exclude arterial disease', 'A pulse that is felt does not rule out disease');

const leads: Renderings<LeadStatement> = {
  'no-pulse-anywhere': () =>
    say(
      'No pulse palpable at any examined site: assess the circulation first (shock, cardiac arrest), before localising an occlusion',
      'No pulse felt at any place that was checked: the circulation as a whole comes first',
    ),
  'reduced-everywhere': () =>
    say(
      'All palpable pulses reduced: consider low flow or vasoconstriction before multiple stenoses',
      'Every pulse is weak: weak circulation or cold is more likely than many narrowings',
    ),
  lesions: ({ lesions: all }) => lesions(all),
  'all-felt': ({ pulses }) =>
    `All ${pulses} pulses ${palpable()}: ${say('no occlusive lesion suggested', 'no blockage found so far')}. ${NOT_EXCLUDED()}`,
  'limb-felt': ({ limb: key }) => `${limb(key)}: all pulses ${palpable()}. ${NOT_EXCLUDED()}`,
  'limb-felt-to': ({ limb: key, to, ungraded }) =>
    `${limb(key)}: ${felt.normal} as far as ${spot(to)}; ${ungraded} ${ungraded === 1 ? 'site' : 'sites'} ${say('without a grade', 'not checked')}`,
  'limb-ungraded': ({ limb: key }) => `${limb(key)}: no pulse ${say('graded', 'checked')}`,
  'aorta-only': () =>
    say(
      'Abdominal aorta palpable, nothing distal to it graded',
      'The main artery of the belly is felt; nothing below it was checked',
    ),
};

/** The finding at a place as the rule reads it: "left popliteal felt for and not there". */
const finding = ({ place, grade }: FeltStatement): string =>
  `${anatomy.place(place)} ${grade ? felt[grade] : words.notExamined}`;

/** Why a site between the bounds says nothing. */
const silence = ({ place, reason, locked }: SilentStatement): string =>
  `${anatomy.place(place)} ${locked ? words.unknownHere : reason ? `${words.couldNotExamine} (${words.reasons[reason]})` : words.notExamined}`;

const missing = termsFrom<MissingSite>({
  'dorsalis-pedis': {
    trade: 'Some healthy people have no dorsalis pedis pulse.',
    plain: 'Some healthy people have no pulse on top of the foot.',
  },
  'posterior-tibial': {
    trade: 'A few healthy people have no posterior tibial pulse.',
    plain: 'A few healthy people have no pulse at the inner ankle.',
  },
});

const reasons: Renderings<ReasonStatement> = {
  felt: ({ sites }) => `${sentence(sites.map(finding).join(', '))}.`,
  'from-heart': ({ to }) =>
    `${say('No proximal pulse palpable', 'No pulse felt nearer to the heart')}: the segment runs from the heart to ${spot(to)}.`,
  'in-between': ({ arteries }) => `In between: ${list(anatomy.stretches(arteries))}.`,
  wide: ({ sites }) => `${sentence(list(sites.map(silence)))}, so the segment cannot be narrowed further.`,
  'may-be-missing': ({ site }) => missing[site],
  'often-out-of-reach': () =>
    say(
      'An impalpable aorta excludes neither aneurysm nor aorto-iliac occlusion.',
      'A main artery that cannot be felt in the belly says little by itself.',
    ),
};

export const rule = {
  nothing: 'No pulse recorded',
  nothingMore: 'Nothing is said about any artery until a pulse is recorded.',
  get heading() {
    return say('Pulse rule', 'What the pulses alone say');
  },
  checkAgain: 'Recheck',
  /** The answer for a limb or the body, without full stop. */
  lead: (statement: LeadStatement) => render(leads, statement),
  lesion,
  /** Why a lesion is placed where it is. */
  reason: (statements: readonly ReasonStatement[]) =>
    paragraph(statements.map((one) => render(reasons, one))),
  contradiction: ({ weaker, stronger }: RuleContradiction) =>
    `${sentence(`${at(stronger)} pulse`)} is stronger than ${at(weaker)} above it: ${say('one may have been misjudged, or collaterals reconstitute the distal pulse. Palpate both again.', 'one may have been misjudged, or natural detours fill the lower one. Feel both again.')}`,
  finding,
  silence,
};
export type RuleWords = typeof rule;
