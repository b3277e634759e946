// Writes the counts of a browser test run as JSON to `path`, for tests/run.mjs to add up.
import { writeFileSync } from 'node:fs';

function count(suite, totals) {
  for (const test of suite.tests) {
    // A test that is left out proves nothing: it counts as failed.
    if (test.passed && !test.skipped) totals.passed++;
    else totals.failed++;
  }
  for (const inner of suite.suites) count(inner, totals);
}

export function countReporter(path) {
  return {
    onTestRunFinished({ sessions }) {
      const totals = { passed: 0, failed: 0 };
      for (const session of sessions) {
        const before = totals.failed;
        if (session.testResults) count(session.testResults, totals);
        // A file that could not be loaded has no failed test of its own: the file counts as one.
        if (!session.passed && totals.failed === before) totals.failed++;
      }
      writeFileSync(path, JSON.stringify(totals));
    },
  };
}
