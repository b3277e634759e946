import {
  type LimbKey,
  type LimbKind,
  type PieceKey,
  PIECES,
  type Side,
  stationsOf,
} from '../../anatomy/index.js';
import { type Examination, pulseAt } from '../../examination/index.js';
import type { ActKind } from './acts.js';
import { ANSWER_KEYS, type AnswerKey, answerProbabilities, sortDown } from './answers.js';
import { notExcluded, settlingQuestion } from './besides.js';
import { removable, without } from './conflicts.js';
import { findingsOf } from './evidence.js';
import { feetOf } from './feet.js';
import type { PressureEvidence } from './finding.js';
import { lazily } from './lazily.js';
import { marginals } from './marginals.js';
import { modelOf } from './model.js';
import { acuteShare } from './onset.js';
import type { Propagation } from './propagate.js';
import { propagate } from './propagated.js';
import type { Answer, Further, LimbDetail, LimbReading, NetworkReading, Story } from './reading-types.js';
import { mostProbableStory } from './story.js';
import { occludedOf } from './stretch.js';
import { TABLES } from './tables.js';
import { indexOf, isAbove } from './tree.js';
import { LEFT_OUT, type Tried, tryOut } from './tried.js';
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

/** A lesion beside the first is told from this probability on. */
const LEAST_FURTHER = 0.4;
const MOST_FURTHER = 2;
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

  // What was tried is asked of few readings: a picture needs none of it.
  let made: Tried | undefined;
  const tried = (): Tried =>
    (made ??= tryOut(current(), {
      examination,
      tables,
      feet,
      findings,
      limbs,
      acute: plain.acute,
      keys: ANSWER_KEYS.filter((key) => examined.has(key.limb)),
      can: options.can,
    }));
  const detailed = lazily(reading, 'detail', () => {
    const detail: Partial<Record<LimbKey, LimbDetail>> = {};
    for (const { limb } of ANSWER_KEYS) {
      if (!examined.has(limb)) continue;
      const own = { further: furtherOf(limbs[limb], withPieces.pieces) };
      const weighed = lazily(own, 'evidence', () => tried().limbs[limb]!.evidence);
      detail[limb] = lazily(weighed, 'firm', () => tried().limbs[limb]!.firm);
    }
    return detail;
  });
  const contradicted = lazily(detailed, 'conflicts', () => tried().conflicts);
  return lazily(contradicted, 'next', () => tried().next);
}

function piecesOf(net: Propagation): Pieces {
  const { narrowed, blocked } = marginals(net);
  const pieces = {} as Record<PieceKey, { narrowed: number; blocked: number }>;
  for (let i = 0; i < PIECES.length; i++) {
    pieces[PIECES[i]!.key] = { narrowed: narrowed[i]!, blocked: blocked[i]! };
  }
  return pieces;
}
