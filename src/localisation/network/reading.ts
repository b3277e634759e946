import {
  type LimbKey,
  type LimbKind,
  type PieceKey,
  PIECES,
  type Side,
  stationsOf,
} from '../../anatomy/index.js';
import { type Examination, pulseAt } from '../../examination/index.js';
import { type ActKind, actsLeft } from './acts.js';
import {
  ANSWER_KEYS,
  type AnswerKey,
  answerProbabilities,
  indexOfLargest,
  levelProbabilities,
  sortDown,
} from './answers.js';
import { notExcluded, settlingQuestion } from './besides.js';
import { conflictsOf, type Removable, removable, without } from './conflicts.js';
import { findingsOf } from './evidence.js';
import { feetOf } from './feet.js';
import type { Finding, PressureEvidence } from './finding.js';
import { type Firmness, firmnessOf } from './firmness.js';
import { lazily } from './lazily.js';
import { marginals } from './marginals.js';
import { modelOf } from './model.js';
import { acuteShare } from './onset.js';
import { onsetGain } from './onset-act.js';
import { Propagation } from './propagate.js';
import { propagate, ROOMS } from './propagated.js';
import { rankActs, withAct } from './rank.js';
import type { Answer, Further, LimbDetail, LimbReading, NetworkReading, Story } from './reading-types.js';
import { mostProbableStory } from './story.js';
import { occludedOf } from './stretch.js';
import { TABLES } from './tables.js';
import { indexOf, isAbove } from './tree.js';
import { type Cause, CAUSES, type State, STATES, type Tables } from './types.js';

export type * from './reading-types.js';

export interface NetworkOptions {
  readonly pressures?: PressureEvidence;
  /** Own tables, as `parseTables` returns them. */
  readonly tables?: Tables;
  /** `posterior` leaves out evidence, firmness and next acts. */
  readonly detail?: 'posterior' | 'all';
  /** The kinds of act that the form at hand can record; all where not given, none for a record that is only read. */
  readonly can?: readonly ActKind[];
  /** An earlier examination of the same patient: what has not changed supports, what is new dates the event. */
  readonly earlier?: Examination;
}

/** Causes with less of the belief than this are left out where assumptions are tried and acts are ranked. */
const LEAST_BELIEF = 0.01;
/** Lighter findings are left out of the evidence. */
const LIGHTEST = 0.02;
/** A limb is in question from this probability on that its pulse is weak. */
const IN_QUESTION = 0.25;
/** More than what the columns hold that are left out where a stretch is looked for. */
const LEFT_OUT = 0.02;
/** A lesion beside the first is told from this probability on. */
const LEAST_FURTHER = 0.4;
const MOST_FURTHER = 2;
/** What an answer needs to be called firm, and fairly firm: fitted so that the cases bear out nine and seven in ten. */
const FIRM = { probability: 0.8, least: 0.6, flips: 0.3 };
const FAIRLY = { probability: 0.6, held: 4 };

/** A limb on which hardly anything speaks for a lesion: no assumption was tried on it. */
const NOT_IN_QUESTION: Firmness = { overturned: [], held: 0, tried: 0, least: 1 };

type Pieces = (NetworkReading & { status: 'read' })['pieces'];

function limbReading(
  current: () => Propagation,
  key: AnswerKey,
  examined: boolean,
  examination: Examination,
): LimbReading {
  const probabilities = answerProbabilities(current(), key);
  const answers: Answer[] = [];
  const levels = key.levels.map((level) => ({ level, probability: 0 }));
  for (let i = 0; i < key.answers.length; i++) {
    const { pieces, artery, level } = key.answers[i]!;
    answers.push({ pieces, artery, level, probability: probabilities[i]! });
    levels[key.levelOf[i]!]!.probability += probabilities[i]!;
  }
  sortDown(answers);
  sortDown(levels);
  const nothing = probabilities.at(-1)!;
  const best = answers[0]!;
  const { side, kind } = key;
  const plain = {
    examined,
    answers,
    nothing,
    levels,
    ...(best.probability > nothing && { first: best }),
    notExcluded: notExcluded(examination, { side, kind }),
  };
  const reading = lazily(plain, 'occluded', () =>
    occludedOf(current(), key, weakEnds(examination, side, kind)),
  );
  return lazily(reading, 'headline', () => {
    if (nothing > 0.5 + LEFT_OUT) return undefined;
    const [entry] = reading.occluded.entries;
    return entry && entry.probability > reading.occluded.open ? entry : undefined;
  });
}

/** Whether both pulses at the end of a limb were found weak or absent. */
function weakEnds(examination: Examination, side: Side, kind: LimbKind): boolean {
  const last = stationsOf({ side, kind }).at(-1) ?? [];
  return (
    last.length === 2 &&
    last.every((place) => {
      const grade = pulseAt(examination, place)?.grade;
      return grade === 'absent' || grade === 'reduced';
    })
  );
}

const logOdds = (p: number): number => Math.log(Math.max(p, 1e-300) / Math.max(1 - p, 1e-300));

const isWeakPulse = ({ id }: Finding): boolean =>
  id.kind === 'pulse' && (id.grade === 'absent' || id.grade === 'reduced');

/** What each finding says of the first level of each limb; and how likely all others are without it. */
function evidenceFor(
  net: Propagation,
  findings: readonly Removable[],
  keys: readonly AnswerKey[],
  firsts: readonly number[],
): { weights: LimbDetail['evidence'][]; totals: number[] } {
  const out: { finding: Finding['id']; weight: number }[][] = keys.map(() => []);
  const scratch = keys.map((key) => new Float64Array(key.levels.length + 1));
  const oddsOf = (i: number): number => logOdds(levelProbabilities(net, keys[i]!, scratch[i])[firsts[i]!]!);
  const now = keys.map((_, i) => oddsOf(i));
  let finding = findings[0]!.finding;
  const look = (): number => {
    for (let i = 0; i < keys.length; i++) {
      const weight = now[i]! - oddsOf(i);
      if (!(Math.abs(weight) >= LIGHTEST)) continue;
      const { limb, levels } = keys[i]!;
      // A weak pulse of the limb that draws belief to another level of its way speaks for a lesion there, not against disease.
      const elsewhere =
        weight < 0 && firsts[i]! < levels.length && isWeakPulse(finding) && finding.limbs.includes(limb);
      if (!elsewhere) out[i]!.push({ finding: finding.id, weight });
    }
    return net.total();
  };
  const totals = findings.map((one) => {
    finding = one.finding;
    return without(net, findings, [one], look);
  });
  for (const list of out) list.sort((a, b) => Math.abs(b.weight) - Math.abs(a.weight));
  return { weights: out, totals };
}

/** The most probable story with a lesion where each first answer says one begins. */
function storyOf(
  net: Propagation,
  examined: ReadonlySet<LimbKey>,
  limbs: Readonly<Record<LimbKey, LimbReading>>,
  pieces: Pieces,
): Story {
  const ill = new Set<number>();
  for (const limb of examined) {
    const { first } = limbs[limb];
    if (first) ill.add(indexOf(worstOf(first.pieces, pieces)));
  }
  const { cause, states, probability } = mostProbableStory(net, ill);
  const lesions: { piece: PieceKey; state: Exclude<State, 'patent'> }[] = [];
  states.forEach((which, i) => {
    const state = STATES[which]!;
    if (state !== 'patent') lesions.push({ piece: PIECES[i]!.key, state });
  });
  return { cause: CAUSES[cause]!, lesions, probability };
}

/** The piece of an answer that is likeliest to be diseased. */
function worstOf(keys: readonly PieceKey[], pieces: Pieces): PieceKey {
  return keys.reduce((a, b) => (ill(pieces, b) > ill(pieces, a) ? b : a));
}

function causeShares(net: Propagation): Record<Cause, number> {
  const total = net.total();
  const shares = {} as Record<Cause, number>;
  for (const cause of CAUSES) shares[cause] = 0;
  for (const column of net.live) shares[CAUSES[net.cause[column]!]!] += net.joint(column) / total;
  return shares;
}

/** Lesions beside the one that takes the pulse away: where disease begins above it, and what is likely closed beyond. */
function furtherOf(limb: LimbReading, pieces: Pieces): Further[] {
  if (limb.nothing > 0.5 + LEFT_OUT) return [];
  const { answers, occluded } = limb;
  const [entry] = occluded.entries;
  if (!entry || occluded.open > 0.5) return [];
  const out: Further[] = [];
  for (const answer of answers) {
    const worst = worstOf(answer.pieces, pieces);
    const { narrowed, blocked } = pieces[worst];
    const probability = narrowed + blocked;
    if (!(probability >= LEAST_FURTHER / 2) || answer.pieces.some((key) => entry.pieces.includes(key)))
      continue;
    const upstream = answer.pieces.every((key) => entry.pieces.some((own) => isAbove(key, own)));
    const downstream = !upstream && entry.pieces.some((own) => isAbove(own, worst));
    if (!upstream && !(downstream && probability >= LEAST_FURTHER)) continue;
    out.push({
      pieces: answer.pieces,
      artery: answer.artery,
      level: answer.level,
      where: upstream ? 'above' : 'beyond',
      state: blocked >= narrowed ? 'blocked' : 'narrowed',
      probability,
    });
  }
  return out
    .sort(
      (a, b) => Number(b.where === 'above') - Number(a.where === 'above') || b.probability - a.probability,
    )
    .slice(0, MOST_FURTHER);
}

function ill(pieces: Pieces, key: PieceKey): number {
  return pieces[key].narrowed + pieces[key].blocked;
}

function gradeOf(
  probability: number,
  { held, tried, least }: Firmness,
  flips: number,
): LimbDetail['firm']['grade'] {
  if (probability >= FIRM.probability && held === tried && least >= FIRM.least && flips < FIRM.flips)
    return 'firm';
  return probability >= FAIRLY.probability && held >= FAIRLY.held ? 'fairly-firm' : 'not-firm';
}

/**
 * Reads an examination by the belief network: exact inference on the tree of arteries, summed over the causes common to the
 * whole patient. Nothing is claimed where nothing was examined.
 * @param examination pulses, bruits, Doppler signals, delays, inspection, history and context are used; silence is never "normal"
 * @param options pressures as indices, own tables, an earlier record, and how much is asked for
 */
export function localise(examination: Examination, options: NetworkOptions = {}): NetworkReading {
  const tables = options.tables ?? TABLES;
  const feet = feetOf(examination, tables);
  const findings = findingsOf(examination, tables, options.pressures, feet, options.earlier);
  if (findings.length === 0) return { status: 'nothing-examined' };
  const model = modelOf(examination, tables, options.earlier);
  let net = propagate(model, feet, findings);
  const current = (): Propagation => (net.stale ? (net = propagate(model, feet, findings)) : net);
  if (!(net.total() > 0)) {
    const all = findings.map(removable);
    const conflicting = all.filter((one) => without(net, all, [one], () => net.total() > 0));
    return {
      status: 'impossible',
      conflicting: (conflicting.length ? conflicting : all).map(({ finding }) => finding.id),
    };
  }
  const examined = new Set<LimbKey>();
  for (const { limbs: own } of findings) for (const limb of own) examined.add(limb);
  const limbs = {} as Record<LimbKey, LimbReading>;
  for (const key of ANSWER_KEYS) {
    // Of a limb that was not examined it is seldom asked.
    const own = (): LimbReading => limbReading(current, key, examined.has(key.limb), examination);
    if (examined.has(key.limb)) limbs[key.limb] = own();
    else lazily(limbs, key.limb, own);
  }
  const settle = settlingQuestion(examination);
  const plain = {
    status: 'read' as const,
    limbs,
    causes: causeShares(net),
    acute: acuteShare(examination, tables, options.earlier),
    ...(settle && { settle }),
  };
  const withPieces = lazily(plain, 'pieces', () => piecesOf(current()));
  const reading = lazily(withPieces, 'story', () => storyOf(current(), examined, limbs, withPieces.pieces));
  if (options.detail === 'posterior') return Object.assign(reading, { detail: {}, conflicts: [], next: [] });

  const known = reading.pieces;
  const told = reading.story;
  const keys = ANSWER_KEYS.filter((key) => examined.has(key.limb));
  const asked = keys.filter(
    ({ limb }) =>
      // With every artery open the pulses are normal.
      1 - limbs[limb].nothing + LEFT_OUT > IN_QUESTION && 1 - limbs[limb].occluded.open > IN_QUESTION,
  );
  net.focus(LEAST_BELIEF);
  const levels = keys.map((key) => levelProbabilities(net, key));
  const firsts = levels.map(indexOfLargest);
  const askedFirsts = asked.map((key) => firsts[keys.indexOf(key)]!);
  const each = findings.map(removable);
  const { weights, totals } = evidenceFor(net, each, asked, askedFirsts);
  const conflicts = conflictsOf(net, each, totals);
  const firm = firmnessOf(net, findings, asked, askedFirsts);
  const wanted = new Set(asked.map(({ limb }) => limb));
  const { acts, flips } = rankActs(
    net,
    actsLeft(examination, findings, tables, feet, wanted),
    asked,
    options.can,
  );
  net.focus(0);
  const asksOnset = !examination.onset && asked.length > 0 && (options.can?.includes('onset') ?? true);
  const factors = asksOnset ? findings.flatMap((finding) => finding.factors) : [];
  const ifKnown = (onset: 'acute' | 'chronic'): Propagation =>
    new Propagation(modelOf({ ...examination, onset }, tables), factors, 0, ROOMS[1]);
  const next = asksOnset ? withAct(acts, { kind: 'onset' }, onsetGain(plain.acute, ifKnown, asked)) : acts;
  const detail = Object.fromEntries(
    keys.map((key, i): [LimbKey, LimbDetail] => {
      const at = asked.indexOf(key);
      const flip = flips[at] ?? 0;
      const tested = firm[at] ?? NOT_IN_QUESTION;
      const { overturned, held, tried } = tested;
      return [
        key.limb,
        {
          evidence: weights[at] ?? [],
          further: furtherOf(limbs[key.limb], known),
          firm: {
            grade: gradeOf(levels[i]![firsts[i]!]!, tested, flip),
            overturned: overturned.map(({ assumption, factor }) => ({ assumption, factor })),
            held,
            tried,
            flips: flip,
          },
        },
      ];
    }),
  ) as Partial<Record<LimbKey, LimbDetail>>;
  return { ...plain, pieces: known, story: told, detail, conflicts, next };
}

function piecesOf(net: Propagation): Pieces {
  const { narrowed, blocked } = marginals(net);
  const pieces = {} as Record<PieceKey, { narrowed: number; blocked: number }>;
  for (let i = 0; i < PIECES.length; i++) {
    pieces[PIECES[i]!.key] = { narrowed: narrowed[i]!, blocked: blocked[i]! };
  }
  return pieces;
}
