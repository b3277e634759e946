import { PIECES, type PulseSiteId } from '../../anatomy/index.js';
import { type AnswerKey, indexOfLargest, levelProbabilities, levelsByColumn } from './answers.js';
import type { Finding } from './finding.js';
import type { Propagation } from './propagate.js';
import { CAUSES, type Cause } from './types.js';

/**
 * One assumption of the model that is halved or doubled: the probability of a cause, or the weight of
 * evidence (the logarithm of its likelihood ratios) of one kind of finding.
 */
export type Assumption =
  | { readonly kind: 'cause'; readonly cause: Cause }
  | { readonly kind: 'palpation'; readonly site: PulseSiteId }
  | { readonly kind: 'bruit' | 'doppler' | 'index' | 'pain' | 'delay' | 'seen' };

/** An assumption under which another level would come first. */
export interface Overturn {
  readonly assumption: Assumption;
  readonly factor: 0.5 | 2;
  /** Place of the new first level in the limb's list of levels; past the end is "nothing shown". */
  readonly level: number;
}

/** What was tried on the first level of a limb. */
export interface Firmness {
  readonly overturned: readonly Overturn[];
  /** Joint variations of all assumptions at once that leave the level first, of so many tried. */
  readonly held: number;
  readonly tried: number;
  /** The least probability of the level in any of them. */
  readonly least: number;
}

const FACTORS = [0.5, 2] as const;
/** No probability of disease is pushed above this. */
const CEILING = 0.95;
/** How many ways of varying everything at once are tried, and by how much. */
const JOINT = 6;
const SPREAD = 1.7;

function assumptionOf({ id }: Finding): Assumption {
  switch (id.kind) {
    case 'pulse':
      return { kind: 'palpation', site: id.place.site };
    case 'bruit':
    case 'thrill':
      return { kind: 'bruit' };
    case 'index':
    case 'ankle-index':
    case 'digit-index':
    case 'incompressible':
    case 'exercise':
      return { kind: 'index' };
    case 'skin':
    case 'wound':
    case 'numbness':
    case 'hand-arch':
    case 'vertebral':
    case 'graft-pulse':
    case 'steal':
      return { kind: 'seen' };
    default:
      return { kind: id.kind };
  }
}

interface Group {
  readonly assumption: Assumption;
  readonly members: Finding[];
}

function groupsOf(findings: readonly Finding[]): Group[] {
  const groups = new Map<string, Group>();
  for (const finding of findings) {
    const assumption = assumptionOf(finding);
    const name = 'site' in assumption ? assumption.site : assumption.kind;
    const group = groups.get(name) ?? { assumption, members: [] };
    group.members.push(finding);
    groups.set(name, group);
  }
  return [...groups.values()];
}

/** Whether an assumption is raised or lowered in one joint variation: a fixed pattern, so that the same record reads the same. */
function turn(variation: number, assumption: number): number {
  const bits = ((variation + 1) * 0x9e3779b1 + assumption * 0x85ebca6b) >>> 0;
  return (((bits ^ (bits >>> 15)) * 0x2c1b3c6d) >>> 29) & 1 ? SPREAD : 1 / SPREAD;
}

/** Room for what is varied: how a variation turns each cause and artery, and the figures as they were. */
const BY_CAUSE = new Float64Array(CAUSES.length);
let before = new Float64Array(0);

/**
 * Looks at the network with causes and the disease of every artery varied together, on the pieces that findings bear on.
 * @param live the causes that are reckoned with
 */
function varied(
  net: Propagation,
  pieces: readonly number[],
  live: readonly number[],
  variation: number,
  look: () => void,
): void {
  const { model, causes, allPatent } = net;
  const { narrowed, blocked } = model;
  const kept = allPatent.slice();
  if (before.length < 2 * pieces.length * live.length)
    before = new Float64Array(2 * pieces.length * live.length);
  const change = (): (() => void) => {
    let at = 0;
    for (const i of pieces) {
      const by = turn(variation, 100 + 7 * ARTERY[i]!);
      for (const c of live) {
        const k = i * causes + c;
        const sum = narrowed[k]! + blocked[k]!;
        before[at++] = narrowed[k]!;
        before[at++] = blocked[k]!;
        if (sum === 0) continue;
        const to = Math.min(sum * by, CEILING) / sum;
        narrowed[k]! *= to;
        blocked[k]! *= to;
        allPatent[c]! *= (1 - sum * to) / (1 - sum);
      }
    }
    for (let c = 0; c < causes; c++) BY_CAUSE[c] = turn(variation, c);
    net.weigh(BY_CAUSE);
    return () => {
      allPatent.set(kept);
      net.weigh();
      at = 0;
      for (const i of pieces) {
        for (const c of live) {
          narrowed[i * causes + c] = before[at++]!;
          blocked[i * causes + c] = before[at++]!;
        }
      }
    };
  };
  net.whatIf(pieces, change, look);
}

const NAMES = [...new Set(PIECES.map(({ artery }) => artery))];
const ARTERY = PIECES.map(({ artery }) => NAMES.indexOf(artery));

/**
 * Whether the first level of each limb survives when assumptions are halved and doubled, one by one and together.
 * @param firsts the first level of each key, by its place in the list; past the end is "nothing shown"
 */
export function firmnessOf(
  net: Propagation,
  findings: readonly Finding[],
  keys: readonly AnswerKey[],
  firsts: readonly number[],
): Firmness[] {
  if (keys.length === 0) return [];
  const overturned: Overturn[][] = keys.map(() => []);
  const held = keys.map(() => 0);
  const least = keys.map(() => 1);
  const scratch = keys.map((key) => new Float64Array(key.levels.length + 1));
  const tryOut = (assumption: Assumption, factor: 0.5 | 2): void => {
    for (let i = 0; i < scratch.length; i++) {
      const level = indexOfLargest(scratch[i]!);
      if (level !== firsts[i]) overturned[i]!.push({ assumption, factor, level });
    }
  };
  const look = (): void => {
    for (let i = 0; i < keys.length; i++) levelProbabilities(net, keys[i]!, scratch[i]);
  };

  // Weights of causes leave all messages as they are.
  const { live, cause: causeOf } = net;
  const causes = [...new Set(live.map((column) => causeOf[column]!))];
  const byColumn = keys.map((key) => levelsByColumn(net, key));
  for (const cause of causes) {
    for (const factor of FACTORS) {
      for (let i = 0; i < scratch.length; i++) {
        const into = scratch[i]!.fill(0);
        const from = byColumn[i]!;
        for (let q = 0; q < live.length; q++) {
          const by = causeOf[live[q]!] === cause ? factor : 1;
          for (let k = 0; k < into.length; k++) into[k]! += by * from[q * into.length + k]!;
        }
      }
      tryOut({ kind: 'cause', cause: CAUSES[cause]! }, factor);
    }
  }
  for (const { assumption, members } of groupsOf(findings)) {
    const own = members.flatMap(({ factors }) => factors);
    const pieces = own.map(({ piece }) => piece);
    let power: 1 | -0.5 = 1;
    const change = (): void => {
      for (let i = 0; i < own.length; i++) net.multiply(own[i]!, power);
    };
    for (const factor of FACTORS) {
      power = factor === 2 ? 1 : -0.5;
      net.whatIf(pieces, change, look);
      tryOut(assumption, factor);
    }
  }
  const { active } = net;
  const found: number[] = [];
  for (let i = 0; i < net.n; i++) if (active[i]) found.push(i);
  for (let variation = 0; variation < JOINT; variation++) {
    varied(net, found, causes, variation, look);
    for (let i = 0; i < scratch.length; i++) {
      const probabilities = scratch[i]!;
      least[i] = Math.min(least[i]!, probabilities[firsts[i]!]!);
      if (indexOfLargest(probabilities) === firsts[i]) held[i]!++;
    }
  }
  return keys.map((_, i) => ({ overturned: overturned[i]!, held: held[i]!, tried: JOINT, least: least[i]! }));
}
