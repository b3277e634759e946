import { PRACTICE_ACTS, PRACTICE_CAUTIONS, COMPLAINTS } from '../../src/practice/index.js';
import type { PracticeWords } from '../../src/locale/practice.js';
import { one, type Samples, three } from './word-samples-of.js';

/** Arguments for the words of a patient to practise on. */
export const PRACTICE_SAMPLES: Samples<PracticeWords> = {
  patient: one(['4817']),
  brief: three([67], COMPLAINTS, ['right', 'left', undefined]),
  act: one(PRACTICE_ACTS),
  time: [[12, 5]],
  points: [[7, 20]],
  taken: one([3]),
  openPart: one([3]),
  causesFit: one(['X']),
  caution: PRACTICE_CAUTIONS.map((code) => [code, 'X', 3, 20]),
  voteHow: one([8]),
  trend: [
    [1, 0.5, 0, 0],
    [5, 0.7, 0, 0],
    [5, 0.7, 1, 0.4],
    [5, 0.7, 5, 0.4],
  ],
  rightOf: [[3, 5]],
  oldestFirst: one([0, 7]),
  forgotten: one([1, 4]),
};
