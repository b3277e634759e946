import { type ArteryId, PIECES, type PulseSiteId } from '../../anatomy/index.js';
import { type AnswerKey, answerProbabilities, indexOfLargest } from './answers.js';
import type { Finding } from './evidence.js';
import type { Factor, Propagation } from './propagate.js';
import { CAUSES, type Cause } from './types.js';

/**
 * One assumption of the model that is halved or doubled: the probability of a cause, of disease in an artery, of what gets
 * through a piece; or the weight of evidence (the logarithm of its likelihood ratios) of one kind of finding.
 */
export type Assumption =
  | { readonly kind: 'cause'; readonly cause: Cause }
  | { readonly kind: 'artery'; readonly artery: ArteryId }
  | { readonly kind: 'palpation'; readonly site: PulseSiteId }
  | { readonly kind: 'passage'; readonly through: 'narrowed' | 'blocked' }
  | { readonly kind: 'bruit' | 'doppler' | 'index' | 'pain' | 'delay' };

/** An assumption under which another answer would come first. */
export interface Overturn {
  readonly assumption: Assumption;
  readonly factor: 0.5 | 2;
  /** Place of the new first answer in the limb's list of answers; past the end is "nothing shown". */
  readonly answer: number;
}

/** `firm`: nothing moves the first answer. `fairly-firm`: it moves, its level never does. `not-firm`: the level moves. */
export interface Firmness {
  readonly grade: 'firm' | 'fairly-firm' | 'not-firm';
  readonly overturned: readonly Overturn[];
  /** How many halvings and doublings were tried. */
  readonly tried: number;
}

interface Trial {
  readonly assumption: Assumption;
  readonly pieces: readonly number[];
  readonly change: (factor: number) => void | (() => void);
}

const FACTORS = [0.5, 2] as const;
/** No probability of disease is pushed above this by doubling. */
const CEILING = 0.95;

function causeTrials({ model, live }: Propagation): Trial[] {
  return live.map((c) => ({
    assumption: { kind: 'cause', cause: CAUSES[c]! },
    pieces: [],
    change: (factor) => {
      const before = model.weight[c]!;
      model.weight[c] = before * factor;
      return () => (model.weight[c] = before);
    },
  }));
}

function arteryTrials({ model, causes, allPatent }: Propagation, keys: readonly AnswerKey[]): Trial[] {
  const { narrowed, blocked } = model;
  const arteries = [...new Set(keys.flatMap((key) => key.answers.map((answer) => answer.artery)))];
  return arteries.map((artery) => {
    const pieces = PIECES.flatMap((piece, i) => (piece.artery === artery ? [i] : []));
    const kept = new Float64Array(pieces.length * causes * 2);
    return {
      assumption: { kind: 'artery', artery },
      pieces,
      change: (factor) => {
        const patent = allPatent.slice();
        for (let j = 0; j < kept.length; j += 2) {
          const k = pieces[(j / 2 / causes) | 0]! * causes + ((j / 2) % causes);
          kept[j] = narrowed[k]!;
          kept[j + 1] = blocked[k]!;
        }
        for (const i of pieces) {
          for (let c = 0; c < causes; c++) {
            const k = i * causes + c;
            const sum = narrowed[k]! + blocked[k]!;
            if (sum === 0) continue;
            const by = Math.min(sum * factor, CEILING) / sum;
            narrowed[k]! *= by;
            blocked[k]! *= by;
            allPatent[c]! *= (1 - sum * by) / (1 - sum);
          }
        }
        return () => {
          allPatent.set(patent);
          for (let j = 0; j < kept.length; j += 2) {
            const k = pieces[(j / 2 / causes) | 0]! * causes + ((j / 2) % causes);
            narrowed[k] = kept[j]!;
            blocked[k] = kept[j + 1]!;
          }
        };
      },
    };
  });
}

function passageTrials({ model, active }: Propagation): Trial[] {
  const pieces = Array.from(active.keys()).filter((i) => active[i]);
  return (['narrowed', 'blocked'] as const).map((through) => ({
    assumption: { kind: 'passage', through },
    pieces,
    change: (factor) => {
      const rows = through === 'narrowed' ? model.throughNarrowed : model.throughBlocked;
      const before = rows.slice();
      for (const r of [0, 1, 3, 4]) {
        // What gets through is the stronger part of each row; the weakest entry takes the rest.
        let kept = 0;
        for (let t = 0; t < 2; t++) kept += rows[r * 3 + t]!;
        const by = kept > 0 ? Math.min(kept * factor, CEILING) / kept : 1;
        for (let t = 0; t < 2; t++) rows[r * 3 + t]! *= by;
        rows[r * 3 + 2] = 1 - rows[r * 3]! - rows[r * 3 + 1]!;
      }
      return () => rows.set(before);
    },
  }));
}

function tempered({ piece, usual, second }: Factor, power: number): Factor {
  const raise = (values: ArrayLike<number>): number[] => Array.from(values, (value) => value ** power);
  return { piece, usual: raise(usual), second: raise(second) };
}

function assumptionOf({ id }: Finding): Assumption {
  switch (id.kind) {
    case 'pulse':
      return { kind: 'palpation', site: id.place.site };
    case 'bruit':
    case 'thrill':
      return { kind: 'bruit' };
    case 'ankle-index':
      return { kind: 'index' };
    default:
      return { kind: id.kind };
  }
}

function findingTrials(net: Propagation, findings: readonly Finding[]): Trial[] {
  const groups = new Map<string, { assumption: Assumption; members: Finding[] }>();
  for (const finding of findings) {
    const assumption = assumptionOf(finding);
    const name = `${assumption.kind} ${'site' in assumption ? assumption.site : ''}`;
    const group = groups.get(name) ?? { assumption, members: [] };
    group.members.push(finding);
    groups.set(name, group);
  }
  return [...groups.values()].map(({ assumption, members }) => {
    const pieces = [...new Set(members.flatMap(({ factors }) => factors.map(({ piece }) => piece)))];
    return {
      assumption,
      pieces,
      change: (power) => {
        for (const piece of pieces) {
          net.replace(
            piece,
            findings.flatMap((finding) =>
              finding.factors
                .filter((factor) => factor.piece === piece)
                .map((factor) => (members.includes(finding) ? tempered(factor, power) : factor)),
            ),
          );
        }
      },
    };
  });
}

/**
 * Whether the first answer of each limb survives when each assumption in turn is halved and doubled.
 * @param firsts the first answer of each key, by its place in the list
 */
export function firmnessOf(
  net: Propagation,
  findings: readonly Finding[],
  keys: readonly AnswerKey[],
  firsts: readonly number[],
): Firmness[] {
  const overturned: Overturn[][] = keys.map(() => []);
  const trials = [
    ...causeTrials(net),
    ...arteryTrials(net, keys),
    ...passageTrials(net),
    ...findingTrials(net, findings),
  ];
  const scratch = keys.map((key) => new Float64Array(key.answers.length + 1));
  const look = (): number[] =>
    keys.map((key, i) => indexOfLargest(answerProbabilities(net, key, scratch[i])));
  for (const { assumption, pieces, change } of trials) {
    for (const factor of FACTORS) {
      const found = net.whatIf(pieces, () => change(factor), look);
      found.forEach((answer, i) => {
        if (answer !== firsts[i]) overturned[i]!.push({ assumption, factor, answer });
      });
    }
  }
  return keys.map((key, i) => {
    const level = key.levelOf[firsts[i]!];
    const moved = overturned[i]!.some(({ answer }) => key.levelOf[answer] !== level);
    const grade = moved ? 'not-firm' : overturned[i]!.length ? 'fairly-firm' : 'firm';
    return { grade, overturned: overturned[i]!, tried: trials.length * FACTORS.length };
  });
}
