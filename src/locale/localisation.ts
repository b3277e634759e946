import {
  type ArteryId,
  limbKey,
  type LimbKey,
  namedStretches,
  type PieceKey,
  type Place,
  type SiteId,
} from '../anatomy/index.js';
import type { VertebralFlow } from '../examination/index.js';
import type {
  ActId,
  Assumption,
  Cause,
  Conflict,
  FindingId,
  Muscle,
  NotExcluded,
  SettlingQuestion,
  State,
  StealSymptom,
  Whereabouts,
} from '../localisation/index.js';
import type {
  BeginsStatement,
  EvidenceStatement,
  FirmStatement,
  FurtherStatement,
  ImpossibleStatement,
  Nature,
  NatureStatement,
  NextStatement,
  OccludedStatement,
  StoryStatement,
  VoicesStatement,
} from '../statements/index.js';
import type { AnatomyWords } from './anatomy.js';
import type { ExaminationWords } from './examination.js';
import type { skinLevels } from './en/skin-levels.js';
import { paragraph, sentence } from './phrases.js';
import type { Speech } from './speech.js';
import { render, renderKind, type Renderings } from './render.js';
import { together } from './terms.js';

type Of<K extends string> = Readonly<Record<K, string>>;
/** Gets the words for what a sentence is about, and returns the sentence; `at` is a place, `of` a limb. */
type About = (about: string) => string;
type Delay = Extract<FindingId, { kind: 'delay' }>;
export type NamedActKind = Exclude<ActId['kind'], 'feel' | 'delay'>;

/** The words and sentences in which a language tells the answers of the belief network. */
export interface LocalisationTable {
  readonly causes: Of<Cause>;
  /** As they stand after the name of an artery. */
  readonly states: Of<State>;
  readonly muscles: Of<Muscle>;
  /** What delay was found, as it stands after a colon. */
  readonly delays: Of<Delay['side']>;
  readonly between: Of<Delay['of']>;
  readonly temperatures: Of<Extract<FindingId, { kind: 'skin' }>['temperature']>;
  /** The pulse of a place. */
  pulse(place: Place): string;
  /** The pulse of a site, as it stands in an assumption. */
  pulseOf(site: SiteId): string;
  /** Findings; none has to begin with a large letter. */
  readonly findings: {
    pulse(pulse: string, grade: string): string;
    doppler(at: string, signal: string): string;
    readonly thrill: About;
    bruit(at: string, bruit: string): string;
    noBruit(at: string, none: string): string;
    index(at: string, value: string): string;
    ankleIndex(side: string, value: string): string;
    toeIndex(side: string, value: string): string;
    fingerIndex(side: string, value: string): string;
    readonly incompressible: About;
    readonly falls: About;
    readonly noFall: About;
    skin(limb: string, temperature: string): string;
    skinFrom(limb: string, temperature: string, level: string): string;
    readonly wound: About;
    readonly numbness: About;
    flush(side: string, artery: string): string;
    noFlush(side: string, artery: string): string;
    noPain(limb: LimbKey): string;
    pain(limb: string, muscle: string): string;
    readonly graftPulse: Readonly<Record<Extract<FindingId, { kind: 'graft-pulse' }>['pulse'], About>>;
    readonly vertebral: Readonly<Record<VertebralFlow, About>>;
    readonly steal: Readonly<Record<StealSymptom, About>>;
  };
  /** What an act is called; it need not begin with a large letter. `about` is a place, a side or a limb. */
  readonly acts: Readonly<Record<NamedActKind, About>>;
  readonly whys: Of<Exclude<ActId['kind'], 'feel'>>;
  /** What an answer hangs on, as it stands in `hangsOn`. */
  readonly assumptions: Of<Exclude<Assumption['kind'], 'cause' | 'palpation'>> & {
    readonly cause: About;
    readonly palpation: About;
  };
  /** A grade says what it promises. */
  readonly grades: Of<FirmStatement['code']>;
  held(held: number, tried: number): string;
  readonly hangsOn: About;
  /** How many sites of a limb carry no grade. */
  ungraded(limb: LimbKey, count: number): string;
  readonly allOpen: About;
  story(lesions: string, cause: string): string;
  /** Follows the name of an artery whose pulse is weak. */
  readonly reconstituted: string;
  readonly open: string;
  readonly elsewhere: string;
  readonly wheres: Of<FurtherStatement['where']>;
  readonly notExcluded: Of<NotExcluded>;
  readonly excludesNot: About;
  readonly questions: Of<SettlingQuestion>;
  /** Why such a question is asked. */
  readonly asks: Of<SettlingQuestion>;
  readonly natures: Of<Nature>;
  /** Why what a red flag asks comes first. */
  readonly flagAsks: string;
  readonly enough: string;
  readonly enoughWhy: string;
  readonly agree: string;
  readonly disagree: string;
  readonly favours: About;
  readonly ruleAlone: string;
  readonly networkAlone: About;
  readonly impossible: string;
  /** The findings without any one of which the rest would fit. */
  readonly without: About;
  readonly somewhere: string;
  readonly beyond: About;
  fromTo(above: string, below: string): string;
  readonly fromHeart: About;
  /** What a limb is headed by, by its pulse. */
  readonly lost: Of<Whereabouts['pulse']>;
  conflict(finding: string, other: string): string;
  /** How the odds change, before a number. */
  readonly odds: Of<EvidenceStatement['way']>;
  readonly ways: Of<EvidenceStatement['way']>;
  readonly titles: Of<Title>;
}

type Title =
  | 'occludedHeading'
  | 'byArtery'
  | 'natureHeading'
  | 'beginsHeading'
  | 'nothing'
  | 'furtherHeading'
  | 'evidenceHeading'
  | 'nextHeading'
  | 'start'
  | 'openNow'
  | 'howFirm'
  | 'numbers'
  | 'levels'
  | 'causesHeading';

/** The rest of a language, as far as these sentences need it. */
interface Around {
  readonly anatomy: Pick<
    AnatomyWords,
    'arteries' | 'limbs' | 'piece' | 'place' | 'sides' | 'stretches' | 'technique'
  >;
  readonly examination: Pick<ExaminationWords, 'bruits' | 'dopplers' | 'grades'>;
  readonly skinLevels: typeof skinLevels;
  readonly speech: Speech;
}

export interface NamedAct {
  readonly name: string;
  readonly why: string;
}

/** Words of the belief network's answers. */
export function localisationFrom(
  w: LocalisationTable,
  { anatomy, examination, skinLevels, speech: { list, either, decimal, percent } }: Around,
) {
  const { place, piece, sides } = anatomy;
  const pieces = (keys: readonly PieceKey[]): string => either(anatomy.stretches(namedStretches(keys)));
  const limb = (of: Parameters<typeof limbKey>[0]): string => anatomy.limbs[limbKey(of)];
  const artery = (id: ArteryId): string => anatomy.arteries[id];

  const findings: Renderings<FindingId, string, 'kind'> = {
    pulse: ({ place: at, grade }) => w.findings.pulse(w.pulse(at), examination.grades[grade]),
    doppler: ({ place: at, signal }) => w.findings.doppler(place(at), examination.dopplers[signal]),
    thrill: ({ place: at }) => w.findings.thrill(place(at)),
    bruit: ({ place: at, bruit }) =>
      w.findings[bruit === 'none' ? 'noBruit' : 'bruit'](place(at), examination.bruits[bruit]),
    index: ({ place: at, value }) => w.findings.index(place(at), decimal(value, 2)),
    'ankle-index': ({ side, value }) => w.findings.ankleIndex(sides[side], decimal(value, 2)),
    'digit-index': ({ limb: { kind, side }, value }) =>
      w.findings[kind === 'leg' ? 'toeIndex' : 'fingerIndex'](sides[side], decimal(value, 2)),
    incompressible: ({ place: at }) => w.findings.incompressible(place(at)),
    exercise: ({ side, falls }) => w.findings[falls ? 'falls' : 'noFall'](sides[side]),
    skin: ({ limb: of, temperature, level }) =>
      level
        ? w.findings.skinFrom(limb(of), w.temperatures[temperature], skinLevels[level])
        : w.findings.skin(limb(of), w.temperatures[temperature]),
    wound: ({ limb: of }) => w.findings.wound(limb(of)),
    numbness: ({ limb: of }) => w.findings.numbness(limb(of)),
    'hand-arch': ({ side, artery: id, fills }) =>
      w.findings[fills ? 'flush' : 'noFlush'](sides[side], artery(id)),
    pain: ({ limb: of, muscle }) =>
      muscle === 'none' ? w.findings.noPain(limbKey(of)) : w.findings.pain(limb(of), w.muscles[muscle]),
    delay: ({ of, side }) => `${w.between[of]}: ${w.delays[side]}`,
    'graft-pulse': ({ vessel, pulse }) =>
      w.findings.graftPulse[pulse](list(anatomy.stretches([{ code: 'artery', vessel }]))),
    vertebral: ({ side, flow }) => w.findings.vertebral[flow](sides[side]),
    steal: ({ side, symptom }) => w.findings.steal[symptom](sides[side]),
  };
  const finding = (id: FindingId): string => sentence(renderKind(findings, id));

  /** Act and reason. */
  const named = (kind: NamedActKind, about = ''): NamedAct => ({
    name: sentence(w.acts[kind](about)),
    why: w.whys[kind],
  });
  const atPlace = ({ kind, place: at }: { kind: 'listen' | 'doppler'; place: Place }): NamedAct =>
    named(kind, place(at));
  const onSide = ({ kind, side }: { kind: 'ankle-pressure' | 'toe-pressure'; side: 'left' | 'right' }) =>
    named(kind, sides[side]);
  const alone = ({ kind }: { kind: 'onset' | 'arm-pressures' }): NamedAct => named(kind);
  /** What to do next, and why. */
  const acts: Renderings<ActId, NamedAct, 'kind'> = {
    feel: ({ place: at }) => ({ name: sentence(w.pulse(at)), why: anatomy.technique[at.site] }),
    listen: ({ place: at }) => atPlace({ kind: 'listen', place: at }),
    doppler: atPlace,
    'ankle-pressure': ({ side }) => onSide({ kind: 'ankle-pressure', side }),
    'toe-pressure': ({ side }) => onSide({ kind: 'toe-pressure', side }),
    delay: ({ of }) => ({ name: w.between[of], why: w.whys.delay }),
    'pain-level': ({ kind, limb: of }) => named(kind, limb(of)),
    onset: alone,
    'arm-pressures': alone,
  };
  const act = (id: ActId): NamedAct => renderKind(acts, id);

  const assumption = (one: Assumption): string => {
    if (one.kind === 'cause') return w.assumptions.cause(w.causes[one.cause]);
    if (one.kind === 'palpation') return w.assumptions.palpation(w.pulseOf(one.site));
    return w.assumptions[one.kind];
  };

  const nexts: Renderings<NextStatement, NamedAct> = {
    settle: ({ question }) => ({ name: w.questions[question], why: w.asks[question] }),
    act: ({ act: id }) => act(id),
    enough: () => ({ name: w.enough, why: w.enoughWhy }),
  };

  const stories: Renderings<StoryStatement> = {
    'all-open': ({ cause }) => w.allOpen(w.causes[cause]),
    lesions: ({ cause, lesions }) =>
      w.story(
        list(lesions.map(({ piece: key, state }) => `${piece(key)} ${w.states[state]}`)),
        w.causes[cause],
      ),
  };

  const occluded: Renderings<OccludedStatement> = {
    entry: ({ pieces: keys, pulse }) =>
      sentence(`${pieces(keys)}${pulse === 'reduced' ? w.reconstituted : ''}`),
    open: () => w.open,
    elsewhere: () => w.elsewhere,
  };

  const begins: Renderings<BeginsStatement> = {
    answer: ({ pieces: keys }) => sentence(pieces(keys)),
    nothing: () => w.titles.nothing,
    elsewhere: () => w.elsewhere,
  };

  const voices: Renderings<VoicesStatement, { claim: string; why: string }> = {
    agree: () => ({ claim: '', why: w.agree }),
    disagree: ({ pieces: keys }) => ({ claim: w.disagree, why: w.favours(pieces(keys)) }),
    'rule-alone': () => ({ claim: w.disagree, why: w.ruleAlone }),
    'network-alone': ({ pieces: keys }) => ({ claim: w.networkAlone(pieces(keys)), why: '' }),
  };

  const impossible: Renderings<ImpossibleStatement> = {
    'any-of': ({ findings: ids }) => paragraph([w.impossible, w.without(list(ids.map(finding)))]),
    impossible: () => w.impossible,
  };

  /** "somewhere between left femoral and left popliteal". */
  const between = ({ above, below }: Pick<Whereabouts, 'above' | 'below'>): string => {
    const ends = list(below.map(place));
    if (!ends) return above ? w.beyond(place(above)) : w.somewhere;
    return above ? w.fromTo(place(above), ends) : w.fromHeart(ends);
  };

  return together(w.titles, {
    causes: w.causes,
    natures: w.natures,
    states: w.states,
    ways: w.ways,
    occluded: (statement: OccludedStatement) => render(occluded, statement),
    between,
    /** What a limb is headed by: the segment on which its pulse is lost, and how probable that is. */
    headline: (where: Whereabouts) =>
      `${w.lost[where.pulse]} ${between(where)}, ${percent(where.probability)}`,
    stretch: (where: Whereabouts) => sentence(between(where)),
    begins: (statement: BeginsStatement) => render(begins, statement),
    /** How the voices stand to each other: what to stress, and the rest. */
    voices: (statement: VoicesStatement) => render(voices, statement),
    further: ({ pieces: keys, state, where }: FurtherStatement) =>
      sentence(`${pieces(keys)} ${w.states[state]}, ${w.wheres[where]}`),
    notExcluded: (what: readonly NotExcluded[]) =>
      w.excludesNot(either(what.map((one) => w.notExcluded[one]))),
    conflict: ({ finding: id, with: other }: Conflict) => w.conflict(finding(id), finding(other)),
    nature: ({ nature, probability }: NatureStatement) =>
      `${sentence(w.natures[nature])}: ${percent(probability)}.`,
    /** A finding's way and weight in figures. */
    weight: ({ way, odds }: EvidenceStatement) => `${w.ways[way]}, ${w.odds[way]} ${decimal(odds, 1)}`,
    finding,
    next: (statement: NextStatement) => render(nexts, statement),
    flagAsks: () => w.flagAsks,
    act,
    /** The grade alone. */
    firmness: (code: FirmStatement['code']): string => w.grades[code],
    firm: ({ code, hangsOn, held, tried, limb: of, ungraded }: FirmStatement) =>
      paragraph([
        w.grades[code],
        w.held(held, tried),
        hangsOn.length ? w.hangsOn(list(hangsOn.map(assumption))) : '',
        ungraded ? w.ungraded(of, ungraded) : '',
      ]),
    story: (statement: StoryStatement) => render(stories, statement),
    impossible: (statement: ImpossibleStatement) => render(impossible, statement),
    where: (at: Place) => sentence(place(at)),
  });
}

export type LocalisationWords = ReturnType<typeof localisationFrom>;
