import { Bench } from 'tinybench';
import {
  emptyExamination,
  type Examination,
  type Grade,
  setBruit,
  setPulse,
} from '../../src/examination/index.js';
import { ANSWER_KEYS, answerProbabilities } from '../../src/localisation/network/answers.js';
import { findingsOf } from '../../src/localisation/network/evidence.js';
import { CAUSES, localise, TABLES } from '../../src/localisation/network/index.js';
import { marginals } from '../../src/localisation/network/marginals.js';
import { modelOf } from '../../src/localisation/network/model.js';
import { Propagation } from '../../src/localisation/network/propagate.js';
import { inferAll, lightNetwork } from './general-network.js';

/*
 * How long the network takes on one core: `npm run bench [-- --json]`. The case is invented: both arms sound, the left leg
 * blocked between groin and knee, the right leg weak from the groin down, one bruit.
 */

const FELT: readonly (readonly [Parameters<typeof setPulse>[1]['site'], Grade, Grade])[] = [
  ['carotid', 'normal', 'normal'],
  ['brachial', 'normal', 'normal'],
  ['radial', 'normal', 'normal'],
  ['ulnar', 'normal', 'reduced'],
  ['femoral', 'reduced', 'normal'],
  ['popliteal', 'reduced', 'absent'],
  ['posterior-tibial', 'reduced', 'absent'],
  ['dorsalis-pedis', 'absent', 'absent'],
];

function invented(): Examination {
  let examination: Examination = { ...emptyExamination(), onset: 'chronic', context: { ageBand: '60-79' } };
  for (const [site, right, left] of FELT) {
    examination = setPulse(examination, { site, side: 'right' }, { grade: right });
    examination = setPulse(examination, { site, side: 'left' }, { grade: left });
  }
  return setBruit(examination, { site: 'femoral', side: 'right' }, { bruit: 'systolic' });
}

const DIFFUSE = CAUSES.indexOf('diffuse');
const examination = invented();
const model = modelOf(examination, TABLES);
const factors = findingsOf(examination, TABLES).flatMap((finding) => finding.factors);

function posterior(): number {
  const net = new Propagation(model, factors);
  for (const key of ANSWER_KEYS) answerProbabilities(net, key);
  return marginals(net).blocked[0]!;
}

const bench = new Bench({ time: 1500, warmupTime: 500 });
bench.add('whole reading', () => {
  localise(examination);
});
bench.add('posterior', () => {
  posterior();
});
await bench.run();
const median = (name: string): number => {
  const result = bench.getTask(name)?.result;
  if (!result || !('latency' in result)) throw new Error(`no measurement of "${name}"`);
  return result.latency.p50;
};

const referenceTimes = [0, 1, 2].map(() => {
  // A new network each time: the library keeps what it has reckoned.
  const { network, given } = lightNetwork(model, DIFFUSE, factors);
  const start = performance.now();
  inferAll(network, given);
  return performance.now() - start;
});
const reference = referenceTimes.sort((a, b) => a - b)[1]!;

const figures = {
  readingMs: median('whole reading'),
  posteriorMs: median('posterior'),
  referenceMs: reference,
  referenceRatio: reference / median('posterior'),
};

if (process.argv.includes('--json')) {
  console.log(JSON.stringify(figures));
} else {
  console.log(
    `whole reading of four limbs, with evidence, firmness and next acts: ${figures.readingMs.toFixed(3)} ms`,
  );
  console.log(`posterior alone, 11 causes: ${figures.posteriorMs.toFixed(4)} ms`);
  console.log(
    `bayesjs (junction tree) on the same tree, a lighter task (one cause, no sound): ${figures.referenceMs.toFixed(0)} ms`,
  );
  console.log(`that is ${figures.referenceRatio.toFixed(0)} times the posterior (medians)`);
}
