import { reportFrom, type ReportTable } from '../report.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { localisation } from './localisation.js';
import { marks } from './marks.js';
import { list } from './phrases.js';
import { areas, whole } from './whole.js';

const trade: ReportTable = {
  title: 'Examination of the limb arteries',
  noName: 'Patient not named',
  noDate: 'Date not recorded',
  timeless: (day) => `${day}, time not recorded`,
  noExaminer: 'Examiner not recorded',
  examiner: 'Examiner',
  headings: {
    flags: 'Red flags',
    conclusion: 'Conclusion',
    findings: 'Findings',
    pressures: 'Pressures and indices',
    tests: 'Bedside tests',
    stages: 'Stages',
    background: 'History and background',
    notExamined: 'Not examined',
    method: 'Methods and limits chosen',
    calls: 'Calls made',
    amendments: 'Amendments',
  },
  noConclusion: 'No pulse graded: nothing is concluded about the arteries.',
  trunk: 'trunk',
  scale: (scale) => `Pulses on the scale ${scale}.`,
  normals: (count) => (count === 1 ? '1 normal finding' : `${count} normal findings`),
  unfeltAll: (parts) => `No pulse palpated: ${parts}.`,
  unfelt: (part, sites) => `${part}: not palpated at ${sites}.`,
  nothingMissing: 'Every pulse site was examined.',
  status: {
    preliminary: 'Preliminary: not finished',
    final: 'Final',
    amended: 'Amended',
    'entered-in-error': 'Entered in error',
  },
  inError: 'This examination must not be used in this patient’s care. It is kept so that it can be traced.',
  amendments: { amended: 'Amended', 'entered-in-error': 'Marked as entered in error', restored: 'Restored' },
  amended: (what, when, by, why) => `${what} ${when}${by ? ` by ${by}` : ''}${why ? `: ${why}` : ''}`,
};

const plain: Otherwise<ReportTable> = {
  title: 'Examination of the blood flow to arms and legs',
  headings: {
    flags: 'Warning signs',
    conclusion: 'What this points to',
    findings: 'What was found',
    pressures: 'Blood pressure at arms and legs',
    tests: 'Tests by the bed',
    stages: 'How far the disease has gone',
    background: 'What you told us',
    notExamined: 'What was not checked',
    method: 'How pressures were worked out',
    calls: 'Who was called',
    amendments: 'Later changes',
  },
  noConclusion: 'No pulse was judged, so nothing can be said about the arteries.',
  scale: (scale) => `Pulse strength from ${scale}.`,
  normals: (count) => (count === 1 ? '1 thing as it should be' : `${count} things as they should be`),
  unfeltAll: (parts) => `Nobody felt for a pulse: ${parts}.`,
  unfelt: (part, sites) => `${part}: nobody felt for the pulse at ${sites}.`,
  nothingMissing: 'Every pulse was checked.',
};

export const report = reportFrom(inRegisters(trade, plain), {
  ...areas,
  localisation,
  marks,
  whole,
  list,
  dates: 'en-GB',
});
