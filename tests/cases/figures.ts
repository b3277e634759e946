import {
  type Level,
  levelOf,
  type Limb,
  limbKey,
  pieceFromKey,
  vesselKey,
  type VesselKey,
} from '../../src/anatomy/index.js';
import { localise, type NetworkReading, type Tables } from '../../src/localisation/network/index.js';
import { readByRule } from '../../src/localisation/rule.js';
import { recordOf } from './convert.js';
import type { PublishedCase } from './form.js';
import { blockAbove } from '../tools/block-above.js';
import { SCORED_LIMBS } from '../tools/limb-ways.js';
import { gradesOf, isAllNormal, type Item, itemsOf, normalLimbsOf, truthOf } from './items.js';

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
  /** Limbs of cases without arterial disease, and those on which a lesion above one half was put. */
  readonly negatives: { readonly items: number; readonly blamed: number };
  /** By the true level (the first that counts as right): items, and those whose level came first. */
  readonly byLevel: Readonly<Partial<Record<Level, { readonly items: number; readonly right: number }>>>;
  /**
   * What was said first, a level or that nothing is shown, beside how often it was right, in bins of equal width: of the
   * items, of the negatives, and of limbs with normal pulses and no lesion.
   */
  readonly calibration: {
    /** Expected calibration error: mean distance of said from right, weighted by the items of each bin. */
    readonly ece: number;
    readonly bins: readonly { readonly items: number; readonly said: number; readonly right: number }[];
  };
  /** Items by how firm the first answer was called, and how many of them were right. */
  readonly firm: Readonly<
    Record<'firm' | 'fairly' | 'not', { readonly items: number; readonly right: number }>
  >;
}

/** Bins of the calibration; so few items allow no more. */
const BINS = 5;
/** A lesion above this is a claim. */
const CLAIM = 0.5;

/** Share of the probability that is spread evenly over all levels before the logarithm, for network and rule alike. */
const SMOOTHING = 0.05;
const OUTCOMES = { leg: 5, arm: 4, head: 3 } as const;

export function networkAnswer(
  { examination, pressures, limb }: Pick<Item, 'examination' | 'pressures' | 'limb'>,
  tables?: Tables,
): Answered {
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
function ruleAnswer({ examination, limb }: Item): Answered {
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
  /** Probability of the first level, or of none. */
  readonly said: number;
  readonly levelRight: boolean;
  readonly segmentRank: number;
  readonly loss: number;
  readonly first: Level | 'nothing';
}

export function judge(item: Item, answer: Answered): Judged {
  const [best] = [...answer.levels].sort((a, b) => b[1] - a[1]);
  const first = best && best[1] > answer.nothing ? best[0] : 'nothing';
  const said = first === 'nothing' ? answer.nothing : best![1];
  const given = item.levels.reduce((sum, level) => sum + (answer.levels.get(level) ?? 0), 0);
  const smoothed = (1 - SMOOTHING) * given + (SMOOTHING * item.levels.length) / OUTCOMES[item.limb.kind];
  return {
    item,
    said,
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

/** Whether the network claims a lesion on a limb: any answer above one half. */
function claims(reading: NetworkReading, limb: Limb): boolean {
  if (reading.status !== 'read') return false;
  const { answers, occluded } = reading.limbs[limbKey(limb)];
  return Math.max(answers[0]!.probability, occluded.entries[0]!.probability) > CLAIM;
}

/** Limbs with normal pulses, and no lesion of their own, that the network blames all the same. */
function movedIn(one: PublishedCase): number {
  const { examination, pressures } = recordOf(one);
  const reading = localise(examination, { pressures, detail: 'posterior' });
  return normalLimbsOf(examination).filter((limb) => {
    if (truthOf(one, limb)) return false;
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

function negativesOf(cases: readonly PublishedCase[]): Figures['negatives'] {
  const judged = cases
    .filter((one) => one.negative)
    .flatMap((one) => {
      const { examination, pressures } = recordOf(one);
      const reading = localise(examination, { pressures, detail: 'posterior' });
      return SCORED_LIMBS.filter((limb) => gradesOf(examination, limb).size > 0).map((limb) =>
        claims(reading, limb),
      );
    });
  return { items: judged.length, blamed: judged.filter(Boolean).length };
}

/** Limbs on which there is nothing to find, and what was said of them. */
function soundOf(cases: readonly PublishedCase[], tables?: Tables): Pick<Judged, 'said' | 'levelRight'>[] {
  return cases
    .filter((one) => one.strength === 'good' || one.strength === 'fair')
    .flatMap((one) => {
      const { examination, pressures } = recordOf(one);
      return SCORED_LIMBS.filter((limb) => gradesOf(examination, limb).size > 0 && !truthOf(one, limb)).map(
        (limb) => {
          const { levels, nothing } = networkAnswer({ examination, pressures, limb }, tables);
          const best = Math.max(0, ...levels.values());
          return { said: Math.max(best, nothing), levelRight: nothing > best };
        },
      );
    });
}

function byLevelOf(judged: readonly Judged[]): Figures['byLevel'] {
  const out: Partial<Record<Level, { items: number; right: number }>> = {};
  for (const { item, levelRight } of judged) {
    const own = (out[item.levels[0]!] ??= { items: 0, right: 0 });
    own.items++;
    if (levelRight) own.right++;
  }
  return out;
}

function calibrationOf(judged: readonly Pick<Judged, 'said' | 'levelRight'>[]): Figures['calibration'] {
  const bins = Array.from({ length: BINS }, (_, b) => {
    const own = judged.filter(({ said }) => Math.min(BINS - 1, Math.floor(said * BINS)) === b);
    const mean = (value: (one: (typeof own)[number]) => number): number =>
      own.length ? own.reduce((sum, one) => sum + value(one), 0) / own.length : 0;
    return {
      items: own.length,
      said: mean(({ said }) => said),
      right: mean((one) => Number(one.levelRight)),
    };
  });
  const ece = bins.reduce(
    (sum, { items, said, right }) => sum + (items * Math.abs(said - right)) / Math.max(1, judged.length),
    0,
  );
  return { ece, bins };
}

function firmOf(items: readonly Item[]): Figures['firm'] {
  const out = { firm: { items: 0, right: 0 }, fairly: { items: 0, right: 0 }, not: { items: 0, right: 0 } };
  const name = { firm: 'firm', 'fairly-firm': 'fairly', 'not-firm': 'not' } as const;
  for (const item of items) {
    const { examination, pressures, limb } = item;
    const reading = localise(examination, { pressures });
    if (reading.status !== 'read') continue;
    const detail = reading.detail[limbKey(limb)];
    if (!detail) continue;
    const own = out[name[detail.firm.grade]];
    own.items++;
    const { levels, nothing } = reading.limbs[limbKey(limb)];
    if (levels[0]!.probability > nothing && item.levels.includes(levels[0]!.level)) own.right++;
  }
  return out;
}

/** Every figure of a set of cases. */
export function figuresOf(cases: readonly PublishedCase[], tables?: Tables): Figures {
  const items = cases.filter((one) => !one.negative).flatMap(itemsOf);
  const normals = cases.map(recordOf).filter(({ examination }) => isAllNormal(examination));
  const judged = items.map((item) => judge(item, networkAnswer(item, tables)));
  return {
    items: items.length,
    decidable: { items: items.filter((item) => item.decidable).length },
    network: scoresOf(judged),
    rule: scoresOf(items.map((item) => judge(item, ruleAnswer(item)))),
    sideMoved: cases.reduce((sum, one) => sum + movedIn(one), 0),
    normalsBlocked: normals.filter(({ examination, pressures }) =>
      blocked(localise(examination, { pressures, detail: 'posterior' }), () => true),
    ).length,
    negatives: negativesOf(cases),
    byLevel: byLevelOf(judged),
    calibration: calibrationOf([...judged, ...soundOf(cases, tables)]),
    firm: firmOf(items),
  };
}
