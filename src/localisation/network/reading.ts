import { type ArteryId, type Level, type LimbKey, type PieceKey, PIECES } from '../../anatomy/index.js';
import type { Examination } from '../../examination/index.js';
import { type Act, type ActId, actsLeft } from './acts.js';
import {
  ANSWER_KEYS,
  type AnswerKey,
  answerProbabilities,
  entropy,
  indexOfLargest,
  levelProbabilities,
} from './answers.js';
import { type Finding, type FindingId, findingsOf, type PressureEvidence } from './evidence.js';
import { type Assumption, firmnessOf } from './firmness.js';
import { marginals } from './marginals.js';
import { modelOf } from './model.js';
import { Propagation } from './propagate.js';
import { mostProbableStory } from './story.js';
import { TABLES } from './tables.js';
import { type Cause, CAUSES, type State, STATES, type Tables } from './types.js';

/** A place where the trouble of a limb may begin, as one would name it: an artery, or a part of one where parts matter. */
export interface Answer {
  readonly pieces: readonly PieceKey[];
  readonly artery: ArteryId;
  readonly level: Level;
  readonly probability: number;
}

/** How much one finding speaks for (above 0) or against the first answer: log ratio of its odds with and without, in nats. */
export interface FindingWeight {
  readonly finding: FindingId;
  readonly weight: number;
}

export interface LimbReading {
  /** Whether anything was found on this limb. Where not, the figures only say what other limbs and the context imply. */
  readonly examined: boolean;
  /** Every answer, most probable first. With `nothing` they sum to one. */
  readonly answers: readonly Answer[];
  /** Probability that no artery on the way to this limb's last pulse sites is narrowed or blocked. */
  readonly nothing: number;
  readonly levels: readonly { readonly level: Level; readonly probability: number }[];
  /** The most probable answer; missing where "nothing shown" is the most probable. */
  readonly first?: Answer;
}

export interface LimbDetail {
  /** Findings that matter for this limb's first answer, heaviest first. */
  readonly evidence: readonly FindingWeight[];
  readonly firm: {
    readonly grade: 'firm' | 'fairly-firm' | 'not-firm';
    /** Assumptions whose halving or doubling puts another answer first; without `answer` it is "nothing shown". */
    readonly overturned: readonly { assumption: Assumption; factor: 0.5 | 2; answer?: Answer }[];
    readonly tried: number;
  };
}

/** An act not yet done, with the expected fall in entropy of the level, in nats, summed over the limbs examined. */
export interface NextAct {
  readonly act: ActId;
  readonly gain: number;
}

/** The single most probable assignment of every artery and of the cause, with its probability. */
export interface Story {
  readonly cause: Cause;
  readonly lesions: readonly { readonly piece: PieceKey; readonly state: Exclude<State, 'patent'> }[];
  readonly probability: number;
}

/** What the belief network makes of an examination; plain data, words are made by the locale. */
export type NetworkReading =
  | { readonly status: 'nothing-examined' }
  /** No state of the arteries explains the findings; `conflicting` are those without any one of which one would. */
  | { readonly status: 'impossible'; readonly conflicting: readonly FindingId[] }
  | {
      readonly status: 'read';
      readonly limbs: Readonly<Record<LimbKey, LimbReading>>;
      readonly pieces: Readonly<Record<PieceKey, { readonly narrowed: number; readonly blocked: number }>>;
      readonly causes: Readonly<Record<Cause, number>>;
      readonly story: Story;
      /** By limb, for the limbs examined. */
      readonly detail: Readonly<Partial<Record<LimbKey, LimbDetail>>>;
      /** Most telling first. */
      readonly next: readonly NextAct[];
    };

export interface NetworkOptions {
  readonly pressures?: PressureEvidence;
  /** Own tables, as `parseTables` returns them. */
  readonly tables?: Tables;
  /** `posterior` leaves out evidence, firmness and next acts. */
  readonly detail?: 'posterior' | 'all';
}

/** Causes with less of the belief than this are left out where assumptions are tried and acts are ranked. */
const LEAST_BELIEF = 0.001;
/** Lighter findings are left out of the evidence. */
const LIGHTEST = 0.02;

function limbReading(
  net: Propagation,
  key: AnswerKey,
  probabilities: Float64Array,
  examined: boolean,
): LimbReading {
  const answers = key.answers
    .map((answer, i) => ({ ...answer, probability: probabilities[i]! }))
    .sort((a, b) => b.probability - a.probability);
  const byLevel = levelProbabilities(net, key);
  const nothing = probabilities.at(-1)!;
  const best = answers[0]!;
  return {
    examined,
    answers,
    nothing,
    levels: key.levels
      .map((level, i) => ({ level, probability: byLevel[i]! }))
      .sort((a, b) => b.probability - a.probability),
    ...(best.probability > nothing && { first: best }),
  };
}

/** Messages with one finding left out. */
function without<T>(net: Propagation, findings: readonly Finding[], left: Finding, look: () => T): T {
  const pieces = left.factors.map(({ piece }) => piece);
  return net.whatIf(
    pieces,
    () => {
      for (const piece of pieces) {
        const rest = findings.flatMap((f) =>
          f === left ? [] : f.factors.filter((factor) => factor.piece === piece),
        );
        net.replace(piece, rest);
      }
    },
    look,
  );
}

const logOdds = (p: number): number => Math.log(Math.max(p, 1e-300) / Math.max(1 - p, 1e-300));

function evidenceFor(
  net: Propagation,
  findings: readonly Finding[],
  keys: readonly AnswerKey[],
  firsts: readonly number[],
): FindingWeight[][] {
  const now = keys.map((key, i) => logOdds(answerProbabilities(net, key)[firsts[i]!]!));
  const out: FindingWeight[][] = keys.map(() => []);
  const scratch = keys.map((key) => new Float64Array(key.answers.length + 1));
  for (const finding of findings) {
    const before = without(net, findings, finding, () =>
      keys.map((key, i) => logOdds(answerProbabilities(net, key, scratch[i])[firsts[i]!]!)),
    );
    before.forEach((odds, i) => {
      const weight = now[i]! - odds;
      if (Math.abs(weight) >= LIGHTEST) out[i]!.push({ finding: finding.id, weight });
    });
  }
  for (const list of out) list.sort((a, b) => Math.abs(b.weight) - Math.abs(a.weight));
  return out;
}

/** Every act with the expected fall in the sum of the limbs' entropies of the level, greatest first. */
function rankActs(net: Propagation, acts: readonly Act[], keys: readonly AnswerKey[]): NextAct[] {
  const blank = (): Float64Array[] => keys.map((key) => new Float64Array(key.levels.length + 1));
  const [base, seen, rest] = [blank(), blank(), blank()];
  const look = (into: readonly Float64Array[]): number => {
    for (let i = 0; i < keys.length; i++) levelProbabilities(net, keys[i]!, into[i]);
    return net.total();
  };
  const sum = (of: readonly Float64Array[]): number => of.reduce((total, one) => total + entropy(one), 0);
  const whole = look(base);
  const now = sum(base);
  return acts
    .map(({ id, pieces, outcomes, exhaustive }) => {
      let all = 0;
      let left = 0;
      rest.forEach((one, i) => one.set(base[i]!));
      // What the outcomes before leave over is the last one's: its messages need not be worked out.
      for (const factors of exhaustive ? outcomes.slice(0, -1) : outcomes) {
        const change = (): void => factors.forEach((factor) => net.multiply(factor));
        const total = net.whatIf(pieces, change, () => look(seen));
        if (!(total > 0)) continue;
        all += total;
        left += total * sum(seen);
        const share = total / whole;
        for (let i = 0; i < rest.length; i++)
          for (let j = 0; j < rest[i]!.length; j++) rest[i]![j]! -= share * seen[i]![j]!;
      }
      if (exhaustive && whole > all) {
        const share = 1 - all / whole;
        for (const one of rest) for (let j = 0; j < one.length; j++) one[j] = Math.max(0, one[j]!) / share;
        left += (whole - all) * sum(rest);
        all = whole;
      }
      return { act: id, gain: now - left / all };
    })
    .sort((a, b) => b.gain - a.gain);
}

function storyOf(net: Propagation): Story {
  const { cause, states, probability } = mostProbableStory(net);
  const lesions = PIECES.flatMap((piece, i) => {
    const state = STATES[states[i]!]!;
    return state === 'patent' ? [] : [{ piece: piece.key, state }];
  });
  return { cause: CAUSES[cause]!, lesions, probability };
}

/**
 * Reads an examination by the belief network: exact inference on the tree of arteries, summed over the causes common to the
 * whole patient. Nothing is claimed where nothing was examined.
 * @param examination pulses, bruits, Doppler signals, delays, history and context are used; silence is never "normal"
 * @param options pressures as indices, own tables, and how much is asked for
 */
export function localise(examination: Examination, options: NetworkOptions = {}): NetworkReading {
  const tables = options.tables ?? TABLES;
  const findings = findingsOf(examination, tables, options.pressures);
  if (findings.length === 0) return { status: 'nothing-examined' };
  const net = new Propagation(
    modelOf(examination, tables),
    findings.flatMap((finding) => finding.factors),
  );
  const total = net.total();
  if (!(total > 0)) {
    const conflicting = findings.filter((finding) => without(net, findings, finding, () => net.total() > 0));
    return {
      status: 'impossible',
      conflicting: (conflicting.length ? conflicting : findings).map(({ id }) => id),
    };
  }
  const probabilities = ANSWER_KEYS.map((key) => answerProbabilities(net, key));
  const examined = new Set(findings.flatMap((finding) => finding.limbs));
  const limbs = Object.fromEntries(
    ANSWER_KEYS.map((key, i) => [key.limb, limbReading(net, key, probabilities[i]!, examined.has(key.limb))]),
  ) as Record<LimbKey, LimbReading>;
  const { narrowed, blocked } = marginals(net);
  const reading = {
    status: 'read' as const,
    limbs,
    pieces: Object.fromEntries(
      PIECES.map((piece, i) => [piece.key, { narrowed: narrowed[i]!, blocked: blocked[i]! }]),
    ) as Record<PieceKey, { narrowed: number; blocked: number }>,
    causes: Object.fromEntries(CAUSES.map((cause, c) => [cause, net.joint(c) / total])) as Record<
      Cause,
      number
    >,
    story: storyOf(net),
  };
  if (options.detail === 'posterior') return { ...reading, detail: {}, next: [] };

  const keys = ANSWER_KEYS.filter((key) => examined.has(key.limb));
  const firsts = keys.map((key) => indexOfLargest(probabilities[ANSWER_KEYS.indexOf(key)]!));
  const evidence = evidenceFor(net, findings, keys, firsts);
  net.focus(LEAST_BELIEF);
  const firm = firmnessOf(net, findings, keys, firsts);
  const detail = Object.fromEntries(
    keys.map((key, i) => {
      const known = probabilities[ANSWER_KEYS.indexOf(key)]!;
      const overturned = firm[i]!.overturned.map(({ assumption, factor, answer }) => {
        const at = key.answers[answer];
        return { assumption, factor, ...(at && { answer: { ...at, probability: known[answer]! } }) };
      });
      return [key.limb, { evidence: evidence[i]!, firm: { ...firm[i]!, overturned } }];
    }),
  ) as Partial<Record<LimbKey, LimbDetail>>;
  const next = rankActs(net, actsLeft(examination, findings, tables), keys);
  return { ...reading, detail, next };
}
