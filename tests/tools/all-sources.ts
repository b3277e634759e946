import { BEDSIDE_TEST_IDS, BEDSIDE_TESTS, type BedsideTest } from '../../src/bedside/index.js';
import { METHODS } from '../../src/examination/index.js';
import { pressureSettings } from '../../src/pressures/index.js';
import type { StageScheme } from '../../src/staging/index.js';
import { sourcesOf } from '../../src/statements/index.js';
import { COMPRESSION_SOURCES, FLAG_CODES } from '../../src/triage/index.js';
import { PRESSURES } from './word-records.js';

const SCHEMES = Object.keys({
  acute: 0,
  fontaine: 0,
  rutherford: 0,
  wound: 0,
  ischaemia: 0,
  infection: 0,
  wifi: 0,
} satisfies Record<StageScheme, 0>) as StageScheme[];

/** A limit that no source names. */
const OWN_LIMIT = 7.5;

/** Every source that stands behind the mark of a verdict, each once. */
export const ALL_SOURCES: readonly string[] = [
  ...new Set([
    ...COMPRESSION_SOURCES,
    ...BEDSIDE_TEST_IDS.flatMap((test) => {
      const { limits } = BEDSIDE_TESTS[test] as BedsideTest;
      const used = [...(limits?.options.map(({ value }) => value) ?? []), OWN_LIMIT];
      return used.flatMap((limit) => sourcesOf({ code: 'test', test, limit }));
    }),
    ...FLAG_CODES.flatMap((flag) => sourcesOf({ code: 'flag', flag })),
    ...SCHEMES.flatMap((scheme) => sourcesOf({ code: 'stage', scheme })),
    ...Object.entries(METHODS).flatMap(([field, options]) =>
      options.flatMap((option) =>
        PRESSURES.flatMap((pressures) =>
          sourcesOf({ code: 'pressures', pressures, settings: pressureSettings({ [field]: option }) }),
        ),
      ),
    ),
  ]),
];
