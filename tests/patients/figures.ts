import { type Level, levelOf, limbKey, pieceFromKey, vesselKey } from '../../src/anatomy/index.js';
import type { Examination } from '../../src/examination/index.js';
import { examineSimulation, type ExaminedPart, randomPatient, simulate } from '../../src/flow/index.js';
import { localise } from '../../src/localisation/network/index.js';
import { readByRule } from '../../src/localisation/rule.js';
import { itemsOf, type LimbItem } from './items.js';
import { blockAbove } from '../tools/block-above.js';

/** One tenth of the probabilities told: how many answers, their mean probability and how many were right. */
export interface Bin {
  readonly from: number;
  readonly items: number;
  readonly told: number;
  readonly right: number;
}

interface LevelFigures {
  items: number;
  network: number;
  rule: number;
}

export interface Claims {
  items: number;
  right: number;
}

export interface PatientFigures {
  readonly count: number;
  readonly seed: number;
  /** Limbs with arterial disease and at least one pulse that is not normal. */
  readonly items: number;
  /** Shares of the items. */
  readonly levelFirst: number;
  readonly top3: number;
  /** Expected calibration error of the first answer's level, over all limbs with a weak pulse. */
  readonly ece: number;
  readonly bins: readonly Bin[];
  readonly byLevel: Readonly<Record<string, { items: number; network: number; rule: number }>>;
  /**
   * Of all limbs with a weak pulse, those without disease among them: how often each voice names a level, and the share of that
   * which is right. A voice that always blames the foot's arteries is right on every limb diseased there, and wrong on most.
   */
  readonly claimed: Readonly<Record<string, { readonly network: Claims; readonly rule: Claims }>>;
  /** Limbs without arterial disease with a weak pulse, and the share of them on which a lesion was put. */
  readonly negatives: { readonly items: number; readonly blamed: number; readonly blamedByRule: number };
  /** Limbs without arterial disease whose every pulse was reported normal. */
  readonly soundLimbs: { readonly items: number; readonly blamed: number };
  /** Of the limbs whose answer was called firm: share with the right level. Read on the first patients only. */
  readonly firm: { readonly items: number; readonly right: number; readonly patients: number };
  readonly rule: { readonly levelFirst: number };
  /** Patients whose flow or pulse did not settle. */
  readonly unsettled: number;
  readonly msPerPatient: { readonly physics: number; readonly localisation: number };
}

interface Answer {
  /** `undefined` where nothing is shown. */
  readonly level: Level | undefined;
  readonly probability: number;
  readonly arteries: readonly string[];
  readonly firm?: boolean;
}

function networkAnswers(examination: Examination, items: readonly LimbItem[], detailed: boolean): Answer[] {
  const reading = localise(examination, detailed ? {} : { detail: 'posterior' });
  return items.map(({ limb }) => {
    if (reading.status !== 'read') return { level: undefined, probability: 1, arteries: [] };
    const { levels, nothing, answers } = reading.limbs[limbKey(limb)];
    const best = [...levels].sort((a, b) => b.probability - a.probability)[0];
    const arteries = new Map<string, number>();
    for (const { pieces, probability } of answers) {
      const key = vesselKey(pieceFromKey(pieces[0]!)!);
      arteries.set(key, (arteries.get(key) ?? 0) + probability);
    }
    const named = [...arteries].sort((a, b) => b[1] - a[1]).map(([key]) => key);
    const grade = reading.detail?.[limbKey(limb)]?.firm.grade;
    return {
      ...(best && best.probability > nothing
        ? { level: best.level, probability: best.probability }
        : { level: undefined, probability: nothing }),
      arteries: named,
      ...(grade ? { firm: grade === 'firm' } : {}),
    };
  });
}

function ruleLevels(examination: Examination, items: readonly LimbItem[]): (Level | undefined)[] {
  const reading = readByRule(examination);
  return items.map(({ limb }) => {
    const { lesions } = reading[limbKey(limb)];
    const lesion = lesions.find(({ kind }) => kind === 'block') ?? lesions[0];
    const site = lesion?.below[0]?.site;
    return site && levelOf(blockAbove(site), limb.kind);
  });
}

const share = (part: number, whole: number): number => (whole ? Math.round((1e4 * part) / whole) / 1e4 : 0);

export interface RunOptions {
  readonly count: number;
  readonly seed: number;
  readonly parts?: readonly ExaminedPart[];
  /** A perfect examiner instead of the published one. */
  readonly perfect?: boolean;
  /** How many patients are read in full, for the firmness of the answer. */
  readonly detailed?: number;
  readonly clock: () => number;
}

/** What a first visit tells: pulses, bruits, delays and what the patient says; no Doppler, no cuff. */
const FIRST_VISIT: readonly ExaminedPart[] = ['pulses', 'bruits', 'delays', 'history'];

/** Generates patients, examines them and lets both voices localise. */
export function figuresOf(options: RunOptions): PatientFigures {
  const {
    count,
    seed,
    parts = FIRST_VISIT,
    perfect = false,
    detailed = Math.min(count, 400),
    clock,
  } = options;
  const byLevel = new Map<string, LevelFigures>();
  const bins = Array.from({ length: 10 }, (_, i) => ({ from: i / 10, items: 0, told: 0, right: 0 }));
  const claimed = new Map<string, { network: Claims; rule: Claims }>();
  const claim = (voice: 'network' | 'rule', level: Level | undefined, truths: readonly Level[]): void => {
    if (level === undefined) return;
    const own = claimed.get(level) ?? { network: { items: 0, right: 0 }, rule: { items: 0, right: 0 } };
    own[voice].items++;
    if (truths.includes(level)) own[voice].right++;
    claimed.set(level, own);
  };
  const sums = {
    negativesByRule: 0,
    items: 0,
    level: 0,
    rule: 0,
    top3: 0,
    negatives: 0,
    blamed: 0,
    sound: 0,
    soundBlamed: 0,
  };
  const firm = { items: 0, right: 0 };
  let unsettled = 0;
  let physics = 0;
  let localisation = 0;
  for (let i = 0; i < count; i++) {
    const start = clock();
    const generated = randomPatient(seed, i);
    const simulation = simulate(generated.patient);
    if (!simulation.beating.converged) unsettled++;
    const examination = examineSimulation(simulation, {
      parts,
      ...(perfect ? {} : { examiner: { seed: generated.patient.seed } }),
    });
    const between = clock();
    const items = itemsOf(generated, examination);
    const answers = networkAnswers(examination, items, i < detailed);
    const rules = ruleLevels(examination, items);
    localisation += clock() - between;
    physics += between - start;
    items.forEach((item, at) => {
      const { level, probability, arteries, firm: isFirm } = answers[at]!;
      const right = item.truth ? item.levels.includes(level as Level) : level === undefined;
      if (item.weak) {
        const bin = bins[Math.min(9, Math.floor(10 * probability))]!;
        bin.items++;
        bin.told += probability;
        if (right) bin.right++;
        if (isFirm) {
          firm.items++;
          if (right) firm.right++;
        }
        claim('network', level, item.levels);
        claim('rule', rules[at], item.levels);
      }
      if (!item.truth) {
        if (item.weak) sums.negatives++;
        else sums.sound++;
        if (item.weak && rules[at] !== undefined) sums.negativesByRule++;
        if (level !== undefined) {
          if (item.weak) sums.blamed++;
          else sums.soundBlamed++;
        }
        return;
      }
      if (!item.weak) return;
      const ruleRight = item.levels.includes(rules[at] as Level);
      sums.items++;
      if (right) sums.level++;
      if (ruleRight) sums.rule++;
      if (arteries.slice(0, 3).includes(item.truth)) sums.top3++;
      const key = item.levels.join(' or ');
      const own = byLevel.get(key) ?? { items: 0, network: 0, rule: 0 };
      own.items++;
      if (right) own.network++;
      if (ruleRight) own.rule++;
      byLevel.set(key, own);
    });
  }
  const told = bins.reduce((sum, bin) => sum + bin.items, 0);
  const gap = bins.reduce((sum, bin) => sum + Math.abs(bin.told - bin.right), 0);
  return {
    count,
    seed,
    items: sums.items,
    levelFirst: share(sums.level, sums.items),
    top3: share(sums.top3, sums.items),
    ece: share(gap, told),
    bins: bins.map(({ from, items, told: sum, right }) => ({
      from,
      items,
      told: share(sum, items),
      right: share(right, items),
    })),
    byLevel: Object.fromEntries(
      [...byLevel].map(([key, { items, network, rule }]) => [
        key,
        { items, network: share(network, items), rule: share(rule, items) },
      ]),
    ),
    claimed: Object.fromEntries(
      [...claimed].map(([key, { network, rule }]) => [
        key,
        {
          network: { items: network.items, right: share(network.right, network.items) },
          rule: { items: rule.items, right: share(rule.right, rule.items) },
        },
      ]),
    ),
    negatives: {
      items: sums.negatives,
      blamed: share(sums.blamed, sums.negatives),
      blamedByRule: share(sums.negativesByRule, sums.negatives),
    },
    soundLimbs: { items: sums.sound, blamed: share(sums.soundBlamed, sums.sound) },
    firm: { items: firm.items, right: share(firm.right, firm.items), patients: Math.min(detailed, count) },
    rule: { levelFirst: share(sums.rule, sums.items) },
    unsettled,
    msPerPatient: {
      physics: Math.round((100 * physics) / count) / 100,
      localisation: Math.round((100 * localisation) / count) / 100,
    },
  };
}
