import { TABLES, type Tables } from '../../src/localisation/network/index.js';
import { type Judged, judge, networkAnswer, type Scores, scoresOf } from './figures.js';
import { readCases } from './form.js';
import { itemsOf } from './items.js';

/*
 * How far the figures on the published cases would hold on others: `node --import tsx tests/cases/crossvalidate.ts`.
 *
 * The few figures of the model that were set with an eye on these cases are chosen anew, each from three values, on all
 * cases but those held out, by the log loss; the held-out cases are then scored with that choice. Cases, not limbs, are
 * held out, since limbs of one patient are not independent.
 */

interface Knob {
  readonly name: string;
  readonly values: readonly number[];
  readonly turn: (tables: Tables, value: number) => Tables;
}

type CauseId = keyof Tables['causes'];

/** Multiplies the weights of causes; the network brings their sum back to one. */
function weigh(tables: Tables, by: number, ...names: CauseId[]): Tables {
  const causes = { ...tables.causes };
  for (const name of names) {
    const { acute, chronic } = causes[name].weight;
    causes[name] = { ...causes[name], weight: { acute: acute * by, chronic: chronic * by } };
  }
  return { ...tables, causes };
}

const KNOBS: readonly Knob[] = [
  { name: 'low flow', values: [1 / 3, 1, 3], turn: (t, v) => weigh(t, v, 'low-flow') },
  { name: 'nothing wrong', values: [0.5, 1, 2], turn: (t, v) => weigh(t, v, 'none') },
  {
    name: 'aorta above the renals',
    values: [1 / 3, 1, 3],
    turn: (t, v) => weigh(t, v, 'coarctation', 'dissection', 'vasculitis'),
  },
  {
    name: 'reduced through an acute block',
    values: [0.15, 0.3, 0.45],
    turn: (t, v) => {
      const blocked = [[0.03, v, 0.97 - v] as const, t.passage.acute.blocked[1]] as const;
      return { ...t, passage: { ...t.passage, acute: { ...t.passage.acute, blocked } } };
    },
  },
  {
    name: 'emboli among acute causes',
    values: [0.5, 1, 2],
    turn: (t, v) => weigh(t, v, 'embolic'),
  },
];

function settings(): Tables[] {
  return KNOBS.reduce<Tables[]>(
    (list, knob) => list.flatMap((tables) => knob.values.map((value) => knob.turn(tables, value))),
    [TABLES],
  );
}

function folds(ids: readonly string[], count: number): string[][] {
  return Array.from({ length: count }, (_, fold) => ids.filter((_, i) => i % count === fold));
}

const items = readCases(new URL('./published-cases.json', import.meta.url).pathname).flatMap(itemsOf);
const ids = [...new Set(items.map((item) => item.id))];
const all: Judged[][] = settings().map((tables) =>
  items.map((item) => judge(item, networkAnswer(item, tables))),
);

/** The held-out items, each judged by the setting that was best on the others. */
function heldOut(count: number): Scores {
  const judged = folds(ids, count).flatMap((out) => {
    const training = all.map(
      (setting) => scoresOf(setting.filter((one) => !out.includes(one.item.id))).logLoss,
    );
    const best = training.indexOf(Math.min(...training));
    return all[best]!.filter((one) => out.includes(one.item.id));
  });
  return scoresOf(judged);
}

function show(name: string, { levelFirst, levelFirstDecidable, logLoss }: Scores): void {
  const share = ((100 * levelFirst) / items.length).toFixed(0);
  console.log(
    `${name}: level first ${levelFirst} of ${items.length} (${share}%), decidable ${levelFirstDecidable}, log loss ${logLoss.toFixed(3)}`,
  );
}

show('as shipped', scoresOf(all[(all.length - 1) / 2]!));
const best = all.map((one) => scoresOf(one)).sort((a, b) => a.logLoss - b.logLoss);
show('best of all settings, chosen and scored on the same cases', best[0]!);
show('worst of all settings', best.at(-1)!);
for (const [name, count] of [
  ['one case out at a time', ids.length],
  ['ten folds', 10],
  ['five folds', 5],
] as const)
  show(`held out, ${name}`, heldOut(count));
const counts = all.map((one) => scoresOf(one).levelFirst).sort((a, b) => a - b);
console.log(
  `level first over all ${all.length} settings: ${counts[0]} to ${counts.at(-1)}, median ${counts[counts.length >> 1]}`,
);
