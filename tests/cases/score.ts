import { resolve } from 'node:path';
import { type Figures, figuresOf, type Scores } from './figures.js';
import { readCases } from './form.js';

/*
 * Scores a file of published cases: `npm run cases -- FILE … [--json]`. Without a file, the first set kept beside this program.
 * Several files are scored together.
 */

const KEPT = new URL('./published-cases.json', import.meta.url).pathname;

const ROWS: readonly [keyof Scores, string][] = [
  ['levelFirst', 'level right at first place'],
  ['levelFirstDecidable', 'the same, decidable items'],
  ['segmentFirst', 'true segment first'],
  ['segmentTop3', 'true segment among the first three'],
  ['logLoss', 'mean log loss of the level (nats)'],
];

function cell(figures: Figures, row: keyof Scores, value: number): string {
  if (row === 'logLoss') return value.toFixed(3);
  const of = row === 'levelFirstDecidable' ? figures.decidable.items : figures.items;
  return `${value} of ${of}${of ? ` (${((100 * value) / of).toFixed(0)}%)` : ''}`;
}

function table(figures: Figures): string {
  const lines = [['', 'network', 'bedside rule']];
  for (const [row, label] of ROWS) {
    lines.push([label, cell(figures, row, figures.network[row]), cell(figures, row, figures.rule[row])]);
  }
  const widths = [0, 1, 2].map((column) => Math.max(...lines.map((line) => line[column]!.length)));
  return [
    `${figures.items} items, ${figures.decidable.items} of them decidable from their pulses`,
    '',
    ...lines.map((line) =>
      line
        .map((text, column) => text.padEnd(widths[column]!))
        .join('  ')
        .trimEnd(),
    ),
    '',
    `block put on a side with normal pulses: ${figures.sideMoved}`,
    `block claimed where every pulse is normal: ${figures.normalsBlocked}`,
    `limbs without arterial disease on which a lesion was put: ${figures.negatives.blamed} of ${figures.negatives.items}`,
    '',
    'level right at first place, by true level:',
    ...Object.entries(figures.byLevel).map(([level, own]) => `  ${level}: ${own.right} of ${own.items}`),
    '',
    `calibration error in five bins: ${figures.calibration.ece.toFixed(3)}`,
    ...figures.calibration.bins
      .filter(({ items }) => items > 0)
      .map(
        ({ items, said, right }) => `  ${items} items: said ${said.toFixed(2)}, right ${right.toFixed(2)}`,
      ),
    '',
    ...Object.entries(figures.firm).map(
      ([grade, own]) => `called ${grade}: ${own.right} of ${own.items} right`,
    ),
  ].join('\n');
}

function main(args: readonly string[]): void {
  const unknown = args.find((arg) => arg.startsWith('--') && arg !== '--json');
  const files = args.filter((arg) => !arg.startsWith('--'));
  if (unknown) throw new Error(`found ${unknown}; expected: npm run cases -- FILE … [--json]`);
  // npm runs this in the package's folder; a path is meant from where it was typed.
  const from = process.env.INIT_CWD ?? '.';
  const chosen = files.length ? files.map((file) => resolve(from, file)) : [KEPT];
  const figures = figuresOf(chosen.flatMap(readCases));
  console.log(args.includes('--json') ? JSON.stringify(figures) : table(figures));
}

try {
  main(process.argv.slice(2));
} catch (error) {
  console.error((error as Error).message);
  process.exitCode = 1;
}
