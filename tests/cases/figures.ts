import {
  type Level,
  levelOf,
  limbKey,
  pieceFromKey,
  vesselKey,
  type VesselKey,
} from '../../src/anatomy/index.js';
import { localise, type NetworkReading, type Tables } from '../../src/localisation/network/index.js';
import { readByRule } from '../../src/localisation/rule.js';
import { recordOf } from './convert.js';
import type { PublishedCase } from './form.js';
import { isAllNormal, type Item, itemsOf, normalLimbsOf } from './items.js';
import { blockAbove } from '../tools/block-above.js';

/** An answer for one limb: probability of each level and of none, and arteries in the order in which they are named. */
export interface Answered {
  readonly levels: ReadonlyMap<Level, number>;
  readonly nothing: number;
  readonly arteries: readonly VesselKey[];
}

export interface Scores {
  levelFirst: number;
  levelFirstDecidable: number;
  segmentFirst: number;
  segmentTop3: number;
  /** Mean over the items, in nats. */
  logLoss: number;
}

export interface Figures {
  readonly items: number;
  readonly decidable: { readonly items: number };
  readonly network: Scores;
  readonly rule: Scores;
  /** Limbs with normal pulses on which a block was put. */
  readonly sideMoved: number;
  /** Cases with every pulse normal in which a block was claimed. */
  readonly normalsBlocked: number;
}

/** Share of the probability that is spread evenly over all levels before the logarithm, for network and rule alike. */
export const SMOOTHING = 0.05;
const OUTCOMES = { leg: 5, arm: 4, head: 3 } as const;

export function networkAnswer({ examination, pressures, limb }: Item, tables?: Tables): Answered {
  const reading = localise(examination, { pressures, detail: 'posterior', ...(tables && { tables }) });
  if (reading.status !== 'read') return { levels: new Map(), nothing: 1, arteries: [] };
  const { levels, answers, nothing } = reading.limbs[limbKey(limb)];
  const arteries = new Map<VesselKey, number>();
  for (const { pieces, probability } of answers) {
    const key = vesselKey(pieceFromKey(pieces[0]!)!);
    arteries.set(key, (arteries.get(key) ?? 0) + probability);
  }
  return {
    levels: new Map(levels.map(({ level, probability }) => [level, probability])),
    nothing,
    arteries: [...arteries].sort((a, b) => b[1] - a[1]).map(([key]) => key),
  };
}

/** The rule's answer: just above the first absent pulse, else the first reduced one; then further up the open stretch. */
export function ruleAnswer({ examination, limb }: Item): Answered {
  const { lesions } = readByRule(examination)[limbKey(limb)];
  const lesion = lesions.find(({ kind }) => kind === 'block') ?? lesions[0];
  const below = lesion?.below[0];
  if (!lesion || !below) return { levels: new Map(), nothing: 1, arteries: [] };
  const first = blockAbove(below.site);
  const open = [...lesion.pieces].reverse().map((key) => vesselKey(pieceFromKey(key)!));
  const arteries = [...new Set([vesselKey({ artery: first, side: limb.side }), ...open])];
  return { levels: new Map([[levelOf(first, limb.kind), 1]]), nothing: 0, arteries };
}

export interface Judged {
  readonly item: Item;
  readonly levelRight: boolean;
  readonly segmentRank: number;
  readonly loss: number;
  readonly first: Level | 'nothing';
}

export function judge(item: Item, answer: Answered): Judged {
  const [best] = [...answer.levels].sort((a, b) => b[1] - a[1]);
  const first = best && best[1] > answer.nothing ? best[0] : 'nothing';
  const given = item.levels.reduce((sum, level) => sum + (answer.levels.get(level) ?? 0), 0);
  const smoothed = (1 - SMOOTHING) * given + (SMOOTHING * item.levels.length) / OUTCOMES[item.limb.kind];
  return {
    item,
    first,
    levelRight: item.levels.includes(first as Level),
    segmentRank: answer.arteries.indexOf(item.truth),
    loss: -Math.log(smoothed),
  };
}

export function scoresOf(judged: readonly Judged[]): Scores {
  const count = (holds: (one: Judged) => boolean): number => judged.filter(holds).length;
  return {
    levelFirst: count((one) => one.levelRight),
    levelFirstDecidable: count((one) => one.levelRight && one.item.decidable),
    segmentFirst: count((one) => one.segmentRank === 0),
    segmentTop3: count((one) => one.segmentRank >= 0 && one.segmentRank < 3),
    logLoss: judged.length ? judged.reduce((sum, one) => sum + one.loss, 0) / judged.length : 0,
  };
}

const blocked = (reading: NetworkReading, on: (key: string) => boolean): boolean =>
  reading.status === 'read' && Object.entries(reading.pieces).some(([key, p]) => on(key) && p.blocked >= 0.5);

/** Limbs with normal pulses that the network blames all the same. */
function movedIn(one: PublishedCase): number {
  const { examination, pressures } = recordOf(one);
  const reading = localise(examination, { pressures, detail: 'posterior' });
  return normalLimbsOf(examination).filter((limb) => {
    const own = reading.status === 'read' ? reading.limbs[limbKey(limb)] : undefined;
    return (
      own?.first !== undefined ||
      blocked(
        reading,
        (key) => key.startsWith(limb.side) && own!.answers.some((a) => a.pieces.includes(key as never)),
      )
    );
  }).length;
}

/** Every figure of a set of cases. */
export function figuresOf(cases: readonly PublishedCase[], tables?: Tables): Figures {
  const items = cases.flatMap(itemsOf);
  const normals = cases.map(recordOf).filter(({ examination }) => isAllNormal(examination));
  return {
    items: items.length,
    decidable: { items: items.filter((item) => item.decidable).length },
    network: scoresOf(items.map((item) => judge(item, networkAnswer(item, tables)))),
    rule: scoresOf(items.map((item) => judge(item, ruleAnswer(item)))),
    sideMoved: cases.reduce((sum, one) => sum + movedIn(one), 0),
    normalsBlocked: normals.filter(({ examination, pressures }) =>
      blocked(localise(examination, { pressures, detail: 'posterior' }), () => true),
    ).length,
  };
}
