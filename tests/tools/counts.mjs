// What tests/run.mjs counts and tells of a step.
import { relative } from 'node:path';
import { stripVTControlCharacters } from 'node:util';

const lines = (text) => stripVTControlCharacters(text).trim().split('\n');

/** Counts of a report of vitest, and its failures; files are named from `root` on. */
export function vitestCounts(report, root) {
  const failures = [];
  for (const { name, message, status, assertionResults } of report.testResults) {
    const file = relative(root, name);
    // A test that is left out proves nothing: it counts as failed.
    const failed = assertionResults.filter((test) => test.status !== 'passed');
    // A file that could not be loaded has no failed test of its own: the file counts as one.
    if (status === 'failed' && !failed.some((test) => test.status === 'failed'))
      failures.push({ test: file, message: message || 'failed without a word' });
    for (const { fullName, failureMessages } of failed)
      failures.push({ test: `${file} > ${fullName}`, message: failureMessages?.[0] ?? 'left out' });
  }
  return { passed: report.numPassedTests, failed: failures.length, failures };
}

/** What went wrong, test by test: of a runner's own output most is its progress. */
export function failuresInFull(failures) {
  return failures
    .map(({ test, message, stack }) => [test, ...lines(stack ?? message)].join('\n    '))
    .join('\n\n');
}

/**
 * A line for each failure of a step, for the end: of a long run often only the end is kept.
 * @param {string} title
 * @param {{ failed: number, failures?: { test: string, message: string }[], output?: string }} result
 */
export function failureLines(title, { failed, failures = [], output = '' }) {
  if (failed === 0) return [];
  if (failures.length === 0) return [`${title}: ${lines(output).at(-1)}`];
  return failures.map(({ test, message }) => `${title}: ${test}: ${lines(message)[0]}`);
}
