import {
  emptyExamination,
  type Examination,
  type Grade,
  setBruit,
  setPulse,
} from '../../src/examination/index.js';
import { findingsOf } from '../../src/localisation/network/evidence.js';
import { CAUSES, type NetworkReading, TABLES } from '../../src/localisation/network/index.js';
import { modelOf } from '../../src/localisation/network/model.js';
import { cpuTimes } from './cpu-time.js';
import { COMPARED, moduleNow, moduleThen } from './earlier-state.js';
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

/** Asks for everything that a state of a long time ago worked out at once, so that like is compared with like. */
function lookAt(reading: unknown): void {
  const { status, limbs, pieces, story, detail, next } = reading as NetworkReading & { status: 'read' };
  if (status !== 'read') throw new Error('nothing was read');
  for (const limb of Object.values(limbs)) if (!(limb.answers.length > 0)) throw new Error('no answers');
  if (!(pieces['left superficial-femoral'].blocked > 0.3) || !(story.probability > 0))
    throw new Error('the block was not found');
  for (const limb of Object.values(detail)) if (!limb.evidence || !limb.firm) throw new Error('no detail');
  if (!Array.isArray(next)) throw new Error('no acts');
}

/**
 * The records that are read in turn, none of them twice within a round: what one edit after another makes of the invented
 * one, since the same record is read only once.
 */
const RECORDS: readonly Examination[] = (() => {
  const grades: readonly Grade[] = ['normal', 'reduced', 'absent'];
  return grades.flatMap((ulnar) =>
    grades.flatMap((tibial) =>
      (['40-59', '60-79', '80-over'] as const).map((ageBand) =>
        setPulse(
          setPulse(
            { ...examination, context: { ageBand } },
            { site: 'ulnar', side: 'left' },
            { grade: ulnar },
          ),
          { site: 'posterior-tibial', side: 'right' },
          { grade: tibial },
        ),
      ),
    ),
  );
})();

interface Public {
  readonly localise: (examination: Examination, options?: { detail?: 'posterior' | 'all' }) => unknown;
  readonly readByRule: (examination: Examination) => unknown;
  readonly pressureEvidenceOf: (examination: Examination) => unknown;
}

/** The public calls, each on the next record. */
function callsOf(
  name: string,
  { localise: read, readByRule: rule, pressureEvidenceOf: pressures }: Public,
): Record<string, () => void> {
  let turn = 0;
  const record = (): Examination => ({ ...RECORDS[turn++ % RECORDS.length]! });
  return {
    [`posterior${name}`]: () => lookAt(read(record(), { detail: 'posterior' })),
    [`whole${name}`]: () => {
      const one = record();
      rule(one);
      lookAt(read(one, { pressures: pressures(one) } as object));
    },
  };
}

const now = (await moduleNow('localisation/index.ts')) as unknown as Public;
const then = (await moduleThen('localisation/index.ts')) as unknown as Public | undefined;
const times = cpuTimes({
  ...callsOf('', now),
  occluded: () => {
    const reading = now.localise(examination, { detail: 'posterior' }) as NetworkReading;
    if (reading.status !== 'read') throw new Error('nothing was read');
    for (const { examined, occluded } of Object.values(reading.limbs))
      if (examined && !(occluded.entries.length > 0)) throw new Error('no entries');
  },
  ...(then && callsOf('Then', then)),
});
const ms = (name: string): number => times.find((one) => one.name === name)?.ms ?? NaN;

// The library keeps what it has reckoned, so it is asked once.
const { network, given } = lightNetwork(model, DIFFUSE, factors);
const start = process.cpuUsage();
inferAll(network, given);
const reference = process.cpuUsage(start).user / 1000;

const figures = {
  readingMs: ms('whole'),
  posteriorMs: ms('posterior'),
  occludedMs: ms('occluded'),
  ...(then && {
    comparedWith: COMPARED,
    readingRatio: ms('whole') / ms('wholeThen'),
    posteriorRatio: ms('posterior') / ms('posteriorThen'),
  }),
  referenceMs: reference,
  referenceRatio: reference / ms('posterior'),
};

if (process.argv.includes('--json')) {
  console.log(JSON.stringify(figures));
} else {
  const ratio = (name: string): string =>
    then
      ? `, ${(ms(name) / ms(`${name}Then`)).toFixed(2)} times the state of ${COMPARED}`
      : `; git has no commit ${COMPARED} here to compare with`;
  console.log('Processor time, median:');
  console.log(`whole reading by rule and network: ${ms('whole').toFixed(3)} ms${ratio('whole')}`);
  console.log(`posterior, answers, pieces and story: ${ms('posterior').toFixed(3)} ms${ratio('posterior')}`);
  console.log(`posterior, what is occluded on the examined limbs: ${ms('occluded').toFixed(3)} ms`);
  console.log(
    `bayesjs (junction tree) on the same tree, a lighter task (one cause, no sound): ${reference.toFixed(0)} ms`,
  );
  console.log(`that is ${figures.referenceRatio.toFixed(0)} times the posterior`);
}
