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
import { anatomy } from './anatomy.js';
import { examination as words } from './examination.js';
import { list, paragraph, sentence } from './phrases.js';

const felt: Record<Grade, string> = {
  absent: 'felt for and not there',
  reduced: 'felt but reduced',
  normal: 'felt',
  bounding: 'felt, bounding',
};

const ends: Record<LimbEnd, string> = { wrist: 'wrist', foot: 'foot' };

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

/** Where a lesion lies, as it stands after "block" or "narrowing". */
const lesionSites: Renderings<LesionSite> = {
  artery: ({ arteries, alone }) =>
    `of the ${list(anatomy.stretches(arteries), 'or')} artery${alone ? ' alone' : ''}`,
  'above-both-sites': ({ site, shared }) =>
    `above both ${anatomy.sites[site]} pulses: ${inShared(shared)}, or one on each side`,
  'above-both-ends': ({ end, shared }) =>
    `above the ${ends[end]} pulses of both sides: ${inShared(shared)}, or one on each side`,
  'above-each': ({ spots: each, shared }) =>
    `above ${list(each.map(spot))}: ${inShared(shared)}, or ${each.length === 2 ? 'one above each' : 'more than one'}`,
  above: ({ below }) => `above ${spot(below)}`,
  between: ({ above, below }) => `between ${at(above)} and ${spot(below)}`,
};

/** "block between left femoral and left popliteal", with what speaks against it beyond. */
function lesion({ kind, site, doubtful, beyond }: LesionStatement): string {
  const because = {
    weakly: (name: string) => `, with ${name} weakly felt beyond it`,
    'in-full': (name: string) => `, since ${name} is felt in full beyond it`,
  };
  const more = beyond ? because[beyond.felt](at(beyond.place)) : '';
  return `${doubtful ? 'doubtful ' : ''}${kind} ${render(lesionSites, site)}${more}`;
}

/** "Narrowing …, and a block …". */
function lesions([first, ...more]: readonly string[]): string {
  const last = more.length - 1;
  return sentence([first, ...more.map((one, i) => `${i === last ? 'and ' : ''}a ${one}`)].join(', '));
}

const limb = (key: keyof typeof anatomy.limbs): string => sentence(anatomy.limbs[key]);

const leads: Renderings<LeadStatement> = {
  'no-pulse-anywhere':
    'No pulse felt anywhere it was felt for: see to the circulation before looking for a block',
  'reduced-everywhere':
    'Every pulse felt is reduced: low flow or cold explains that before many narrowings do',
  lesions: ({ lesions: all }) => lesions(all.map(lesion)),
  'all-felt': ({ pulses }) => `All ${pulses} pulses felt, none reduced: no block shown`,
  'limb-felt': ({ limb: key }) => `${limb(key)}: every pulse felt, none reduced`,
  'limb-felt-to': ({ limb: key, to, ungraded }) =>
    `${limb(key)}: felt as far as ${spot(to)}; ${ungraded} ${ungraded === 1 ? 'site' : 'sites'} without a grade`,
  'limb-ungraded': ({ limb: key }) => `${limb(key)}: no pulse graded`,
  'aorta-only': 'Abdominal aorta felt, nothing beyond it graded',
};

/** The finding at a place as the rule reads it: "left popliteal felt for and not there". */
const finding = ({ place, grade }: FeltStatement): string =>
  `${anatomy.place(place)} ${grade ? felt[grade] : words.notExamined}`;

/** Why a site between the bounds says nothing. */
const silence = ({ place, reason, locked }: SilentStatement): string =>
  `${anatomy.place(place)} ${locked ? words.unknownHere : reason ? `could not be examined (${words.reasons[reason]})` : words.notExamined}`;

const missing: Record<MissingSite, string> = {
  'dorsalis-pedis': 'Some healthy people have no dorsalis pedis pulse.',
  'posterior-tibial': 'A few healthy people have no posterior tibial pulse.',
};

const reasons: Renderings<ReasonStatement> = {
  felt: ({ sites }) => `${sentence(sites.map(finding).join(', '))}.`,
  'from-heart': ({ to }) =>
    `No pulse felt nearer to the heart: the stretch runs from the heart to ${spot(to)}.`,
  'in-between': ({ arteries }) => `In between: ${list(anatomy.stretches(arteries))}.`,
  wide: ({ sites }) => `${sentence(list(sites.map(silence)))}, so the stretch is wider than it need be.`,
  'may-be-missing': ({ site }) => missing[site],
  'often-out-of-reach': 'An aorta that cannot be felt says little by itself: it often lies out of reach.',
};

export const rule = {
  nothing: 'Nothing examined yet',
  nothingMore: 'No pulse has been recorded, so nothing is said about any artery.',
  heading: 'Bedside rule',
  checkAgain: 'Check again',
  /** The answer for a limb or the body, without full stop. */
  lead: (statement: LeadStatement) => render(leads, statement),
  lesion,
  /** Why a lesion is placed where it is. */
  reason: (statements: readonly ReasonStatement[]) =>
    paragraph(statements.map((one) => render(reasons, one))),
  contradiction: ({ weaker, stronger }: RuleContradiction) =>
    `${sentence(at(stronger))} is felt more strongly than ${at(weaker)} above it: one of the two was felt wrongly, or collaterals fill the lower one. Feel both again.`,
  finding,
  silence,
};
export type RuleWords = typeof rule;
