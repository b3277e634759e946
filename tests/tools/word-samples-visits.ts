import { LEAST_CHANGES, TREND_MEASURES } from '../../src/comparison/index.js';
import type { PartMessages } from '../../src/locale/index.js';
import { LEFT_FOOT, RIGHT_GROIN } from './change-samples.js';
import { COUNTS, one, type Samples, TEXT, three, two } from './word-samples-of.js';

export const VISITS_SAMPLES: Samples<PartMessages['visits']> = {
  table: {
    count: COUNTS,
    changes: COUNTS,
    metres: TEXT,
    at: TEXT,
    bands: {
      difference: two(['xyz'], ['xyz']),
      factor: two(['xyz'], ['xyz']),
      'of-arm': two(['xyz'], ['xyz']),
    },
    reading: two([3], [20]),
  },
  when: two([undefined, '2026-05-19', '2026-05-19T09:40+02:00'], [true, false]),
  tick: two([Date.UTC(2026, 4, 19, 9, 40)], ['year', 'month', 'day', 'minute'] as const),
  level: two(TREND_MEASURES, [0.5]),
  number: two(TREND_MEASURES, [0.5]),
  value: two(TREND_MEASURES, [undefined, 'incompressible', 0.5] as const),
  both: two(TREND_MEASURES, [{ right: 0.5, left: 'incompressible' }, {}] as const),
  read: two(['xyz'], [[['ankle-index', { right: 0.5, left: 1.02 }]], []] as const),
  places: one([
    [
      { place: LEFT_FOOT, weight: 'urgent' },
      { place: RIGHT_GROIN, weight: 'chance' },
    ],
  ] as const),
  band: three(Object.values(LEAST_CHANGES), ['ankle-index', 'distance'] as const, ['xyz']),
};

export const UNCONFIRMED_SAMPLES: Samples<PartMessages['unconfirmed']> = {
  table: { title: one(['', 'xyz']), left: COUNTS, all: COUNTS, confirmed: COUNTS },
  part: one([undefined, 'trunk', 'left leg'] as const),
  found: one([[{ code: 'site', place: LEFT_FOOT, statements: [{ code: 'bruit', bruit: 'none' }] }]] as const),
};

export const CHART_SAMPLES: Samples<PartMessages['chart']> = {
  table: {
    title: TEXT,
    due: two(['xyz'], ['xyz']),
    overdue: two(['xyz'], ['xyz']),
    every: TEXT,
    recorded: TEXT,
  },
  time: one([Date.UTC(2026, 9, 28, 13)]),
  day: one([Date.UTC(2026, 9, 28, 13)]),
  moment: [
    [Date.UTC(2026, 9, 28, 13), Date.UTC(2026, 9, 28, 13), Date.UTC(2026, 9, 28, 15)],
    [Date.UTC(2026, 9, 28, 13), Date.UTC(2026, 9, 28, 13), Date.UTC(2026, 9, 30, 15)],
  ],
  title: one([{ kind: 'leg', side: 'left' }] as const),
  due: two([0, 3_600_000], [1_800_000]),
  every: one([30, 60]),
  number: two(['refill', 'pain'] as const, [2]),
};
