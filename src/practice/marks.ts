import { type LimbKey, limbKey, type Side, SIDES } from '../anatomy/index.js';
import { ACUTE_CLASSES, FONTAINE_STAGES } from '../examination/index.js';
import { stageArm, stageLeg } from '../staging/index.js';
import { type RedFlag, redFlags, triage, urgencyRank, type Urgent } from '../triage/index.js';
import { examinesArteries, limbOfAct, type PracticeAct } from './acts.js';
import { causesLeftOpen, type PracticeCause } from './causes.js';
import { cautionsIgnored, harms, type PracticeCaution } from './cautions.js';
import { type HiddenPatient } from './hidden.js';
import {
  actsOf,
  type FirstStep,
  type NamedLesion,
  type NamedStage,
  type PracticeAnswer,
  recordThere,
  revealed,
  type Round,
} from './round.js';
import { secondsFor } from './times.js';
import { type TrueLesion, type Truth, withinReach } from './truth.js';

/** Parts of the mark, in the order in which they are told. */
export const MARKED_PARTS = ['side', 'level', 'cause', 'stage', 'urgency', 'first', 'thrift'] as const;
export type MarkedPart = (typeof MARKED_PARTS)[number];

/** Most points of each part. A choice of this library, no source. */
const WORTH: Readonly<Record<MarkedPart, number>> = {
  side: 3,
  level: 5,
  cause: 2,
  stage: 2,
  urgency: 3,
  first: 3,
  thrift: 2,
};
/** Points that a missed red flag costs, and an ignored caution. The flag costs more than any one caution of the act that would show it. */
const COSTS = { flag: 2, caution: 1 } as const;
/** An examination that takes longer than this, in seconds, is no longer thrifty. Common practice, no source. */
export const THRIFTY = 1200;

export interface PartMark {
  readonly part: MarkedPart;
  readonly points: number;
  readonly of: number;
  /** Nothing was answered: it earns nothing, and is neither right nor wrong. */
  readonly open?: true;
  /** What was answered has no ground in what was examined, and so earns nothing, right or not. */
  readonly ungrounded?: true;
}

/** What can be right, from all that is truly there to be found. */
export interface RightAnswer {
  /** Lesions that show at the bedside. */
  readonly lesions: readonly TrueLesion[];
  /** Lesions that no hand, ear or cuff shows: neither asked for nor held against anyone. */
  readonly silent: readonly TrueLesion[];
  /** The patient's own; missing where an author names none, and then nobody is asked for it. */
  readonly cause: Truth['cause'];
  /** Every cause that the findings leave open, the patient's own first; each of them is right. */
  readonly causes: readonly PracticeCause[];
  /** Every stage that the findings leave open; empty where none applies. */
  readonly stages: readonly NamedStage[];
  readonly urgency: Urgent;
  readonly first: readonly FirstStep[];
  readonly flags: readonly RedFlag[];
}

/** A round marked. */
export interface MarkSheet {
  readonly points: number;
  readonly of: number;
  readonly parts: readonly PartMark[];
  readonly right: RightAnswer;
  /** Of the lesions that show, those named at the right level of a limb that was examined. */
  readonly located: readonly TrueLesion[];
  /** Red flags that were not found, or not answered as urgently as they are. */
  readonly missed: readonly RedFlag[];
  readonly cautions: readonly PracticeCaution[];
  /** Points taken for both. */
  readonly taken: number;
}

function stagesOf({ record, lesions }: Truth): NamedStage[] {
  const reach = withinReach(record);
  const ill = lesions.map(({ limb }) => limb).filter((limb) => reach.includes(limb));
  const legs = SIDES.filter((side) => ill.includes(`${side} leg`)).map((side) => stageLeg(record, side));
  const arms = SIDES.filter((side) => ill.includes(`${side} arm`)).map((side) => stageArm(record, side));
  const acute = [...legs.map(({ acute: one }) => one), ...arms].map(({ applies, candidates }) =>
    applies === 'no' ? [] : candidates,
  );
  const [now, long] = [
    worstOf(acute, ACUTE_CLASSES),
    worstOf(
      legs.map(({ fontaine }) => fontaine.candidates),
      FONTAINE_STAGES,
    ),
  ];
  return now.length
    ? now.map((one): NamedStage => `acute ${one}`)
    : long.map((one): NamedStage => `fontaine ${one}`);
}

/** Of limbs that differ the worse one counts. */
function worstOf<T>(limbs: readonly (readonly T[])[], order: readonly T[]): readonly T[] {
  const rank = (stages: readonly T[]): number => Math.max(-1, ...stages.map((stage) => order.indexOf(stage)));
  return [...limbs].sort((a, b) => rank(b) - rank(a))[0] ?? [];
}

function firstOf(truth: Truth, urgency: Urgent, flags: readonly RedFlag[], ill: boolean): FirstStep[] {
  if (flags.some(({ code, urgency: how }) => code === 'circulation' && how === 'now'))
    return ['circulation', 'call-now'];
  if (truth.cause === 'low-flow') return ['circulation'];
  switch (urgency) {
    case 'now':
      return ['call-now'];
    case 'today':
      return ['same-day', 'call-now'];
    case 'soon':
      return ['refer', 'same-day'];
    case 'none':
      return ill ? ['risk-and-walking'] : ['look-elsewhere'];
  }
}

const known = new WeakMap<Truth, RightAnswer>();

/** What the whole examination of a patient leads to; worked out once a patient. */
export function rightAnswer(truth: Truth): RightAnswer {
  const right = known.get(truth) ?? derived(truth);
  known.set(truth, right);
  return right;
}

function derived(truth: Truth): RightAnswer {
  const { urgency: flagged, flags } = triage(truth.record);
  // The triage is one of limbs; shock waits for nobody, whatever the limbs show.
  const urgency = truth.record.circulation?.shock ? 'now' : flagged;
  const reach = withinReach(truth.record);
  const shows = ({ limb }: TrueLesion): boolean => reach.includes(limb);
  const lesions = truth.lesions.filter(shows);
  return {
    lesions,
    silent: truth.lesions.filter((one) => !shows(one)),
    cause: truth.cause,
    causes: causesLeftOpen(truth),
    stages: stagesOf(truth),
    urgency,
    first: firstOf(truth, urgency, flags, lesions.length > 0),
    flags,
  };
}

/** The limbs whose arteries were examined by hand, ear, probe or cuff. */
function limbsExamined(acts: readonly PracticeAct[]): ReadonlySet<LimbKey> {
  return new Set(
    acts.flatMap((act) => {
      const limb = examinesArteries(act) ? limbOfAct(act) : undefined;
      return limb ? [limbKey(limb)] : [];
    }),
  );
}

/** A share of points, whole ones; never below nothing. */
const share = (of: number, right: number, wrong: number, all: number): number =>
  Math.max(0, Math.round((of * (right - wrong)) / Math.max(1, all)));

interface Grounds {
  readonly limbs: ReadonlySet<LimbKey>;
  readonly asked: boolean;
  readonly onset: boolean;
  /** Pain, skin, feeling or pressure: what stage and urgency are read from. */
  readonly state: boolean;
}

function groundsOf(acts: readonly PracticeAct[]): Grounds {
  const did = (...kinds: readonly PracticeAct['kind'][]): boolean =>
    acts.some(({ kind }) => kinds.includes(kind));
  const asked = (about: string): boolean => acts.some((act) => act.kind === 'ask' && act.about === about);
  return {
    limbs: limbsExamined(acts),
    asked: did('ask', 'rhythm', 'circulation'),
    onset: asked('onset'),
    state: did('look', 'feeling', 'cuff', 'doppler') || asked('walking'),
  };
}

/** Of true lesions those that were named at a level that is right. */
const locatedIn = (lesions: readonly TrueLesion[], named: readonly NamedLesion[]): readonly TrueLesion[] =>
  lesions.filter(({ limb, levels }) => named.some((one) => one.limb === limb && levels.includes(one.level)));

/** Side and level; where no artery is to blame, the level alone, and only when both limbs of a pair were examined. */
function placeMarks(
  { lesions: named }: PracticeAnswer,
  { lesions, silent }: RightAnswer,
  { limbs }: Grounds,
): PartMark[] {
  if (lesions.length === 0) {
    const pair = (['leg', 'arm'] as const).some((kind) =>
      SIDES.every((side: Side) => limbs.has(`${side} ${kind}`)),
    );
    const right = named?.length === 0;
    return [
      {
        part: 'level',
        points: right && pair ? WORTH.level : 0,
        of: WORTH.level,
        ...(!named && { open: true as const }),
        ...(right && !pair && { ungrounded: true as const }),
      },
    ];
  }
  const grounded = (named ?? []).filter(({ limb }) => limbs.has(limb));
  const how = {
    ...(!named && { open: true as const }),
    ...((named ?? []).length > grounded.length && { ungrounded: true as const }),
  };
  const trueLimbs = [...new Set(lesions.map(({ limb }) => limb))];
  const quiet = (limb: LimbKey): boolean => silent.some((one) => one.limb === limb);
  const namedLimbs = [...new Set((named ?? []).map(({ limb }) => limb))];
  const rightLimbs = trueLimbs.filter((limb) => grounded.some((one) => one.limb === limb));
  const wrongLimbs = namedLimbs.filter((limb) => !trueLimbs.includes(limb) && !quiet(limb));
  const hit = locatedIn(lesions, grounded);
  const astray = (named ?? []).filter(
    ({ limb, level }) =>
      ![...lesions, ...silent].some((one) => one.limb === limb && one.levels.includes(level)),
  );
  return [
    {
      part: 'side',
      points: share(WORTH.side, rightLimbs.length, wrongLimbs.length, trueLimbs.length),
      of: WORTH.side,
      ...how,
    },
    {
      part: 'level',
      points: share(WORTH.level, hit.length, astray.length, lesions.length),
      of: WORTH.level,
      ...how,
    },
  ];
}

function partOf(part: MarkedPart, answered: boolean, right: boolean, grounded: boolean): PartMark {
  return {
    part,
    points: right && grounded ? WORTH[part] : 0,
    of: WORTH[part],
    ...(!answered && { open: true as const }),
    ...(answered && !grounded && { ungrounded: true as const }),
  };
}

/** The red flags that acts did not find, or that the answer does not treat as urgently. */
function flagsMissed(
  truth: Truth,
  flags: readonly RedFlag[],
  acts: readonly PracticeAct[],
  { urgency }: PracticeAnswer,
): RedFlag[] {
  const key = ({ code, limb }: RedFlag): string => `${code} ${limb?.side ?? ''} ${limb?.kind ?? ''}`;
  const seen = new Set(redFlags(recordThere(truth, acts)).map(key));
  const answered = urgency === undefined ? -1 : urgencyRank(urgency);
  return flags.filter((flag) => !seen.has(key(flag)) || answered < urgencyRank(flag.urgency));
}

/** Marks an answer that was given after some acts. Pure: the same truth, acts and answer give the same sheet. */
export function marksFor(truth: Truth, acts: readonly PracticeAct[], answer: PracticeAnswer): MarkSheet {
  const right = rightAnswer(truth);
  const grounds = groundsOf(acts);
  const missed = flagsMissed(truth, right.flags, acts, answer);
  const cautions = cautionsIgnored(truth, acts, answer);
  const { cause, stage, urgency, first } = answer;
  const place = placeMarks(answer, right, grounds);
  const placed = place.every(({ points, of }) => points === of);
  const told = grounds.state || grounds.onset;
  const parts: PartMark[] = [
    ...place,
    ...(right.cause
      ? [
          partOf(
            'cause',
            cause !== undefined,
            cause !== undefined && right.causes.includes(cause),
            grounds.asked,
          ),
        ]
      : []),
    ...(right.stages.length
      ? [
          partOf(
            'stage',
            stage !== undefined,
            stage !== undefined && right.stages.includes(stage),
            grounds.state,
          ),
        ]
      : []),
    partOf('urgency', urgency !== undefined, urgency === right.urgency && missed.length === 0, told),
    partOf(
      'first',
      first !== undefined,
      first !== undefined && right.first.includes(first) && !harms(first, truth) && missed.length === 0,
      told,
    ),
    partOf(
      'thrift',
      answer.lesions !== undefined,
      placed && missed.length === 0 && isThrifty(acts),
      acts.length > 0,
    ),
  ];
  const taken = COSTS.flag * missed.length + COSTS.caution * cautions.length;
  const sum = parts.reduce((all, { points }) => all + points, 0);
  return {
    points: Math.max(0, sum - taken),
    of: parts.reduce((all, { of }) => all + of, 0),
    parts,
    right,
    located: locatedIn(
      right.lesions,
      (answer.lesions ?? []).filter(({ limb }) => grounds.limbs.has(limb)),
    ),
    missed,
    cautions,
    taken,
  };
}

function isThrifty(acts: readonly PracticeAct[]): boolean {
  return secondsFor(acts) <= THRIFTY;
}

/**
 * Marks a round.
 * @throws Error where the round has no answer yet
 */
export function markRound(patient: HiddenPatient, round: Round): MarkSheet {
  const truth = revealed(patient, round);
  return marksFor(truth, actsOf(round), round.answer!);
}
