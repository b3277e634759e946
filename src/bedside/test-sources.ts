import type { BedsideTestId } from '../examination/index.js';
import { type BedsideTest, limitFor } from './test.js';
import { BEDSIDE_TESTS } from './tests.js';

/** What the reading of a test rests on, as cited: the limit used, then the published rates. */
export function testSources(test: BedsideTestId, limit?: number): readonly string[] {
  const { limits, accuracy, falsePositives = [] } = BEDSIDE_TESTS[test] as BedsideTest;
  const cited = [
    ...(limits ? [limitFor(limits, limit)] : []),
    ...(accuracy ? [accuracy] : []),
    ...falsePositives,
  ];
  return [...new Set(cited.map(({ source }) => source))];
}
