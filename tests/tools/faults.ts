import type { Expectation, Fault } from '../../src/examination/index.js';

/** What was expected, in short: alternatives by "|", bounds as "at-most 2000 characters", rules by their code. */
export function expectedIn(expected: Expectation): string {
  if ('values' in expected) return expected.values.map((value) => JSON.stringify(value)).join('|');
  if ('names' in expected) return expected.names.join('|');
  if ('type' in expected) return expected.type;
  if ('words' in expected) return `0|${expected.least} to ${expected.most}|${expected.words.join('|')}`;
  if ('of' in expected) return `${expected.code} ${expected.value} ${expected.of}`;
  return expected.code;
}

/** One line a fault: code, path, found, expected. */
export function faultLine({ code, path, found, expected }: Fault): string {
  return `${code} at ${path.join('.')}: ${found || 'nothing'}, not ${expectedIn(expected)}`;
}
