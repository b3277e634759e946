import { limbKey, type LimbKey, type PieceKey } from '../anatomy/index.js';
import { voicesAgree } from '../localisation/compare-voices.js';
import type {
  ActId,
  Answer,
  Assumption,
  Cause,
  FindingId,
  Further,
  LimbDetail,
  LimbReading,
  LimbRule,
  NetworkReading,
  Occlusion,
  SettlingQuestion,
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
/** Findings of less weight, in nats, are not told. */
const LEAST_WEIGHT = 0.1;
const MOST_FINDINGS = 5;
/** So many assumptions are named on which an answer hangs. */
const MOST_ASSUMPTIONS = 2;
/** Natures are told from this probability on, at most so many. */
const LEAST_NATURE = 0.1;
const MOST_NATURES = 2;
/** Causes are listed from this probability on. */
const LEAST_CAUSE = 0.01;

/** One row of what takes the pulse of a limb away. */
export type OccludedStatement =
  | {
      readonly code: 'entry';
      readonly pieces: readonly PieceKey[];
      readonly pulse: 'absent' | 'reduced';
      readonly probability: number;
    }
  /** The pulses at the limb's end are normal. */
  | { readonly code: 'open'; readonly probability: number }
  | { readonly code: 'elsewhere'; readonly probability: number };

/** What takes the pulse of a limb away, most probable first and the rest last; sums to one but for a negligible rest. */
export function occludedStatements({ occluded: { entries, open } }: LimbReading): OccludedStatement[] {
  const shown: Occlusion[] = [];
  let sum = open;
  for (const entry of entries) {
    if (shown.length && (shown.length === MOST_ANSWERS || sum >= ENOUGH)) break;
    shown.push(entry);
    sum += entry.probability;
  }
  const rows: OccludedStatement[] = [
    { code: 'open', probability: open },
    ...shown.map(({ pieces, pulse, probability }) => ({
      code: 'entry' as const,
      pieces,
      pulse,
      probability,
    })),
  ];
  rows.sort((a, b) => b.probability - a.probability);
  const rest = Math.max(0, 1 - sum);
  return rest < LEAST_REST ? rows : [...rows, { code: 'elsewhere', probability: rest }];
}

/** One row of where the disease of a limb may begin. */
export type BeginsStatement =
  | { readonly code: 'answer'; readonly pieces: readonly PieceKey[]; readonly probability: number }
  /** No artery of the limb is narrowed or blocked. */
  | { readonly code: 'nothing'; readonly probability: number }
  /** Every answer that has no row of its own. */
  | { readonly code: 'elsewhere'; readonly probability: number };

/** Where the disease of a limb may begin, most probable first and the rest last; sums to one but for a negligible rest. */
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
  const { headline } = reading;
  const found = rule.lesions.length > 0;
  if (voicesAgree(rule, reading)) return found ? { code: 'agree' } : undefined;
  if (!headline) return { code: 'rule-alone' };
  return { code: found ? 'disagree' : 'network-alone', pieces: headline.pieces };
}

/** Lesions beside the one that takes the pulse away: where disease begins above it, and what is likely closed beyond. */
export type FurtherStatement = Further;

/** Lesions beside the first, those above it before those beyond. */
export function furtherStatements({ further }: LimbDetail): readonly FurtherStatement[] {
  return further;
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
export interface FirmStatement {
  readonly code: 'firm' | 'fairly-firm' | 'not-firm';
  /** The assumptions on which the answer hangs, each once. */
  readonly hangsOn: readonly Assumption[];
  /** Joint variations of all assumptions that leave it first, of so many tried. */
  readonly held: number;
  readonly tried: number;
  readonly limb: LimbKey;
  /** How many sites of the limb carry no grade. */
  readonly ungraded: number;
}

/** How firm the first answer of a limb is, what it hangs on, and how many sites would still tell more. */
export function firmStatement({ firm }: LimbDetail, rule: LimbRule): FirmStatement {
  const hangsOn = new Map(firm.overturned.map(({ assumption }) => [JSON.stringify(assumption), assumption]));
  return {
    code: firm.grade,
    held: firm.held,
    tried: firm.tried,
    hangsOn: [...hangsOn.values()].slice(0, MOST_ASSUMPTIONS),
    limb: limbKey(rule.limb),
    ungraded: rule.unstated.length,
  };
}

/** What to do next: a question that settles weak pulses without arterial disease, an act, or that nothing would change much. */
export type NextStatement =
  | { readonly code: 'settle'; readonly question: SettlingQuestion }
  | { readonly code: 'act'; readonly act: ActId }
  | { readonly code: 'enough' };

/** What to do next, most worth first; nothing where no limb is in question. */
export function nextStatements({ next, settle, limbs }: ReadNetwork): NextStatement[] {
  const out: NextStatement[] = [
    ...(settle ? [{ code: 'settle' as const, question: settle }] : []),
    ...next.map(({ act }) => ({ code: 'act' as const, act })),
  ];
  const inQuestion = Object.values(limbs).some(({ examined, headline }) => examined && headline);
  return out.length || !inQuestion ? out : [{ code: 'enough' }];
}

/** The nature of the trouble as the acute leg asks for it; the network's causes gathered under the names one acts on. */
export const NATURES = [
  'embolus',
  'thrombosis',
  'chronic-disease',
  'injury',
  'dissection',
  'aneurysm',
  'vasculitis',
  'compression',
  'coarctation',
  'low-flow',
  'none',
] as const;
export type Nature = (typeof NATURES)[number];

const NATURE_OF: Readonly<Record<Exclude<Cause, 'focal' | 'diffuse' | 'distal'>, Nature>> = {
  embolic: 'embolus',
  injury: 'injury',
  dissection: 'dissection',
  aneurysm: 'aneurysm',
  vasculitis: 'vasculitis',
  compression: 'compression',
  coarctation: 'coarctation',
  'low-flow': 'low-flow',
  none: 'none',
};

export interface NatureStatement {
  readonly nature: Nature;
  readonly probability: number;
}

/** What lies behind the findings, most probable first: diseased arteries that close at once are a thrombosis in place. */
export function natureStatements({ causes, acute }: ReadNetwork): NatureStatement[] {
  const sums = new Map<Nature, number>();
  for (const [cause, probability] of Object.entries(causes) as [Cause, number][]) {
    const parts: [Nature, number][] =
      cause === 'focal' || cause === 'diffuse' || cause === 'distal'
        ? [
            ['thrombosis', acute * probability],
            ['chronic-disease', (1 - acute) * probability],
          ]
        : [[NATURE_OF[cause], probability]];
    for (const [nature, part] of parts) sums.set(nature, (sums.get(nature) ?? 0) + part);
  }
  return [...sums]
    .map(([nature, probability]) => ({ nature, probability }))
    .filter(({ probability }) => probability >= LEAST_NATURE)
    .sort((a, b) => b.probability - a.probability)
    .slice(0, MOST_NATURES);
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
