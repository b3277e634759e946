import { Bench } from 'tinybench';
import { LuDecomposition, Matrix } from 'ml-matrix';
import { copyOf } from '../../src/flow/mean/circulation.js';
import { solveSteady } from '../../src/flow/mean/steady.js';
import { patientOf } from '../../src/flow/patient.js';
import { circulationOf } from '../../src/flow/setup.js';
import { examineSimulation, randomPatient, simulate } from '../../src/flow/index.js';
import { realSystem, solveReal } from '../../src/flow/tree/elimination.js';
import { humanNetwork } from '../../src/flow/tree/network.js';

/*
 * How long a simulated patient takes on one core: `npm run bench:flow [-- --json]`. The elimination stands beside the dense LU of a
 * general library on the same system, in one run; the rest is told in ms.
 */

const network = humanNetwork();
const { elimination } = network;
const sound = circulationOf(network, patientOf());
const rest = solveSteady(sound);
const n = elimination.size;

// The system of the last Newton step, near enough: conductances of tubes and beds at rest.
const system = realSystem(elimination);
const dense = Matrix.zeros(n - 1, n - 1);
const fill = (i: number, j: number, g: number): void => {
  if (i < n - 1 && j < n - 1) dense.set(i, j, dense.get(i, j) + g);
};
network.sections.forEach((_, e) => {
  if (sound.state[e]) return;
  const g = 1 / sound.linear[e]!;
  const [f, t] = [network.from[e]!, network.to[e]!];
  system.diagonal[f]! += g;
  system.diagonal[t]! += g;
  system.off[network.slot[e]!]! -= g;
  fill(f, f, g);
  fill(t, t, g);
  fill(f, t, -g);
  fill(t, f, -g);
});
network.beds.forEach((_, i) => {
  const node = network.bedNode[i]!;
  system.diagonal[node]! += sound.greatest[i]!;
  fill(node, node, sound.greatest[i]!);
});
for (let i = 0; i < n; i++) {
  system.diagonal[i]! += 1e-9;
  fill(i, i, 1e-9);
}
const kept = { diagonal: system.diagonal.slice(), off: system.off.slice() };
const right = Array.from({ length: n - 1 }, (_, i) => Math.sin(i));

function ours(): number {
  system.diagonal.set(kept.diagonal);
  system.off.set(kept.off);
  system.right.set(right);
  solveReal(elimination, system);
  return system.right[0]!;
}
const column = Matrix.columnVector(right);
const theirs = (): number => new LuDecomposition(dense).solve(column).get(0, 0);
if (Math.abs(ours() - theirs()) > 1e-6 * Math.max(1, Math.abs(theirs()))) {
  throw new Error(`the two solutions differ: ${ours()} and ${theirs()}`);
}

const patients = Array.from({ length: 300 }, (_, i) => randomPatient(5, i).patient);
let next = 0;
const patient = () => patients[next++ % patients.length]!;
const circulations = patients.map((one) => circulationOf(network, one));

const bench = new Bench({ time: 800, warmupTime: 300 });
bench
  .add('elimination', ours)
  .add('dense LU', theirs)
  .add('mean flow', () => {
    const c = circulations[next++ % circulations.length]!;
    solveSteady(c, rest.pressure);
  })
  .add('copy', () => copyOf(sound))
  .add('simulate', () => simulate(patient()))
  .add('everything', () =>
    examineSimulation(simulate(patient()), {
      parts: ['pulses', 'doppler', 'bruits', 'delays', 'pressures', 'bedside', 'history'],
    }),
  );
await bench.run();

const median = new Map(
  bench.tasks.map(({ name, result }) => [name, 'latency' in result ? result.latency.p50 : NaN]),
);
const p75 = new Map(
  bench.tasks.map(({ name, result }) => [name, 'latency' in result ? result.latency.p75 : NaN]),
);
const ratio = median.get('dense LU')! / median.get('elimination')!;
if (process.argv.includes('--json')) {
  console.log(
    JSON.stringify({ ratio, medianMs: Object.fromEntries(median), p75Ms: Object.fromEntries(p75) }),
  );
} else {
  for (const [name, ms] of median)
    console.log(`${name.padEnd(14)} ${ms.toFixed(4)} ms (upper quartile ${p75.get(name)!.toFixed(4)})`);
  console.log(`the dense LU of a general library takes ${ratio.toFixed(0)} times the elimination`);
}
