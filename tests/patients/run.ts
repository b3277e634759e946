import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { EXAMINED_PARTS, type ExaminedPart } from '../../src/flow/index.js';
import { networkJson } from '../../src/flow/network-json.js';
import { patientSchema } from '../../src/flow/schema.js';
import { figuresOf, type PatientFigures } from './figures.js';

/*
 * The localisation before patients whose findings were computed from flow:
 *   npm run patients -- --count 1000 --seed 1 [--parts pulses,bruits] [--perfect] [--json]
 * and one patient's solved network for another solver:
 *   npm run patients -- --network FILE
 */

const USAGE = `expected: npm run patients -- [--count N] [--seed S] [--parts ${EXAMINED_PARTS.join(',')}] [--perfect] [--json], or --network FILE`;

function argumentsOf(args: readonly string[]): Map<string, string> {
  const out = new Map<string, string>();
  for (let i = 0; i < args.length; i++) {
    const name = args[i]!;
    if (name === '--json' || name === '--perfect') out.set(name, '');
    else if (['--count', '--seed', '--parts', '--network'].includes(name) && args[i + 1] !== undefined)
      out.set(name, args[++i]!);
    else throw new Error(`found ${name}; ${USAGE}`);
  }
  return out;
}

function whole(given: string | undefined, otherwise: number, least: number): number {
  const value = given === undefined ? otherwise : Number(given);
  if (!Number.isInteger(value) || value < least) throw new Error(`found ${given}; ${USAGE}`);
  return value;
}

function partsOf(given: string | undefined): ExaminedPart[] | undefined {
  if (given === undefined) return undefined;
  return given.split(',').map((part) => {
    if (!(EXAMINED_PARTS as readonly string[]).includes(part))
      throw new Error(`found part ${part}; ${USAGE}`);
    return part as ExaminedPart;
  });
}

const percent = (value: number): string => `${(100 * value).toFixed(1)}%`;

function table(figures: PatientFigures): string {
  const { negatives, soundLimbs, firm } = figures;
  const rows = Object.entries(figures.byLevel).map(
    ([level, { items, network, rule }]) =>
      `  ${level.padEnd(30)} ${String(items).padStart(6)} ${percent(network).padStart(8)} ${percent(rule).padStart(8)}`,
  );
  const bins = figures.bins.map(
    ({ from, items, told, right }) =>
      `  from ${from.toFixed(1)} ${String(items).padStart(6)}   told ${percent(told).padStart(6)}   right ${percent(right).padStart(6)}`,
  );
  return [
    `${figures.count} patients of seed ${figures.seed}, ${figures.items} diseased limbs with a weak pulse`,
    `level right at first place: network ${percent(figures.levelFirst)}, rule ${percent(figures.rule.levelFirst)}; artery among the first three: ${percent(figures.top3)}`,
    `  ${''.padEnd(30)}  limbs  network     rule`,
    ...rows,
    'of all limbs with a weak pulse, levels named and right: network, rule',
    ...Object.entries(figures.claimed).map(
      ([level, { network, rule }]) =>
        `  ${level.padEnd(30)} ${network.items} ${percent(network.right)}, ${rule.items} ${percent(rule.right)}`,
    ),
    `limbs without disease but with a weak pulse: ${negatives.items}, blamed ${percent(negatives.blamed)} (by the rule ${percent(negatives.blamedByRule)}); with normal pulses: ${soundLimbs.items}, blamed ${percent(soundLimbs.blamed)}`,
    `called firm: ${firm.items} limbs of the first ${firm.patients} patients, right ${percent(firm.right)}`,
    `expected calibration error ${figures.ece.toFixed(3)}`,
    ...bins,
    `not settled: ${figures.unsettled}; ms a patient: physics ${figures.msPerPatient.physics}, localisation ${figures.msPerPatient.localisation}`,
  ].join('\n');
}

function main(args: readonly string[]): void {
  const given = argumentsOf(args);
  const file = given.get('--network');
  if (file !== undefined) {
    // npm runs this in the package's folder; a path is meant from where it was typed.
    const text = readFileSync(resolve(process.env.INIT_CWD ?? '.', file), 'utf8');
    const patient = patientSchema.parse(JSON.parse(text));
    console.log(JSON.stringify(networkJson(patient as Parameters<typeof networkJson>[0])));
    return;
  }
  const parts = partsOf(given.get('--parts'));
  const figures = figuresOf({
    count: whole(given.get('--count'), 1000, 1),
    seed: whole(given.get('--seed'), 1, 0),
    perfect: given.has('--perfect'),
    clock: () => performance.now(),
    ...(parts ? { parts } : {}),
  });
  console.log(given.has('--json') ? JSON.stringify(figures) : table(figures));
}

try {
  main(process.argv.slice(2));
} catch (error) {
  console.error((error as Error).message);
  process.exitCode = 1;
}
