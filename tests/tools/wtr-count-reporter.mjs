// Writes the counts of a browser test run as JSON to `path`, for tests/run.mjs to add up, and what failed and why.
import { writeFileSync } from 'node:fs';
import { isBeyond } from './engines/beyond.mjs';

function count(suite, totals, above = []) {
  for (const { name, passed, skipped, error } of suite.tests) {
    // A test that is left out proves nothing: it counts as failed.
    if (passed && !skipped) totals.passed++;
    else if (isBeyond(error?.message)) totals.beyond++;
    else {
      totals.failed++;
      totals.failures.push({ test: [...above, name].join(' > '), message: error?.message ?? 'left out' });
    }
  }
  for (const inner of suite.suites) count(inner, totals, [...above, inner.name]);
}

export function countReporter(path) {
  return {
    onTestRunFinished({ sessions }) {
      const totals = { passed: 0, failed: 0, beyond: 0, failures: [] };
      for (const session of sessions) {
        const { length } = totals.failures;
        const { beyond } = totals;
        if (session.testResults) count(session.testResults, totals, [session.testFile]);
        // A file that could not be loaded has no failed test of its own: the file counts as one.
        if (!session.passed && totals.failures.length === length && totals.beyond === beyond) {
          totals.failed++;
          const message = session.errors.map((error) => error.message).join('; ');
          totals.failures.push({ test: session.testFile, message });
        }
      }
      writeFileSync(path, JSON.stringify(totals, null, 1));
    },
  };
}
