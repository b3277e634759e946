// Writes the counts of a browser test run as JSON to `path`, for tests/run.mjs to add up, and what failed and why.
import { writeFileSync } from 'node:fs';
import { isBeyond } from './engines/beyond.mjs';

/** Message and place of an error; some engines put the message into the stack, others do not. */
function withStack({ message = '', stack } = {}) {
  return stack?.includes(message) ? stack : stack && `${message}\n${stack}`;
}

/** `leftOut`: why tests without a verdict have none. */
function count(suite, totals, leftOut, above = []) {
  for (const { name, passed, skipped, error } of suite.tests) {
    const message = error?.message ?? (skipped ? undefined : leftOut);
    const test = [...above, name].join(' > ');
    if (passed && !skipped) totals.passed++;
    else if (isBeyond(message)) {
      totals.beyond++;
      totals.beyonds.push({ test, message });
    }
    // A test that is left out proves nothing: it counts as failed.
    else {
      totals.failed++;
      totals.failures.push({ test, message: message ?? 'left out', stack: withStack(error) });
    }
  }
  for (const inner of suite.suites) count(inner, totals, leftOut, [...above, inner.name]);
}

/**
 * What failed before tests that therefore never ran. The runner does not say to which tests a hook belongs, so these are beyond the
 * engine only where every hook that failed in the file is.
 */
function failedHook({ errors }) {
  const messages = errors.map(({ message }) => message);
  return messages.find((message) => !isBeyond(message)) ?? messages[0];
}

/** Adds up what the browser test runner tells of its files. */
export function countSessions(sessions) {
  const totals = { passed: 0, failed: 0, beyond: 0, failures: [], beyonds: [] };
  for (const session of sessions) {
    const { failed, beyond } = totals;
    const hook = failedHook(session);
    if (session.testResults) count(session.testResults, totals, hook, [session.testFile]);
    // A file that could not be loaded has no failed test of its own, nor has a hook that runs after tests: it counts as one.
    const untold = !session.passed && totals.failed === failed && totals.beyond === beyond;
    if (untold || (hook !== undefined && !isBeyond(hook) && totals.failed === failed)) {
      totals.failed++;
      totals.failures.push({ test: session.testFile, message: hook ?? 'failed without a word' });
    }
  }
  return totals;
}

export function countReporter(path) {
  return {
    onTestRunFinished({ sessions }) {
      writeFileSync(path, JSON.stringify(countSessions(sessions), null, 1));
    },
  };
}
