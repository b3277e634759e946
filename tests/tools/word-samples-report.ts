import { emptyExamination, SCALE_IDS } from '../../src/examination/index.js';
import type { PartMessages } from '../../src/locale/index.js';
import { itemsOf, reportOf } from '../../src/report/index.js';
import { WHOLE } from './word-records.js';
import { COUNTS, each, one, type Samples, two } from './word-samples-of.js';

const ITEMS = Object.values(itemsOf(WHOLE)).flat();
const REPORTED = reportOf(WHOLE);
const AMENDED = { at: '2026-05-03T10:30Z' } as const;

/** Arguments for every entry of the report that is a function. */
export const REPORT_SAMPLES: Samples<PartMessages['report']> = {
  part: one(['left leg', 'right head', 'trunk'] as const),
  parts: one([['left leg', 'right head', 'trunk'] as const]),
  phrase: one(ITEMS),
  about: one(ITEMS),
  when: one([AMENDED.at]),
  examined: two([undefined, AMENDED.at], ['', '2026-05-03', 'xyz']),
  scale: one(SCALE_IDS),
  normals: COUNTS,
  sites: each(REPORTED.parts, ({ at, sites }) => two([at], sites)),
  unfelt: one([REPORTED.unfelt, reportOf(emptyExamination()).unfelt]),
  amendment: one([
    { ...AMENDED, kind: 'amended', by: 'xyz', why: 'xyz' },
    { ...AMENDED, kind: 'entered-in-error', why: 'xyz' },
    { ...AMENDED, kind: 'restored', by: 'xyz' },
  ]),
};
