import type { LimbKey, PulseSiteId } from '../anatomy/index.js';
import type { Grade } from '../examination/index.js';
import type { RuleContradiction } from '../localisation/index.js';
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
} from '../statements/index.js';
import type { AnatomyWords } from './anatomy.js';
import type { ExaminationWords } from './examination.js';
import { paragraph, sentence } from './phrases.js';
import type { Speech } from './speech.js';
import { render, type Renderings } from './render.js';

type Kind = LesionStatement['kind'];
type PulsePlace = FeltStatement['place'];
type Beyond = NonNullable<LesionStatement['beyond']>['felt'];

/** The words and sentences in which a language tells what the pulses alone say. */
export interface RuleTable {
  readonly nothing: string;
  readonly nothingMore: string;
  readonly heading: string;
  readonly checkAgain: string;
  readonly felt: Readonly<Record<Grade, string>>;
  readonly kinds: Readonly<Record<Kind, string>>;
  /** Stands before such a word where a pulse beyond is felt in full. */
  readonly doubtful: Readonly<Record<Kind, string>>;
  article(kind: Kind, doubtful: boolean): string;
  /** Where a lesion lies, as it stands after its word. */
  inArtery(names: readonly string[]): string;
  alone(artery: string): string;
  aboveBothSites(site: PulseSiteId): string;
  aboveBothEnds(end: LimbEnd): string;
  /** Above one or several spots. */
  above(spots: readonly Spot[]): string;
  between(above: PulsePlace, below: Spot): string;
  /** Where one lesion would explain several limbs. */
  readonly aorta: string;
  readonly aortaBeyondArch: string;
  atArteries(names: readonly string[]): string;
  /** What would explain them otherwise. */
  oneEachSide(kind: Kind): string;
  oneAboveEach(kind: Kind): string;
  moreThanOne(kind: Kind): string;
  /** The stronger pulse beyond a lesion. */
  readonly beyond: Readonly<Record<Beyond, (place: PulsePlace) => string>>;
  /** Lesions after the first, each with its article. */
  further(lesions: readonly string[]): string;
  readonly noPulseAnywhere: string;
  readonly reducedEverywhere: string;
  allFelt(pulses: number): string;
  /** `limb` begins with a large letter. */
  limbFelt(limb: string): string;
  limbFeltTo(limb: string, to: Spot, ungraded: number): string;
  limbUngraded(limb: string): string;
  readonly aortaOnly: string;
  /** A normal reading is where reassurance goes wrong: a sentence without full stop, which the lead brings. */
  readonly notExcluded: string;
  fromHeart(to: Spot): string;
  inBetween(arteries: string): string;
  wide(sites: string): string;
  readonly missing: Readonly<Record<MissingSite, string>>;
  readonly outOfReach: string;
  contradiction(stronger: PulsePlace, weaker: PulsePlace): string;
}

interface Around {
  readonly anatomy: Pick<AnatomyWords, 'limbs' | 'place' | 'stretches'>;
  readonly examination: Pick<ExaminationWords, 'couldNotExamine' | 'notExamined' | 'reasons' | 'unknownHere'>;
  readonly speech: Speech;
}

/** What the pulses alone say. */
export function ruleFrom(w: RuleTable, { anatomy, examination, speech: { list } }: Around) {
  const limb = (key: LimbKey): string => sentence(anatomy.limbs[key]);

  const sharedStretches: Renderings<SharedStretch> = {
    aorta: () => w.aorta,
    'aorta-beyond-arch': () => w.aortaBeyondArch,
    arteries: ({ arteries }) => w.atArteries(anatomy.stretches(arteries)),
  };
  const either = (shared: SharedStretch, otherwise: string): string =>
    `${render(sharedStretches, shared)}, ${otherwise}`;

  const sites = (kind: Kind): Renderings<LesionSite> => ({
    artery: ({ arteries, alone }) => {
      const named = w.inArtery(anatomy.stretches(arteries));
      return alone ? w.alone(named) : named;
    },
    'above-both-sites': ({ site, shared }) =>
      `${w.aboveBothSites(site)}: ${either(shared, w.oneEachSide(kind))}`,
    'above-both-ends': ({ end, shared }) => `${w.aboveBothEnds(end)}: ${either(shared, w.oneEachSide(kind))}`,
    'above-each': ({ spots, shared }) =>
      `${w.above(spots)}: ${either(shared, spots.length === 2 ? w.oneAboveEach(kind) : w.moreThanOne(kind))}`,
    above: ({ below }) => w.above([below]),
    between: ({ above, below }) => w.between(above, below),
  });

  /** "occlusion between left femoral and left popliteal", with what speaks against it beyond. */
  const lesion = ({ kind, site, doubtful, beyond }: LesionStatement): string =>
    `${doubtful ? `${w.doubtful[kind]} ` : ''}${w.kinds[kind]} ${render(sites(kind), site)}${
      beyond ? w.beyond[beyond.felt](beyond.place) : ''
    }`;

  /** "Stenosis …, and an occlusion …". */
  const lesions = ([first, ...more]: readonly LesionStatement[]): string => {
    const further = more.map((one) => `${w.article(one.kind, one.doubtful)} ${lesion(one)}`);
    return sentence(`${first ? lesion(first) : ''}${further.length ? w.further(further) : ''}`);
  };

  const leads: Renderings<LeadStatement> = {
    'no-pulse-anywhere': () => w.noPulseAnywhere,
    'reduced-everywhere': () => w.reducedEverywhere,
    lesions: ({ lesions: all }) => lesions(all),
    'all-felt': ({ pulses }) => `${w.allFelt(pulses)}. ${w.notExcluded}`,
    'limb-felt': ({ limb: key }) => `${w.limbFelt(limb(key))}. ${w.notExcluded}`,
    'limb-felt-to': ({ limb: key, to, ungraded }) => w.limbFeltTo(limb(key), to, ungraded),
    'limb-ungraded': ({ limb: key }) => w.limbUngraded(limb(key)),
    'aorta-only': () => w.aortaOnly,
  };

  /** The finding at a place as the rule reads it: "left popliteal absent". */
  const finding = ({ place, grade }: FeltStatement): string =>
    `${anatomy.place(place)} ${grade ? w.felt[grade] : examination.notExamined}`;

  /** Why a site between the bounds says nothing. */
  const silence = ({ place, reason, locked }: SilentStatement): string => {
    const { unknownHere, couldNotExamine, reasons: why, notExamined } = examination;
    const silent = reason ? `${couldNotExamine} (${why[reason]})` : notExamined;
    return `${anatomy.place(place)} ${locked ? unknownHere : silent}`;
  };

  const reasons: Renderings<ReasonStatement> = {
    felt: ({ sites: felt }) => `${sentence(felt.map(finding).join(', '))}.`,
    'from-heart': ({ to }) => w.fromHeart(to),
    'in-between': ({ arteries }) => w.inBetween(list(anatomy.stretches(arteries))),
    wide: ({ sites: silent }) => sentence(w.wide(list(silent.map(silence)))),
    'may-be-missing': ({ site }) => w.missing[site],
    'often-out-of-reach': () => w.outOfReach,
  };

  return {
    get nothing() {
      return w.nothing;
    },
    get nothingMore() {
      return w.nothingMore;
    },
    get heading() {
      return w.heading;
    },
    get checkAgain() {
      return w.checkAgain;
    },
    /** The answer for a limb or the body, without full stop. */
    lead: (statement: LeadStatement) => render(leads, statement),
    lesion,
    /** Why a lesion is placed where it is. */
    reason: (statements: readonly ReasonStatement[]) =>
      paragraph(statements.map((one) => render(reasons, one))),
    contradiction: ({ weaker, stronger }: RuleContradiction) => sentence(w.contradiction(stronger, weaker)),
    finding,
    silence,
  };
}

export type RuleWords = ReturnType<typeof ruleFrom>;
