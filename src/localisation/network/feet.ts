import { pieceAbove, SIDES } from '../../anatomy/index.js';
import { type Examination, pulseAt } from '../../examination/index.js';
import { READINGS } from './model.js';
import type { Division, Model } from './columns.js';
import { indexOf } from './tree.js';
import { type ByReport, HARD_SITES, type HardSite, type Tables } from './types.js';

/*
 * Misses of a foot pulse hang together on both sides: who has one dorsalis pedis that is hard to feel mostly has two
 * (Armstrong 2013: both missed in 10.4%, where independent misses would give 2.1%). A state common to the patient for each of
 * the two arteries holds that. It is summed over where both sides were felt and one was weak, as it can matter only there;
 * elsewhere the tables of palpation already hold its mean.
 */

/** One state of both arteries: hard to feel, easy, or left as the mean of the two. */
export type Feet = Readonly<Partial<Record<HardSite, 'hard' | 'easy'>>> & { readonly share: number };

/** The states that have to be told apart for a record; none where they do not matter. */
export function feetOf(examination: Examination, { hardToFeel }: Tables): readonly Feet[] {
  const shared = HARD_SITES.filter((site) => {
    const grades = SIDES.map((side) => pulseAt(examination, { site, side })?.grade);
    return (
      grades.every((grade) => grade) && grades.some((grade) => grade === 'absent' || grade === 'reduced')
    );
  });
  const { both, sites } = hardToFeel;
  const [first, second] = shared;
  if (!first) return [];
  const p = sites[first].share;
  if (!second) {
    return [
      { [first]: 'easy', share: 1 - p },
      { [first]: 'hard', share: p },
    ];
  }
  const q = sites[second].share;
  return [
    { [first]: 'easy', [second]: 'easy', share: 1 - p - q + both },
    { [first]: 'hard', [second]: 'easy', share: p - both },
    { [first]: 'easy', [second]: 'hard', share: q - both },
    { [first]: 'hard', [second]: 'hard', share: both },
  ];
}

/** Which arteries a set of states tells apart. */
export function feetName([state]: readonly Feet[]): string {
  return state ? HARD_SITES.filter((site) => state[site]).join() : '';
}

/** Rows of a palpation table in one state: the table itself is the mean of both. */
export function rowIn(
  site: HardSite,
  row: 'normal' | 'reduced',
  state: 'hard' | 'easy' | undefined,
  tables: Tables,
): ByReport {
  const mean = tables.palpation[site][row];
  if (!state) return mean;
  const { share, [row]: hard } = tables.hardToFeel.sites[site];
  if (state === 'hard') return hard;
  const easy = mean.map((value, k) => Math.max(1e-4, (value - share * hard[k]!) / (1 - share)));
  const sum = easy[0]! + easy[1]! + easy[2]!;
  return [easy[0]! / sum, easy[1]! / sum, easy[2]! / sum];
}

/** The pieces of the tree at which the states of the feet differ, with all that feed them. */
function divided({ parent }: Model, feet: readonly Feet[]): Uint8Array {
  const wide = new Uint8Array(parent.length);
  for (const site of HARD_SITES) {
    if (!feet.some((state) => state[site])) continue;
    for (const side of SIDES) {
      for (let i = indexOf(pieceAbove({ site, side }).key); i >= 0 && !wide[i]; i = parent[i]!) wide[i] = 1;
    }
  }
  return wide;
}

/**
 * The columns of a model that hold some belief divided by the states of the feet, and those that hold none left out.
 * @param fate of each column
 */
export function withFeet(
  model: Model,
  feet: readonly Feet[],
  fate: (column: number) => 'divide' | 'keep' | 'drop',
): Division {
  const weight = Array.from(model.weight);
  const cause = [...model.cause];
  const reading = [...model.reading];
  const base = cause.map((_, c) => c);
  const live: number[] = [];
  const first = READINGS.gone + 1;
  for (let c = 0; c < model.weight.length; c++) {
    const what = fate(c);
    if (what === 'drop') continue;
    live.push(c);
    if (model.reading[c] !== READINGS.usual || what === 'keep') continue;
    // What does not depend on the feet reads each of these as usual, so the column may stand for one of them.
    for (let k = 0; k < feet.length; k++) {
      const own = k === 0 ? c : base.length;
      weight[own] = model.weight[c]! * feet[k]!.share;
      reading[own] = first + k;
      if (k === 0) continue;
      cause.push(cause[c]!);
      base.push(c);
      live.push(own);
    }
  }
  return { weight: Float64Array.from(weight), cause, reading, base, wide: divided(model, feet), live };
}
