import { limbKey, type LimbKey, type PieceKey, pieceFromKey, piecesTo } from '../anatomy/index.js';
import { voicesAgree } from '../localisation/compare-voices.js';
import type {
  ActId,
  Answer,
  Assumption,
  Cause,
  FindingId,
  LimbDetail,
  LimbReading,
  LimbRule,
  NetworkReading,
  State,
} from '../localisation/index.js';

/** A network's reading with probabilities. */
export type ReadNetwork = NetworkReading & { readonly status: 'read' };

type LesionState = Exclude<State, 'patent'>;

/** Answers are shown until they hold this much of the probability, at most so many. */
const ENOUGH = 0.9;
const MOST_ANSWERS = 4;
/** What is left over is shown from this probability on. */
const LEAST_REST = 0.005;
/** A second lesion is told from this probability on, at most so many. */
const LEAST_DOWNSTREAM = 0.3;
const MOST_DOWNSTREAM = 2;
/** Findings of less weight, in nats, are not told. */
const LEAST_WEIGHT = 0.1;
const MOST_FINDINGS = 5;
/** So many assumptions are named on which an answer hangs. */
const MOST_ASSUMPTIONS = 2;
/** Causes are listed from this probability on. */
const LEAST_CAUSE = 0.01;

/** One row of where the trouble of a limb may begin. */
export type BeginsStatement =
  | { readonly code: 'answer'; readonly pieces: readonly PieceKey[]; readonly probability: number }
  /** No artery of the limb is narrowed or blocked. */
  | { readonly code: 'nothing'; readonly probability: number }
  /** Every answer that has no row of its own. */
  | { readonly code: 'elsewhere'; readonly probability: number };

/** Where the trouble of a limb may begin, most probable first and the rest last; sums to one but for a negligible rest. */
export function beginsStatements({ answers, nothing }: LimbReading): BeginsStatement[] {
  const shown: Answer[] = [];
  let sum = nothing;
  for (const answer of answers) {
    if (shown.length && (shown.length === MOST_ANSWERS || sum >= ENOUGH)) break;
    shown.push(answer);
    sum += answer.probability;
  }
  const rows: BeginsStatement[] = [
    ...shown.map(({ pieces, probability }) => ({ code: 'answer' as const, pieces, probability })),
    { code: 'nothing', probability: nothing },
  ];
  rows.sort((a, b) => b.probability - a.probability);
  const rest = Math.max(0, 1 - sum);
  return rest < LEAST_REST ? rows : [...rows, { code: 'elsewhere', probability: rest }];
}

/** How the two voices stand to each other in a limb. */
export type VoicesStatement =
  | { readonly code: 'agree' }
  /** Both find something, in different places; `pieces` is the network's first answer. */
  | { readonly code: 'disagree'; readonly pieces: readonly PieceKey[] }
  | { readonly code: 'rule-alone' }
  | { readonly code: 'network-alone'; readonly pieces: readonly PieceKey[] };

/** How the two voices stand to each other in a limb; undefined where neither finds anything. */
export function voicesStatement(rule: LimbRule, reading: LimbReading): VoicesStatement | undefined {
  const { first } = reading;
  const found = rule.lesions.length > 0;
  if (voicesAgree(rule, reading)) return found ? { code: 'agree' } : undefined;
  if (!first) return { code: 'rule-alone' };
  return { code: found ? 'disagree' : 'network-alone', pieces: first.pieces };
}

/** A second lesion beyond the first answer. */
export interface DownstreamStatement {
  readonly piece: PieceKey;
  readonly state: LesionState;
  readonly probability: number;
}

/** Lesions beyond the first answer that are likely enough to be told, most probable first. */
export function downstreamStatements(
  network: ReadNetwork,
  rule: LimbRule,
  { first, answers }: LimbReading,
): DownstreamStatement[] {
  const last = first?.pieces.at(-1);
  if (!first || !last) return [];
  // Other pieces of the stretch that the first lesion lies in are other answers, not further lesions.
  const own = [...first.pieces, ...(rule.lesions[0]?.pieces ?? [])];
  return answers
    .flatMap((answer) => answer.pieces)
    .filter((key) => {
      const piece = pieceFromKey(key);
      return piece && !own.includes(key) && piecesTo(piece).some((above) => above.key === last);
    })
    .map((piece) => {
      const { narrowed, blocked } = network.pieces[piece];
      const state = blocked >= narrowed ? ('blocked' as const) : ('narrowed' as const);
      return { piece, state, probability: narrowed + blocked };
    })
    .filter(({ probability }) => probability >= LEAST_DOWNSTREAM)
    .sort((a, b) => b.probability - a.probability)
    .slice(0, MOST_DOWNSTREAM);
}

/** What one finding says of the first answer. */
export interface EvidenceStatement {
  readonly finding: FindingId;
  readonly way: 'for' | 'against';
  /** Logarithm of the odds ratio, in nats; above 0 speaks for the answer. */
  readonly weight: number;
  /** The factor by which the odds rise (`for`) or fall (`against`), at least 1. */
  readonly odds: number;
}

/** The findings that weigh enough to be told, heaviest first. */
export function evidenceStatements({ evidence }: LimbDetail): EvidenceStatement[] {
  return evidence
    .filter(({ weight }) => Math.abs(weight) >= LEAST_WEIGHT)
    .slice(0, MOST_FINDINGS)
    .map(({ finding, weight }) => ({
      finding,
      way: weight > 0 ? 'for' : 'against',
      weight,
      odds: Math.exp(Math.abs(weight)),
    }));
}

/** How firm the first answer of a limb is. */
export type FirmStatement =
  | { readonly code: 'firm' }
  | {
      readonly code: 'fairly-firm' | 'not-firm';
      /** The assumptions on which the answer hangs, each once. */
      readonly hangsOn: readonly Assumption[];
      readonly limb: LimbKey;
      /** How many sites of the limb carry no grade. */
      readonly ungraded: number;
    };

/** How firm the first answer of a limb is, what it hangs on, and how many sites would still tell more. */
export function firmStatement({ firm }: LimbDetail, rule: LimbRule): FirmStatement {
  if (firm.grade === 'firm') return { code: 'firm' };
  const hangsOn = new Map(firm.overturned.map(({ assumption }) => [JSON.stringify(assumption), assumption]));
  return {
    code: firm.grade,
    hangsOn: [...hangsOn.values()].slice(0, MOST_ASSUMPTIONS),
    limb: limbKey(rule.limb),
    ungraded: rule.unstated.length,
  };
}

/** The act that would tell most; undefined where nothing is left to do. */
export function nextStatement({ next }: ReadNetwork): ActId | undefined {
  return next[0]?.act;
}

/** The single most probable state of all arteries, with its cause and its probability. */
export type StoryStatement =
  | { readonly code: 'all-open'; readonly cause: Cause; readonly probability: number }
  | {
      readonly code: 'lesions';
      readonly cause: Cause;
      readonly lesions: readonly { readonly piece: PieceKey; readonly state: LesionState }[];
      readonly probability: number;
    };

export function storyStatement({ story }: ReadNetwork): StoryStatement {
  const { cause, lesions, probability } = story;
  return lesions.length
    ? { code: 'lesions', cause, lesions, probability }
    : { code: 'all-open', cause, probability };
}

/** What may lie behind the findings, most probable first, without what is next to impossible. */
export function causeStatements({ causes }: ReadNetwork): { cause: Cause; probability: number }[] {
  return (Object.entries(causes) as [Cause, number][])
    .filter(([, probability]) => probability >= LEAST_CAUSE)
    .sort(([, a], [, b]) => b - a)
    .map(([cause, probability]) => ({ cause, probability }));
}

/** Findings that no state of the arteries explains together. */
export type ImpossibleStatement =
  /** Without any one of the findings the others would fit. */
  { readonly code: 'any-of'; readonly findings: readonly FindingId[] } | { readonly code: 'impossible' };

export function impossibleStatement({
  conflicting,
}: NetworkReading & { readonly status: 'impossible' }): ImpossibleStatement {
  return conflicting.length ? { code: 'any-of', findings: conflicting } : { code: 'impossible' };
}
