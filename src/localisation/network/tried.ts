import type { LimbKey } from '../../anatomy/index.js';
import type { Examination } from '../../examination/index.js';
import { type ActKind, actsLeft } from './acts.js';
import { type AnswerKey, indexOfLargest, levelProbabilities } from './answers.js';
import { conflictsOf, type Removable, removable, without } from './conflicts.js';
import type { Feet } from './feet.js';
import type { Finding } from './finding.js';
import { type Firmness, firmnessOf } from './firmness.js';
import { modelOf } from './model.js';
import { onsetGain } from './onset-act.js';
import { Propagation } from './propagate.js';
import { ROOMS } from './propagated.js';
import { rankActs, withAct } from './rank.js';
import type { LimbDetail, LimbReading, NetworkReading } from './reading-types.js';
import type { Tables } from './types.js';

/** Causes with less of the belief than this are left out where assumptions are tried and acts are ranked. */
const LEAST_BELIEF = 0.01;
/** Lighter findings are left out of the evidence. */
const LIGHTEST = 0.02;
/** A limb is in question from this probability on that its pulse is weak. */
const IN_QUESTION = 0.25;
/** More than what the columns hold that are left out where a stretch is looked for. */
export const LEFT_OUT = 0.02;
/** What an answer needs to be called firm, and fairly firm: fitted so that the cases bear out nine and seven in ten. */
const FIRM = { probability: 0.8, least: 0.6, flips: 0.3 };
const FAIRLY = { probability: 0.6, held: 4 };

/** A limb on which hardly anything speaks for a lesion: no assumption was tried on it. */
const NOT_IN_QUESTION: Firmness = { overturned: [], held: 0, tried: 0, least: 1 };

/** What is learnt of a reading by leaving findings out, varying assumptions and supposing further ones. */
export interface Tried {
  readonly limbs: Readonly<Partial<Record<LimbKey, Pick<LimbDetail, 'evidence' | 'firm'>>>>;
  readonly conflicts: (NetworkReading & { status: 'read' })['conflicts'];
  readonly next: (NetworkReading & { status: 'read' })['next'];
}

interface Trial {
  readonly examination: Examination;
  readonly tables: Tables;
  readonly feet: readonly Feet[];
  readonly findings: readonly Finding[];
  readonly limbs: Readonly<Record<LimbKey, LimbReading>>;
  /** Probability of an acute onset before the findings. */
  readonly acute: number;
  /** Of the limbs examined. */
  readonly keys: readonly AnswerKey[];
  /** The kinds of act that the form at hand can record; all where not given. */
  readonly can: readonly ActKind[] | undefined;
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

function gradeOf(
  probability: number,
  { held, tried, least }: Firmness,
  flips: number,
): LimbDetail['firm']['grade'] {
  if (probability >= FIRM.probability && held === tried && least >= FIRM.least && flips < FIRM.flips)
    return 'firm';
  return probability >= FAIRLY.probability && held >= FAIRLY.held ? 'fairly-firm' : 'not-firm';
}

/** Tries a reading out. The network is left as it was. */
export function tryOut(
  net: Propagation,
  { examination, tables, feet, findings, limbs, acute, keys, can }: Trial,
): Tried {
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
  const { acts, flips } = rankActs(net, actsLeft(examination, findings, tables, feet, wanted), asked, can);
  net.focus(0);
  const asksOnset = !examination.onset && asked.length > 0 && (can?.includes('onset') ?? true);
  const factors = asksOnset ? findings.flatMap((finding) => finding.factors) : [];
  const ifKnown = (onset: 'acute' | 'chronic'): Propagation =>
    new Propagation(modelOf({ ...examination, onset }, tables), factors, 0, ROOMS[1]);
  const next = asksOnset ? withAct(acts, { kind: 'onset' }, onsetGain(acute, ifKnown, asked)) : acts;
  const own = keys.map(({ limb }, i): [LimbKey, Pick<LimbDetail, 'evidence' | 'firm'>] => {
    const at = asked.findIndex((key) => key.limb === limb);
    const flip = flips[at] ?? 0;
    const tested = firm[at] ?? NOT_IN_QUESTION;
    const { overturned, held, tried } = tested;
    return [
      limb,
      {
        evidence: weights[at] ?? [],
        firm: {
          grade: gradeOf(levels[i]![firsts[i]!]!, tested, flip),
          overturned: overturned.map(({ assumption, factor }) => ({ assumption, factor })),
          held,
          tried,
          flips: flip,
        },
      },
    ];
  });
  return { limbs: Object.fromEntries(own) as Tried['limbs'], conflicts, next };
}
